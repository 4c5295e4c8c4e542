"""What came before, as the rules need it: a summary of a course's ledger that grows row by row.

A row is taken once it is final, which it is when the next one is made; a history that may still be corrected is simply
summed up anew. Nothing in here decides anything.
"""

from __future__ import annotations

from bisect import insort
from collections import deque
from collections.abc import Iterable, Sequence, Set
from dataclasses import dataclass
from datetime import date, timedelta
from functools import lru_cache

from plans.checkin import CheckIn, Morning
from plans.heard import Heard, hearing
from plans.ledger import Entry, RowKind
from plans.rules import Lingering, Settings

REMEMBERED = timedelta(days=14)
"""Dates within which a body remembers what it did clean (own choice)."""
FIRST_WEEK = 7
EARLY = 3
"""Dates that make the first 72 hours of a soreness (Cheung et al. 2003, Sports Med 33:145: it peaks at 24-72 h)."""
LONG = 7
"""Dates after which soreness should be gone (the same)."""
RISE = 2
"""Points on the pain scale that are more than noise (Farrar 2001, Pain 94:149; Salaffi 2004, Eur J Pain 8:283)."""
WEEK, ANSWERS = 7, 3
"""Dates of a week, and the answers that each of two compared weeks needs (own choice)."""
TIGHT_ANSWERS = 5


SESSION, ASKING, WAITING = RowKind.SESSION, RowKind.ASKING, RowKind.WAITING
NOT_LINGERING = Lingering.NO
_ONLY_A_DATE = frozenset({RowKind.ASKING, RowKind.OFF})
_UNJUDGED = frozenset({*_ONLY_A_DATE, RowKind.AWAY})
_HANDS_OUT_NOTHING = frozenset({*_UNJUDGED, WAITING})
_EXCUSED = frozenset({RowKind.REST, RowKind.MEASURE})


@dataclass(slots=True)
class Soreness:
    """One spell of pain or soreness where the programme works: since when, how bad early on, what was said of it."""

    since: date
    worst: int
    now: int
    rested: bool = False
    noted: bool = False

    def hears(self, voted: Set[str]) -> None:
        """What the rules said of it when a row was made is said already."""
        self.rested = self.rested or "sore-too-long" in voted
        self.noted = self.noted or "sore-noted" in voted

    def lingering(self, on: date) -> Lingering:
        """Whether it is there too long, or rising after its early days; each is said once until it is gone."""
        age = (on - self.since).days + 1
        rising = age > EARLY and self.now >= self.worst + RISE
        if not rising and age < LONG:
            return Lingering.NO
        if self.now <= 2 and not rising:
            return Lingering.NO if self.noted else Lingering.NOTED
        return Lingering.NO if self.rested else Lingering.REST


class Past:
    """The ledger of one course so far."""

    __slots__ = (
        "_hear",
        "_hurt_on",
        "_last_counted",
        "_nerves",
        "_pains",
        "_silence",
        "_soreness",
        "_tights",
        "_week_fired",
        "asked_on",
        "clean",
        "clean_days",
        "done_on",
        "earlier_tries",
        "excused",
        "first_on",
        "heard",
        "held",
        "judged",
        "known",
        "last",
        "last_heard",
        "light_tries",
        "mornings",
        "nerve_before",
        "over_tightness",
        "source",
        "tested",
        "tried",
    )

    def __init__(self, settings: Settings, usual: int = 0) -> None:
        self._hear = hearing(settings, usual)
        self.first_on: date | None = None
        self.last: Entry | None = None
        """The last row that handed something out; an unanswered question handed out nothing."""
        self.last_heard = self._silence = self._hear(CheckIn())
        """What was said of it."""
        self.source: Entry | None = None
        """The row whose answer the next morning is about."""
        self.heard = self._silence
        """That answer; silence without one."""
        self.judged = True
        """Whether a row was made since that followed from it; a date away follows from nothing."""
        self.mornings: list[tuple[date, Morning]] = []
        """The answers to "how is it now?" since the source."""
        self.asked_on: list[date] = []
        """Dates since the source whose row was still a question."""
        self.done_on: date | None = None
        """The date of the last session done, at least in part."""
        self.excused = 0
        """Rest and measure dates since then."""
        self.held: deque[tuple[date, int]] = deque(maxlen=REMEMBERED.days)
        """The last sessions done, at least in part: date and day. There is one a date at most."""
        self.known: frozenset[int] = frozenset()
        """Days that were done at least in part."""
        self.clean: list[tuple[date, int]] = []
        """Sessions done clean in the fourteen dates up to the last of them: date and day."""
        self.clean_days: tuple[int, ...] = ()
        """The days of these, oldest first."""
        self.tested: int | None = None
        """The day of the test that was taken last, as long as no other day was handed out since."""
        self.tried: tuple[int, int] | None = None
        """The day in hand and its level, as far as it is tried again and again."""
        self.earlier_tries = 0
        """How often it was done, at least in part, before the last row."""
        self.light_tries = 0
        """How often the lightest version was done and not clean, the last row included."""
        self.nerve_before = False
        """Whether nerve signs that went away were told of before the source."""
        self.over_tightness: float = 0
        """How far the last answer's tightness is above the median of those before it; 0 with fewer than five."""
        self._hurt_on: date | None = None
        self._last_counted = False
        self._nerves = 0
        self._pains: deque[tuple[date, int]] = deque(maxlen=2 * WEEK)
        self._tights: list[int] = []
        self._soreness: Soreness | None = None
        self._week_fired: date | None = None

    @classmethod
    def of(cls, history: Iterable[Entry], settings: Settings, usual: int = 0) -> Past:
        """The past of a whole history, oldest first."""
        past = cls(settings, usual)
        for entry in history:
            past.take(entry)
        return past

    def take(self, entry: Entry) -> None:
        """Adds the next row."""
        on, kind, heard = entry.on, entry.kind, self._hear(entry.checkin)
        if self.first_on is None:
            self.first_on = on
        if "week-on-week" in entry.voted:
            self._week_fired = on
        if self._soreness is not None:
            self._soreness.hears(entry.voted)
        self._take_source(entry, heard)
        if kind not in _HANDS_OUT_NOTHING:
            self.tested = entry.day if entry.recorded else None
        if kind not in _ONLY_A_DATE:
            self.last, self.last_heard, self.over_tightness = entry, heard, 0
        if kind is SESSION:
            self._take_session(entry, heard)
        elif kind in _EXCUSED and on > (self.done_on or self.first_on):
            self.excused += 1
        if heard.counted is not None:
            self._pains.append((on, heard.counted))
            if heard.counted > 2:
                self._hurt_on = on
        if heard.felt is not None:
            self._take_soreness(on, heard.felt, well=heard.well)
        if heard.nerves_denied:
            self._nerves += 1

    def _take_source(self, entry: Entry, heard: Heard) -> None:
        if entry.kind is SESSION or (heard.reports and (entry.kind is WAITING or not self._weighs_more(heard))):
            self.source, self.heard, self.mornings, self.asked_on = entry, heard, [], []
            self.nerve_before, self.judged = self._nerves > 0, False
            if entry.morning is not None and entry.kind is not SESSION:
                self.mornings.append((entry.on, entry.morning))
        elif entry.kind is WAITING:
            self.source, self.heard, self.mornings, self.asked_on = None, self._silence, [], []
            self.judged = True
        else:
            if entry.morning is not None:
                self.mornings.append((entry.on, entry.morning))
            if entry.kind is ASKING:
                self.asked_on.append(entry.on)
            self.judged = self.judged or entry.kind not in _UNJUDGED

    def _weighs_more(self, heard: Heard) -> bool:
        """Whether what was not judged yet calls for more caution than a report after it."""
        return not self.judged and self.heard.weight > heard.weight

    def _take_session(self, entry: Entry, heard: Heard) -> None:
        on, day, tightness = entry.on, entry.day or 0, entry.checkin.tightness
        self._take_try(entry, day, heard)
        if tightness is not None:
            if len(self._tights) >= TIGHT_ANSWERS and "tight" not in entry.voted:
                self.over_tightness = tightness - _median(self._tights)
            insort(self._tights, tightness)
        if not heard.done:
            return
        self.done_on, self.excused = on, 0
        if day not in self.known:
            self.known = _joined(self.known, day)
        self.held.append((on, day))
        if heard.clean:
            forgotten = _remember(self.clean, on, day)
            self.clean_days = (*self.clean_days[forgotten:], day)

    def _take_try(self, entry: Entry, day: int, heard: Heard) -> None:
        """A day that is passed, or climbed to a fuller level, starts anew; so does one after *stuck* has spoken."""
        level = entry.level
        again = self.tried is not None and self.tried[0] == day and level >= self.tried[1]
        before = self.earlier_tries + self._last_counted if again else 0
        if "stuck" in entry.voted:
            before = self.light_tries = 0
        counts = heard.done and not (heard.sore and self._is_first_week(entry.on))
        self.tried, self.earlier_tries, self._last_counted = (day, level), before, counts
        if level < 2 or not again or heard.clean:
            self.light_tries = 0
        if level == 2 and counts and not heard.clean:
            self.light_tries += 1

    def _is_first_week(self, on: date) -> bool:
        """Soreness of the first week never counts as a try."""
        return self.first_on is None or (on - self.first_on).days < FIRST_WEEK

    def _take_soreness(self, on: date, felt: int, *, well: bool) -> None:
        if well:
            self._soreness = None
        elif self._soreness is None:
            self._soreness = Soreness(on, felt, felt)
        else:
            self._soreness.now = felt
            if (on - self._soreness.since).days < EARLY:
                self._soreness.worst = max(self._soreness.worst, felt)

    @property
    def had_nerve_signs(self) -> bool:
        """Whether nerve signs that went away were told of on any of the rows."""
        return self._nerves > 0

    # --- what the rules ask -------------------------------------------------------------------------------------

    def lingering(self) -> Lingering:
        """Whether the pain or soreness of the last answer is there too long."""
        if self._soreness is None or self.last is None:
            return NOT_LINGERING
        said = self.last.checkin
        return NOT_LINGERING if said.pain is None and not said.sore else self._soreness.lingering(self.last.on)

    def weeks(self, today: date) -> tuple[float, float] | None:
        """The mean pain of last week and this week.

        None when it was said within a week, when nothing hurt this week, or with too few answers.
        """
        if self._hurt_on is None or (today - self._hurt_on).days > WEEK:
            return None
        if self._week_fired is not None and (today - self._week_fired).days < WEEK:
            return None
        this = [pain for on, pain in self._pains if 1 <= (today - on).days <= WEEK]
        if len(this) < ANSWERS:
            return None
        before = [pain for on, pain in self._pains if WEEK < (today - on).days <= 2 * WEEK]
        if len(before) < ANSWERS:
            return None
        return sum(before) / len(before), sum(this) / len(this)

    def gap(self, today: date) -> int:
        """Dates since the last done session or the start (yesterday is 0), less rest and measure dates."""
        since = self.done_on or self.first_on
        return 0 if since is None else (today - since).days - 1 - self.excused

    def first_held(self, dates: int) -> int | None:
        """The first session day held in the given number of dates up to the last done session."""
        if self.done_on is None:
            return None
        first = self.done_on - timedelta(days=dates - 1)
        return min((day for on, day in self.held if on >= first), default=None)


@lru_cache(maxsize=10_000)
def _joined(known: frozenset[int], day: int) -> frozenset[int]:
    """Clients who did the same days share one set of them, which is compared at once."""
    return known | {day}


def _median(found: Sequence[int]) -> float:
    """The middle of numbers that are in order."""
    half = len(found) // 2
    return found[half] if len(found) % 2 else (found[half - 1] + found[half]) / 2


def _remember(found: list[tuple[date, int]], on: date, day: int) -> int:
    """Adds a day and forgets what is older than two weeks; returns how many were forgotten."""
    found.append((on, day))
    old, first = 0, on - REMEMBERED
    while found[old][0] <= first:
        old += 1
    if old:
        del found[:old]
    return old
