"""Why a session was cut short or left out. A reason that nobody named is never guessed."""

from __future__ import annotations

from collections.abc import Callable

from plans import words_en
from plans.checkin import Completion, Why
from plans.neighbours import CLAUSE_ENDS, SIGNS
from plans.numbers_written import BODY
from plans.reading_how import votes_in
from plans.reading_numbers import Pain
from plans.scopes import Said
from plans.wording import words

TOO_MUCH = 3
"""From this pain on (0-10) it is the reason where no other is named."""


def why_in(reply: Said, completion: Completion | None, pain: Pain) -> Why | None:
    """Why it was cut short or left out; None for a session that was done, and where no reason was named."""
    if completion not in (Completion.PART, Completion.NONE):
        return None
    named = reply.at("pain", "sharp", "sore", "dull") or (reply.at("severe") and not reply.at("breathless"))
    feels = bool(named) and (pain.value is None or pain.value >= 3)
    feels = feels and not _is_beside(reply, pain)
    feels = feels and not _is_put_off(reply, completion, "pain", "sharp", "sore", "dull", "severe")
    if feels and pain.error is not None and reply.at("time", "time-part", "ill", "other-why", "too-hard"):
        feels = False
    guessing = bool(reply.at("hedge", "correction"))
    for why, said_so in (
        (Why.ILL, bool(reply.at("fever"))),
        (Why.PAIN, feels),
        (Why.ILL, bool(reply.at("ill"))),
        (Why.TOO_HARD, bool(reply.at("too-hard"))),
        (Why.OTHER, _forgot(reply)),
        (Why.TIME, bool(reply.at("time", "time-part")) or _is_work(reply)),
        (Why.OTHER, _is_of_others(reply)),
        (Why.PAIN, _hurts_too_much(reply, completion, pain)),
        (Why.OTHER, bool(reply.at("other-why")) or (not guessing and _tells_of_others(reply))),
    ):
        if said_so:
            return None if why is Why.OTHER and _is_put_off(reply, completion, "other-why") else why
    return None


def _is_beside(reply: Said, pain: Pain) -> bool:
    """ "My back is sore. I did half, too tired": the sentence that says how much has a reason of its own."""
    voted = {reply.sentence[vote.place] for vote in votes_in(reply)}
    own = {reply.sentence[i] for i in reply.at("time", "time-part", "ill", "other-why")} & voted
    felt = {reply.sentence[i] for i in reply.at("pain", "sharp", "sore", "dull", "severe")}
    return pain.value is None and bool(own) and not felt & voted


def _is_put_off(reply: Said, completion: Completion, *told: str) -> bool:
    """ "My back is sore. I'll do it later": what is told stands apart, and nothing says that it is the reason."""
    if not _only_later(reply, completion):
        return False
    said = {reply.sentence[vote.place] for vote in votes_in(reply)}
    linked = {reply.sentence[i] for i in reply.at("because", "so")} & said
    if linked or any(unit.text.startswith("too ") for unit in reply.units):
        return False
    return all(reply.sentence[i] not in said for i in reply.at(*told))


def _only_later(reply: Said, completion: Completion | None) -> bool:
    """Whether it is only put off: "I'll do it tonight"."""
    votes = votes_in(reply)
    return completion is Completion.NONE and bool(votes) and all(reply.concept(v.place) == "later" for v in votes)


def _forgot(reply: Said) -> bool:
    """Forgotten, whatever else the day was."""
    return any("forgot" in reply.units[i].text and not _is_anothers(reply, i) for i in reply.at("other-why"))


def _is_anothers(reply: Said, index: int) -> bool:
    """ "Our goalie forgot his boots"."""
    led = reply.units[index - 2].text.split(" ")[-1] if index > 1 else ""
    named = reply.concept(index - 1) == "word" and led in ("our", "his", "her", "their", "the", "a")
    return named or reply.concept(index - 1) == "someone"


def hints_at_why(reply: Said, completion: Completion | None) -> bool:
    """Whether a session that was not done whole has words beside it that may be the reason and are not known."""
    short = completion in (Completion.PART, Completion.NONE)
    if _only_later(reply, completion) and not reply.at("because", "so"):
        return False
    return short and not reply.at("hedge", "correction") and _is_told(reply, _is_unknown)


def _hurts_too_much(reply: Said, completion: Completion, pain: Pain) -> bool:
    """A pain beside a session that was left out, or one that is named and not only a number: not "half, 3"."""
    told = completion is Completion.NONE or bool(reply.at("so", "because", "pain", "worse", "hurts-more", *BODY))
    return pain.value is not None and pain.value >= TOO_MUCH and told


def _tells_of_others(reply: Said) -> bool:
    """Somebody or something else is named. Kids may be one's own, which is time, or others': that is asked."""
    kids = any(reply.units[i].text == "kids" for i in range(len(reply.units)))
    ahead = {reply.clause[i] for i in reply.at("later")}
    told = any(reply.clause[i] not in ahead for i in reply.at("someone"))
    return told or (not kids and _is_told(reply, _is_circumstance))


def _is_of_others(reply: Said) -> bool:
    """ "Wife has the flu so I was on kid duty": somebody else's illness or sign is the reason."""
    return any(unit.theirs and unit.concept in SIGNS for unit in reply.units)


def _is_work(reply: Said) -> bool:
    """ "My boss came", or a clause of one word: "skipped. work."."""
    alone = any(
        {reply.units[i].text for i in clause} <= _WORK and clause.stop - clause.start == 1
        for clause in _thoughts(reply)
    )
    return alone or any(_BOSSES & set(reply.units[i].text.split(" ")) for i in reply.at("someone"))


def _thoughts(reply: Said) -> list[range]:
    """The clauses without the mark that closes them."""
    return [clause[:-1] if clause and reply.concept(clause[-1]) in CLAUSE_ENDS else clause for clause in reply.clauses]


_BOSSES = words("boss gaffer manager supervisor foreman")
_WORK = words("work job office school college uni exams shift overtime")


def _is_told(reply: Said, tells: Callable[[Said, int], bool]) -> bool:
    """Whether what stands by a "because" or "so", or a clause of its own, tells of something beside the session."""
    links = [range(_begin(reply, i), i) for i in reply.at("so")]
    links += [range(i + 1, min(i + 8, len(reply.units))) for i in reply.at("because")]
    if any(tells(reply, i) for where in links for i in where):
        return True
    voted = {reply.clause[vote.place] for vote in votes_in(reply)}
    own = [clause for number, clause in enumerate(reply.clauses) if number not in voted]
    if tells is _is_circumstance:
        apart = {i for clause in own for i in clause}
        ahead = {reply.clause[i] for i in reply.at("later")}
        said = [i for i in range(len(reply.units)) if tells(reply, i) and reply.clause[i] not in ahead]
        return any(i in apart or not _is_gear(reply, i) for i in said)
    return any(sum(tells(reply, i) for i in clause) >= 2 for clause in own)


def _begin(reply: Said, index: int) -> int:
    """Where the thought begins that a "so" closes: its own clause, or the one before when the "so" opens it."""
    number = reply.clause[index]
    return reply.clauses[number - (reply.clauses[number].start == index and number > 0)].start


def _is_circumstance(reply: Said, index: int) -> bool:
    known = reply.concept(index) in ("word", "harmless", "someone")
    return known and not _CIRCUMSTANCES.isdisjoint(reply.units[index].text.split(" "))


def _is_gear(reply: Said, index: int) -> bool:
    """What exercises are named by: "did the wall ones", "left the strap ones out"."""
    return not _GEAR.isdisjoint(reply.units[index].text.split(" "))


def _is_unknown(reply: Said, index: int) -> bool:
    text = reply.units[index].text
    return reply.concept(index) in ("word", "someone", "harmless") and text not in _EMPTY and text not in _MOVEMENTS


_MOVEMENTS = words(words_en.MOVEMENTS) - {"dog", "cat", "wall", "strap", "band"}
_GEAR = words("mat mats strap straps elastic band bands wall sofa bed screen")
_CIRCUMSTANCES = words(words_en.CIRCUMSTANCES)
_EMPTY = words("could should would today coach sorry please me him her us they we he she its again rest")
