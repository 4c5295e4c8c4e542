"""What goes wrong on a day, apart from single requests: deaths, outages, updates held back, clocks, zone data."""

from __future__ import annotations

import random
from collections.abc import Callable
from datetime import timedelta
from typing import TYPE_CHECKING, Any

from tests.simulation.record import instant, stored

if TYPE_CHECKING:
    from tests.simulation.world import World


class Troubles:
    """Plans a day's troubles and lets them happen."""

    def __init__(self, world: World, rng: random.Random) -> None:
        self._world = world
        self._rng = rng

    def of_the_day(self) -> None:
        """What is going to go wrong today."""
        rates, faults = self._world.faults.rates, self._world.faults
        for _ in range(3):
            if faults.happens("death", rates.crash / 3):
                self._sometime(self._dies)
        if faults.happens("outage", rates.outage):
            self._sometime(self._goes_down)
        if faults.happens("updates held back", rates.held_back):
            self._sometime(self._holds_back)
        if faults.happens("calendar jump", rates.calendar):
            self._sometime(self._jumps)
        if faults.happens("new zone data", rates.zone_data):
            self._sometime(self._new_zone_data)
        if faults.happens("coach blocked", rates.coach):
            self._sometime(self._coach_blocks)
        if faults.happens("files forgotten", rates.unfiled):
            self._sometime(self._forgets_files)
        if self._rng.random() < 0.4:
            self._sometime(self._world.coach.looks)

    def _sometime(self, act: Callable[[], Any]) -> None:
        self._world.later(timedelta(hours=self._rng.uniform(0, 24)), act)

    def _dies(self) -> None:
        process = self._world.somebody()
        if process is not None and process.mortal.fuse is None:
            process.mortal.fuse = self._rng.randint(1, 300)

    def _goes_down(self) -> None:
        hours = self._rng.choice((0.05, 0.5, 3, 9))
        self._world.network.down_until = self._world.seconds() + hours * 3600
        self._world.note(f"the platform is down for {hours} h")

    def _holds_back(self) -> None:
        hours = self._rng.choice((0.2, 2, 12, 24))
        self._world.network.held_until = self._world.seconds() + hours * 3600
        self._world.note(f"updates are held back for {hours} h")

    def _coach_blocks(self) -> None:
        coach = self._world.coach
        coach.phone.blocks(True)
        self._world.later(timedelta(hours=self._rng.uniform(1, 50)), lambda: coach.phone.blocks(False))

    def _jumps(self) -> None:
        by = timedelta(hours=self._rng.choice((0.5, 3, 9, 26, 75)))
        self._world.calendar.jump(by)
        self._world.steady_since = self._world.calendar.now()
        self._world.note(f"the calendar jumps by {by}")

    def _new_zone_data(self) -> None:
        """What was planned with older data, some of it at another instant."""
        for row in self._world.record.rows("SELECT id, at FROM due"):
            at = instant(row["at"]) + timedelta(hours=self._rng.choice((-1, 0, 0, 1)))
            if at > self._world.calendar.now():
                self._world.record.change(
                    "UPDATE due SET zone_data = '2020a', at = ? WHERE id = ?", stored(at), row["id"]
                )

    def _forgets_files(self) -> None:
        self._world.platform.store._db.execute("DELETE FROM file WHERE kind = 'photo'")
