"""One step of a course: what the next date brings."""

from __future__ import annotations

from dataclasses import replace
from datetime import date, timedelta
from typing import Any

import pytest
from hypothesis import given, settings
from hypothesis import strategies as st

from plans.checkin import CheckIn, Completion, Flag, FlagState, Kind, Morning, Place, Why
from plans.course import Decision, Overruling, Position, Word, decide, let_go, soften_today
from plans.ledger import Entry, Question, RowKind
from plans.past import Past
from plans.programme import Programme
from plans.rules import Settings, Tell, Verdict, Vote
from tests.samples import NEW, REST, TEST, programme, session

START = date(2026, 5, 4)
CLEAN = CheckIn(Completion.DONE, pain=0)
PLAIN = programme(session(), session(), REST, session(), NEW, session(), TEST)
"""1, 2 sessions; 3 rest; 4 session; 5 heavier; 6 session; 7 test."""


def held(day: int, said: CheckIn = CLEAN, *, after: int = 0, level: int = 0, **more: object) -> Entry:
    return Entry(START + timedelta(days=after), RowKind.SESSION, day, level, checkin=said, **more)  # type: ignore[arg-type]


def ask(position: Position, *past: Entry, plan: Programme = PLAIN, on: int | None = None, **more: object) -> Decision:
    today = START + timedelta(days=len(past) if on is None else on)
    return decide(plan, position, past, today, settings=Settings(), **more)  # type: ignore[arg-type]


def test_a_course_begins_with_its_first_day() -> None:
    found = ask(Position())
    assert (found.kind, found.day, found.reason) == (RowKind.SESSION, 1, "start")


def test_a_clean_day_leads_to_the_next() -> None:
    found = ask(Position(1), held(1))
    assert (found.kind, found.day, found.verdict) == (RowKind.SESSION, 2, Verdict.ADVANCE)


def test_a_rest_day_passes_with_its_date() -> None:
    rest = ask(Position(2), held(1), held(2, after=1))
    assert (rest.kind, rest.day, rest.prescribed) == (RowKind.REST, 3, False)
    after = ask(rest.position, held(1), held(2, after=1), Entry(START + timedelta(days=2), RowKind.REST, 3))
    assert (after.kind, after.day) == (RowKind.SESSION, 4)


def test_repeating_takes_the_rest_day_that_comes_next_and_does_not_take_it_again() -> None:
    short = CheckIn(Completion.PART, pain=0, why=Why.TIME, half=False)
    past = [held(1), held(2, short, after=1)]
    rest = ask(Position(2), *past)
    assert (rest.kind, rest.day, rest.prescribed) == (RowKind.REST, 3, True)
    past.append(Entry(START + timedelta(days=2), RowKind.REST, 3, prescribed=True))
    again = ask(rest.position, *past)
    assert (again.kind, again.day) == (RowKind.SESSION, 2)
    past.append(held(2, after=3))
    onward = ask(again.position, *past)
    assert (onward.kind, onward.day) == (RowKind.SESSION, 4)


def test_a_missed_day_comes_again_without_taking_the_rest_day() -> None:
    found = ask(Position(2), held(1), held(2, CheckIn(), after=1))
    assert (found.kind, found.day, found.reason) == (RowKind.SESSION, 2, "not-done")


def test_pain_of_six_first_asks_then_rests_then_brings_the_same_day_lighter() -> None:
    past = [held(1, CheckIn(Completion.DONE, pain=6))]
    assert ask(Position(1), *past).question is Question.MORNING
    row = Entry(START + timedelta(days=1), RowKind.ASKING, morning=Morning.SETTLED)
    rest = ask(Position(1), *past, row, on=1)
    assert (rest.kind, rest.prescribed, rest.position.level) == (RowKind.REST, True, 1)
    past.append(row._replace(kind=RowKind.REST, prescribed=True))
    after = ask(rest.position, *past)
    assert (after.kind, after.day, after.position.level) == (RowKind.SESSION, 1, 1)


def test_an_eased_course_climbs_one_level_with_a_clean_day() -> None:
    found = ask(Position(1, 1), held(1, level=1))
    assert (found.day, found.position.level) == (2, 0)


def test_before_a_heavier_day_an_eased_course_climbs_first() -> None:
    found = ask(Position(4, 1), held(1), held(2, after=1), held(4, after=2, level=1))
    assert (found.day, found.position.level, found.reason) == (4, 0, "climb")


def test_an_undelivered_session_is_made_again_and_is_no_miss() -> None:
    found = ask(Position(1), held(1, CheckIn(), delivered=False))
    assert (found.day, found.reason, found.votes) == (1, "undelivered", ())


def test_a_missing_pain_number_is_asked_on_one_morning_and_then_repeats_the_day() -> None:
    past = [held(1, CheckIn(Completion.DONE))]
    assert ask(Position(1), *past).question is Question.PAIN
    past.append(Entry(START + timedelta(days=1), RowKind.ASKING))
    found = ask(Position(1), *past)
    assert (found.kind, found.day, found.reason) == (RowKind.SESSION, 1, "unanswered")


def test_a_report_that_was_begun_and_left_is_asked_about_first() -> None:
    begun = held(1, CheckIn(Completion.NONE, why=Why.PAIN, odd=True))
    assert ask(Position(1), begun).question is Question.PAIN
    on_rest = Entry(START + timedelta(days=2), RowKind.REST, 3, checkin=CheckIn(odd=True, kind=Kind.SHARP))
    assert ask(Position(3), held(1), held(2, after=1), on_rest).question is Question.PAIN


def test_an_unanswered_morning_question_is_asked_again() -> None:
    past = [held(1, CheckIn(Completion.DONE, pain=4)), Entry(START + timedelta(days=1), RowKind.ASKING)]
    assert ask(Position(1), *past).question is Question.MORNING


def test_an_unsure_flag_hands_nothing_out_until_it_is_denied() -> None:
    maybe = CheckIn(Completion.DONE, pain=0, flag=Flag.CLINICIAN, flag_state=FlagState.UNSURE)
    assert ask(Position(1), held(1, maybe)).question is Question.FLAG
    assert ask(Position(1), held(1, replace(maybe, flag_state=FlagState.DENIED))).day == 2


def test_a_test_day_waits_for_its_number() -> None:
    past = [Entry(START, RowKind.MEASURE, 7)]
    assert ask(Position(7), *past).reason == "not-measured"
    assert ask(Position(7), past[0]._replace(recorded=True)).kind is None


def test_worse_on_two_mornings_waits_for_the_coach() -> None:
    past = [
        held(1, CheckIn(Completion.DONE, pain=4)),
        Entry(START + timedelta(days=1), RowKind.REST, prescribed=True, morning=Morning.WORSE),
        Entry(START + timedelta(days=2), RowKind.ASKING, morning=Morning.WORSE),
    ]
    assert ask(Position(1, 1), *past, on=2).kind is RowKind.WAITING


@pytest.mark.parametrize(
    ("missed", "day", "level"),
    [(7, 6, 0), (8, 2, 0), (13, 2, 0), (14, 1, 2), (28, 1, 2), (29, 1, 0)],
)
def test_a_lapse_leads_back_by_its_bands(missed: int, day: int, level: int) -> None:
    """Held: day 1 on the 1st date, day 2 on the 7th, 4 on the 8th, 5 on the 12th; then missed dates of day 6."""
    past = [held(1), held(2, after=6), held(4, after=7), held(5, after=11)]
    past += [held(6, CheckIn(), after=12 + n) for n in range(missed)]
    found = ask(Position(6), *past, on=12 + missed)
    assert Past.of(past, Settings()).gap(START + timedelta(days=12 + missed)) == missed
    assert (found.day, found.position.level) == (day, level)


def test_a_coach_can_repeat_or_ease_but_newer_graver_evidence_wins() -> None:
    assert ask(Position(1), held(1), overruling=Overruling(Word.EASE)).position == Position(1, 1)
    hurt = held(1, CheckIn(Completion.DONE, pain=6))
    row = Entry(START + timedelta(days=1), RowKind.ASKING, morning=Morning.SETTLED)
    assert ask(Position(1), hurt, row, on=1, overruling=Overruling(Word.REPEAT)).kind is RowKind.SESSION
    assert ask(Position(1), hurt, row, on=1, overruling=Overruling(Word.REPEAT, newer=True)).kind is RowKind.REST


def test_a_coach_who_repeats_never_lifts_a_referral() -> None:
    flagged = held(1, CheckIn(Completion.DONE, pain=0, kind=Kind.POP))
    assert ask(Position(1), flagged, overruling=Overruling(Word.REPEAT)).kind is RowKind.WAITING


def test_let_go_the_same_day_comes_without_looking_back() -> None:
    flagged = held(1, CheckIn(Completion.DONE, pain=9))
    found = ask(Position(1, 1), flagged, overruling=Overruling(Word.GO_ON))
    assert (found.kind, found.day, found.reason) == (RowKind.SESSION, 1, "went-on")


@pytest.mark.parametrize(
    ("pain", "kind", "level"),
    [(2, None, None), (3, RowKind.SESSION, 1), (5, RowKind.SESSION, 1), (6, RowKind.REST, 1), (8, RowKind.WAITING, 0)],
)
def test_pain_before_the_session_changes_today(pain: int, kind: RowKind | None, level: int | None) -> None:
    found = soften_today(CheckIn(pain=pain, kind=Kind.OTHER), Position(2), Settings())
    assert (found.kind if found else None, found.position.level if found else None) == (kind, level)


def test_a_clean_client_finishes_in_as_many_dates_as_days() -> None:
    position = Position()
    past: list[Entry] = []
    for n in range(len(PLAIN.days)):
        found = ask(position, *past)
        assert found.kind in (RowKind.SESSION, RowKind.REST, RowKind.MEASURE)
        assert found.day == n + 1
        position = found.position
        past.append(Entry(START + timedelta(days=n), found.kind, found.day, checkin=CLEAN, recorded=True))
    assert ask(position, *past).kind is None


answers = st.builds(
    CheckIn,
    completion=st.sampled_from([*Completion, None]),
    pain=st.one_of(st.none(), st.integers(0, 7)),
    why=st.sampled_from([*Why, None]),
    half=st.booleans(),
)


@settings(max_examples=150)
@given(st.lists(st.tuples(answers, st.sampled_from(Morning)), min_size=1, max_size=25))
def test_any_history_keeps_its_place_and_never_hands_out_while_waiting(
    said: list[tuple[CheckIn, Morning]],
) -> None:
    position = Position()
    past: list[Entry] = []
    for n, (checkin, morning) in enumerate(said):
        today = START + timedelta(days=n)
        found = decide(PLAIN, position, past, today, settings=Settings())
        if found.kind is RowKind.ASKING:
            row = Entry(today, RowKind.ASKING, morning=morning)
            found = decide(PLAIN, position, [*past, row], today, settings=Settings())
        else:
            row = Entry(today, RowKind.ASKING)
        if found.kind is None or found.kind is RowKind.WAITING:
            return
        assert 1 <= found.position.day <= len(PLAIN.days)
        assert found.position.level in (0, 1, 2)
        assert found.position.day <= position.day + 1 + position.rests_taken
        position = found.position
        is_session = found.kind is RowKind.SESSION
        past.append(
            row._replace(
                kind=found.kind,
                day=found.day,
                level=found.position.level,
                prescribed=found.prescribed,
                checkin=checkin if is_session else CheckIn(),
                recorded=True,
            )
        )


def test_a_decision_has_the_numbers_behind_it() -> None:
    found = soften_today(CheckIn(odd=True, kind=Kind.OTHER, pain=6), Position(), Settings())
    assert found is not None
    assert (found.reason, found.facts) == ("excessive", {"pain": 6})
    assert ask(Position()).facts == {}


def test_a_report_before_the_session_that_asks_for_nothing_softens_nothing() -> None:
    assert soften_today(CheckIn(odd=True, kind=Kind.DULL_BOTH, pain=1), Position(), Settings()) is None
    assert soften_today(CheckIn(odd=True, kind=Kind.SHARP, pain=1), Position(), Settings()) is None


def test_a_session_that_became_a_date_off_is_eased_once_and_not_again() -> None:
    """Pain of six before the session: its row is a date off that keeps the day, answered "the same" next morning."""
    said = CheckIn(odd=True, kind=Kind.OTHER, pain=6)
    off = Entry(START, RowKind.REST, 1, 1, True, checkin=said, morning=None)
    asked = Entry(START + timedelta(days=1), RowKind.ASKING, morning=Morning.SAME)
    found = ask(Position(1, 1), off, asked, on=1)
    assert (found.kind, found.day) == (RowKind.SESSION, 1)
    assert found.position.level in (1, 2)


@pytest.mark.parametrize(
    ("said", "usual", "verdict"),
    [
        (CheckIn(Completion.DONE, pain=3), 0, Verdict.REPEAT),
        (CheckIn(Completion.DONE, pain=3), 2, Verdict.ADVANCE),
        (CheckIn(Completion.DONE, pain=2, sore=True), 0, Verdict.REPEAT),
        (CheckIn(Completion.DONE, pain=2, sore=True), 1, Verdict.ADVANCE),
    ],
)
def test_the_usual_pain_of_the_client_is_looked_at_and_nobody_has_one_unsaid(
    said: CheckIn, usual: int, verdict: Verdict
) -> None:
    """The next day is the heavier day 5, which soreness that is not the usual one holds back."""
    past = [held(1), held(2, after=1), held(4, said, after=2)]
    more: dict[str, Any] = {"usual": usual} if usual else {}
    assert ask(Position(4), *past, ask=False, **more).verdict is verdict


def test_what_refers_on_a_rest_day_waits_for_the_coach_and_says_why() -> None:
    """A rest day of the programme is no session: a report on it is judged in full, not only its morning."""
    rest = Entry(START + timedelta(days=2), RowKind.REST, 3, checkin=CheckIn(odd=True, kind=Kind.OTHER, pain=8))
    found = ask(Position(3), held(1), held(2, after=1), rest, ask=False)
    vote = Vote("severe", Verdict.REFER, Tell.NOW, {"pain": 8})
    assert (found.kind, found.day, found.verdict, found.reason) == (RowKind.WAITING, None, Verdict.REFER, "severe")
    assert found.votes == (vote,)


def test_pain_of_six_reported_on_a_rest_day_gives_another_date_off() -> None:
    rest = Entry(START + timedelta(days=2), RowKind.REST, 3, checkin=CheckIn(odd=True, kind=Kind.OTHER, pain=6))
    found = ask(Position(3), held(1), held(2, after=1), rest, ask=False)
    assert (found.kind, found.verdict, found.reason) == (RowKind.REST, Verdict.REST, "excessive")
    assert found.prescribed


def test_a_measured_test_day_advances_and_one_that_was_not_repeats() -> None:
    row = Entry(START, RowKind.MEASURE, 7)
    assert ask(Position(7), row._replace(recorded=True)).verdict is Verdict.ADVANCE
    assert ask(Position(7), row).verdict is Verdict.REPEAT


REPORTED = {"odd": True, "kind": Kind.DULL_BOTH, "place": Place.HERE}


@pytest.mark.parametrize(
    ("recorded", "pain", "mornings", "kind", "verdict", "told"),
    [
        (True, 1, [Morning.SETTLED], RowKind.SESSION, Verdict.ADVANCE, None),
        (True, 4, [Morning.SETTLED], RowKind.SESSION, Verdict.ADVANCE, None),
        (True, 4, [Morning.WORSE], RowKind.REST, Verdict.REST, Tell.NOW),
        (False, 4, [Morning.WORSE], RowKind.REST, Verdict.REST, Tell.NOW),
        (True, 4, [Morning.WORSE, Morning.WORSE], RowKind.WAITING, Verdict.REFER, Tell.NOW),
        (True, 7, [Morning.SETTLED], RowKind.REST, Verdict.REST, Tell.NOW),
        (True, 9, [Morning.SETTLED], RowKind.WAITING, Verdict.REFER, Tell.NOW),
    ],
)
def test_what_is_reported_on_a_test_day_counts(
    recorded: bool, pain: int, mornings: list[Morning], kind: RowKind, verdict: Verdict, told: Tell | None
) -> None:
    said = CheckIn(pain=pain, **REPORTED)  # type: ignore[arg-type]
    plan = programme(session(), TEST, session(), session())
    row = Entry(START + timedelta(days=1), RowKind.MEASURE, 2, checkin=said, recorded=recorded)
    asked = [
        Entry(START + timedelta(days=2 + n), RowKind.ASKING, morning=morning) for n, morning in enumerate(mornings)
    ]
    found = ask(Position(2), held(1), row, *asked, plan=plan, on=1 + max(1, len(mornings)))
    assert (found.kind, found.verdict) == (kind, verdict)
    assert max((vote.tell for vote in found.votes if vote.tell), default=None, key=str) == told
    if kind is RowKind.REST:
        assert (found.position.day, found.position.level, found.prescribed) == (3 if recorded else 2, 1, True)


@pytest.mark.parametrize(
    ("pain", "mornings", "kind", "level", "verdict"),
    [
        (4, [Morning.SETTLED], RowKind.SESSION, 0, None),
        (4, [Morning.SAME], RowKind.SESSION, 1, Verdict.EASE),
        (4, [Morning.WORSE], RowKind.REST, 1, Verdict.REST),
        (4, [Morning.WORSE, Morning.WORSE], RowKind.WAITING, 0, Verdict.REFER),
        (7, [Morning.SETTLED], RowKind.REST, 1, Verdict.REST),
    ],
)
def test_what_was_not_judged_before_time_away_holds_back_after_it(
    pain: int, mornings: list[Morning], kind: RowKind, level: int, verdict: Verdict | None
) -> None:
    past = [held(1, CheckIn(Completion.DONE, pain=pain)), Entry(START + timedelta(days=1), RowKind.AWAY)]
    asked = [
        Entry(START + timedelta(days=2 + n), RowKind.ASKING, morning=morning) for n, morning in enumerate(mornings)
    ]
    found = ask(Position(1), *past, *asked, on=1 + len(mornings))
    assert (found.kind, found.position, found.verdict) == (kind, Position(1, level), verdict)
    worse = any(vote.rule == "morning-after" and vote.tell is Tell.NOW for vote in found.votes)
    assert worse == (Morning.WORSE in mornings)
    assert (found.reason == "well-again") == (verdict is None)


def test_what_was_judged_before_time_away_is_not_judged_again() -> None:
    row = held(1, CheckIn(Completion.DONE, pain=7))
    off = Entry(START + timedelta(days=1), RowKind.REST, 1, 1, prescribed=True)
    past = [row, off, Entry(START + timedelta(days=2), RowKind.AWAY)]
    settled = Entry(START + timedelta(days=3), RowKind.ASKING, morning=Morning.SETTLED)
    found = ask(Position(1, 1), *past, settled, on=3)
    assert (found.kind, found.position, found.reason) == (RowKind.SESSION, Position(1, 1), "well-again")


@pytest.mark.parametrize(
    ("pain", "kind", "place", "verdict", "reason"),
    [
        (4, RowKind.SESSION, Position(2, 1), Verdict.REPEAT, "acceptable"),
        (6, RowKind.REST, Position(2, 1), Verdict.REST, "excessive"),
        (8, RowKind.WAITING, Position(2), Verdict.REFER, "severe"),
    ],
)
def test_a_softened_session_keeps_its_day_and_says_why(
    pain: int, kind: RowKind, place: Position, verdict: Verdict, reason: str
) -> None:
    found = soften_today(CheckIn(odd=True, kind=Kind.OTHER, pain=pain), Position(2), Settings())
    assert found is not None
    assert (found.kind, found.position, found.day) == (kind, place, 2)
    assert (found.verdict, found.reason, found.prescribed) == (verdict, reason, kind is RowKind.REST)
    assert reason in {vote.rule for vote in found.votes}


def test_the_usual_pain_softens_nothing_before_a_session() -> None:
    said = CheckIn(odd=True, kind=Kind.OTHER, pain=4)
    assert soften_today(said, Position(2), Settings(), 3) is None
    assert soften_today(said, Position(2), Settings(), 2) is not None


def test_a_flag_that_is_still_asked_back_softens_nothing_yet() -> None:
    maybe = CheckIn(odd=True, pain=1, flag=Flag.CLINICIAN, flag_state=FlagState.UNSURE)
    assert soften_today(maybe, Position(2), Settings()) is None


def test_after_dates_away_the_day_in_hand_comes_as_it_was() -> None:
    away = [Entry(START + timedelta(days=1 + n), RowKind.AWAY) for n in range(3)]
    found = ask(Position(2, 1), held(1), *away)
    assert (found.kind, found.position, found.reason, found.votes) == (
        RowKind.SESSION,
        Position(2, 1),
        "well-again",
        (),
    )


def test_a_lapse_is_the_reason_and_a_vote_however_the_dates_were_missed() -> None:
    away = [Entry(START + timedelta(days=2 + n), RowKind.AWAY) for n in range(20)]
    found = ask(Position(4), held(1), held(2, after=1), *away)
    (vote,) = found.votes
    assert (found.reason, vote.rule, vote.verdict, vote.tell) == ("lapse", "lapse", Verdict.REPEAT, Tell.LIST)
    assert (found.position.level, vote.facts["gap"]) == (2, 20)


def test_let_go_a_course_goes_on_one_level_lighter() -> None:
    assert let_go(Position(4)) == Position(4, 1)
    assert let_go(Position(4, 2)) == Position(4, 2)


def test_a_programmes_stricter_settings_count_before_the_session_too() -> None:
    said = CheckIn(odd=True, kind=Kind.OTHER, pain=4)
    strict = soften_today(said, Position(2), Settings(2, 3, 7))
    assert strict is not None
    assert (strict.kind, strict.verdict) == (RowKind.REST, Verdict.REST)
    assert soften_today(CheckIn(odd=True, pain=2, sore=True), Position(2), Settings()) is None


def test_after_a_rest_day_what_was_reported_on_it_goes_with_the_next_row() -> None:
    plan = programme(session(), REST, NEW)
    sore = CheckIn(odd=True, kind=Kind.OTHER, pain=4)
    rest = Entry(START + timedelta(days=1), RowKind.REST, 2, checkin=sore)
    found = ask(Position(2), held(1), rest, plan=plan, ask=False)
    assert (found.kind, found.day, found.reason, found.verdict) == (RowKind.SESSION, 3, "rest-over", None)
    assert [vote.rule for vote in found.votes] == ["acceptable"]
    assert found.heavier, "day 3 has a new movement"
    assert found.seen is not None
    assert (found.seen.on_rest, found.seen.checkin) == (True, sore)


def test_a_climb_after_a_rest_day_hands_out_the_next_day_and_takes_no_other_rest_day() -> None:
    plan = programme(session(), REST, session(), REST, session())
    rest = Entry(START + timedelta(days=1), RowKind.REST, 2, checkin=CheckIn(odd=True, kind=Kind.OTHER, pain=4))
    found = ask(Position(2, 2), held(1, level=2), rest, plan=plan, ask=False, overruling=Overruling(Word.CLIMB))
    assert (found.kind, found.position, found.verdict) == (RowKind.SESSION, Position(3, 1), Verdict.REPEAT)


def test_what_was_reported_on_a_rest_day_is_kept_with_the_date_off_that_it_gives() -> None:
    plan = programme(session(), REST, NEW)
    hurt = CheckIn(odd=True, kind=Kind.OTHER, pain=6)
    past = [held(1), Entry(START + timedelta(days=1), RowKind.REST, 2, checkin=hurt)]
    off = ask(Position(2), *past, plan=plan, ask=False)
    assert (off.kind, off.position, off.heavier) == (RowKind.REST, Position(3, 1), True)
    assert off.seen is not None
    assert (off.seen.on_rest, off.seen.checkin) == (True, hurt)
    climbed = ask(Position(2, 2), *past, plan=plan, ask=False, overruling=Overruling(Word.CLIMB))
    assert (climbed.kind, climbed.position, climbed.verdict) == (RowKind.SESSION, Position(3, 1), Verdict.REPEAT)
    newer = ask(Position(2, 2), *past, plan=plan, ask=False, overruling=Overruling(Word.REPEAT, newer=True))
    assert (newer.kind, newer.heeded) == (RowKind.REST, False)


@pytest.mark.parametrize(
    ("before", "now", "verdict"),
    [(2, 3, Verdict.EASE), (1, 3, Verdict.REST), (3, 3, None), (0, 2, None)],
)
def test_pain_that_rose_since_last_week_is_looked_at(before: int, now: int, verdict: Verdict | None) -> None:
    plan = programme(*(session() for _ in range(20)))
    pains = [before] * 7 + [now] * 7
    past = [held(n + 1, CheckIn(Completion.DONE, pain=pain), after=n) for n, pain in enumerate(pains)]
    found = ask(Position(14), *past, plan=plan, ask=False)
    said = [(vote.verdict, vote.facts) for vote in found.votes if vote.rule == "week-on-week"]
    assert said == ([(verdict, {"before": before, "now": now})] if verdict else [])


def test_after_a_session_a_decision_keeps_its_votes_and_what_was_looked_at() -> None:
    said = CheckIn(Completion.DONE, pain=4)
    found = ask(Position(4), held(1), held(2, after=1), held(4, said, after=2), ask=False)
    assert (found.verdict, found.reason, found.heavier) == (Verdict.REPEAT, "acceptable", True)
    assert [vote.rule for vote in found.votes] == ["acceptable"]
    assert found.seen is not None
    assert (found.seen.checkin, found.seen.next_is_heavier, found.seen.on_rest) == (said, True, False)


def test_a_lapse_after_missed_sessions_is_one_vote_beside_theirs() -> None:
    missed = [held(2, CheckIn(), after=1 + n) for n in range(14)]
    found = ask(Position(2), held(1), *missed)
    assert [vote.rule for vote in found.votes] == ["lapse", "not-done"]
    assert found.votes[0].tell is Tell.LIST


def test_a_question_stands_for_its_date_and_keeps_the_place() -> None:
    found = ask(Position(1, 1), held(1, CheckIn(Completion.DONE, pain=4), level=1))
    assert (found.kind, found.day, found.position) == (RowKind.ASKING, None, Position(1, 1))
    assert (found.question, found.reason, found.votes) == (Question.MORNING, "ask-morning", ())


# --- what is reported on other dates ----------------------------------------------------------------------------------

LONG = programme(*[session() for _ in range(40)])
PAIN_7 = CheckIn(Completion.DONE, pain=7, kind=Kind.DULL_BOTH, place=Place.HERE, odd=True)
REPORT_7 = replace(PAIN_7, completion=None)
LITTLE = CheckIn(pain=2, kind=Kind.DULL_BOTH, place=Place.HERE, odd=True)


def on_date(after: int, kind: RowKind, said: CheckIn | None = None, **more: object) -> Entry:
    return Entry(START + timedelta(days=after), kind, checkin=said or CheckIn(), **more)  # type: ignore[arg-type]


@pytest.mark.parametrize(
    "past",
    [
        [held(1, CheckIn(), delivered=False), on_date(1, RowKind.OFF, REPORT_7)],
        [held(1, PAIN_7), on_date(1, RowKind.OFF, LITTLE)],
        [held(1, PAIN_7), on_date(1, RowKind.AWAY, LITTLE)],
        [held(1, PAIN_7), on_date(1, RowKind.AWAY)],
        [held(1, CheckIn(Completion.DONE, pain=1)), on_date(1, RowKind.AWAY, REPORT_7)],
    ],
    ids=["undelivered", "less on a day off", "less while away", "before a pause", "while away"],
)
@pytest.mark.parametrize("morning", [Morning.SETTLED, Morning.WORSE])
def test_a_pain_of_seven_brings_a_date_off_whatever_rows_follow(past: list[Entry], morning: Morning) -> None:
    found = ask(Position(1), *past, on_date(2, RowKind.ASKING, morning=morning), plan=LONG, on=2)
    assert (found.kind, found.position, found.prescribed) == (RowKind.REST, Position(1, 1), True)
    assert any(vote.tell is Tell.NOW for vote in found.votes)


def test_worse_twice_waits_though_more_was_reported_between() -> None:
    sore = CheckIn(Completion.DONE, pain=4)
    rest = on_date(1, RowKind.REST, replace(LITTLE, pain=4), prescribed=True, morning=Morning.WORSE)
    found = ask(Position(1, 1), held(1, sore), rest, on_date(2, RowKind.ASKING, morning=Morning.WORSE), plan=LONG, on=2)
    assert (found.kind, found.verdict) == (RowKind.WAITING, Verdict.REFER)


def test_a_session_that_a_report_turned_into_a_date_off_is_not_judged_again_after_a_pause() -> None:
    off = Entry(START + timedelta(days=1), RowKind.REST, 2, 1, prescribed=True, checkin=REPORT_7)
    settled = on_date(3, RowKind.ASKING, morning=Morning.SETTLED)
    found = ask(Position(2, 1), held(1), off, on_date(2, RowKind.AWAY), settled, plan=LONG, on=3)
    assert (found.kind, found.position) == (RowKind.SESSION, Position(2, 1))


def test_sessions_that_never_arrived_count_as_missed() -> None:
    past = [held(n + 1, after=n) for n in range(9)]
    past += [held(10, CheckIn(), after=9 + n, delivered=False) for n in range(35)]
    found = ask(Position(10), *past, plan=LONG)
    assert (found.day, found.reason) == (1, "lapse")
    found = ask(Position(10), *past[:12], plan=LONG)
    assert (found.day, found.position.level, found.reason) == (10, 0, "undelivered")


@pytest.mark.parametrize("kind", [RowKind.AWAY, RowKind.WAITING])
def test_a_test_that_was_taken_is_not_asked_for_again_after_a_pause(kind: RowKind) -> None:
    plan = programme(session(), TEST, session(), session())
    tested = Entry(START + timedelta(days=1), RowKind.MEASURE, 2, recorded=True)
    found = ask(Position(2), held(1), tested, on_date(2, kind), plan=plan, on=3)
    assert (found.kind, found.day) == (RowKind.SESSION, 3)
    found = ask(Position(2), held(1), tested._replace(recorded=False), on_date(2, kind), plan=plan, on=3)
    assert (found.kind, found.day) == (RowKind.MEASURE, 2)


@pytest.mark.parametrize(("newer", "kind"), [(False, RowKind.SESSION), (True, RowKind.REST)])
def test_what_was_reported_since_the_coach_let_go_holds_back(newer: bool, kind: RowKind) -> None:
    past = [held(1, CheckIn(Completion.DONE, pain=8)), on_date(1, RowKind.WAITING, REPORT_7)]
    settled = on_date(2, RowKind.ASKING, morning=Morning.SETTLED)
    found = ask(Position(1, 1), *past, settled, plan=LONG, on=2, overruling=Overruling(Word.GO_ON, newer))
    assert found.kind is kind


def test_an_unsure_sign_since_the_coach_let_go_is_asked_back() -> None:
    numb = CheckIn(kind=Kind.NERVE, flag=Flag.CLINICIAN, flag_state=FlagState.UNSURE)
    past = [held(1, CheckIn(Completion.DONE, pain=8)), on_date(1, RowKind.WAITING, numb)]
    found = ask(Position(1, 1), *past, plan=LONG, on=2, overruling=Overruling(Word.GO_ON, newer=True))
    assert found.question is Question.FLAG
