"""Words of a reply and what they weigh in a learnt table: sums of whole weights; 5 is one natural logarithm of odds."""

from __future__ import annotations

from collections.abc import Iterable, Mapping

from plans.scopes import Said
from plans.wording import Unit

NUMBER, ANY = "#", "_"
"""Any number, as a word of a table; the line of a table that counts for every reply."""


def words_of(reply: Said) -> frozenset[str]:
    """The words of a reply as the tables have them, the first and the last one marked once more."""
    return marked(reply.units)


def felt_words_of(reply: Said) -> frozenset[str]:
    """The same without what is denied, harmless or somebody else's, as far as the grammar knows."""
    kept = (i for i, unit in enumerate(reply.units) if not (reply.negated[i] or unit.theirs or _is_settled(unit)))
    return marked([reply.units[i] for i in kept])


def _is_settled(unit: Unit) -> bool:
    """Whether it denies, or the grammar knows it as harmless, as "popped in a session": then it speaks for no sign."""
    return unit.concept in ("harmless", "neg", "none-word", "no-pain") or (unit.concept == "done" and " " in unit.text)


def marked(units: Iterable[Unit]) -> frozenset[str]:
    """The words of some units, numbers as one word, the first and the last marked."""
    found = [word for unit in units for word in ((NUMBER,) if unit.value is not None else unit.text.split(" "))]
    return frozenset((*found, "<" + found[0], found[-1] + ">") if found else ())


def table_of(weights: str) -> dict[str, tuple[int, ...]]:
    """A written table, opened: the weights of each word in the order of the answers."""
    entries = (entry.split() for entry in weights.split(";"))
    return {word: tuple(map(int, found)) for word, *found in entries}


def sums_of(told: Iterable[str], table: Mapping[str, tuple[int, ...]]) -> tuple[int, ...]:
    """The weights of every answer, added up over the words of a reply."""
    rows = [table[ANY], *(table[word] for word in told if word in table)]
    return tuple(map(sum, zip(*rows, strict=True)))
