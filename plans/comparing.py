"""This week and the last four weeks beside the four before: how much was done, of the dose, and answered.

Each figure has both its bounds (the silent counted as left out, then as done) and a 95 % interval around both.
Sessions of one client are alike: for a group the interval is as much wider as its clients differ more than chance
would have it (the design effect of Kish 1965, in a Wilson interval as Korn & Graubard 1998 do; from memory). That
cannot be seen in a single client, and only roughly in a few.
"""

from __future__ import annotations

from collections.abc import Callable, Iterable, Sequence
from dataclasses import dataclass
from datetime import date, timedelta

from plans.adherence import newcombe, wilson
from plans.checkin import CheckIn, Completion
from plans.delivered import share_of
from plans.ledger import Entry, RowKind

WEEK, MONTH = timedelta(days=7), timedelta(days=28)


@dataclass(frozen=True, slots=True)
class Due:
    """One session that came, and what was said of it; `asked` and `given` are seconds of work.

    Asked for as the programme is written, and given as it was handed out, which may be lighter and never more.
    """

    on: date
    said: CheckIn
    asked: float = 1
    given: float = 1


@dataclass(frozen=True, slots=True)
class Rate:
    """A share of so many sessions, 0-1: surely at least `least`, at most `most`, and the interval around both."""

    sessions: int
    least: float
    most: float
    low: float
    high: float


@dataclass(frozen=True, slots=True)
class Step:
    """How much a share is above an earlier one, -1 to 1: both bounds, and the interval around both."""

    least: float
    most: float
    low: float
    high: float

    @property
    def surely(self) -> int:
        """1 when it is surely up, -1 when surely down, else 0."""
        return (self.low > 0) - (self.high < 0)


@dataclass(frozen=True, slots=True)
class Figure:
    """One figure in its three times, and how the month stands against the month before."""

    week: Rate
    month: Rate
    before: Rate
    month_step: Step


@dataclass(frozen=True, slots=True)
class Comparison:
    """The three figures; they never stand for each other."""

    completion: Figure
    dose: Figure
    answers: Figure


def due(rows: Iterable[Entry], seconds: Callable[[Entry], tuple[float, float]] = lambda _row: (1, 1)) -> list[Due]:
    """The sessions among the rows that came; `seconds` says what each asked for and what was handed out."""
    return [
        Due(row.on, row.checkin, *seconds(row))
        for row in rows
        if row.kind is RowKind.SESSION and (row.delivered or row.checkin.completion)
    ]


def compared(clients: Sequence[Sequence[Due]], last: date) -> Comparison:
    """The comparison that ends on a date, of one client or of a group; each client's sessions in any order."""
    times = _times(clients, last)
    return Comparison(*(_figure(*times, count) for count in (_completion, _dose, _answers)))


def completion(clients: Sequence[Sequence[Due]], last: date) -> Figure:
    """The first figure of the comparison alone."""
    return _figure(*_times(clients, last), _completion)


def _times(clients: Sequence[Sequence[Due]], last: date) -> tuple[Groups, Groups, Groups]:
    """The sessions of the week, of the month, and of the month before."""
    week, month, before = (
        [[one for one in client if first < one.on <= end] for client in clients]
        for first, end in ((last - WEEK, last), (last - MONTH, last), (last - 2 * MONTH, last - MONTH))
    )
    return week, month, before


_Counted = tuple[float, float, float]
"""Of one session: what surely counts, what counts at most, and its weight."""
_Count = Callable[[Due], _Counted]


def _completion(one: Due) -> _Counted:
    surely = float(one.said.completion is Completion.DONE)
    return surely, surely if one.said.completion else 1.0, 1.0


def _dose(one: Due) -> _Counted:
    surely = share_of(one.said) * one.given
    return surely, surely if one.said.completion else one.given, one.asked


def _answers(one: Due) -> _Counted:
    surely = float(one.said.completion is not None or one.said.pain is not None)
    return surely, surely, 1.0


Groups = Sequence[Sequence[Due]]


def _figure(week: Groups, month: Groups, before: Groups, count: _Count) -> Figure:
    this, now, then = (_Shares.of(groups, count) for groups in (week, month, before))
    return Figure(this.rate(), now.rate(), then.rate(), now.step(then))


@dataclass(frozen=True, slots=True)
class _Share:
    """One bound of a share: of each client what counts and its weight, and so many whole sessions in all."""

    clients: tuple[tuple[float, float], ...]
    sessions: float
    weight: float
    share: float

    @classmethod
    def of(cls, clients: tuple[tuple[float, float], ...], sessions: float) -> _Share:
        weight = sum(weight for _counts, weight in clients)
        share = min(1.0, sum(counts for counts, _weight in clients) / weight) if weight else 0.0
        return cls(clients, sessions, weight, share)

    @property
    def by_chance(self) -> float:
        """The variance that the share would have if all sessions were alike."""
        return self.share * (1 - self.share) / self.sessions if self.sessions else 0.0

    def pulls(self) -> list[float]:
        """How far each client pulls the share away from where it would be without what is special about them."""
        weight, share = self.weight or 1.0, self.share
        return [(counts - share * mine) / weight for counts, mine in self.clients]

    def counts(self, effect: float) -> tuple[float, float]:
        """As successes and trials, which count less by a design effect."""
        trials = self.sessions / effect
        return self.share * trials, trials


@dataclass(frozen=True, slots=True)
class _Shares:
    """Both bounds of a share."""

    number: int
    least: _Share
    most: _Share

    @classmethod
    def of(cls, groups: Groups, count: _Count) -> _Shares:
        number, squares = 0, 0.0
        least, most = [], []
        for client in groups:
            low = high = mine = 0.0
            for surely, perhaps, weight in map(count, client):
                low, high, mine = low + surely, high + perhaps, mine + weight
                squares += weight * weight
            number += len(client)
            least.append((low, mine))
            most.append((high, mine))
        sessions = sum(mine for _low, mine in least) ** 2 / squares if squares else 0.0
        return cls(number, _Share.of(tuple(least), sessions), _Share.of(tuple(most), sessions))

    def rate(self) -> Rate:
        low = wilson(*self.least.counts(_effect(self.least.pulls(), self.least.by_chance)))[0]
        high = wilson(*self.most.counts(_effect(self.most.pulls(), self.most.by_chance)))[1]
        return Rate(self.number, self.least.share, self.most.share if self.number else 1.0, low, high)

    def step(self, then: _Shares) -> Step:
        """From an earlier time to this one."""
        if not self.number or not then.number:
            return Step(-1.0, 1.0, -1.0, 1.0)
        low, high = _difference(self.least, then.most)[0], _difference(self.most, then.least)[1]
        return Step(self.least.share - then.most.share, self.most.share - then.least.share, low, high)


def _difference(first: _Share, second: _Share) -> tuple[float, float]:
    """The interval of one share less another of the same clients, whose lasting habits cancel out."""
    pulls = [a - b for a, b in zip(first.pulls(), second.pulls(), strict=True)]
    effect = _effect(pulls, first.by_chance + second.by_chance)
    return newcombe(first.counts(effect), second.counts(effect))


def _effect(pulls: Sequence[float], by_chance: float) -> float:
    """How many times the variance between clients is that of chance, at least 1; 1 for a single client."""
    many = sum(1 for pull in pulls if pull)
    if many < 2 or by_chance == 0:
        return 1.0
    return max(1.0, len(pulls) / (len(pulls) - 1) * sum(pull * pull for pull in pulls) / by_chance)
