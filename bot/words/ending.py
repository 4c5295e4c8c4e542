"""What can be said of movements at the end of a course, honestly."""

from __future__ import annotations

from collections.abc import Mapping, Sequence

from bot.words import Words
from plans.ranking import Ranked, Ranking, Went

SHOWN = 3
"""Groups of movements that are named one by one, of each kind."""


def found_out(words: Words, ranking: Ranking, names: Mapping[str, str]) -> dict[str, object]:
    """Which movements went with better and with worse mornings, and how many days or movements say nothing."""
    by = {went: [group for group in ranking.groups if group.went is went] for went in Went}
    return {
        "better": [_group(words, group, names) for group in by[Went.BETTER][:SHOWN]],
        "worse": [_group(words, group, names) for group in by[Went.WORSE][-SHOWN:]],
        "unclear": sum(len(group.movements) for group in by[Went.UNCLEAR]),
        "too_few": sum(len(group.movements) for group in by[Went.TOO_FEW]),
        "days": ranking.days,
        "outcome": str(ranking.outcome),
    }


def _group(words: Words, group: Ranked, names: Mapping[str, str]) -> str:
    said = words.gettext("{names}: {change} points, from {low} to {high}")
    change, low, high = (
        f"{value or 0.0:+.1f}".replace("-", "\u2212") for value in (group.change, group.low, group.high)
    )
    return said.format(names=_named(group.movements, names), change=change, low=low, high=high)


def _named(keys: Sequence[str], names: Mapping[str, str]) -> str:
    return ", ".join(names.get(key, key) for key in keys)
