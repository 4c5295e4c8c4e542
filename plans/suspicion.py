"""A voice that reads no sign and only suspects one: words that mostly stand in replies with a warning sign, or in none.

It makes an unsure flag where the grammar has found none and the words go with one ("lights went out and I was on the
floor"), and leaves a flag unsure where most words speak against it. Unsure flags are asked back. The table
(`suspicions_en`) is learnt from the labelled replies by `python -m tests.bench.doubting`.
"""

from __future__ import annotations

from functools import lru_cache

from plans import suspicions_en
from plans.checkin import Flag
from plans.scopes import Said
from plans.weighing import felt_words_of, sums_of, table_of

NONE = "none"
LEVELS = (NONE, Flag.CLINICIAN, Flag.SAME_DAY, Flag.EMERGENCY)
"""The answers in the order of their weights."""
MUCH, LESS, LEAST = 8, 20, 45
"""So much weight more for a sign than for none makes a suspicion; so much more for none leaves a sign unsure, and so
much an emergency: no labelled reply with one weighs more than 4 against it. Our own choice: learnt from nine portions
and tried on six others, the first caught 17 of 27 signs that no row of the table of signs had, at one reply more asked
back in 70; the second 18 of 26 harmless uses, at one true sign asked in 20."""
FEW, MANY = 8, 10
"""Words, with the marked first and last, from which on a sign is suspected, and one is doubted."""


def suspected(reply: Said) -> Flag | None:
    """The level of the sign that the words speak for, or None."""
    told = felt_words_of(reply)
    sums = sums_of(told, _table())
    best = max(sums[1:])
    return Flag(LEVELS[1 + sums[1:].index(best)]) if len(told) >= FEW and best - sums[0] >= MUCH else None


def speaks_against(reply: Said, level: Flag) -> bool:
    """Whether the words hardly ever stand beside a sign, the less the graver it is."""
    told = felt_words_of(reply)
    sums = sums_of(told, _table())
    enough = LEAST if level is Flag.EMERGENCY else LESS
    return len(told) >= MANY and sums[0] - max(sums[1:]) >= enough


@lru_cache(maxsize=1)
def _table() -> dict[str, tuple[int, ...]]:
    return table_of(suspicions_en.WEIGHTS)
