"""How far a "no" reaches, and which words belong to one clause."""

from __future__ import annotations

from collections.abc import Iterable, Set
from dataclasses import dataclass, replace
from functools import cached_property

from plans.numbers_written import BODY, Figure, written
from plans.wording import Unit, normalise, units, words

_CLAUSE_ENDS = frozenset(("end", "question", "comma", "but", "because"))
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
_SPEAKER = words("my i it the he she this that we there is was am because but can did")


@dataclass(frozen=True)
class Said:
    """The units of one reply. `negated[i]`: a "no" covers unit i; `doubtful[i]`: it may, but need not, cover it."""

    units: tuple[Unit, ...]
    negated: tuple[bool, ...]
    doubtful: tuple[bool, ...]
    text: str
    of_theirs: bool = False
    """Whether what is somebody else's is looked at too; else it is as if it was not there."""

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
    def figures(self) -> tuple[Figure, ...]:
        """Every number, as it is written."""
        return tuple(written(self))

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
    plain = normalise(text)
    found = tuple(_in_context(units(plain)))
    negated, doubtful = [False] * len(found), [False] * len(found)
    for index, unit in enumerate(found):
        answers = unit.text in ("nope", "nah") and index > 0 and found[index - 1].concept == "question"
        if unit.concept in ("neg", "none-word") or answers:
            _cover(found, index, negated, doubtful)
    return Said(found, tuple(negated), tuple(doubtful), plain)


def _in_context(found: list[Unit]) -> list[Unit]:
    """Words that mean something else beside their neighbours: "at 7 sharp", "the tingling stopped", "L knee"."""
    for index, unit in enumerate(found):
        if unit.concept == "sharp" and _is_clock_word(found, index):
            found[index] = replace(unit, concept="clock")
        elif unit.text.startswith("right ") and unit.concept == "harmless" and _is_named(found, index):
            found[index] = replace(unit, concept="right")
        elif unit.text == "no more" and index + 1 < len(found) and found[index + 1].concept in _SIGNS:
            found[index] = replace(unit, concept="neg")
        elif unit.text in ("zero", "nil") and index and found[index - 1].text.split(" ")[-1] in ("a", "at"):
            found[index] = replace(unit, concept="number", value=0.0)
        elif unit.text == "since" and index + 1 < len(found) and found[index + 1].text in _SPEAKER - {"have"}:
            found[index] = replace(unit, concept="because")
        elif unit.text == "gone" and _became(found, index):
            found[index] = replace(unit, concept="pass")
        elif unit.text == "probably" and index + 1 < len(found) and found[index + 1].concept in _DOINGS:
            found[index] = replace(unit, concept="hedge")
        elif unit.text == "started" and _begins_to(found, index):
            found[index] = replace(unit, concept="pass")
        elif unit.text in ("l", "r") and found[index + 1 : index + 2] and found[index + 1].concept in BODY:
            found[index] = replace(unit, concept="left" if unit.text == "l" else "right")
        elif unit.concept == "someone" or unit.text in _OTHERS:
            _is_theirs(found, index)
        elif unit.text == "stopped" and _speaks_of(found, index) in _FEELINGS:
            found[index] = replace(unit, concept="gone")
    return found


_OTHERS = words("her his their")
_REPORTS = words("says say said thinks think noticed notices noticing reckons told tells saw asked")
_THEIR_CLAUSE_ENDS = frozenset(("end", "question", "comma", "but", "because", "so"))


def _is_theirs(found: list[Unit], index: int) -> None:
    """What somebody else has is no sign of the client's: "my dad collapsed with chest pain"; "my wife says I …" is."""
    for here in range(index + 1, min(index + 12, len(found))):
        unit = found[here]
        first = unit.text.split(" ")[0]
        if unit.concept in _THEIR_CLAUSE_ENDS or first in ("i", "my", "me", "mine"):
            return
        if first in _REPORTS and (here + 1 >= len(found) or found[here + 1].text not in ("he", "she", "they")):
            return
        if unit.concept in _SIGNS:
            found[here] = replace(unit, theirs=True)


_SIGNS = words(
    """
    pain severe sore dull sharp sudden tingle numb no-feel shoot electric burn pop bruise swell no-weight barely-walk
    gives-way weak droop speech vision stroke heart-attack press breathless puffed faint palpitations racing dizzy fever
    weight-loss throb ill chest calf thigh heart
    """
)

_FEELINGS = words("pain sore dull tingle numb electric shoot burn dizzy throb swell")


def _became(found: list[Unit], index: int) -> bool:
    """ "Gone all puffy", "gone numb": it became so, and is not over."""
    after = [unit.concept for unit in found[index + 1 : index + 3]]
    return any(concept in _SIGNS for concept in after)


_DOINGS = words("done finish do part half most")


def _is_named(found: list[Unit], index: int) -> bool:
    """ "On the right when I hung": a side, though "right when" is no side elsewhere."""
    return index > 0 and found[index - 1].text.split(" ")[-1] in ("the", "my")


def _begins_to(found: list[Unit], index: int) -> bool:
    """ "Started to hurt", "started at 7": the verb says nothing of how much was done."""
    after = found[index + 1] if index + 1 < len(found) else None
    if index and found[index - 1].text in ("we", "it", "pain", "which", "that"):
        return True
    if after is None:
        return False
    small = ("to", "at", "feeling", "getting", "on", "when", "since", "as", "after", "while", "during", "around")
    return after.text.split(" ")[0] in small or after.concept in _FEELINGS | {"yesterday", "now", "lasts", "word"}


def _is_clock_word(found: list[Unit], index: int) -> bool:
    """Sharp after a number, with no pain and no part of the body beside it."""
    if not index or found[index - 1].concept not in ("number", "number-word", "clock"):
        return False
    near = {other.concept for other in (*found[max(0, index - 6) : index], *found[index + 1 : index + 2])}
    return not near & (BODY | {"pain", "sore"})


def _speaks_of(found: list[Unit], index: int) -> str:
    """The concept of what stands before a verb, past small words and parts of the body in the same clause."""
    for unit in reversed(found[max(0, index - 6) : index]):
        if unit.concept not in BODY | {"pass", "was", "but", "left", "right", "gone", "now"}:
            return unit.concept
    return ""


def _cover(found: tuple[Unit, ...], start: int, negated: list[bool], doubtful: list[bool]) -> None:
    """Mark what the "no" at `start` covers: forwards to a first concept and an or-list; back for "pain: none"."""
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
    if found[reached].concept not in ("do", "do-all", "done", "finish", "time", "none"):
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
    stops = _CLAUSE_ENDS | {"mark", "face", "ill", "and", "done", "finish", "do", "part", "half", "yes", "number"}
    while index >= 0 and found[index].concept not in stops:
        negated[index] = True
        index -= 1


def _first_concept(found: tuple[Unit, ...], index: int) -> int | None:
    """The first unit from `index` that means something, past small words and parts of the body, in the clause."""
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
    if (
        after < len(found)
        and found[after].concept in BODY | {"sharp", "sudden", "pain", "severe"}
        and found[last].concept in _QUALITIES
    ):
        negated[after] = True


_QUALITIES = words("sharp sudden severe dull chest neck jaw arm calf thigh leg limb trunk")


def _cover_list(found: tuple[Unit, ...], index: int, negated: list[bool], doubtful: list[bool]) -> None:
    """Go on over "… or numbness or swelling"; after a bare comma or "and" the next item is only doubtful."""
    while index < len(found):
        concept = found[index].concept
        if concept in ("comma", "and"):
            if not _or_follows(found, index):
                reached = _first_concept(found, index + 1)
                said_of_signs = found[index - 1].concept in _SIGNS | BODY
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
        if unit.concept in ("end", "question", "but", "because", "and", "number") or unit.text in _SPEAKER - {
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
