"""What stands around a word: its neighbours, its clause."""

from __future__ import annotations

from collections.abc import Callable

from plans.wording import Unit, words

CLAUSE_ENDS = frozenset(("end", "question", "comma", "but", "because"))
SIGNS = words(
    """
    pain severe sore dull sharp sudden tingle numb no-feel shoot electric burn pop bruise swell no-weight barely-walk
    gives-way weak no-power droop speech vision stroke heart-attack press breathless puffed faint palpitations racing
    dizzy fever weight-loss throb ill chest calf thigh heart
    """
)
"""Concepts of what a body feels or does not do, and the parts of the body that are signs of themselves."""
NUMBERS = ("number", "number-word")
COMPARING = words("like as if felt feels feel feeling")
AGENTS = words("i we she he they will then to just quickly can could i'll would might managed had")
"""Words before a verb by which somebody does it."""
NOTHING = Unit("", "", 0, 0)

Rule = Callable[[list[Unit], int], str | None]
"""Gives the concept that the unit at an index has beside its neighbours; None when it stays what it is."""


def next_to(found: list[Unit], index: int, steps: int = 1) -> Unit:
    """The unit some steps on; NOTHING past the end."""
    return found[index + steps] if 0 <= index + steps < len(found) else NOTHING


def phrase(found: list[Unit], index: int, *, by_and: bool = False) -> range:
    """The indexes around one in its clause; with `by_and` not across an "and" either."""
    ends = CLAUSE_ENDS | {"and"} if by_and else CLAUSE_ENDS
    first, last = index, index
    while first > 0 and found[first - 1].concept not in ends:
        first -= 1
    while last + 1 < len(found) and found[last + 1].concept not in ends:
        last += 1
    return range(first, last + 1)
