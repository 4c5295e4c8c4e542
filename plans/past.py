"""What came before, as the rules need it: a summary of a course's ledger that grows row by row.

A row is taken once it is final, which it is when the next one is made; a history that may still be corrected is simply
summed up anew. Nothing in here decides anything.
"""

from __future__ import annotations

from bisect import insort
from collections.abc import Iterable
from dataclasses import dataclass
from datetime import date, timedelta
from statistics import median

from plans.checkin import CheckIn, Completion, FlagState, Kind, Morning, Place
from plans.ledger import Entry, RowKind
from plans.rules import Lingering, Settings, counted_pain, counts_as_done, hurts_on, is_sore

REMEMBERED = 14
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


_ONLY_A_DATE = frozenset({RowKind.ASKING, RowKind.OFF})
_EXCUSED = frozenset({RowKind.REST, RowKind.MEASURE})


@dataclass(slots=True)
class Soreness:
    """One spell of pain or soreness where the programme works: since when, how bad early on, what was said of it."""

    since: date
    worst: int
    now: int
    rested: bool = False
    noted: bool = False

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
        "_hurt_on",
        "_last_counted",
        "_nerves",
        "_pains",
        "_settings",
        "_soreness",
        "_tights",
        "_usual",
        "_week_fired",
        "asked_on",
        "clean",
        "clean_days",
        "done_on",
        "earlier_tries",
        "excused",
        "first_on",
        "held",
        "hurts",
        "known",
        "last",
        "light_tries",
        "mornings",
        "nerve_before",
        "source",
        "tried",
    )

    def __init__(self, settings: Settings, usual: int = 0) -> None:
        self._settings = settings
        self._usual = usual
        self.first_on: date | None = None
        self.last: Entry | None = None
        """The last row that handed something out; an unanswered question handed out nothing."""
        self.source: Entry | None = None
        """The row whose answer the next morning is about."""
        self.hurts = False
        """Whether that answer is one to ask about in the morning."""
        self.mornings: list[tuple[date, Morning]] = []
        """The answers to "how is it now?" since the source."""
        self.asked_on: list[date] = []
        """Dates since the source whose row was still a question."""
        self.done_on: date | None = None
        """The date of the last session done, at least in part."""
        self.excused = 0
        """Rest and measure dates since then."""
        self.held: list[tuple[date, int]] = []
        """Sessions done, at least in part, in the fourteen dates up to the last of them: date and day."""
        self.known: frozenset[int] = frozenset()
        """Days that were done at least in part."""
        self.clean: list[tuple[date, int]] = []
        """The same fourteen dates of days done clean."""
        self.clean_days: tuple[int, ...] = ()
        """The days of these, oldest first."""
        self.tried: tuple[int, int] | None = None
        """The day in hand and its level, as far as it is tried again and again."""
        self.earlier_tries = 0
        """How often it was done, at least in part, before the last row."""
        self.light_tries = 0
        """How often the lightest version was done and not clean, the last row included."""
        self.nerve_before = False
        """Whether nerve signs that went away were told of before the source."""
        self._hurt_on: date | None = None
        self._last_counted = False
        self._nerves = 0
        self._pains: list[tuple[date, int]] = []
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
        said, kind = entry.checkin, entry.kind
        if self.first_on is None:
            self.first_on = entry.on
        if entry.voted:
            self._take_what_was_voted(entry)
        self._take_source(entry, said)
        if kind not in _ONLY_A_DATE:
            self.last = entry
        if kind is RowKind.SESSION:
            self._take_session(entry, said)
        elif kind in _EXCUSED and entry.on > (self.done_on or self.first_on):
            self.excused += 1
        if said.pain is not None and said.place is not Place.ELSEWHERE:
            pain = counted_pain(said, self._usual)
            self._pains.append((entry.on, pain))
            if pain > 2:
                self._hurt_on = entry.on
            if len(self._pains) > 2 * WEEK:
                del self._pains[0]
        if self._soreness is not None or said.pain or said.sore:
            self._take_soreness(entry.on, said)
        if said.kind is Kind.NERVE and said.flag_state is FlagState.DENIED:
            self._nerves += 1

    def _take_source(self, entry: Entry, said: CheckIn) -> None:
        if entry.kind is RowKind.WAITING:
            self.source, self.hurts, self.mornings, self.asked_on = None, False, [], []
            return
        hurts = hurts_on(said, self._usual)
        if entry.kind is RowKind.SESSION or hurts or said.odd or said.flag is not None:
            self.source, self.hurts, self.mornings, self.asked_on = entry, hurts, [], []
            self.nerve_before = self._nerves > 0
            return
        if entry.morning is not None:
            self.mornings.append((entry.on, entry.morning))
        if entry.kind is RowKind.ASKING:
            self.asked_on.append(entry.on)

    def _take_session(self, entry: Entry, said: CheckIn) -> None:
        day = entry.day or 0
        done = was_done(entry)
        clean = done and is_clean(said, self._settings, self._usual)
        self._take_try(entry, day, done=done, clean=clean)
        if said.tightness is not None:
            insort(self._tights, said.tightness)
        if not done:
            return
        self.done_on, self.excused = entry.on, 0
        if day not in self.known:
            self.known |= {day}
        _remember(self.held, entry.on, day)
        if clean:
            forgotten = _remember(self.clean, entry.on, day)
            self.clean_days = (*self.clean_days[forgotten:], day)

    def _take_try(self, entry: Entry, day: int, *, done: bool, clean: bool) -> None:
        """A day that is passed, or climbed to a fuller level, starts anew; so does one after *stuck* has spoken."""
        again = self.tried is not None and self.tried[0] == day and entry.level >= self.tried[1]
        before = self.earlier_tries + self._last_counted if again else 0
        if "stuck" in entry.voted:
            before = self.light_tries = 0
        counts = done and not self._is_first_soreness(entry)
        self.tried, self.earlier_tries, self._last_counted = (day, entry.level), before, counts
        if entry.level < 2 or not again or clean:
            self.light_tries = 0
        if entry.level == 2 and counts and not clean:
            self.light_tries += 1

    def _is_first_soreness(self, entry: Entry) -> bool:
        """Soreness of the first week never counts as a try."""
        first = self.first_on is None or (entry.on - self.first_on).days < FIRST_WEEK
        return first and is_sore(entry.checkin, self._usual)

    def _take_soreness(self, on: date, said: CheckIn) -> None:
        if said.place is Place.ELSEWHERE or (said.pain is None and not said.sore):
            return
        pain = said.pain if said.pain is not None else 1
        if pain <= self._usual and not said.sore:
            self._soreness = None
        elif self._soreness is None:
            self._soreness = Soreness(on, pain, pain)
        else:
            self._soreness.now = pain
            if (on - self._soreness.since).days < EARLY:
                self._soreness.worst = max(self._soreness.worst, pain)

    def _take_what_was_voted(self, entry: Entry) -> None:
        """What the rules said when this row was made is said already."""
        if self._soreness is not None:
            self._soreness.rested = self._soreness.rested or "sore-too-long" in entry.voted
            self._soreness.noted = self._soreness.noted or "sore-noted" in entry.voted
        if "week-on-week" in entry.voted:
            self._week_fired = entry.on

    @property
    def had_nerve_signs(self) -> bool:
        """Whether nerve signs that went away were told of on any of the rows."""
        return self._nerves > 0

    # --- what the rules ask -------------------------------------------------------------------------------------

    def lingering(self) -> Lingering:
        """Whether the pain or soreness of the last answer is there too long."""
        last = self.last
        if self._soreness is None or last is None or (last.checkin.pain is None and not last.checkin.sore):
            return Lingering.NO
        return self._soreness.lingering(last.on)

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

    def over_usual_tightness(self) -> float:
        """How far the last answer's tightness is above the median of those before it; 0 with fewer than five."""
        last = self.last
        if last is None or last.kind is not RowKind.SESSION or last.checkin.tightness is None or "tight" in last.voted:
            return 0
        before = list(self._tights)
        before.remove(last.checkin.tightness)
        return last.checkin.tightness - median(before) if len(before) >= TIGHT_ANSWERS else 0

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


def was_done(entry: Entry) -> bool:
    """Whether a session of this row was done, at least in part."""
    return entry.kind is RowKind.SESSION and entry.checkin.completion in (Completion.DONE, Completion.PART)


def is_clean(said: CheckIn, settings: Settings, usual: int) -> bool:
    """Done with no more pain than counts as clean."""
    return counts_as_done(said) and said.pain is not None and counted_pain(said, usual) <= settings.clean


def _remember(found: list[tuple[date, int]], on: date, day: int) -> int:
    """Adds a day and forgets what is older than two weeks; returns how many were forgotten."""
    found.append((on, day))
    old, first = 0, on - timedelta(days=REMEMBERED)
    while found[old][0] <= first:
        old += 1
    if old:
        del found[:old]
    return old
