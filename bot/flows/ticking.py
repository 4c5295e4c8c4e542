"""What happens when something comes due: the table from a kind to its use case."""

from __future__ import annotations

from collections.abc import Awaitable, Callable, Mapping

from bot.flows import absences, calling, day, digest, evening, groups, mine, telling, upkeeping
from bot.flows.desk import Desk
from db.due import DueKind

WHEN_DUE: Mapping[str, Callable[[Desk, int], Awaitable[None]]] = {
    DueKind.MORNING: day.morning,
    DueKind.NUDGE: evening.nudge,
    DueKind.DIGEST: digest.weekly,
    DueKind.LIST: telling.morning_list,
    DueKind.CALL: calling.again,
    DueKind.ABSENCE: absences.begins,
    DueKind.THINGS: evening.ask_for_things,
    DueKind.RETEST: upkeeping.offer_retest,
    DueKind.TRACES: mine.forget_traces,
    DueKind.LETTER: groups.in_the_morning,
}
"""Each use case takes the subject's id and plans or cancels its own next instant."""

PLANNED: Mapping[str, Callable[[Desk, int], Awaitable[None]]] = {
    DueKind.MORNING: day.plan_morning,
    DueKind.NUDGE: evening.replan_nudge,
    DueKind.DIGEST: digest.plan,
    DueKind.LIST: telling.plan_list,
    DueKind.CALL: calling.keep_instant,
    DueKind.ABSENCE: absences.plan,
    DueKind.THINGS: evening.replan_things,
    DueKind.RETEST: upkeeping.plan_retest,
    DueKind.TRACES: mine.plan_forgetting,
    DueKind.LETTER: groups.replan,
}
"""The same instants once more from local time and zone, when the zone data has changed."""
