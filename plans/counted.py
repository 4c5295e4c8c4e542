"""Numbers that name exercises or keep a score: "1 to 6 yes, 7 and 8 no", "we lost 3-1"."""

from __future__ import annotations

from collections.abc import Sequence
from typing import NamedTuple

from plans.wording import Unit, words


class Verdict(NamedTuple):
    """Exercises that are named by their numbers, at these units, and whether they were done; None when not said."""

    numbers: tuple[int, ...]
    done: bool | None
    place: int


_NUMBERS = words("number number-word one")
_WORKS = words(
    "exercise exercises stretch stretches move moves movement movements pose poses round rounds set sets number "
    "numbers nos step steps drill drills ex"
)
_JOINTS = words("comma and to dash or arrow plus")
_DONE = words("yes done finish fine")
_UNDONE = words("no-answer none too-hard")
_NOT = words("no not nope nah skipped missed undone")


def verdicts(units: Sequence[Unit]) -> tuple[Verdict, ...]:
    """What is said of exercises that are named by number; empty when no list of them is plain to see."""
    for at, unit in enumerate(units):
        named = unit.text in _WORKS and _concept(units, at + 1) in _NUMBERS
        if named or (at == 0 and unit.concept in _NUMBERS):
            found = tuple(_read(units, at + named))
            told = {verdict.done for verdict in found} - {None}
            if len(told) == 2 or (named and found and (told or len(found[0].numbers) > 1)):
                return found
    return ()


def _read(units: Sequence[Unit], at: int) -> list[Verdict]:
    """Groups of numbers, each with its verdict; a later group without one is no list any more ("…, done, 4")."""
    found: list[Verdict] = []
    while at < len(units):
        numbers, at = _group(units, at)
        if not numbers:
            return found
        done = _verdict(units, at)
        if done is None and found:
            return found
        found.append(Verdict(tuple(numbers), done, at - (done is None)))
        if done is None:
            return found
        at += 1
        while _concept(units, at) in ("comma", "but", "and", "end", "dash") or _text(units, at) in _WORKS:
            at += 1
    return found


def _group(units: Sequence[Unit], at: int) -> tuple[list[int], int]:
    numbers: list[int] = []
    while at < len(units):
        if units[at].concept in _NUMBERS:
            numbers.append(at)
        elif not (numbers and units[at].concept in _JOINTS and _leads_on(units, at + 1)):
            break
        at += 1
    return numbers, at + (_concept(units, at) in ("pass", "was") and bool(numbers))


def _leads_on(units: Sequence[Unit], at: int) -> bool:
    return _concept(units, at) in _NUMBERS or (_concept(units, at) in _JOINTS and _concept(units, at + 1) in _NUMBERS)


def _verdict(units: Sequence[Unit], at: int) -> bool | None:
    concept, text = _concept(units, at), _text(units, at)
    if concept in _UNDONE or text in _NOT:
        return False
    return True if concept in _DONE else None


def names_something(units: Sequence[Unit], first: int) -> bool:
    """ "At rep 8 it hurts", "after minute 7", "fingers 4 and 5 are numb": a number that only says which one."""
    if _text(units, first - 1) in _ONE_OF:
        return _text(units, first - 2).split(" ")[-1] not in _A and _concept(units, first - 2) not in _NUMBERS
    begin, close = first, first
    while _concept(units, begin - 1) in _NUMBERS or _text(units, begin - 1) in ("and", "or"):
        begin -= 1
    while _text(units, close + 1) in ("and", "or") and _concept(units, close + 2) in _NUMBERS:
        close += 2
    if (_concept(units, begin - 1) == "neg" or _text(units, begin - 1) in _LEFT_OUT) and _names_works(units[:begin]):
        return True
    return close > begin and _text(units, begin - 1) in ("fingers", "toes")


def _names_works(units: Sequence[Unit]) -> bool:
    """Whether exercises were spoken of: "exercises 1 to 6, not 7 and 8"."""
    return any(unit.text in _WORKS for unit in units)


_LEFT_OUT = frozenset(("left out", "leaving out", "skipped", "skipping", "missed", "except", "all but", "without"))


_ONE_OF = words("rep minute hour mile km kilometre lap squat lunge plank breath")
_A = words("a an one per last each half the")


def is_a_score(units: Sequence[Unit], first: int, last: int) -> bool:
    """Whether "3-1" is how a game ended: a word of games in its sentence, and nothing of pain."""
    if last != first + 2 or units[first + 1].concept != "dash":
        return False
    begin, close = first, last
    while begin > 0 and units[begin - 1].concept not in ("end", "question"):
        begin -= 1
    while close + 1 < len(units) and units[close + 1].concept not in ("end", "question"):
        close += 1
    near = units[begin : close + 1]
    told = {word for unit in near for word in unit.text.split(" ")}
    beside = {unit.concept for unit in units[max(begin, first - 4) : first]}
    return bool(told & _GAMES) and not beside & {"pain", "sore", "dull", "sharp"}


_GAMES = words(
    "won win wins winning lost lose losing beat beaten drew draw score scored match game league derby final football "
    "soccer team teams cup tennis rugby hockey cricket goals goal basketball volleyball handball badminton squash club"
)


def _concept(units: Sequence[Unit], at: int) -> str:
    return units[at].concept if 0 <= at < len(units) else ""


def _text(units: Sequence[Unit], at: int) -> str:
    return units[at].text if 0 <= at < len(units) else ""
