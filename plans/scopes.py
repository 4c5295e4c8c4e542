"""How far a "no" reaches, and which words belong to one clause."""

from __future__ import annotations

from collections.abc import Iterable
from dataclasses import dataclass
from functools import cached_property

from plans.wording import Unit, normalise, units

BODY = frozenset("chest neck jaw arm face calf thigh leg heart limb trunk saddle bladder".split())
"""Concepts that are a part of the body."""

_CLAUSE_ENDS = frozenset(("stop", "question", "comma", "but", "because"))
_SENTENCE_ENDS = frozenset(("stop", "question"))
_PASSED = frozenset(("pass", "before-number", "about", "left", "right", "both", "sudden", "sharp-like", "unit", "dash"))
_LINKS = frozenset(("or", "slash", "neg"))
_SPEAKER = frozenset("my i it the he she this that we there is was am because but can did have has".split())


@dataclass(frozen=True)
class Said:
    """The units of one reply. `negated[i]`: a "no" covers unit i; `doubtful[i]`: it may, but need not, cover it."""

    units: tuple[Unit, ...]
    negated: tuple[bool, ...]
    doubtful: tuple[bool, ...]
    text: str

    @cached_property
    def clause(self) -> tuple[int, ...]:
        """For each unit, the number of its clause."""
        return _numbered(self.units, _CLAUSE_ENDS)

    @cached_property
    def sentence(self) -> tuple[int, ...]:
        """For each unit, the number of its sentence."""
        return _numbered(self.units, _SENTENCE_ENDS)

    @cached_property
    def clauses(self) -> tuple[range, ...]:
        """The index range of each clause, in order."""
        return _ranges(self.clause)

    @cached_property
    def concepts(self) -> frozenset[str]:
        """Every concept that is there and not covered by a "no"."""
        return frozenset(unit.concept for unit, no in zip(self.units, self.negated, strict=True) if not no)

    def at(self, *concepts: str) -> list[int]:
        """Where one of the concepts stands, not covered by a "no"."""
        return [i for i, unit in enumerate(self.units) if unit.concept in concepts and not self.negated[i]]

    def concept(self, index: int) -> str:
        """The concept at an index; outside the reply it is ""."""
        return self.units[index].concept if 0 <= index < len(self.units) else ""


def said(text: str) -> Said:
    """A text with its units joined and its negations found."""
    plain = normalise(text)
    found = tuple(units(plain))
    negated, doubtful = [False] * len(found), [False] * len(found)
    for index, unit in enumerate(found):
        if unit.concept in ("neg", "none-word"):
            _cover(found, index, negated, doubtful)
    return Said(found, tuple(negated), tuple(doubtful), plain)


def _cover(found: tuple[Unit, ...], start: int, negated: list[bool], doubtful: list[bool]) -> None:
    """Mark what the "no" at `start` covers: forwards up to its first concept and an or-list; backwards for "pain: none"."""
    if start and _closes(found, start + 1) and found[start].text in ("no", "not", "none", "nil", "zero", "nope"):
        _cover_back(found, start, negated)
        return
    if found[start].text == "no" and start + 1 < len(found) and found[start + 1].text.split(" ")[0] in _SPEAKER:
        return
    if found[start].concept == "none-word":
        return
    reached = _first_concept(found, start + 1)
    if reached is None:
        return
    _mark(found, start + 1, reached, negated)
    _cover_list(found, reached + 1, negated, doubtful)


def _closes(found: tuple[Unit, ...], index: int) -> bool:
    return index >= len(found) or found[index].concept in _CLAUSE_ENDS


def _cover_back(found: tuple[Unit, ...], start: int, negated: list[bool]) -> None:
    """ "Tingling: no", "pain? none": the "no" answers what stands right before it."""
    index = start - 1
    while index >= 0 and found[index].concept in ("colon", "question", "dash", "pass", "comma"):
        if found[index].concept == "comma":
            return
        index -= 1
    while index >= 0 and found[index].concept not in _CLAUSE_ENDS and found[index].concept != "and":
        negated[index] = True
        index -= 1


def _first_concept(found: tuple[Unit, ...], index: int) -> int | None:
    """The first unit from `index` that means something, past small words and parts of the body; None at a clause's end."""
    strangers, last_body = 0, None
    for here in range(index, min(index + 10, len(found))):
        concept = found[here].concept
        if concept in _CLAUSE_ENDS or concept in ("and", "number"):
            return last_body
        if concept in BODY:
            last_body = here
        elif concept == "word":
            strangers += 1
            if strangers > 1:
                return last_body
        elif concept not in _PASSED:
            return here
    return last_body


def _mark(found: tuple[Unit, ...], first: int, last: int, negated: list[bool]) -> None:
    for index in range(first, last + 1):
        negated[index] = True
    after = last + 1
    if after < len(found) and found[after].concept in BODY | {"sharp", "sudden", "pain", "severe"} and found[last].concept in _QUALITIES:
        negated[after] = True


_QUALITIES = frozenset("sharp sudden severe dull chest neck jaw arm calf thigh leg limb trunk".split())


def _cover_list(found: tuple[Unit, ...], index: int, negated: list[bool], doubtful: list[bool]) -> None:
    """Go on over "… or numbness or swelling"; after a bare comma or "and" the next item is only doubtful."""
    while index < len(found):
        concept = found[index].concept
        if concept in ("comma", "and"):
            if not _or_follows(found, index):
                reached = _first_concept(found, index + 1)
                if reached is not None:
                    doubtful[reached] = True
                return
        elif concept not in _LINKS and not _still_same_phrase(found, index):
            return
        reached = _first_concept(found, index + 1) if concept in ("comma", "and", *_LINKS) else index
        if reached is None:
            return
        _mark(found, index + 1, reached, negated)
        index = reached + 1


def _still_same_phrase(found: tuple[Unit, ...], index: int) -> bool:
    return found[index].concept in BODY or found[index].text in ("in", "my", "the", "on", "of", "at", "all", "today", "or")


def _or_follows(found: tuple[Unit, ...], index: int) -> bool:
    """Whether the list after a comma ends with an "or": "no tingling, numbness or pops"."""
    items = 0
    for unit in found[index + 1 : index + 12]:
        if unit.concept in ("or", "slash"):
            return items > 0
        if unit.concept in ("stop", "question", "but", "because", "and", "number") or unit.text in _SPEAKER - {"the", "have"}:
            return False
        items += unit.concept not in ("pass", "comma")
    return False


def _numbered(found: Iterable[Unit], ends: frozenset[str]) -> tuple[int, ...]:
    numbers, number = [], 0
    for unit in found:
        numbers.append(number)
        number += unit.concept in ends
    return tuple(numbers)


def _ranges(numbers: tuple[int, ...]) -> tuple[range, ...]:
    starts = [i for i, number in enumerate(numbers) if i == 0 or numbers[i - 1] != number]
    return tuple(range(a, b) for a, b in zip(starts, [*starts[1:], len(numbers)], strict=True))
