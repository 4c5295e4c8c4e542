"""A second voice that never reads and only doubts: words that fit badly to what was read are asked back.

It weighs two things. What the words of a reply usually go with, by a table learnt from labelled replies (`doubts_en`,
written by `tests/bench/doubting.py`). And loose ends: words beside the session that no rule has understood.
"""

from __future__ import annotations

from collections.abc import Iterator
from dataclasses import dataclass
from functools import lru_cache

from plans import doubts_en, words_en
from plans.checkin import Completion, Why
from plans.neighbours import CLAUSE_ENDS, SIGNS
from plans.numbers_written import BODY, Figure, Form
from plans.reading_figures import NOT_PAIN, owner_of, pain_figures
from plans.reading_how import votes_in
from plans.scopes import Said
from plans.weighing import sums_of, table_of, words_of
from plans.wording import Unit, words

UNSAID = "unsaid"
HOW = ("done", "part", "none", UNSAID)
WHY = ("time", "too-hard", "pain", "ill", "other", UNSAID)
"""The answers in the order of their weights."""
MUCH = 6
"""So much weight against a reading asks back; 5 is one natural logarithm of the odds. Chosen, as the next three, by
reading each writer's replies without what only they have taught (`tests/bench/first_readings.py`)."""
MORE = 12
"""The same where the grammar knew every word and left nothing unread."""
FEW = 4
"""Words, with the marked first and last, from which on the table is asked: of two words it knows too little."""
LOOSE = 5
"""What one loose end weighs against a thing that was read; one about a thing that was not read asks back by itself, as
the talk would ask for it anyway."""


@dataclass(frozen=True, slots=True)
class Read:
    """What was read of the three things that can be doubted, and whether the reply asks for something too."""

    completion: Completion | None
    pain: int | None
    why: Why | None
    requested: bool


def doubt_in(reply: Said, read: Read) -> str | None:
    """What is doubted most, "completion", "pain" or "why"; None when the words go well with what was read.

    Only for replies without a red flag: a flag that is sure is acted upon, whatever else is doubted.
    """
    told = words_of(reply)
    sums = sums_of(told, _table())
    how, why = sums[: len(HOW)], sums[len(HOW) :]
    enough = len(told) >= FEW
    against = {
        "completion": max(how) - how[HOW.index(read.completion or UNSAID)] if enough else 0,
        "why": max(why) - why[WHY.index(read.why or UNSAID)] if enough and _is_short(read) else 0,
        "pain": 0,
    }
    loose, unread = list(_loose_ends(reply, read)), list(_unread(reply, read))
    for about in loose:
        against[about] += LOOSE
    for about in unread:
        against[about] += MUCH
    most = max(against, key=lambda about: against[about])
    if not loose and not unread and all(unit.concept in _PLAIN for unit in reply.units):
        return None
    all_read = not loose and not unread and not any(map(_is_unknown, reply.units))
    bound = MUCH * 2 if read.requested and read.completion is not None else MORE if all_read else MUCH
    return most if against[most] >= bound else None


_PLAIN = BODY | words(
    """
    done finish do do-all part half few most none no-answer yes later
    pain no-pain sore dull number number-word scale slash about one left right both
    pass now was from to yesterday but and neg none-word comma end colon dash thanks
    before-number counted correction
    """
)
"""Of what a plain statement is made: where there is nothing else the words are taken as they stand."""


@lru_cache(maxsize=1)
def _table() -> dict[str, tuple[int, ...]]:
    return table_of(doubts_en.WEIGHTS)


def _is_short(read: Read) -> bool:
    return read.completion in (Completion.PART, Completion.NONE)


def _unread(reply: Said, read: Read) -> Iterator[str]:
    """What was not read though there are words for it."""
    if read.completion is None and not read.requested and _speaks_of_doing(reply):
        yield "completion"
    puts_off = bool(reply.at("later"))
    if _is_short(read) and read.why is None and not puts_off and any(map(_is_unknown, reply.units)):
        yield "why"
    if read.pain is None and not read.requested and not _is_short(read) and _leaves_a_number(reply):
        yield "pain"


def _loose_ends(reply: Said, read: Read) -> Iterator[str]:
    """What was read though words beside it may say something else."""
    told = {word for unit in reply.units for word in unit.text.split(" ")}
    if _is_short(read) and read.why is Why.OTHER and not reply.at("other-why") and told & _OF_TIME:
        yield "why"
    if read.completion is Completion.NONE and told & _PIECES:
        yield "completion"
    if read.completion is Completion.DONE and (_names_a_piece(reply) or _supposes(reply)):
        yield "completion"


_DOING = words(
    """
    did made make done do already finish finished complete completed through managed got went
    all every everything each whole
    ready session exercise exercises stretches stretching programme workout
    """
)
_OF_TIME = words("work min mins minutes late early run rush hurry break call calls boss hours busy")
_PIECES = words("first second third last half rest ones others only left")
_BEYOND = words("first third fourth fifth sixth rest others minus ones started until till apart bar except")
_SUPPOSING = words("if whether when wish would could should might remember think hope want wanted try tried will")
_EMPTY = words(
    """
    could should would today me him her us them we they he she again then when while after before during where which who
    what that here too much more even though as like by for up off over into onto each per until till yet ever also
    please sorry thanks sir madam coach hi hey how am will shall let lets our his its their through back day time bit
    little lot quite really honestly basically
    """
)


_MOVEMENTS = words(words_en.MOVEMENTS)


def _is_unknown(unit: Unit) -> bool:
    """A word of content that the lexicon does not have."""
    return unit.concept == "word" and len(unit.text) > 2 and unit.text not in _EMPTY and unit.text not in _MOVEMENTS


def _plain_clauses(reply: Said) -> Iterator[range]:
    """The clauses that tell of no feeling."""
    pains = {i for figure in pain_figures(reply) for i in range(figure.first, figure.last + 1)}
    for clause in reply.clauses:
        if not any(i in pains or reply.concept(i) in _FEELINGS for i in clause):
            yield clause


_FEELINGS = SIGNS | {"tight", "stretch-feeling", "no-pain"}


def _speaks_of_doing(reply: Said) -> bool:
    """ "All exercises absolved, pain 1": words of doing beside a pain, and no completion was read."""
    told = [
        {word for i in clause if reply.concept(i) != "lasts" for word in reply.units[i].text.split(" ")}
        for clause in _plain_clauses(reply)
    ]
    return any(_DOING & here and not _PLACES & here for here in told)


_PLACES = words("where spot area zone region place")
"""What tells where it hurts: "not the place that the session works"."""


def _names_a_piece(reply: Said) -> bool:
    """ "Did the first two, then …", "the third one, no": a piece of a session that was read as whole."""
    return any(
        (_BEYOND & set(reply.units[i].text.split(" ")) and not _is_first_thing(reply, i))
        or reply.units[i].text == "not"
        for clause in _plain_clauses(reply)
        for i in clause
    )


def _is_first_thing(reply: Said, index: int) -> bool:
    return reply.units[index].text == "first" and reply.units[min(index + 1, len(reply.units) - 1)].text == "thing"


def _supposes(reply: Said) -> bool:
    """ "If I had done it", "I think I finished"."""
    voted = {vote.place for vote in votes_in(reply)}
    return any(voted & set(clause) and any(_is_supposing(reply, i) for i in clause) for clause in _plain_clauses(reply))


def _is_supposing(reply: Said, index: int) -> bool:
    """ "I think I did"; not "I think the last one is fun"."""
    told = _SUPPOSING & set(reply.units[index].text.split(" "))
    of_a_thing = index + 1 < len(reply.units) and reply.units[index + 1].text in ("the", "my", "these", "those")
    return bool(told) and not (told <= {"think", "hope"} and of_a_thing)


def _leaves_a_number(reply: Said) -> bool:
    """A number of 0-10 at the end of a clause that counts nothing and was read as nothing."""
    return any(
        figure.form is Form.PLAIN and 0 <= figure.value <= 10 and reply.concept(figure.last + 1) in _ENDS
        for figure in reply.figures
        if figure not in pain_figures(reply) and not _has_a_meaning(reply, figure)
    )


def _has_a_meaning(reply: Said, figure: Figure) -> bool:
    """ "At 7", "the first two", "tightness 4", "3 sets of 10"."""
    before = reply.units[figure.first - 1].text.split(" ")[-1] if figure.first else ""
    led = reply.concept(figure.first - 1) in ("before-number", "clock") or before in ("of", "first", "last", "sharp")
    return led or owner_of(reply, figure) in ("tight", *NOT_PAIN)


_ENDS = CLAUSE_ENDS | {"", "now", "yesterday", "and"}
