"""Words that say a part by themselves, "half", "most", "skipped the", and where they speak of something else."""

from __future__ import annotations

from plans.checkin import Completion
from plans.neighbours import SIGNS
from plans.numbers_written import BODY
from plans.reading_small_words import WORK
from plans.scopes import Said
from plans.wording import words

PARTIAL = words("part half most few")
"""The concepts of these words."""


def part_vote(reply: Said, index: int, *, denied: bool) -> tuple[Completion, int] | None:
    """What such a word says of completion, and its weight; None where it speaks of something else."""
    concept, text = reply.concept(index), reply.units[index].text
    if concept == "part" and ((text in _NO_MORE and _is_felt(reply, index)) or _is_no_part(reply, index)):
        return None
    if text == "skipped the" and _is_the_whole(reply, index + 1):
        return Completion.NONE, 3
    if denied and concept != "most":
        return None
    if index and reply.units[index - 1].text.split(" ")[-1] in _OF_OTHER_THINGS:
        return None
    if concept == "few" and any(reply.concept(i) in ("lasts", "past") for i in range(index + 1, index + 3)):
        return None
    telling = (
        concept == "part"
        or index == 0
        or reply.at("done", "finish", "do", "yes")
        or reply.concept(index - 1) in _LEADS
        or reply.units[index - 1].text.endswith("through")
        or (reply.concept(index - 1) == "colon" and reply.units[index - 2].text.split(" ")[-1] in WORK)
    )
    return (Completion.PART, 2 if reply.units[index].text in _WEAK else 3) if telling else None


_OF_OTHER_THINGS = words("ate eaten eat drank read watched baked sold bought slept")
_WEAK = frozenset(
    (
        "got through the",
        "half way",
        "halfway",
        "did the first",
        "first round only",
        "started",
        "stopped",
        "only the",
        "just two",
        "nothing else",
        "nothing more",
    )
)
"""Words that say "a part" only where nobody says plainly that all was done."""

_NO_MORE = ("nothing else", "nothing more")
_LEADS = words("before-number about pass do hedge comma but no-answer end dash")


def _is_felt(reply: Said, index: int) -> bool:
    """ "My calves are sore, nothing more": it closes what is felt, and tells of no session."""
    same = [i for i in range(index) if reply.sentence[i] == reply.sentence[index]]
    return any(reply.concept(i) in SIGNS - BODY for i in same) and not any(
        reply.concept(i) in ("done", "finish", "do", "half", "most", "few") for i in same
    )


def _is_no_part(reply: Said, index: int) -> bool:
    """ "Only the right one" of a limb, "send it at 7 instead of 6", "his clock stopped"."""
    text, before = reply.units[index].text, reply.units[max(0, index - 1)]
    of_a_side = text == "only the" and reply.concept(index + 1) in ("left", "right") and _is_felt(reply, index)
    of_a_time = text.startswith("instead of") and bool(reply.at("change-time"))
    of_a_thing = text == "stopped" and before.concept == "word" and before.text in _STOPS_BY_ITSELF
    return of_a_side or of_a_time or of_a_thing


_STOPS_BY_ITSELF = words("clock watch car bus train rain music engine phone video dishwasher washing lift escalator")


def _is_the_whole(reply: Said, index: int) -> bool:
    """ "Skipped the stretches", and no more is said of them."""
    whole = index < len(reply.units) and reply.units[index].text in ("stretches", "stretching", "exercises", "moves")
    return whole and reply.concept(index + 1) in _ENDS


_ENDS = words("end comma now because but and so mark face") | {""}
