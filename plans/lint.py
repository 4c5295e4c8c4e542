"""The checker: is a readable programme a good one? Errors stop publishing, warnings are doubts, notes are facts.

Limits judge only the programme's declared muscles. Where no number is published the finding says "own choice".
"""

from __future__ import annotations

import re
from collections.abc import Iterable, Iterator, Mapping, Sequence
from dataclasses import dataclass
from enum import StrEnum

from plans import dose
from plans.claims import promise
from plans.movements import Movement, MovementKind, Muscle
from plans.programme import Day, Programme, Sides, Span

WEEK = 7
LEAST_A_WEEK, ENOUGH_A_WEEK, MUCH_A_WEEK, MUCH_A_SESSION = 120, 300, 600, 240
"""Seconds for each muscle and side."""
SHORTEST_HOLD, LONGEST_HOLD, EXERCISE = 10, 60, 60
"""Seconds of one hold, and of one exercise in a session."""
LEAST_DAYS, ENOUGH_DAYS = 2, 5
"""Days a week on which a muscle is stretched."""
OLDER, OLDER_HOLD = 65, 30
"""From this age on, holds of so many seconds."""
RETEST_DAYS = 28
SIDES = ("left", "right")

ACSM = "ACSM position stand (Garber et al. 2011)"
THOMAS = "Thomas et al. 2018, Int J Sports Med 39:243"
FELAND = "Feland et al. 2001, Phys Ther 81:1110"
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
        *_measures(programme),
        *_sides(programme),
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
            least = min(total.get((muscle, side), 0) for side in SIDES)
            most = max(total.get((muscle, side), 0) for side in SIDES)
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
        held: dict[Movement, int] = {}
        for block, item in dose.items(day.session):
            movement = item.movement
            if movement.kind is not MovementKind.STATIC or item.practice or item.dose.hold is None:
                continue
            if set(movement.main) & set(programme.muscles):
                held[movement] = held.get(movement, 0) + dose.stretch_once(item) * item.sets * block.rounds
                yield from _judge_hold(day.number, movement.name, item.dose.hold, programme.ages)
        yield from _judge_exercises(day.number, held)


def _judge_hold(number: int, name: str, hold: Span, ages: Span | None) -> Iterator[Finding]:
    if hold.low < SHORTEST_HOLD:
        what = f"{name}: a hold under {SHORTEST_HOLD} s"
        yield Finding(Grade.ERROR, "hold-short", (number,), what, f"Holds of 10-30 s: {ACSM}")
    elif ages is not None and ages.low >= OLDER and hold.low < OLDER_HOLD:
        what = f"{name}: a hold under {OLDER_HOLD} s for people of {OLDER} and over"
        yield Finding(Grade.WARNING, "hold-short-for-age", (number,), what, f"Longer holds gained more: {FELAND}")
    if hold.high > LONGEST_HOLD:
        what = f"{name}: a hold over {LONGEST_HOLD} s"
        why = "60 s gave no more than 30 s: Bandy and Irion 1994, Phys Ther 74:845"
        yield Finding(Grade.WARNING, "hold-long", (number,), what, why)


def _judge_exercises(number: int, held: Mapping[Movement, int]) -> Iterator[Finding]:
    for movement, seconds in held.items():
        if seconds < EXERCISE:
            what = f"{movement.name}: less than {EXERCISE} s for the exercise"
            why = f"60 s in all for each exercise: {ACSM}"
            yield Finding(Grade.WARNING, "exercise-short", (number,), what, why)


_LIGHT = frozenset({MovementKind.DYNAMIC, MovementKind.CONTROL, MovementKind.ACTIVE})


def _warm_ups(programme: Programme) -> Iterator[Finding]:
    for day in programme.days:
        session = day.session
        if session is not None and not session.warm_up and session.blocks[0].items[0].movement.kind not in _LIGHT:
            what = "a session without a warm-up"
            yield Finding(Grade.WARNING, "no-warm-up", (day.number,), what, f"A muscle is stretched warm: {ACSM}")


def _training_days(programme: Programme) -> Iterator[Finding]:
    for week in weeks(programme):
        where = tuple(day.number for day in week)
        for muscle in programme.muscles:
            days = sum(1 for day in week if any(dose.muscle_seconds(day).get((muscle, side)) for side in SIDES))
            what = f"{muscle} are stretched on {days} {'day' if days == 1 else 'days'} of a week"
            if days < LEAST_DAYS:
                yield Finding(Grade.ERROR, "few-days", where, what, f"At least 2 days a week: {ACSM}")
            elif days < ENOUGH_DAYS:
                yield Finding(Grade.NOTE, "some-days", where, what, f"5 days a week gain most: {THOMAS}")


def _measures(programme: Programme) -> Iterator[Finding]:
    taken: dict[str, list[int]] = {}
    for day in programme.days:
        if day.measure is not None:
            taken.setdefault(day.measure.measure, []).append(day.number)
    for measure in programme.measures:
        if measure not in taken:
            what = f"{measure} is among the measures, and no day takes it"
            yield Finding(Grade.WARNING, "measure-missing", (), what, "Clients are told what will be measured")
    for measure, days in taken.items():
        yield from _judge_retest(measure, days)


def _judge_retest(measure: str, days: Sequence[int]) -> Iterator[Finding]:
    if len(days) == 1:
        what = f"{measure} is taken only once"
        why = "Without a second test nobody learns whether it helped (own choice)"
        yield Finding(Grade.NOTE, "no-retest", tuple(days), what, why)
    elif days[-1] - days[0] + 1 < RETEST_DAYS:
        what = f"the retest of {measure} comes {days[-1] - days[0]} days after the first test"
        why = "Trials run 4 to 12 weeks; sooner, a change is hard to tell from the error of the test (own choice)"
        yield Finding(Grade.WARNING, "retest-early", (days[-1],), what, why)


def _sides(programme: Programme) -> Iterator[Finding]:
    for day in programme.days:
        for _block, item in dose.items(day.session):
            if item.movement.sides and item.side is Sides.BOTH:
                what = f"{item.movement.name}: no side, though it is done on one side at a time"
                why = "Write side: each; without it the client stretches one side or half as long"
                yield Finding(Grade.WARNING, "side-missing", (day.number,), what, why)


def _claims(programme: Programme) -> Iterator[Finding]:
    for text, where in _texts(programme):
        words = promise(text)
        if words is not None:
            what = f'the words "{words}" promise what stretching has not been shown to do'
            why = f"Not recommended as the main means for posture, injury prevention or recovery: {DELPHI}"
            yield Finding(Grade.WARNING, "claim", where, what, why)


def _texts(programme: Programme) -> Iterator[tuple[str, tuple[int, ...]]]:
    """Everything that clients read, with the day it stands on."""
    for text in (programme.title, programme.goal, programme.who_for, programme.setting, *programme.cautions):
        yield text, ()
    for movement in programme.movements:
        for text in (movement.name, movement.how, *movement.cues):
            yield text, ()
    for day in programme.days:
        session = (day.session.focus, day.session.warm_up) if day.session else ()
        cues = (item.cue for _block, item in dose.items(day.session))
        yield from ((text, (day.number,)) for text in (day.title, day.text, *session, *cues) if text)


_EVERYWHERE = frozenset({"wall", "floor", "door", "frame", "bed"})
_SMALL = frozenset({"and", "with", "that", "the", "for", "its", "light", "firm", "low"})


def _things(text: str) -> frozenset[str]:
    """The words of a list of equipment that name a thing, without a plural's s."""
    return frozenset(word.removesuffix("s") for word in re.findall(r"[a-z]{3,}", text.lower())) - _SMALL


def _equipment(programme: Programme) -> Iterator[Finding]:
    declared = _things(" ".join(programme.equipment)) | _EVERYWHERE
    for day in programme.days:
        for _block, item in dose.items(day.session):
            for thing in item.movement.equipment:
                if not _things(thing) & declared:
                    what = f"{item.movement.name} needs {thing}, which the list of equipment does not have"
                    yield Finding(Grade.WARNING, "equipment", (day.number,), what, "A client must know beforehand")
