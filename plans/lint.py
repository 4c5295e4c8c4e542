"""The checker: is a readable programme a good one? Errors stop publishing, warnings are doubts, notes are facts.

Limits judge only the programme's declared muscles. Where no number is published the finding says "own choice".
"""

from __future__ import annotations

import re
from collections.abc import Iterable, Iterator, Sequence
from dataclasses import dataclass
from enum import StrEnum

from plans import dose
from plans.movements import MovementKind, Muscle
from plans.programme import Day, Item, Programme

WEEK = 7
LEAST_A_WEEK, ENOUGH_A_WEEK, MUCH_A_WEEK, MUCH_A_SESSION = 120, 300, 600, 240
"""Seconds for each muscle and side."""
SHORTEST_HOLD, LONGEST_HOLD, EXERCISE = 10, 60, 60
"""Seconds of one hold, and of one exercise in a session."""
RETEST_DAYS = 28

ACSM = "ACSM position stand (Garber et al. 2011)"
THOMAS = "Thomas et al. 2018, Int J Sports Med 39:243"
INGRAM = "Ingram et al. 2025, Sports Med"
DELPHI = "Warneke et al. 2025, Delphi consensus, J Sport Health Sci 14:101067"


class Grade(StrEnum):
    """How grave a finding is."""

    ERROR = "error"
    WARNING = "warning"
    NOTE = "note"


@dataclass(frozen=True, slots=True)
class Finding:
    """One line of the report: which days (from 1; none: the whole programme), what, and why with its source."""

    grade: Grade
    code: str
    days: tuple[int, ...]
    what: str
    why: str

    def __str__(self) -> str:
        where = f"{_days(self.days)}: " if self.days else ""
        return f"{self.grade} {self.code}: {where}{self.what}. {self.why}"

    def as_json(self) -> dict[str, object]:
        """The finding as documented JSON."""
        return {
            "grade": self.grade,
            "code": self.code,
            "days": list(self.days),
            "what": self.what,
            "why": self.why,
        }


@dataclass(frozen=True, slots=True)
class Report:
    """All findings of one programme."""

    title: str
    findings: tuple[Finding, ...]

    @property
    def errors(self) -> tuple[Finding, ...]:
        """What stops publishing."""
        return self._of(Grade.ERROR)

    @property
    def warnings(self) -> tuple[Finding, ...]:
        """What a coach should look at again."""
        return self._of(Grade.WARNING)

    @property
    def notes(self) -> tuple[Finding, ...]:
        """What is worth knowing."""
        return self._of(Grade.NOTE)

    @property
    def ok(self) -> bool:
        """Whether the programme may be published."""
        return not self.errors

    def _of(self, grade: Grade) -> tuple[Finding, ...]:
        return tuple(finding for finding in self.findings if finding.grade is grade)

    def as_json(self) -> dict[str, object]:
        """The report as documented JSON."""
        return {"title": self.title, "ok": self.ok, "findings": [f.as_json() for f in self.findings]}

    def as_text(self) -> str:
        """The report as lines of text, the gravest first."""
        counts = f"{len(self.errors)} errors, {len(self.warnings)} warnings, {len(self.notes)} notes"
        return "\n".join([f"{self.title}: {counts}", *(str(finding) for finding in self.findings)])


def check(programme: Programme) -> Report:
    """Judges a programme; findings that repeat are one line with their days, the gravest first."""
    found = [
        *_weekly_dose(programme),
        *_session_dose(programme),
        *_holds(programme),
        *_warm_ups(programme),
        *_training_days(programme),
        *_retest(programme),
        *_claims(programme),
        *_equipment(programme),
    ]
    order = list(Grade)
    return Report(programme.title, tuple(sorted(_gathered(found), key=lambda f: (order.index(f.grade), f.code))))


def _gathered(found: Iterable[Finding]) -> Iterator[Finding]:
    """One finding for the same words on several days."""
    days: dict[tuple[Grade, str, str, str], list[int]] = {}
    for finding in found:
        days.setdefault((finding.grade, finding.code, finding.what, finding.why), []).extend(finding.days)
    for (grade, code, what, why), where in days.items():
        yield Finding(grade, code, tuple(sorted(set(where))), what, why)


def _days(days: Sequence[int]) -> str:
    """Days as a coach writes them: 1-3, 5."""
    runs: list[list[int]] = []
    for day in days:
        if runs and day == runs[-1][1] + 1:
            runs[-1][1] = day
        else:
            runs.append([day, day])
    text = ", ".join(str(a) if a == b else f"{a}-{b}" for a, b in runs)
    return f"day {text}" if len(days) == 1 else f"days {text}"


def weeks(programme: Programme) -> list[tuple[Day, ...]]:
    """The programme's days by sevens; a shorter rest at the end counts only when there is nothing else."""
    parts = [programme.days[i : i + WEEK] for i in range(0, len(programme.days), WEEK)]
    return [part for part in parts if len(part) == WEEK] or parts


def _weekly_dose(programme: Programme) -> Iterator[Finding]:
    for week in weeks(programme):
        total = dose.week_seconds(week)
        for muscle in programme.muscles:
            least = min(total.get((muscle, side), 0) for side in ("left", "right"))
            most = max(total.get((muscle, side), 0) for side in ("left", "right"))
            yield from _judge_week(muscle, least, most, (week[0].number, week[-1].number))


def _judge_week(muscle: Muscle, least: int, most: int, ends: tuple[int, int]) -> Iterator[Finding]:
    where = tuple(range(ends[0], ends[1] + 1))
    if least < LEAST_A_WEEK:
        what = f"{muscle} get less than {LEAST_A_WEEK} s a week on a side"
        yield Finding(Grade.ERROR, "dose-too-small", where, what, f"60 s an exercise, twice a week at least: {ACSM}")
    elif least < ENOUGH_A_WEEK:
        what = f"{muscle} get less than {ENOUGH_A_WEEK} s a week on a side"
        yield Finding(Grade.WARNING, "dose-small", where, what, f"At least 5 minutes a week: {THOMAS}")
    if most > MUCH_A_WEEK:
        what = f"{muscle} get more than {MUCH_A_WEEK} s a week on a side"
        yield Finding(Grade.NOTE, "dose-large", where, what, f"No further gain past 10 minutes a week: {INGRAM}")


def _session_dose(programme: Programme) -> Iterator[Finding]:
    for day in programme.days:
        for (muscle, _side), seconds in dose.muscle_seconds(day).items():
            if muscle in programme.muscles and seconds > MUCH_A_SESSION:
                what = f"{muscle} get more than {MUCH_A_SESSION} s in one session"
                why = f"No further gain past 4 minutes a session: {INGRAM}"
                yield Finding(Grade.NOTE, "session-large", (day.number,), what, why)


def _holds(programme: Programme) -> Iterator[Finding]:
    for day in programme.days:
        for block, item in dose.items(day.session):
            if item.movement.kind is MovementKind.STATIC and item.dose.hold is not None and not item.practice:
                yield from _judge_hold(day.number, item, block.rounds, programme)


def _judge_hold(number: int, item: Item, rounds: int, programme: Programme) -> Iterator[Finding]:
    hold, name = item.dose.hold, item.movement.name
    if hold is None or not set(item.movement.main) & set(programme.muscles):
        return
    if hold.low < SHORTEST_HOLD:
        what = f"{name}: a hold under {SHORTEST_HOLD} s"
        yield Finding(Grade.ERROR, "hold-short", (number,), what, f"Holds of 10-30 s: {ACSM}")
    if hold.high > LONGEST_HOLD:
        what = f"{name}: a hold over {LONGEST_HOLD} s"
        why = "60 s gave no more than 30 s: Bandy and Irion 1994, Phys Ther 74:845"
        yield Finding(Grade.WARNING, "hold-long", (number,), what, why)
    if dose.stretch_once(item) * item.sets * rounds < EXERCISE:
        what = f"{name}: less than {EXERCISE} s for the exercise"
        yield Finding(Grade.WARNING, "exercise-short", (number,), what, f"60 s in all for each exercise: {ACSM}")


_LIGHT = frozenset({MovementKind.DYNAMIC, MovementKind.CONTROL, MovementKind.ACTIVE})


def _warm_ups(programme: Programme) -> Iterator[Finding]:
    for day in programme.days:
        session = day.session
        if session is not None and not session.warm_up and session.blocks[0].items[0].movement.kind not in _LIGHT:
            what = "a session without a warm-up"
            yield Finding(Grade.WARNING, "no-warm-up", (day.number,), what, f"A muscle is stretched warm: {ACSM}")


def _training_days(programme: Programme) -> Iterator[Finding]:
    for week in weeks(programme):
        trained = sum(1 for day in week if day.kind == "session")
        where = tuple(day.number for day in week)
        if trained < 2:
            what = f"{trained} session days in a week"
            yield Finding(Grade.ERROR, "few-days", where, what, f"At least 2 days a week: {ACSM}")
        elif trained < 5:
            what = f"{trained} session days in a week"
            yield Finding(Grade.NOTE, "some-days", where, what, f"5 days a week gain most: {THOMAS}")


def _retest(programme: Programme) -> Iterator[Finding]:
    tests = [day.number for day in programme.days if day.measure is not None]
    if len(tests) > 1 and tests[-1] - tests[0] + 1 < RETEST_DAYS:
        what = f"the retest comes {tests[-1] - tests[0]} days after the first test"
        why = "Trials run 4 to 12 weeks; sooner, a change is hard to tell from the error of the test (own choice)"
        yield Finding(Grade.WARNING, "retest-early", (tests[-1],), what, why)


_CLAIMS = re.compile(
    r"\b(prevents?|preventing|protects? (?:you )?(?:from|against)|avoids?) (?:\w+ ){0,3}injur\w+"
    r"|\b(?:fix|fixes|correct|corrects|improves?|better) (?:your |the |bad )?posture"
    r"|\b(?:cures?|heals?|treats?)\b",
    re.IGNORECASE,
)


def _claims(programme: Programme) -> Iterator[Finding]:
    texts = [(programme.title, ()), (programme.goal, ()), (programme.who_for, ())]
    said = [(text, where) for text, where in texts] + [
        (text, (day.number,)) for day in programme.days for text in (day.title, day.text) if text
    ]
    for text, where in said:
        found = _CLAIMS.search(text)
        if found is not None:
            what = f'the words "{found[0]}" promise what stretching has not been shown to do'
            why = f"Not recommended as the main means for posture, injury prevention or recovery: {DELPHI}"
            yield Finding(Grade.WARNING, "claim", where, what, why)


def _equipment(programme: Programme) -> Iterator[Finding]:
    declared = " ".join(programme.equipment).lower()
    for day in programme.days:
        for _block, item in dose.items(day.session):
            for thing in item.movement.equipment:
                if not any(word in declared for word in re.findall(r"[a-z]{3,}", thing.lower())):
                    what = f"{item.movement.name} needs {thing}, which the list of equipment does not have"
                    yield Finding(Grade.WARNING, "equipment", (day.number,), what, "A client must know beforehand")
