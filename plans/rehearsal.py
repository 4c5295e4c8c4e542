"""Rehearsal: simulated clients go through a programme under the very functions that a real course goes by."""

from __future__ import annotations

import random
from collections import Counter, defaultdict
from collections.abc import Callable, Sequence
from dataclasses import dataclass, field, replace
from datetime import date, timedelta
from functools import cache, partial
from statistics import median

from plans import dose
from plans.checkin import CheckIn, Morning, Place
from plans.course import Decision, Overruling, Position, Word, let_go, soften_today, step
from plans.easing import eased, hold_floor
from plans.heard import AT_LEAST_PART
from plans.ledger import Entry, Question, RowKind
from plans.pace import Pace, pace_of
from plans.past import Past
from plans.programme import Programme
from plans.rules import Tell, Verdict
from plans.simulated import Asked, Body, Nature
from plans.track import track_of

START, A_DAY = date(2026, 1, 5), timedelta(days=1)
"""A Monday; the simulated calendar begins here."""
PATIENCE = 4
"""A client who needs more than so many times the programme's dates counts as unfinished."""
LET_GO_AFTER = (1, 4)
"""Dates after which a simulated coach lets a waiting client go on."""

Watch = Callable[[Position, Past, Decision, date], None]
"""Called with every decision: where the course stood, what came before, what was decided for which date."""


@dataclass(slots=True)
class Journey:
    """What one simulated client went through. Counts are of dates unless said otherwise."""

    nature: str
    finished: int | None = None
    """Dates until the programme was through; None when it was not."""
    dates: int = 0
    due: int = 0
    done: int = 0
    prescribed: float = 0
    delivered: float = 0
    """Seconds of work handed out as the programme wrote them, and done."""
    alerts: int = 0
    listed: int = 0
    waited: int = 0
    on_worse: int = 0
    """Sessions handed out on a morning that was said to be worse."""
    on_sorer: int = 0
    """Sessions handed out on a morning that was worse, whatever was said of it."""
    followed: defaultdict[tuple[int, Verdict], int] = field(default_factory=partial(defaultdict, int))
    """For each day and verdict how often it followed."""
    given: defaultdict[int, int] = field(default_factory=partial(defaultdict, int))
    """For each day how often its session was handed out."""
    pained: defaultdict[int, int] = field(default_factory=partial(defaultdict, int))
    """For each day how often it hurt by 3 and more."""


class Stage:
    """A programme prepared for many clients: its track, and what each day asks at each level."""

    def __init__(self, programme: Programme) -> None:
        self.programme = programme
        catalogue, floor = programme.catalogue(), hold_floor(programme.ages)
        self.asked = {
            (day.number, level): Asked.of(dose.work_seconds(eased(day, level, catalogue, hold_floor=floor)))
            for day in programme.days
            for level in (0, 1, 2)
        }
        self.first = next((self.asked[day.number, 0].work for day in programme.days if day.kind == "session"), 1.0)
        self.pace = pace_of(programme, START)
        self.track = track_of(programme, self.pace)
        self.settings = programme.settings


def journey(stage: Stage, nature: Nature, rng: random.Random, *, watch: Watch | None = None) -> Journey:
    """One client's way from the first date to the end, or to the end of patience."""
    walk = _Walk(stage, nature, rng, watch)
    limit = PATIENCE * _dates(stage.pace, len(stage.programme.days))
    today = START
    for number in range(limit):
        if walk.lives(number, today):
            break
        today += A_DAY
    return walk.story


def _dates(pace: Pace, days: int) -> int:
    """How many dates a programme takes at least."""
    return days if pace.weekdays is None else -(-days * 7 // len(pace.weekdays))


SESSION, WAITING, MEASURE = RowKind.SESSION, RowKind.WAITING, RowKind.MEASURE
MORNING, WORSE = Question.MORNING, Morning.WORSE
NOTHING, GO_ON = CheckIn(), Overruling(Word.GO_ON)
DELIVERED, NOBODY = True, frozenset[str]()


class _Walk:
    """One client's course, date by date."""

    __slots__ = ("body", "last", "past", "position", "rng", "stage", "story", "usual", "waiting", "watch")

    def __init__(self, stage: Stage, nature: Nature, rng: random.Random, watch: Watch | None) -> None:
        self.stage = stage
        self.rng = rng
        self.watch = watch
        self.usual = nature.usual
        self.body = Body(nature, rng, stage.first)
        self.past = Past(stage.settings, nature.usual)
        self.position = Position()
        self.waiting = 0
        """Dates until the coach lets a waiting client go on."""
        self.story = Journey(nature.name)

    def lives(self, number: int, today: date) -> bool:
        """One date, counted from the start; true when the programme is through."""
        self.body.sleeps()
        if self.waiting > 0:
            return self._waits(today)
        decision, morning = self._decides(today)
        kind = decision.kind
        if kind is None:
            self.story.finished = number
            return True
        report = self.body.reports_first() if kind is SESSION else None
        if report is not None:
            decision = self._softened(decision, report)
            kind = decision.kind or kind
        self._counts(decision)
        self.position = decision.position
        said = NOTHING
        if kind is SESSION:
            self.story.on_worse += morning is WORSE
            self.story.on_sorer += self.body.is_sorer
            said = self._trains(decision, number)
        elif kind is WAITING:
            self.waiting = self.rng.randint(*LET_GO_AFTER)
        if report is not None:
            said = _with_report(said, report)
        self.past.take(
            Entry(
                today,
                kind,
                decision.day,
                decision.position.level,
                decision.prescribed,
                DELIVERED,
                said,
                morning,
                kind is MEASURE,
                frozenset([vote.rule for vote in decision.votes]) if decision.votes else NOBODY,
            )
        )
        return False

    def _waits(self, today: date) -> bool:
        self.story.dates += 1
        self.story.waited += 1
        self.past.take(Entry(today, WAITING))
        self.waiting -= 1
        if self.waiting == 0:
            self.position = let_go(self.position)
        return False

    def _decides(self, today: date) -> tuple[Decision, Morning | None]:
        """The row of a date, with the client's answer when there is a question."""
        past = self.past
        word = GO_ON if past.last is not None and past.last.kind is WAITING else None
        decision = step(self.stage.track, self.position, past, today, overruling=word)
        if self.watch is not None:
            self.watch(self.position, past, decision, today)
        if decision.question is not MORNING:
            return decision, None
        morning = self.body.says_this_morning()
        if morning is None:
            return decision, None
        past.mornings.append((today, morning))
        decision = step(self.stage.track, self.position, past, today, overruling=word)
        if self.watch is not None:
            self.watch(self.position, past, decision, today)
        past.mornings.pop()
        return decision, morning

    def _softened(self, decision: Decision, report: CheckIn) -> Decision:
        """The row after a report before its session, which only makes it more cautious."""
        softer = soften_today(report, decision.position, self.stage.settings, self.usual)
        if softer is None:
            return decision
        votes = (*decision.votes, *softer.votes)
        return softer._replace(day=decision.day, votes=votes, heavier=decision.heavier)

    def _counts(self, decision: Decision) -> None:
        story = self.story
        story.dates += 1
        if decision.verdict is not None:
            story.followed[self.position.day, decision.verdict] += 1
        for vote in decision.votes:
            if vote.tell is not None:
                told = {vote.tell for vote in decision.votes}
                story.alerts += Tell.NOW in told
                story.listed += Tell.LIST in told
                break

    def _trains(self, decision: Decision, number: int) -> CheckIn:
        story, day, every = self.story, decision.day or 0, self.stage.asked
        asked = every[day, decision.position.level]
        said = self.body.trains(asked, number)
        story.due += 1
        story.given[day] += 1
        story.prescribed += every[day, 0].work
        if said.completion in AT_LEAST_PART:
            story.done += 1
            story.delivered += asked.work
        if said.pain is not None and said.pain >= 3:
            story.pained[day] += 1
        return said


def unadapted(stage: Stage, nature: Nature, rng: random.Random) -> Journey:
    """The same client with the programme as it is once published: each date its day, whatever happened before."""
    body, story = Body(nature, rng, stage.first), Journey(nature.name)
    number = 0
    for day in stage.programme.days:
        while not stage.pace.trains_on(START + timedelta(days=number)):
            body.sleeps()
            number += 1
        body.sleeps()
        if day.session is not None:
            story.on_sorer += body.is_sorer
            asked = stage.asked[day.number, 0]
            said = body.trains(asked, number)
            story.due += 1
            story.prescribed += asked.work
            if said.completion in AT_LEAST_PART:
                story.done += 1
                story.delivered += asked.work
            if said.pain is not None and said.pain >= 3:
                story.pained[day.number] += 1
        number += 1
    story.dates, story.finished = number, number
    return story


@dataclass(frozen=True, slots=True)
class DayFared:
    """How a group fared on one session day: numbers for each client of the group."""

    day: int
    title: str | None
    given: float
    """Times that its session was handed out."""
    followed: dict[str, float]
    """Times that each verdict followed."""
    pained: float
    """Times that it hurt by 3 and more."""

    @property
    def held_up(self) -> float:
        """Times that it was not passed."""
        return sum(times for verdict, times in self.followed.items() if verdict != Verdict.ADVANCE.word)

    def as_json(self) -> dict[str, object]:
        """The day as documented JSON."""
        return {name: getattr(self, name) for name in (*self.__slots__, "held_up")}


@dataclass(frozen=True, slots=True)
class Outcome:
    """What came of a whole group. Shares are from 0 to 1."""

    clients: int
    median: float | None
    ninetieth: float | None
    """Dates to finish, of those who did."""
    floor: float
    """The programme's dates over the share of due sessions done: nobody could be faster on average."""
    unfinished: float
    untold: int
    """Unfinished clients of whom no coach was told."""
    done: float
    """Share of due sessions that were done."""
    delivered: float
    """Share of the work written for the sessions handed out that was asked and done."""
    verdicts: dict[str, float]
    """Share of judged dates by verdict."""
    waited: float
    """Share of dates on which a client waited for the coach."""
    alerts: float
    listed: float
    """For 40 clients a day: told at once, and on the morning's list."""
    on_worse: int
    """Sessions handed out on a morning that was said to be worse."""
    on_sorer: float
    """Sessions handed out on a morning that was worse, whatever was said: for 100 clients."""
    pained: float
    """Share of done sessions that hurt by 3 and more."""
    finished: tuple[int, ...]
    """Dates to finish of each client who did, in order."""
    days: tuple[DayFared, ...]
    """Every session day, in order."""
    trouble: tuple[DayFared, ...]
    """The days to look at, the worst first."""

    def as_json(self) -> dict[str, object]:
        """The outcome as documented JSON."""
        found = {name: getattr(self, name) for name in self.__slots__}
        days, trouble = ([day.as_json() for day in some] for some in (self.days, self.trouble))
        return found | {"finished": list(self.finished), "days": days, "trouble": trouble}


MANY = 40
"""Clients of one coach, for whom alerts are counted."""
WORST = 5


def outcome(programme: Programme, stories: Sequence[Journey]) -> Outcome:
    """Sums up a group's journeys. Raises ValueError for an empty group."""
    if not stories:
        raise ValueError("a group needs at least one client")
    finished = sorted(story.finished for story in stories if story.finished is not None)
    open_ = [story for story in stories if story.finished is None]
    dates, due = _sum(stories, "dates"), _sum(stories, "due")
    done = _sum(stories, "done") / due if due else 0.0
    followed: Counter[tuple[int, Verdict]] = Counter()
    for story in stories:
        followed.update(story.followed)
    verdicts: Counter[Verdict] = Counter()
    for (_day, verdict), times in followed.items():
        verdicts[verdict] += times
    judged = verdicts.total()
    days = _days(programme, stories, followed)
    return Outcome(
        clients=len(stories),
        median=median(finished) if finished else None,
        ninetieth=finished[min(len(finished) - 1, int(len(finished) * 0.9))] if finished else None,
        floor=len(programme.days) / done if done else float("inf"),
        unfinished=len(open_) / len(stories),
        untold=sum(1 for story in open_ if not story.alerts and not story.listed),
        done=done,
        delivered=_sum(stories, "delivered") / max(1.0, _sum(stories, "prescribed")),
        verdicts={verdict.word: verdicts[verdict] / judged if judged else 0.0 for verdict in Verdict},
        waited=_sum(stories, "waited") / dates,
        alerts=MANY * _sum(stories, "alerts") / dates,
        listed=MANY * _sum(stories, "listed") / dates,
        on_worse=int(_sum(stories, "on_worse")),
        on_sorer=100 * _sum(stories, "on_sorer") / len(stories),
        pained=sum(sum(story.pained.values()) for story in stories) / max(1.0, _sum(stories, "done")),
        finished=tuple(finished),
        days=days,
        trouble=_trouble(days),
    )


def _sum(stories: Sequence[Journey], name: str) -> float:
    return float(sum(getattr(story, name) for story in stories))


def _days(
    programme: Programme, stories: Sequence[Journey], followed: Counter[tuple[int, Verdict]]
) -> tuple[DayFared, ...]:
    pained: Counter[int] = Counter()
    given: Counter[int] = Counter()
    for story in stories:
        pained.update(story.pained)
        given.update(story.given)
    count = len(stories)
    return tuple(
        DayFared(
            day.number,
            day.title,
            given[day.number] / count,
            {verdict.word: followed[day.number, verdict] / count for verdict in Verdict},
            pained[day.number] / count,
        )
        for day in programme.days
        if day.session is not None
    )


def _trouble(days: Sequence[DayFared]) -> tuple[DayFared, ...]:
    """The days with the most hold-ups and pain together, as far as they stand out from the middle one."""
    usual = median(one.held_up + one.pained for one in days) if days else 0.0
    worst = sorted(days, key=lambda one: -(one.held_up + one.pained))[:WORST]
    return tuple(one for one in worst if one.held_up + one.pained > 1.25 * usual)


@cache
def _with_report(said: CheckIn, report: CheckIn) -> CheckIn:
    """A session's answer with what was said before it: the pain is the worst since the last session."""
    pain = max(said.pain or 0, report.pain or 0)
    return replace(said, pain=pain, kind=said.kind or report.kind, place=Place.HERE, odd=True)


def client_of(stage: Stage, nature: Nature, seed: int, number: int, *, adapted: bool = True) -> Journey:
    """One client of a group; the same seed and number give the same client."""
    rng = random.Random(f"{seed}:{number}")
    return journey(stage, nature, rng) if adapted else unadapted(stage, nature, rng)
