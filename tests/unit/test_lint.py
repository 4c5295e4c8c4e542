"""The checker: what stops publishing, what is doubted, and how it is said."""

from __future__ import annotations

import pytest

from plans.claims import promise
from plans.lint import Finding, Grade, Report, check
from plans.reading import read_programme
from tests.texts import HEAD, REST

ITEM = "movement: reach, sets: 2, hold: 30, side: each"
TEST = "  - measure: {which: fingertip-to-floor}\n"


def day(*items: str, warm_up: str = "warm-up: Walk., ") -> str:
    """A session day of these items."""
    return f"  - session: {{{warm_up}blocks: [{{items: [{', '.join(f'{{{item}}}' for item in items)}]}}]}}\n"


def judged(days: str, *, head: str = HEAD) -> Report:
    return check(read_programme(head + days))


def found(report: Report, code: str) -> list[Finding]:
    return [finding for finding in report.findings if finding.code == code]


def codes(report: Report) -> list[str]:
    return [finding.code for finding in report.findings]


def test_a_good_week_has_no_findings_and_may_be_published() -> None:
    report = judged(day(ITEM) * 6 + REST)
    assert report.findings == ()
    assert report.ok


def test_an_error_stops_publishing_and_a_warning_does_not() -> None:
    assert not judged(day("movement: reach, sets: 9, hold: 9, side: each") * 5).ok
    doubted = judged(day(ITEM, warm_up="") * 5)
    assert codes(doubted) == ["no-warm-up"]
    assert doubted.ok


def test_findings_that_repeat_are_one_line_with_their_days() -> None:
    (finding,) = judged(day(ITEM, warm_up="") * 3 + REST + day(ITEM, warm_up="") * 2 + REST).findings
    assert finding.days == (1, 2, 3, 5, 6)
    assert str(finding).startswith("warning no-warm-up: days 1-3, 5-6: a session without a warm-up. ")


def test_the_gravest_finding_comes_first() -> None:
    report = judged(day("movement: reach, hold: 9, side: each", warm_up="") + TEST)
    assert [f.grade for f in report.findings] == sorted((f.grade for f in report.findings), key=list(Grade).index)
    assert {f.grade for f in report.findings} == set(Grade)


def test_a_report_as_text_and_as_json_says_the_same() -> None:
    report = judged(day(ITEM, warm_up="") * 5)
    assert report.as_text().splitlines()[0] == "Test hips: 0 errors, 1 warnings, 0 notes"
    assert report.as_text().splitlines()[1] == str(report.findings[0])
    assert report.as_json() == {
        "title": "Test hips",
        "ok": True,
        "findings": [
            {
                "grade": "warning",
                "code": "no-warm-up",
                "days": [1, 2, 3, 4, 5],
                "what": "a session without a warm-up",
                "why": "A muscle is stretched warm: ACSM position stand (Garber et al. 2011)",
            }
        ],
    }


def test_light_work_at_the_beginning_is_a_warm_up() -> None:
    assert judged(day("movement: sway, reps: 8", ITEM, warm_up="") * 5).findings == ()


def test_only_the_declared_muscles_are_judged() -> None:
    neck = "movement: neck-side-bend, hold: 5, side: each"
    assert judged(day(ITEM, neck) * 5, head=HEAD.replace("equipment: [mat]", "equipment: [mat, chair]")).findings == ()


def test_each_declared_muscle_needs_its_own_two_days() -> None:
    head = HEAD.replace("muscles: [hamstrings]", "muscles: [hamstrings, calves]")
    calves = "movement: wall-calf-stretch, sets: 4, hold: 30, side: each"
    report = judged(day(ITEM, calves) + day(ITEM) * 5, head=head)
    (finding,) = found(report, "few-days")
    assert finding.what == "calves are stretched on 1 day of a week"


def test_practice_is_no_dose_and_no_exercise() -> None:
    report = judged(day("movement: reach, hold: 5, side: each, practice: true") * 5)
    assert "hold-short" not in codes(report)
    assert "dose-too-small" in codes(report)


def test_the_weaker_side_counts_for_too_little_and_the_fuller_one_for_too_much() -> None:
    left = "movement: reach, sets: 4, hold: 60, side: left"
    assert {"dose-too-small", "dose-large"} <= set(codes(judged(day(left) * 5)))


def test_one_exercise_in_two_places_of_a_session_is_added_up() -> None:
    half = "movement: reach, hold: 30, side: each"
    assert "exercise-short" not in codes(judged(day(half, "movement: sway, reps: 4", half) * 5))
    assert "exercise-short" in codes(judged(day(half) * 5))


@pytest.mark.parametrize(
    ("ages", "expected"), [("40-70", []), ("65+", ["hold-short-for-age"]), ("70-80", ["hold-short-for-age"])]
)
def test_from_65_on_holds_of_30_s_are_asked_for(ages: str, expected: list[str]) -> None:
    """Feland et al. 2001, Phys Ther 81:1110."""
    head = HEAD.replace("muscles:", f"ages: {ages}\nmuscles:")
    assert codes(judged(day("movement: reach, sets: 4, hold: 29, side: each") * 5, head=head)) == expected
    assert codes(judged(day("movement: reach, sets: 4, hold: 30, side: each") * 5, head=head)) == []


def test_a_one_sided_movement_without_a_side_is_doubted() -> None:
    (finding,) = found(judged(day("movement: reach, sets: 2, hold: 30") * 5), "side-missing")
    assert finding.days == (1, 2, 3, 4, 5)


@pytest.mark.parametrize(("between", "expected"), [(25, ["retest-early"]), (26, [])])
def test_a_retest_in_under_four_weeks_is_doubted(between: int, expected: list[str]) -> None:
    """Days 1 and 28 are four weeks."""
    days = "".join(REST if number % 7 == 0 else day(ITEM) for number in range(between))
    assert [code for code in codes(judged(TEST + days + TEST)) if code == "retest-early"] == expected


def test_a_measure_without_a_second_time_is_noted_and_one_never_taken_doubted() -> None:
    head = HEAD.replace("equipment:", "measures: [fingertip-to-floor, back-scratch]\nequipment:")
    report = judged(TEST + day(ITEM) * 6, head=head)
    assert [f.what for f in found(report, "no-retest")] == ["fingertip-to-floor is taken only once"]
    assert [f.what for f in found(report, "measure-missing")] == [
        "back-scratch is among the measures, and no day takes it"
    ]


def test_equipment_must_be_on_the_list_but_a_wall_is_everywhere() -> None:
    report = judged(day(ITEM, "movement: supine-hamstring-strap, sets: 2, hold: 30, side: each") * 5)
    assert found(report, "equipment")[0].what == (
        "Lying hamstring stretch with a strap needs strap or towel, which the list of equipment does not have"
    )
    towels = HEAD.replace("equipment: [mat]", "equipment: [mat, two towels]")
    assert (
        judged(day("movement: supine-hamstring-strap, sets: 2, hold: 30, side: each") * 5, head=towels).findings == ()
    )
    wall = "movement: wall-calf-stretch, sets: 2, hold: 30, side: each"
    assert found(judged(day(ITEM, wall) * 5), "equipment") == []


@pytest.mark.parametrize(
    "text",
    [
        "Prevents injuries.",
        "This prevents most running injuries",
        "injury prevention for rowers",
        "Be free of injury",
        "Fixes your posture",
        "for better posture",
        "Cures back pain",
        "heals old injuries",
        "A treatment for sciatica",
        "Protects you from injury",
        "Not hard at all. It is short, and every week it prevents injuries",
    ],
)
def test_a_promise_of_injury_prevention_posture_or_a_cure_is_found(text: str) -> None:
    assert promise(text) is not None


@pytest.mark.parametrize(
    "text",
    [
        "It does not prevent injuries.",
        "Stretching won't fix your posture",
        "No cure for back pain",
        "Treat yourself to a walk.",
        "Stop if an old injury hurts",
        "Good form beats a low chest.",
        "Move with less effort.",
        "After a knee injury ask first.",
        "Avoid this with an injured knee.",
    ],
)
def test_plain_words_and_denials_are_no_promise(text: str) -> None:
    assert promise(text) is None


def test_promises_are_looked_for_in_all_that_clients_read() -> None:
    cue = day(ITEM + ", cue: this cures back pain") + day(ITEM) * 5
    assert [f.days for f in found(judged(cue), "claim")] == [(1,)]
    how = HEAD.replace("how: Reach far.", "how: Reach far. It fixes your posture.")
    assert [f.days for f in found(judged(day(ITEM) * 6, head=how), "claim")] == [()]
