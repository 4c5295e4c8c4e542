"""Many small effects estimated together, each drawn towards none as far as they differ no more than chance.

The model is y = a + b t + sum of x_g theta_g + e with theta_g ~ N(0, tau^2) and e ~ N(0, sigma^2): a random effect for
each column x_g over a level and a steady drift in time. It is solved for any ratio tau / sigma (best linear unbiased
prediction, restricted likelihood: Patterson & Thompson 1971, Biometrika 58:545), and averaged over ratios by that
likelihood and a half-normal prior. Taking only the likeliest ratio would often take 0, and intervals without width.
"""

from __future__ import annotations

from collections.abc import Sequence
from dataclasses import dataclass
from math import exp, log

RATIOS = tuple(0.075 * (step + 0.5) for step in range(40))
"""Ratios of tau to sigma that are averaged over, up to three times the scale of their prior."""
USUAL_RATIO = 1.0
"""Scale of the half-normal prior: effects seldom spread more than single values do (own choice)."""
TINY = 1e-12
"""Variance below which values are all the same."""

Column = Sequence[float]
Matrix = list[list[float]]


@dataclass(frozen=True, slots=True)
class Effect:
    """How much higher values are where a column is one than where it is nothing, the drift in time left out.

    `plain` is that difference alone; `change` is drawn towards none, `error` its standard error.
    """

    plain: float
    change: float
    error: float


@dataclass(frozen=True, slots=True)
class Solved:
    """The model at one ratio: restricted log-likelihood up to a constant, sigma^2, each theta, and their covariance."""

    likelihood: float
    variance: float
    thetas: tuple[float, ...]
    covariance: Matrix


@dataclass(frozen=True, slots=True)
class Pooling:
    """Columns and values with level and drift taken out, as sums of products.

    `together` is X'X, `along` X'y, `scatter` y'y, `free` the number of values less two.
    """

    together: Matrix
    along: tuple[float, ...]
    scatter: float
    free: int

    @classmethod
    def of(cls, columns: Sequence[Column], values: Column, times: Column) -> Pooling:
        """The sums for columns and values at times, all of one length. Raises ValueError for fewer than four."""
        if len(values) < 4:
            raise ValueError(f"{len(values)} values: at least four are needed beside a level and a drift")
        rest = [without_drift(column, times) for column in columns]
        y = without_drift(values, times)
        return cls([[dot(x, z) for z in rest] for x in rest], tuple(dot(x, y) for x in rest), dot(y, y), len(y) - 2)

    def at(self, ratio: float) -> Solved:
        """The model when effects spread `ratio` times as much as single values. Raises ValueError for 0 and less."""
        if ratio <= 0:
            raise ValueError(f"ratio {ratio}: it must be more than 0")
        share = ratio * ratio
        matrix = [[share * value + (i == j) for j, value in enumerate(row)] for i, row in enumerate(self.together)]
        inverse, log_determinant = _inverse(matrix)
        thetas = tuple(share * dot(row, self.along) for row in inverse)
        variance = (self.scatter - dot(thetas, self.along)) / self.free
        likelihood = -(self.free * log(max(variance, TINY)) + log_determinant) / 2
        return Solved(likelihood, variance, thetas, [[variance * share * value for value in row] for row in inverse])

    def effects(self) -> tuple[Effect, ...]:
        """The effect of each column, averaged over ratios; every column must differ from a mere drift."""
        solved = [(ratio, self.at(ratio)) for ratio in RATIOS]
        likeliest = max(one.likelihood for _ratio, one in solved)
        weights = [exp(one.likelihood - likeliest - (ratio / USUAL_RATIO) ** 2 / 2) for ratio, one in solved]
        return tuple(self._effect(index, [one for _ratio, one in solved], weights) for index in range(len(self.along)))

    def _effect(self, index: int, solved: Sequence[Solved], weights: Sequence[float]) -> Effect:
        """The mean and spread of one effect, over the ratios and within each (a t distribution)."""
        own = self.together[index][index]
        mix = [value / own for value in self.together[index]]
        means = [dot(mix, one.thetas) for one in solved]
        spreads = [dot(mix, [dot(row, mix) for row in one.covariance]) for one in solved]
        heavy = self.free / (self.free - 2) if self.free > 2 else float(self.free + 1)
        total = sum(weights)
        mean = dot(weights, means) / total
        within = heavy * dot(weights, spreads) / total
        between = sum(weight * (one - mean) ** 2 for weight, one in zip(weights, means, strict=True)) / total
        return Effect(self.along[index] / own, mean, (within + between) ** 0.5)


def without_drift(values: Column, times: Column) -> list[float]:
    """What is left of values when their level and steady drift are taken out (least squares)."""
    count = len(values)
    middle, level = sum(times) / count, sum(values) / count
    clock = [time - middle for time in times]
    width = dot(clock, clock)
    slope = dot(clock, values) / width if width else 0.0
    return [value - level - slope * time for value, time in zip(values, clock, strict=True)]


def dot(first: Column, second: Column) -> float:
    """The sum of the products of two columns of one length."""
    return sum(a * b for a, b in zip(first, second, strict=True))


def _inverse(matrix: Matrix) -> tuple[Matrix, float]:
    """The inverse of a positive definite matrix and the logarithm of its determinant (Gauss-Jordan)."""
    size = len(matrix)
    rows = [[*row, *(float(i == j) for j in range(size))] for i, row in enumerate(matrix)]
    log_determinant = 0.0
    for i, row in enumerate(rows):
        pivot = row[i]
        log_determinant += log(pivot)
        rows[i] = row = [value / pivot for value in row]
        for j, other in enumerate(rows):
            if j != i and other[i]:
                factor = other[i]
                rows[j] = [value - factor * mine for value, mine in zip(other, row, strict=True)]
    return [row[size:] for row in rows], log_determinant
