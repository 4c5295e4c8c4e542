"""What remains after a course: always a programme that reads, is safe for the client and has its dose."""

from __future__ import annotations

from dataclasses import dataclass
from datetime import date, timedelta

import pytest
from hypothesis import given, settings
from hypothesis import strategies as st

from plans import dose
from plans.areas import loads
from plans.cautions import Caution
from plans.checkin import Area
from plans.equipment import Thing
from plans.fitting import Fit, fitted
from plans.lint import LEAST_A_WEEK, MUCH_A_SESSION, check, weeks
from plans.movements import MovementKind, Muscle
from plans.programme import Day, Programme, Span, Training
from plans.ranking import Followed, Outcome, Ranked, Ranking, Went, ranking
from plans.reading import read_programme
from plans.upkeep import LEAST, MOST, USUAL_SETS, Upkeep, upkeep
from plans.upkeep_file import Wording, upkeep_text
from tests import mutating
from tests.samples import SAMPLES, programme, sample, session
from tests.texts import HEAD

ALL_KINDS = tuple(MovementKind)


def day(*items: str) -> str:
    return f"  - session: {{warm-up: Walk., blocks: [{{items: [{', '.join(items)}]}}]}}\n"


def keys_of(found: Programme) -> set[str]:
    return {item.movement.key for one in found.days for _block, item in dose.items(one.session)}


def ranked(key: str, went: Went, change: float) -> Ranking:
    return Ranking(Outcome.TIGHTNESS, 30, (Ranked((key,), went, change, change, change - 1, change + 1),))


TWO = programme(
    *[day("{movement: sway, reps: 8, sets: 2}", "{movement: reach, hold: 30, sets: 2, side: each}")] * 3,
    *[day("{movement: reach, hold: 40, sets: 2, side: each}", "{movement: fold, reps: 5, load: 4 kg}")] * 2,
)


# --- for any client -------------------------------------------------------------------------------------------------


@dataclass(frozen=True)
class Client:
    """Somebody who has been through a sample: their level, body, favourites, and what their mornings went with."""

    name: str
    level: int
    fit: Fit
    favourites: list[str]
    ranking: Ranking

    @property
    def whole(self) -> Programme:
        return sample(self.name)

    def own_days(self) -> list[Day]:
        """The programme as they were handed it."""
        whole = self.whole
        return [fitted(one, self.level, self.fit, whole.catalogue(), whole.ages, whole.muscles) for one in whole.days]

    def upkeep(self) -> Upkeep:
        return upkeep(self.whole, level=self.level, fit=self.fit, ranking=self.ranking, favourites=self.favourites)


def clients(name: str) -> st.SearchStrategy[Client]:
    keys = st.sampled_from(sorted(keys_of(sample(name))))
    groups = st.builds(
        lambda key, went, change: Ranked((key,), went, change, change, change - 1, change + 1),
        keys,
        st.sampled_from(Went),
        st.floats(-3, 3),
    )
    return st.builds(
        Client,
        st.just(name),
        st.sampled_from((0, 1, 2)),
        st.builds(Fit, barred=st.sets(keys), older=st.booleans(), loose=st.booleans()),
        st.lists(keys | st.just("no-such-movement"), max_size=5),
        st.lists(groups, max_size=6).map(lambda found: Ranking(Outcome.PAIN, 40, tuple(found))),
    )


@given(st.sampled_from(SAMPLES).flatmap(clients))
@settings(max_examples=100, deadline=None)
def test_every_upkeep_is_a_programme_that_keeps_to_its_client(client: Client) -> None:
    """Reads, no errors, nothing barred, warmed up, three days, the dose, the time, no hold longer than theirs."""
    own = client.own_days()
    worked = {muscle for muscle, _side in dose.muscle_seconds(own, ALL_KINDS)} & set(client.whole.muscles)
    if not worked:
        with pytest.raises(ValueError, match="no movement is left"):
            client.upkeep()
        return
    kept = client.upkeep()
    read = read_programme(upkeep_text(client.whole, kept, barred=client.fit.barred))
    assert check(read).errors == ()
    assert not keys_of(read) & set(client.fit.barred)
    assert all(one.session is not None and one.session.warm_up is not None for one in read.days)
    assert read.training == Training(3)
    assert set(kept.muscles) == worked
    for week in weeks(read):
        seconds = dose.muscle_seconds(week, ALL_KINDS)
        assert all(seconds[muscle, side][0] >= LEAST_A_WEEK for muscle in worked for side in dose.BOTH)
    assert kept.minutes <= MOST
    if kept.minutes < LEAST:  # only where more would be of no use, or always the same
        seconds = dose.muscle_seconds([read.day(1)], ALL_KINDS)
        for _block, item in dose.items(read.day(1).session):
            enough = any(seconds.get((m, "left"), (0, 0))[1] > MUCH_A_SESSION - 60 for m in item.main)
            assert item.sets.low >= USUAL_SETS or enough
    _holds_no_longer(read, own)
    assert kept == client.upkeep()


def _holds_no_longer(read: Programme, own: list[Day]) -> None:
    longest: dict[str, int] = {}
    for one in own:
        for _block, item in dose.items(one.session):
            held = max(item.dose.hold.high if item.dose.hold else 0, *item.dose.holds, 0)
            longest[item.movement.key] = max(longest.get(item.movement.key, 0), held)
    for _block, item in dose.items(read.day(1).session):
        assert item.dose.hold is None or item.dose.hold.high <= longest[item.movement.key]
        assert item.load is None


@given(st.sampled_from(SAMPLES), st.sets(st.sampled_from(Area)))
@settings(max_examples=20, deadline=None)
def test_whatever_loads_a_barred_area_stays_out(name: str, areas: set[Area]) -> None:
    whole = sample(name)
    barred = {key for key in keys_of(whole) for area in areas if loads(whole.catalogue()[key], area)}
    try:
        kept = upkeep(whole, fit=Fit(barred=barred))
    except ValueError:
        return
    assert not set(kept.movements) & barred


def test_loose_joints_get_no_movement_that_is_not_for_them() -> None:
    for name in SAMPLES:
        whole = sample(name)
        kept = upkeep(whole, fit=Fit(loose=True))
        assert not any(Caution.LOOSE_JOINTS in whole.catalogue()[key].cautions for key in kept.movements)


# --- one by one -------------------------------------------------------------------------------------------------------


def test_favourites_come_in_and_one_that_was_eased_away_is_its_easier_neighbour() -> None:
    whole = sample("rowing-club")
    plain = upkeep(whole)
    other = next(key for key in sorted(keys_of(whole)) if key not in plain.movements)
    assert other in upkeep(whole, favourites=[other]).movements
    far = programme(*[day("{movement: far-reach, hold: 30, sets: 2, side: each}")] * 5)
    assert upkeep(far, level=1, favourites=["far-reach"]).movements == ("reach",)


def test_better_mornings_bring_a_movement_in_and_worse_ones_keep_it_out() -> None:
    whole = sample("rowing-club")
    plain = upkeep(whole).movements
    other = next(key for key in sorted(keys_of(whole)) if key not in plain)
    assert other in upkeep(whole, ranking=ranked(other, Went.BETTER, -1.5)).movements
    assert plain[0] not in upkeep(whole, ranking=ranked(plain[0], Went.WORSE, 1.5), favourites=plain).movements


def test_what_went_with_worse_mornings_is_taken_where_there_is_nothing_else() -> None:
    only = programme(*[day("{movement: reach, hold: 30, sets: 2, side: each}")] * 5)
    assert upkeep(only, ranking=ranked("reach", Went.WORSE, 2)).movements == ("reach",)


def test_a_client_at_a_lighter_level_keeps_shorter_holds() -> None:
    kept = upkeep(TWO, level=2)
    holds = [item.dose.hold for _block, item in dose.items(kept.session) if item.dose.hold]
    assert holds == [Span(20, 20)]


def test_loads_are_left_out_and_the_last_dose_is_taken() -> None:
    items = {item.movement.key: item for _block, item in dose.items(upkeep(TWO).session)}
    assert items["fold"].load is None
    assert items["reach"].dose.hold == Span(40, 40)


def test_muscles_that_nothing_works_any_more_are_left_out_and_nothing_at_all_is_refused() -> None:
    two = HEAD.replace("muscles: [hamstrings]", "muscles: [hamstrings, calves]")
    lone = read_programme(two + day("{movement: reach, hold: 30, sets: 2, side: each}"))
    assert upkeep(lone).muscles == (Muscle.HAMSTRINGS,)
    with pytest.raises(ValueError, match="no movement is left for hamstrings, calves"):
        upkeep(lone, fit=Fit(barred=["reach"]))
    with pytest.raises(ValueError, match="ease level 3"):
        upkeep(lone, level=3)


def test_many_muscles_get_their_least_dose_even_when_it_takes_longer() -> None:
    muscles = ["hip-flexors", "glutes", "hamstrings", "quadriceps", "adductors", "calves", "chest", "lats", "neck"]
    own = "".join(
        f"  own-{muscle}: {{name: Own {muscle}, how: Hold., main: [{muscle}], kind: static, sides: true}}\n"
        for muscle in muscles
    )
    text = HEAD.replace("muscles: [hamstrings]", f"muscles: [{', '.join(muscles)}]").replace("days:\n", own + "days:\n")
    items = ", ".join(f"{{movement: own-{muscle}, hold: 30, sets: 2, side: each}}" for muscle in muscles)
    whole = read_programme(text + day(items) * 7)
    kept = upkeep(whole)
    assert (len(kept.movements), kept.muscles) == (9, whole.muscles)
    assert kept.minutes > MOST
    assert check(read_programme(upkeep_text(whole, kept))).errors == ()


def test_a_coachs_own_movements_come_along_whole_and_barred_ones_not_even_by_name() -> None:
    text = HEAD.replace(
        "  sway:",
        "  lean: {name: Lean, how: Lean., main: [hamstrings], kind: contract-relax, sides: true, also: [glutes],"
        " cues: ['Slowly: breathe', \"a 'long' back\"], equipment: [strap: [towel, belt]],"
        " variations: [{name: Wide, how: Feet apart., main: [adductors, hamstrings]}],"
        " cautions: [bending-under-load], tempo: Slowly., rep-seconds: 6, link: 'https://a.example/1'}\n  sway:",
    )
    item = (
        "{movement: lean, variation: Wide, reps: 4, contract: 5, relax: 15, side: each, effort: 5, stop: 'no: further',"
        " stance: closer, grip: wide, cue: Breathe., equipment: [bench: stool], link: {to: 'https://a.example/2',"
        " start: '1:20'}}"
    )
    whole = read_programme(text + day(item, "{movement: far-reach, hold: [10, 20, 30], side: each}") * 5)
    kept = upkeep(whole)
    written = upkeep_text(whole, kept)
    read = read_programme(written)
    assert read.movements == whole.movements
    lean = next(item for _block, item in dose.items(read.day(1).session) if item.movement.key == "lean")
    first = next(item for _block, item in dose.items(whole.day(1).session) if item.movement.key == "lean")
    for word in ("movement", "variation", "stop", "stance", "grip", "cue", "equipment", "link", "effort", "dose"):
        assert getattr(lean, word) == getattr(first, word)
    assert lean.equipment == (Thing("bench", ("stool",)),)
    barred = upkeep_text(whole, upkeep(whole, fit=Fit(barred=["far-reach"])), barred=["far-reach"])
    assert "far-reach" not in barred
    assert check(read_programme(barred)).errors == ()


def test_the_file_says_what_the_session_is_word_for_word() -> None:
    for name in SAMPLES:
        kept = upkeep(sample(name))
        read = read_programme(upkeep_text(sample(name), kept)).day(1).session
        assert read is not None
        assert (read.blocks, read.warm_up) == (kept.session.blocks, kept.session.warm_up)


@pytest.mark.parametrize("text", mutating.SAMPLES)
@pytest.mark.parametrize("level", [0, 1, 2])
def test_programmes_that_use_every_word_of_the_language_are_kept_up_without_errors(text: str, level: int) -> None:
    whole = read_programme(text)
    kept = upkeep(whole, level=level)
    read = read_programme(upkeep_text(whole, kept))
    first = read.day(1).session
    assert check(read).errors == ()
    assert first is not None
    assert (read.movements, first.blocks) == (whole.movements, kept.session.blocks)


def test_a_movement_that_the_coach_drew_keeps_its_figure() -> None:
    start, end = "{forward: 0.36, hips: 42, hands: table at 0.66}", "{forward: 0.05, hips: 95, hands: table at 0.62}"
    drawn = f"figure: {{props: [table: {{at: 0.78}}], poses: [{start}, {end}]}}, harder: far-reach}}"
    text = HEAD.replace("harder: far-reach}", drawn)
    whole = read_programme(text + day("{movement: reach, hold: 30, sets: 2, side: each}") * 5)
    assert whole.movements[0].figure is not None
    assert read_programme(upkeep_text(whole, upkeep(whole))).movements == whole.movements


def test_the_tests_of_the_programme_are_taken_again_at_the_end() -> None:
    whole = sample("rowing-club")
    read = read_programme(upkeep_text(whole, upkeep(whole)))
    assert [one.number for one in read.days if one.measure is not None] == [12]
    assert read.measures == whole.measures


def test_what_is_as_many_as_feel_good_becomes_the_middle_and_a_total_is_halved() -> None:
    some = programme(
        *[day("{movement: sway, reps: as feels good}", "{movement: reach, reps: 8-10 in total, side: each}")] * 7
    )
    reps = {item.movement.key: item.dose.reps for _block, item in dose.items(upkeep(some).session)}
    assert reps == {"sway": Span(5, 5), "reach": Span(4, 4)}


def test_the_words_can_be_others() -> None:
    words = Wording(title="After: {title}", goal="{goal} And keep it.", focus="all", motivation="A picture.")
    whole = programme(session())
    read = read_programme(upkeep_text(whole, upkeep(whole, warm_up="March."), wordings={"en": words}))
    first = read.day(1).session
    assert (read.title, read.goal) == (f"After: {whole.title}", f"{whole.goal} And keep it.")
    assert first is not None
    assert first.warm_up is not None
    assert (first.focus, first.warm_up.text, read.motivation) == ("all", "March.", "A picture.")


def test_a_real_ranking_goes_in_as_it_is() -> None:
    days = [
        Followed(date(2026, 3, 2) + timedelta(days=at), frozenset({"reach", "fold"} if at % 2 else {"reach"}), at % 2)
        for at in range(30)
    ]
    assert "fold" not in upkeep(TWO, ranking=ranking(days)).movements
