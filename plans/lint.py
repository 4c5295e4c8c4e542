"""The checker: is a readable programme a good one? Errors stop publishing, warnings are doubts, notes are facts.

Limits judge only the programme's declared muscles. An error takes all kinds of work together, the rest only what holds
a muscle long. Where no number is published the finding says "own choice".
"""

from __future__ import annotations

from collections.abc import Callable, Iterator, Mapping, Sequence

from plans import dose
from plans.allowed import near
from plans.cert import missing
from plans.equipment import is_at_hand
from plans.findings import Finding, Grade, Report, gathered
from plans.jumps import jumps
from plans.movements import Movement, MovementKind, Muscle, easier_than
from plans.programme import WEEK, Day, Programme, Sides, Span
from plans.promises import promise
from plans.translated import every_text, untranslated

LEAST_A_WEEK, ENOUGH_A_WEEK, MUCH_A_WEEK, MUCH_A_SESSION = 120, 300, 600, 240
"""Seconds for each muscle and side."""
SHORTEST_HOLD, LONGEST_HOLD, EXERCISE = 10, 60, 60
"""Seconds of one hold, and of one exercise in a session."""
LEAST_DAYS, ENOUGH_DAYS = 2, 5
"""Days a week on which a muscle is stretched."""
OLDER, OLDER_HOLD = 65, 30
"""From this age on, holds of so many seconds."""
RETEST_DAYS = 28
UNEQUAL = 1.25
"""One side of a muscle gets more than so many times the other (own choice)."""

ACSM = "ACSM position stand (Garber et al. 2011)"
THOMAS = "Thomas et al. 2018, Int J Sports Med 39:243"
FELAND = "Feland et al. 2001, Phys Ther 81:1110"
INGRAM = "Ingram et al. 2025, Sports Med"
DELPHI = "Warneke et al. 2025, Delphi consensus, J Sport Health Sci 14:101067"
KONRAD = "Konrad et al. 2024, J Sport Health Sci 13:186"
CERT = "Exercise reporting template (Slade et al. 2016, Br J Sports Med 50:1428)"

ALL_KINDS = frozenset(MovementKind)
MOVING_KINDS = ALL_KINDS - dose.HOLDING_KINDS


def check(programme: Programme) -> Report:
    """Judges a programme; findings that repeat are one line with their days, the gravest first."""
    found = gathered(finding for look in _LOOKS for finding in look(programme))
    order = list(Grade)
    return Report(programme.title, tuple(sorted(found, key=lambda f: (order.index(f.grade), f.code))))


def weeks(programme: Programme) -> list[tuple[Day, ...]]:
    """The programme's days as weeks: by sevens, or by as many training days as a week has.

    A shorter rest at the end counts only when there is nothing else.
    """
    parts: list[list[Day]] = [[]]
    for day in programme.days:
        counted = [one for one in parts[-1] if programme.training is None or one.kind != "rest"]
        if len(counted) == programme.week:
            parts.append([])
        parts[-1].append(day)
    whole = [part for part in parts if len(part) >= programme.week]
    return [tuple(part) for part in whole or parts]


def _numbers(days: Sequence[Day]) -> tuple[int, ...]:
    return tuple(day.number for day in days)


# --- dose -----------------------------------------------------------------------------------------------------------


def _weekly_dose(programme: Programme) -> Iterator[Finding]:
    for week in weeks(programme):
        every = dose.muscle_seconds(week, ALL_KINDS)
        held = dose.muscle_seconds(week, dose.HOLDING_KINDS)
        moved = dose.muscle_seconds(week, MOVING_KINDS)
        for muscle in programme.muscles:
            yield from _judge_least(muscle, _least(every, muscle), _least(held, muscle), _numbers(week))
            yield from _judge_most(muscle, max(_ends(held, muscle, 1)), _numbers(week))
            if _least(moved, muscle) > _least(held, muscle) > 0:
                what = f"{muscle} are mostly moved, not held"
                why = f"Holding and contract-relax gain more range than moving: {KONRAD}"
                yield Finding(Grade.WARNING, "mostly-moving", _numbers(week), what, why)


def _ends(seconds: Mapping[tuple[Muscle, str], dose.Range], muscle: Muscle, end: int) -> list[int]:
    return [seconds.get((muscle, side), (0, 0))[end] for side in dose.BOTH]


def _least(seconds: Mapping[tuple[Muscle, str], dose.Range], muscle: Muscle) -> int:
    """What the side that gets less surely gets."""
    return min(_ends(seconds, muscle, 0))


def _judge_least(muscle: Muscle, every: int, held: int, where: tuple[int, ...]) -> Iterator[Finding]:
    if every < LEAST_A_WEEK:
        what = f"{muscle} get less than {LEAST_A_WEEK} s a week on a side"
        yield Finding(Grade.ERROR, "dose-too-small", where, what, f"60 s an exercise, twice a week at least: {ACSM}")
    elif held < ENOUGH_A_WEEK:
        what = f"{muscle} are held less than {ENOUGH_A_WEEK} s a week on a side"
        yield Finding(Grade.WARNING, "dose-small", where, what, f"At least 5 minutes a week: {THOMAS}")


def _judge_most(muscle: Muscle, held: int, where: tuple[int, ...]) -> Iterator[Finding]:
    if held > MUCH_A_WEEK:
        what = f"{muscle} are held more than {MUCH_A_WEEK} s a week on a side"
        yield Finding(Grade.NOTE, "dose-large", where, what, f"No further gain past 10 minutes a week: {INGRAM}")


def _session_dose(programme: Programme) -> Iterator[Finding]:
    for day in programme.days:
        held = dose.muscle_seconds([day], dose.HOLDING_KINDS)
        for muscle in programme.muscles:
            if max(_ends(held, muscle, 1)) > MUCH_A_SESSION:
                what = f"{muscle} are held more than {MUCH_A_SESSION} s in one session"
                why = f"No further gain past 4 minutes a session: {INGRAM}"
                yield Finding(Grade.NOTE, "session-large", (day.number,), what, why)


def _training_days(programme: Programme) -> Iterator[Finding]:
    for week in weeks(programme):
        for muscle in programme.muscles:
            every, held = (_days_with(week, muscle, kinds) for kinds in (ALL_KINDS, dose.HOLDING_KINDS))
            if every < LEAST_DAYS:
                what = f"{muscle} are stretched on {every} {'day' if every == 1 else 'days'} of a week"
                yield Finding(Grade.ERROR, "few-days", _numbers(week), what, f"At least 2 days a week: {ACSM}")
            elif held < ENOUGH_DAYS:
                what = f"{muscle} are held on {held} {'day' if held == 1 else 'days'} of a week"
                yield Finding(Grade.NOTE, "some-days", _numbers(week), what, f"5 days a week gain most: {THOMAS}")


def _days_with(week: Sequence[Day], muscle: Muscle, kinds: frozenset[MovementKind]) -> int:
    return sum(1 for day in week if max(_ends(dose.muscle_seconds([day], kinds), muscle, 1)) > 0)


def _balance(programme: Programme) -> Iterator[Finding]:
    for week in weeks(programme):
        held = dose.muscle_seconds(week, dose.HOLDING_KINDS)
        for muscle in programme.muscles:
            less, more = sorted(_ends(held, muscle, 0))
            if more > UNEQUAL * less:
                what = f"one side's {muscle} are held {more} s a week, the other side's {less} s"
                why = "Both sides alike, unless that is meant (own choice)"
                yield Finding(Grade.WARNING, "sides-unequal", _numbers(week), what, why)


# --- single exercises -----------------------------------------------------------------------------------------------


def _holds(programme: Programme) -> Iterator[Finding]:
    for day in programme.days:
        held: dict[Movement, int] = {}
        for block, item in dose.items(day.session):
            movement = item.movement
            holds = _holds_of(item.dose.hold, item.dose.holds)
            if dose.kind_of(item) is not MovementKind.STATIC or item.practice or holds is None:
                continue
            if set(item.main) & set(programme.muscles):
                seconds = dose.stretch_once(item)[MovementKind.STATIC][1] * dose.sets_of(block, item)[1]
                held[movement] = held.get(movement, 0) + seconds
                yield from _judge_hold(day.number, movement.name, holds, programme.ages)
        yield from _judge_exercises(day.number, held)


def _holds_of(hold: Span | None, holds: Sequence[int]) -> Span | None:
    """The holds of an item; of a set that builds up, only the last and longest is judged."""
    return Span(max(holds), max(holds)) if holds else hold


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


def _sides(programme: Programme) -> Iterator[Finding]:
    for day in programme.days:
        for _block, item in dose.items(day.session):
            if item.movement.sides and item.side is Sides.BOTH:
                what = f"{item.movement.name}: no side, though it is done on one side at a time"
                why = "Write side: each; without it the client stretches one side or half as long"
                yield Finding(Grade.WARNING, "side-missing", (day.number,), what, why)


# --- measures, words, things ----------------------------------------------------------------------------------------


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
        yield from _judge_retest(measure, days, programme.week)


def _judge_retest(measure: str, days: Sequence[int], week: int) -> Iterator[Finding]:
    if len(days) == 1:
        what = f"{measure} is taken only once"
        why = "Without a second test nobody learns whether it helped (own choice)"
        yield Finding(Grade.NOTE, "no-retest", tuple(days), what, why)
    elif (days[-1] - days[0] + 1) * WEEK < RETEST_DAYS * week:
        between = (days[-1] - days[0]) * WEEK // week
        what = f"the retest of {measure} comes {between} days after the first test"
        why = "Trials run 4 to 12 weeks; sooner, a change is hard to tell from the error of the test (own choice)"
        yield Finding(Grade.WARNING, "retest-early", (days[-1],), what, why)


def _claims(programme: Programme) -> Iterator[Finding]:
    for text, where in _texts(programme):
        words = promise(text)
        if words is not None:
            what = f'the words "{words}" promise what stretching has not been shown to do'
            why = f"Not recommended as the main means for posture, injury prevention or recovery: {DELPHI}"
            yield Finding(Grade.WARNING, "claim", where, what, why)


def _texts(programme: Programme) -> Iterator[tuple[str, tuple[int, ...]]]:
    """Everything that clients read, with the day it stands on."""
    about = (programme.title, programme.goal, programme.who_for, programme.setting, programme.motivation)
    for text in (*about, programme.besides, *programme.cautions):
        if text:
            yield text, ()
    for movement in programme.movements:
        for text in (movement.name, movement.how, *movement.cues, *movement.care):
            yield text, ()
    for day in programme.days:
        session = day.session
        around = [part.text for part in (session.warm_up, session.cool_down) if part] if session else []
        own = [text for _b, item in dose.items(session) for text in (item.cue, item.stop, item.stance, item.grip)]
        focus = session.focus if session else None
        yield from ((t, (day.number,)) for t in (day.title, day.text, day.caution, focus, *around, *own) if t)


def _equipment(programme: Programme) -> Iterator[Finding]:
    for day in programme.days:
        for _block, item in dose.items(day.session):
            for thing in item.things:
                if not is_at_hand(thing, programme.equipment):
                    what = f"{item.movement.name} needs {thing}, which the list of equipment does not have"
                    yield Finding(Grade.WARNING, "equipment", (day.number,), what, "A client must know beforehand")


def _equipment_when_eased(programme: Programme) -> Iterator[Finding]:
    catalogue = programme.catalogue()
    done = {item.movement.key: item.movement for day in programme.days for _b, item in dose.items(day.session)}
    for key, movement in done.items():
        for easier in easier_than(key, catalogue):
            for thing in catalogue[easier].equipment:
                if not is_at_hand(thing, programme.equipment):
                    what = f"{catalogue[easier].name}, the lighter form of {movement.name}, needs {thing}"
                    why = "It comes when a day is eased; write it into the list, or name a stand-in"
                    yield Finding(Grade.NOTE, "equipment-when-eased", (), what, why)


def _reporting(programme: Programme) -> Iterator[Finding]:
    gaps = missing(programme)
    if gaps:
        what = f"the programme does not say: {'; '.join(gap.asks for gap in gaps)}"
        why = f"A reader could not repeat it: {CERT}"
        yield Finding(Grade.NOTE, "not-said", (), what, why)


def _languages(programme: Programme) -> Iterator[Finding]:
    known = list(every_text(programme)) if programme.texts else []
    for language, texts in programme.texts.items():
        for text in texts.keys() - set(known):
            meant = near(text, known)
            what = f"texts in {language!r} have words for {text!r}, which the file does not say"
            why = f"Write the text as it stands now{f': {meant!r}' if meant else ', or take these words out'}"
            yield Finding(Grade.WARNING, "texts-unused", (), what, why)
        lacking = untranslated(programme, language)
        if lacking:
            what = f"texts in {language!r} lack {len(lacking)} of the file's own, first {lacking[0]!r}"
            why = f"Who reads in that language gets these as they are; `easeward texts FILE {language}` lists them"
            yield Finding(Grade.WARNING, "texts-missing", (), what, why)


_LOOKS: tuple[Callable[[Programme], Iterator[Finding]], ...] = (
    _weekly_dose,
    _session_dose,
    _training_days,
    _balance,
    _holds,
    _warm_ups,
    _sides,
    jumps,
    _measures,
    _claims,
    _equipment,
    _equipment_when_eased,
    _reporting,
    _languages,
)
