"""How far a "no" reaches, and which words belong to one clause."""

from __future__ import annotations

from collections.abc import Iterable, Set
from dataclasses import dataclass
from functools import cached_property

from plans.dialects_en import in_written_english
from plans.meanings import SPEAKER, in_context
from plans.neighbours import CLAUSE_ENDS, SIGNS
from plans.numbers_written import BODY, Figure, written
from plans.scales import with_scale_named_last
from plans.wording import Unit, normalise, units, words

_SENTENCE_ENDS = frozenset(("end", "question"))
_PASSED = frozenset(
    (
        "pass",
        "before-number",
        "counted",
        "about",
        "left",
        "right",
        "both",
        "unit",
        "dash",
        "was",
        "from",
        "to",
        "odd",
        "control",
        "actually",
    )
)
_LINKS = frozenset(("or", "slash"))

MANY = 60
"""More numbers than this are not read: nobody reports a session with so many. Our own choice."""


@dataclass(frozen=True, eq=False)
class Said:
    """The units of one reply. `negated[i]`: a "no" covers unit i; `doubtful[i]`: it may, but need not, cover it.

    It is equal to itself only, which makes it a fast key.
    """

    units: tuple[Unit, ...]
    negated: tuple[bool, ...]
    doubtful: tuple[bool, ...]
    text: str
    of_theirs: bool = False
    """Whether what is somebody else's is looked at too; else it is as if it was not there."""

    @cached_property
    def clause(self) -> tuple[int, ...]:
        """For each unit, the number of its clause."""
        return _numbered(self.units, CLAUSE_ENDS)

    @cached_property
    def sentence(self) -> tuple[int, ...]:
        """For each unit, the number of its sentence."""
        return _numbered(self.units, _SENTENCE_ENDS)

    @cached_property
    def clauses(self) -> tuple[range, ...]:
        """The index range of each clause, in order."""
        return _ranges(self.clause)

    @cached_property
    def figures(self) -> tuple[Figure, ...]:
        """Every number, as it is written; none of a long list, which tells of no session."""
        numbers = sum(unit.concept in ("number", "number-word") for unit in self.units)
        return tuple(written(self)) if numbers <= MANY else ()

    @property
    def concepts(self) -> Set[str]:
        """Every concept that is there and not covered by a "no"."""
        return self._places.keys()

    @cached_property
    def _places(self) -> dict[str, list[int]]:
        places: dict[str, list[int]] = {}
        for index, unit in enumerate(self.units):
            if not self.negated[index] and (self.of_theirs or not unit.theirs):
                places.setdefault(unit.concept, []).append(index)
        return places

    def at(self, *concepts: str) -> list[int]:
        """Where one of the concepts stands, not covered by a "no", in order."""
        found = [self._places[concept] for concept in set(concepts) if concept in self._places]
        return found[0] if len(found) == 1 else sorted(index for places in found for index in places)

    def concept(self, index: int) -> str:
        """The concept at an index; outside the reply it is ""."""
        return self.units[index].concept if 0 <= index < len(self.units) else ""


def said(text: str) -> Said:
    """A text with its units joined and its negations found."""
    plain = with_scale_named_last(in_written_english(normalise(text)))
    found = tuple(in_context(units(plain)))
    negated, doubtful = [False] * len(found), [False] * len(found)
    for index, unit in enumerate(found):
        asked = index > 0 and found[index - 1].concept == "question"
        answers = unit.text in ("nope", "nah") and asked and _closes(found, index + 1)
        if unit.concept in ("neg", "none-word") or answers:
            _cover(found, index, negated, doubtful)
            _cover_asked(found, index, negated)
    return Said(found, tuple(negated), tuple(doubtful), plain)


def _cover(found: tuple[Unit, ...], start: int, negated: list[bool], doubtful: list[bool]) -> None:
    """Mark what the "no" at `start` covers: forwards to a first concept and an or-list; back for "pain: none"."""
    there = start + 1 < len(found) and found[start + 1].text in ("there", "present")
    if (
        start
        and _closes(found, start + 1 + there)
        and found[start].text in ("no", "not", "none", "nil", "zero", "nope")
    ):
        _cover_back(found, start, negated)
        return
    if found[start].text == "no" and start + 1 < len(found) and found[start + 1].text.split(" ")[0] in SPEAKER:
        return
    if found[start].concept == "none-word" or _takes_back(found, start):
        return
    if found[start].text == "no" and start + 1 < len(found) and found[start + 1].concept in _PARTS_A_NO:
        return
    reached = _first_concept(found, start + 1)
    if reached is None:
        return
    _mark(found, start + 1, reached, negated)
    if found[reached].concept not in ("do", "do-all", "done", "finish", "time", "none"):
        _cover_list(found, reached + 1, negated, doubtful)


_PARTS_A_NO = ("actually", "correction", "dash", "colon")
"""What stands between a "no" that answers and what comes after it: "no - chest pain"."""


def _takes_back(found: tuple[Unit, ...], start: int) -> bool:
    """ "A five, no sorry a three", "a two no like a one": the "no" denies the number before it."""
    if found[start].text != "no" or not start or found[start - 1].concept not in ("number", "number-word", "comma"):
        return False
    after = found[start + 1 : start + 5]
    small = ("pass", "about", "actually", "correction", "comma")
    first = next((unit for unit in after if unit.concept not in small), None)
    return first is not None and first.concept in ("number", "number-word", "one")


def _closes(found: tuple[Unit, ...], index: int) -> bool:
    return index >= len(found) or found[index].concept in CLAUSE_ENDS or found[index].concept == "dash"


def _cover_back(found: tuple[Unit, ...], start: int, negated: list[bool]) -> None:
    """ "Tingling: no", "pain? none": the "no" answers what stands right before it."""
    index = start - 1
    while index >= 0 and found[index].concept in ("colon", "question", "dash", "pass", "comma"):
        if found[index].concept == "comma":
            return
        index -= 1
    stops = CLAUSE_ENDS | words("mark face ill and so done finish do part half few most none later yes number dash")
    while index >= 0 and found[index].concept not in stops:
        negated[index] = True
        index -= 1


def _cover_asked(found: tuple[Unit, ...], start: int, negated: list[bool]) -> None:
    """ "You asked about swelling. None", "I was worried about the tingling but there was none": both deny it."""
    if found[start].text not in ("none", "no", "nope") or (
        found[start].text != "none" and not _closes(found, start + 1)
    ):
        return
    first = start
    while first > 0 and found[first - 1].concept not in CLAUSE_ENDS:
        first -= 1
    last, first = first - 1, first - 1
    while first > 0 and found[first - 1].concept not in CLAUSE_ENDS:
        first -= 1
    asked = range(max(0, first), max(0, last))
    if any(set(found[i].text.split()) & _ASKED for i in asked):
        for index in asked:
            negated[index] = True


_ASKED = words("asked asks ask asking worried warned")


def _first_concept(found: tuple[Unit, ...], index: int) -> int | None:
    """The first unit from `index` that means something, past small words and parts of the body, in the clause."""
    strangers, last_body = 0, None
    for here in range(index, min(index + 10, len(found))):
        concept = found[here].concept
        if concept in CLAUSE_ENDS or concept in ("and", "number"):
            return last_body
        if concept in BODY:
            last_body = here
        elif concept in _LINKS and strangers:
            continue
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
    if (
        after < len(found)
        and found[after].concept in BODY | {"sharp", "sudden", "pain", "severe"}
        and found[last].concept in _QUALITIES
    ):
        negated[after] = True
    if after < len(found) and found[after].concept == "wake" and found[last].concept == "pain":
        for index in range(after, min(after + 4, len(found))):  # "no pain wakes me in the night"
            negated[index] = found[index].concept in ("wake", "night", "pass")


_QUALITIES = words(
    "sharp sudden severe dull shoot burn throb electric night chest neck jaw arm calf thigh leg limb trunk"
)


def _cover_list(found: tuple[Unit, ...], index: int, negated: list[bool], doubtful: list[bool]) -> None:
    """Go on over "… or numbness or swelling"; after a bare comma or "and" the next item is only doubtful."""
    while index < len(found) and negated[index]:
        index += 1  # "sharp pain or popping"
    while index < len(found):
        concept = found[index].concept
        if concept == "comma" and index + 2 < len(found) and found[index + 1].text == "or":
            if found[index + 2].text in ("maybe", "perhaps", "is", "was"):
                return
            index += 1  # "no tingling, or numbness"
        elif concept in ("comma", "and"):
            if not _or_follows(found, index):
                reached = _first_concept(found, index + 1)
                said_of_signs = found[index - 1].concept in SIGNS | BODY
                more = index + 1 < len(found) and found[index + 1].text in ("more", "only", "just")
                if reached is not None and said_of_signs and not more:
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
    return found[index].concept in BODY or found[index].text in (
        "in",
        "my",
        "the",
        "on",
        "of",
        "at",
        "all",
        "today",
        "or",
    )


def _or_follows(found: tuple[Unit, ...], index: int) -> bool:
    """Whether the list after a comma ends with an "or": "no tingling, numbness or pops"."""
    items = 0
    for unit in found[index + 1 : index + 12]:
        if unit.concept in ("or", "slash"):
            return items > 0
        if unit.concept in ("end", "question", "but", "because", "and", "number") or unit.text in SPEAKER - {
            "the",
            "have",
        }:
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
