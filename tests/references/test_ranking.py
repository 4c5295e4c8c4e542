"""Pooled effects against a mixed model's REML fit and closed forms; rankings against clients whose truth is known."""

from __future__ import annotations

import random
from collections.abc import Callable
from dataclasses import dataclass
from datetime import date, timedelta

import numpy as np
import pytest
from statsmodels.regression.mixed_linear_model import MixedLM, VCSpec

from plans.pooling import USUAL_RATIO, Pooling, without_drift
from plans.ranking import Followed, Went, ranking

MONDAY = date(2026, 1, 5)
SCATTER = 1.2
"""Standard deviation of one morning, in points."""


def simulated(seed: int, *, days: int = 60, columns: int = 6) -> tuple[list[list[float]], list[float], list[float]]:
    """Columns of noughts and ones, values with effects, a drift and noise, and times with gaps."""
    chance = random.Random(seed)
    times = sorted(float(time) for time in chance.sample(range(2 * days), days))
    found = [[float(chance.random() < 0.5) for _day in range(days)] for _column in range(columns)]
    thetas = [chance.gauss(0, 1) for _column in range(columns)]
    values = [
        3 + 0.02 * time + sum(theta * column[day] for theta, column in zip(thetas, found, strict=True))
        + chance.gauss(0, SCATTER)
        for day, time in enumerate(times)
    ]  # fmt: skip
    return found, values, times


@pytest.mark.parametrize("seed", [1, 2, 3, 4])
def test_a_mixed_model_fitted_by_reml_finds_the_same_effects_scatter_and_likeliest_ratio(seed: int) -> None:
    columns, values, times = simulated(seed)
    design = np.array(columns).T
    names = [[[f"m{index}" for index in range(len(columns))]]]
    model = MixedLM(
        np.array(values),
        np.column_stack([np.ones(len(times)), times]),
        groups=np.ones(len(times)),
        exog_vc=VCSpec(["movement"], names, [[design]]),
    )
    second = model.fit(reml=True, method=["nm"])
    pooling = Pooling.of(columns, values, times)
    ratio = float((second.vcomp[0] / second.scale) ** 0.5)
    ours = pooling.at(ratio)
    assert ours.variance == pytest.approx(second.scale, rel=1e-4)
    assert ours.thetas == pytest.approx(list(second.random_effects[1.0]), abs=1e-4)
    likeliest = max((pooling.at(step / 1000).likelihood, step / 1000) for step in range(10, 3000))[1]
    assert likeliest == pytest.approx(ratio, abs=0.005)


@pytest.mark.parametrize("ratio", [0.1, 0.7, 2.5])
def test_the_whole_matrices_give_the_same_predictions_covariances_and_likelihood(ratio: float) -> None:
    """Best linear unbiased prediction and restricted likelihood as textbooks write them, with all n by n matrices."""
    columns, values, times = simulated(7, days=30, columns=4)
    z, y = np.array(columns).T, np.array(values)
    x = np.column_stack([np.ones(len(y)), times])
    v = np.linalg.inv(np.eye(len(y)) + ratio**2 * z @ z.T)
    beta = np.linalg.solve(x.T @ v @ x, x.T @ v @ y)
    thetas = ratio**2 * z.T @ v @ (y - x @ beta)
    projection = v - v @ x @ np.linalg.solve(x.T @ v @ x, x.T @ v)
    variance = float(y @ projection @ y) / (len(y) - 2)
    covariance = variance * (ratio**2 * np.eye(4) - ratio**4 * z.T @ projection @ z)
    ours = Pooling.of(columns, values, times).at(ratio)
    assert ours.thetas == pytest.approx(list(thetas))
    assert ours.variance == pytest.approx(variance)
    assert np.array(ours.covariance) == pytest.approx(covariance)

    def restricted(weight: np.ndarray, share: float) -> float:
        sign = -np.linalg.slogdet(weight)[1] + np.linalg.slogdet(x.T @ weight @ x)[1]
        return float(-(sign + (len(y) - 2) * np.log(share)) / 2)

    v_other = np.linalg.inv(np.eye(len(y)) + z @ z.T)
    projected = v_other - v_other @ x @ np.linalg.solve(x.T @ v_other @ x, x.T @ v_other)
    other = float(y @ projected @ y) / (len(y) - 2)
    difference = Pooling.of(columns, values, times).at(1.0).likelihood - ours.likelihood
    assert difference == pytest.approx(restricted(v_other, other) - restricted(v, variance))


def test_one_effect_is_shrunk_as_the_normal_normal_model_says() -> None:
    (column,), values, times = simulated(5, columns=1)
    rest, y = without_drift(column, times), without_drift(values, times)
    size = sum(value * value for value in rest)
    plain = sum(a * b for a, b in zip(rest, y, strict=True)) / size
    solved = Pooling.of([column], values, times).at(0.5)
    assert solved.thetas[0] == pytest.approx(plain * 0.25 / (0.25 + 1 / size))
    assert solved.covariance[0][0] == pytest.approx(solved.variance * 0.25 * (1 / size) / (0.25 + 1 / size))


def test_the_average_over_ratios_is_the_integral_of_a_finer_grid() -> None:
    pooling = Pooling.of(*simulated(9, days=40))
    effects = pooling.effects()
    ratios = np.arange(0.001, 6, 0.004)
    solved = [pooling.at(float(ratio)) for ratio in ratios]
    weights = np.exp([one.likelihood - solved[0].likelihood for one in solved] - (ratios / USUAL_RATIO) ** 2 / 2)
    weights /= weights.sum()
    mixes = np.array(pooling.together) / np.diag(pooling.together)[:, None]
    means = np.array([mixes @ one.thetas for one in solved])
    spreads = np.array([np.diag(mixes @ np.array(one.covariance) @ mixes.T) for one in solved])
    mean = weights @ means
    error = np.sqrt(weights @ spreads * pooling.free / (pooling.free - 2) + weights @ (means - mean) ** 2)
    assert [effect.change for effect in effects] == pytest.approx(list(mean), abs=0.01)
    assert [effect.error for effect in effects] == pytest.approx(list(error), rel=0.02)


# --- simulated clients ------------------------------------------------------------------------------------------------


def at_random(day: int, _days: int, chance: random.Random) -> frozenset[str]:
    """Each of six movements on half of the days."""
    return frozenset(f"m{index}" for index in range(6) if chance.random() < 0.5)


def in_turn(day: int, _days: int, _chance: random.Random) -> frozenset[str]:
    """Three sessions in turn, with one movement that all have and one that two have."""
    return frozenset((("a", "b", "x"), ("c", "d", "x"), ("e", "b", "x"))[day % 3])


def by_weeks(day: int, days: int, _chance: random.Random) -> frozenset[str]:
    """Two that take turns, and two that come in with the weeks."""
    later = ({"second"} if 4 * day >= days else {"first"}) | ({"third"} if 2 * day >= days else set())
    return frozenset({"base", "odd" if day % 2 else "even"} | later)


PATTERNS = (at_random, in_turn, by_weeks)


@dataclass
class Tally:
    """What came of many simulated clients."""

    groups: int = 0
    held: int = 0
    """Intervals that hold the true difference."""
    wrong: int = 0
    """Groups that are said to go with better mornings and do not."""
    clients_with_better: int = 0
    strong: int = 0
    """Groups whose true difference is a scatter of days or more, for the better."""
    found: int = 0


def tally(
    pattern: Callable[[int, int, random.Random], frozenset[str]],
    *,
    days: int,
    spread: float,
    alike: float = 0.0,
    clients: int = 120,
) -> Tally:
    """Clients whose movements have effects of so many scatters, with a drift, gaps and mornings like the one before."""
    chance, found = random.Random(31), Tally()
    for _ in range(clients):
        thetas: dict[str, float] = {}
        error, seen = chance.gauss(0, SCATTER), []
        for day in range(days):
            done = pattern(day, days, chance)
            for key in sorted(done - thetas.keys()):
                thetas[key] = chance.gauss(0, spread * SCATTER)
            value = round(5 - 0.02 * day + sum(thetas[key] for key in done) + error)
            if chance.random() < 0.85:
                seen.append(Followed(MONDAY + timedelta(days=day), done, value))
            error = alike * error + chance.gauss(0, SCATTER * (1 - alike**2) ** 0.5)
        _judge(seen, thetas, found)
    return found


def _judge(seen: list[Followed], thetas: dict[str, float], found: Tally) -> None:
    times = [float((day.on - MONDAY).days) for day in seen]
    truth = without_drift([sum(thetas[key] for key in day.movements) for day in seen], times)
    better = False
    for group in ranking(seen).groups:
        if group.low is None or group.high is None:
            continue
        own = without_drift([float(bool(day.movements & set(group.movements))) for day in seen], times)
        true = sum(a * b for a, b in zip(own, truth, strict=True)) / sum(a * a for a in own)
        found.groups += 1
        found.held += group.low <= true <= group.high
        found.wrong += group.went is Went.BETTER and true >= 0
        found.strong += true < -SCATTER
        found.found += true < -SCATTER and group.went is Went.BETTER
        better = better or group.went is Went.BETTER
    found.clients_with_better += better


@pytest.mark.parametrize("pattern", PATTERNS)
@pytest.mark.parametrize("days", [28, 56])
def test_pure_noise_gives_hardly_ever_a_movement_that_went_with_better_mornings(
    pattern: Callable[[int, int, random.Random], frozenset[str]], days: int
) -> None:
    """Of 100 clients whose movements do nothing at all at most five hear of any; nominal for each movement 2.5."""
    found = tally(pattern, days=days, spread=0)
    assert found.clients_with_better / 120 <= 0.05
    assert found.held / found.groups > 0.97


def test_mornings_that_are_like_the_one_before_cost_a_little() -> None:
    assert tally(by_weeks, days=56, spread=0, alike=0.5).clients_with_better / 120 <= 0.12


@pytest.mark.parametrize("pattern", PATTERNS)
@pytest.mark.parametrize("spread", [0.3, 0.6, 1.0])
def test_intervals_hold_the_true_difference_nearly_as_often_as_they_say(
    pattern: Callable[[int, int, random.Random], frozenset[str]], spread: float
) -> None:
    found = tally(pattern, days=56, spread=spread)
    assert 0.91 < found.held / found.groups < 0.995
    assert found.wrong <= 0.005 * found.groups + 1


def test_what_is_strong_is_mostly_found_after_eight_weeks() -> None:
    found = tally(in_turn, days=56, spread=0.6)
    assert found.strong > 30
    assert found.found / found.strong > 0.8
