"""Some seeds of the simulation: weeks of clients and a coach over the real program while everything fails, and the
program broken on purpose, which must be seen."""

from __future__ import annotations

from pathlib import Path

import pytest

from tests.simulation.mutants import MUTANTS, SEEDS, is_seen
from tests.simulation.world import Plan, simulate

pytestmark = pytest.mark.timeout(900)  # about a minute in all on an idle machine


@pytest.mark.parametrize("shared", [False, True])
@pytest.mark.parametrize("seed", [11])
def test_weeks_of_faults_break_nothing(tmp_path: Path, seed: int, shared: bool) -> None:
    found = simulate(Plan(seed, days=8, clients=4, shared=shared, programme="rowing-club"), tmp_path)
    assert not found.broken, found.report()
    assert found.faults.total() > 30
    assert found.counts["rows"] > 12


def test_one_seed_is_one_story(tmp_path: Path) -> None:
    first, second = (
        simulate(Plan(7, days=3, clients=3, programme="rowing-club"), _folder(tmp_path, name)) for name in ("a", "b")
    )
    assert first.digest == second.digest
    assert first.faults == second.faults


def test_another_seed_is_another_story(tmp_path: Path) -> None:
    first, second = (
        simulate(Plan(seed, days=1, clients=2, programme="rowing-club"), _folder(tmp_path, str(seed)))
        for seed in (7, 8)
    )
    assert first.digest != second.digest


EVERY_TIME = (
    "a lost session is sent again",
    "handled is not written down",
    "some updates are dropped",
    "a verdict moves too far",
    "a date is left out",
    "a referral stops nothing",
    "an alert is not sent",
    "answers are not kept",
)
"""The rest are seen by `python -m tests.bench.faults --mutants`."""


@pytest.mark.parametrize("name", EVERY_TIME)
def test_what_is_broken_on_purpose_is_seen(tmp_path: Path, name: str) -> None:
    assert any(is_seen(MUTANTS[name], seed, _folder(tmp_path, str(seed))) for seed in range(1, 1 + SEEDS))


def _folder(place: Path, name: str) -> Path:
    found = place / name
    found.mkdir()
    return found
