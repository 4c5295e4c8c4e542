"""The library of movements hangs together: chains are whole, texts fit a phone, and what needs a caution has one."""

from __future__ import annotations

import re
from collections import Counter
from collections.abc import Callable, Iterator
from importlib.resources import files

from plans.cautions import Caution, caution_words
from plans.movements import Movement, MovementKind, Muscle, harder_than, library
from plans.nodes import read_nodes

THINGS = {
    *("mat", "chair", "wall", "strap", "step", "rail", "bench", "bed", "block", "stick", "light weight", "table"),
    *("door frame", "rolled towel", "cushion", "ball", "band"),
}
KNEELING = re.compile(r"^(?:half-)?kneel|\bkneel (?:on|upright)|\bhands and knees\b", re.IGNORECASE)
PROMISES = re.compile(r"\b(?:prevent|posture|cure|heal|fix|correct|guarantee|detox)\w*|!", re.IGNORECASE)
MOVING = (MovementKind.DYNAMIC, MovementKind.CONTROL, MovementKind.ACTIVE, MovementKind.LOADED)


def failing(good: Callable[[Movement], bool], *, among: Callable[[Movement], bool] | None = None) -> list[str]:
    """The keys of the movements that are not good; raises when there is none to look at."""
    chosen = [movement for movement in library().values() if among is None or among(movement)]
    if not chosen:
        raise LookupError("no movement of this sort in the library")
    return [movement.key for movement in chosen if not good(movement)]


def neighbours() -> Iterator[tuple[Movement, Movement]]:
    """Every pair of an easier and a harder movement, as the easier one names it."""
    return ((m, library()[m.harder]) for m in library().values() if m.harder is not None)


def says(*words: str) -> Callable[[Movement], bool]:
    """Whether one line of a movement's care has all the words."""
    return lambda movement: any(all(word in text.lower() for word in words) for text in movement.care)


def has(caution: Caution) -> Callable[[Movement], bool]:
    """Whether a movement has a caution."""
    return lambda movement: caution in movement.cautions


def texts(movement: Movement) -> list[str]:
    variations = [variation.how for variation in movement.variations]
    return [movement.how, *movement.cues, *movement.faults, *movement.care, *variations]


def sentences(text: str) -> int:
    return len(re.findall(r"\.(?:\s|$)", text))


def test_there_are_movements_for_the_whole_body() -> None:
    assert len(library()) >= 80
    worked = Counter(muscle for movement in library().values() for muscle in movement.main)
    assert [muscle for muscle in Muscle if worked[muscle] < 2] == []
    assert {movement.kind for movement in library().values()} == set(MovementKind)


def test_a_key_stands_once_in_all_files() -> None:
    counts: Counter[str] = Counter()
    for entry in files("plans.library").joinpath("movements").iterdir():
        if entry.name.endswith(".yaml"):
            located = read_nodes(entry.read_text(encoding="utf-8"))
            assert located.twice == ()
            counts.update(located.data.keys())
    assert [key for key, count in counts.items() if count > 1] == []
    assert set(counts) == set(library())


def test_every_neighbour_exists() -> None:
    named = {key for m in library().values() for key in (m.easier, m.harder) if key is not None}
    assert named - set(library()) == set()


def chains() -> list[list[str]]:
    starts = [m.key for m in library().values() if m.easier is None and m.harder is not None]
    return [[key, *harder_than(key, library())] for key in starts]


def test_no_movement_is_an_orphan_and_every_chain_ends() -> None:
    assert failing(lambda m: m.easier is not None or m.harder is not None) == []
    assert sorted(key for chain in chains() for key in chain) == sorted(library())
    assert sum(1 for chain in chains() if len(chain) >= 3) >= 6


def test_no_chain_comes_round() -> None:
    for movement in library().values():
        up = [movement.key]
        while (following := library()[up[-1]].harder) is not None:
            assert following not in up
            up.append(following)


def test_neighbours_name_each_other() -> None:
    assert [(easy.key, hard.key) for easy, hard in neighbours() if hard.easier != easy.key] == []
    assert failing(lambda m: library()[m.easier or ""].harder == m.key, among=lambda m: m.easier is not None) == []


def test_neighbours_share_a_main_muscle() -> None:
    assert [(easy.key, hard.key) for easy, hard in neighbours() if not set(easy.main) & set(hard.main)] == []


def test_neighbours_are_done_on_the_same_sides() -> None:
    assert [(easy.key, hard.key) for easy, hard in neighbours() if easy.sides is not hard.sides] == []


def test_loaded_work_has_an_easier_neighbour_without_load() -> None:
    easier = {hard.key: easy.kind for easy, hard in neighbours()}
    loaded = [m.key for m in library().values() if m.kind is MovementKind.LOADED]
    assert len(loaded) >= 2
    assert [key for key in loaded if easier.get(key, MovementKind.LOADED) is MovementKind.LOADED] == []


def test_how_to_do_it_is_two_or_three_short_sentences() -> None:
    assert failing(lambda m: 2 <= sentences(m.how) <= 3 and len(m.how) <= 240) == []


def test_there_are_two_or_three_cues_and_two_faults_a_line_each() -> None:
    assert failing(lambda m: 2 <= len(m.cues) <= 3 and len(m.faults) == 2) == []
    assert failing(lambda m: all(len(text) <= 80 for text in (*m.cues, *m.faults)) and len(m.name) <= 50) == []


def test_texts_are_whole_sentences() -> None:
    assert failing(lambda m: all(text[0].isupper() and text.endswith(".") for text in texts(m))) == []


def test_texts_promise_nothing_and_do_not_shout() -> None:
    assert failing(lambda m: not any(PROMISES.search(text) for text in (m.name, *texts(m)))) == []


def test_no_muscle_is_named_twice() -> None:
    assert failing(lambda m: len({*m.main, *m.also}) == len(m.main) + len(m.also)) == []


def test_moving_work_has_a_tempo() -> None:
    assert failing(lambda m: m.tempo is not None, among=lambda m: m.kind in MOVING) == []


def test_every_caution_has_its_text_and_its_screening_question_and_is_used() -> None:
    assert set(caution_words()) == set(Caution)
    assert [c for c, words in caution_words().items() if not words.question.endswith("?")] == []
    assert [c for c, words in caution_words().items() if not words.text.endswith(".") or len(words.text) > 240] == []
    used = {caution for movement in library().values() for caution in movement.cautions}
    assert set(Caution) - used == set()


def worked(movement: Movement) -> set[Muscle]:
    return {*movement.main, *movement.also}


def said(movement: Movement) -> str:
    return " ".join([movement.name, *texts(movement)]).lower()


def test_bending_under_load_is_said_and_its_easier_neighbour_has_none() -> None:
    legs = {Muscle.HAMSTRINGS, Muscle.ADDUCTORS, Muscle.GLUTES}
    bending = failing(lambda m: not (m.kind is MovementKind.LOADED and legs & set(m.main)))
    assert bending == ["romanian-deadlift", "goblet-squat-hold"]
    assert failing(has(Caution.BENDING_UNDER_LOAD), among=lambda m: m.key in bending) == []


def test_kneeling_says_what_to_do_for_the_knees() -> None:
    kneels = lambda m: bool(KNEELING.search(m.how))  # noqa: E731
    assert failing(has(Caution.KNEELING), among=kneels) == []
    assert failing(lambda m: "knee" in " ".join(m.care).lower() or "pad" in said(m), among=kneels) == []


def test_weight_on_the_hands_is_said() -> None:
    on_hands = lambda m: "hands and knees" in m.how.lower() and "walk the hands" not in m.how.lower()  # noqa: E731
    assert failing(has(Caution.WEIGHT_ON_WRISTS), among=on_hands) == []


def test_neck_work_stays_short_of_the_end_and_stops_with_dizziness() -> None:
    assert failing(has(Caution.END_RANGE_NECK), among=lambda m: Muscle.NECK in worked(m)) == []
    assert failing(says("short of the end", "dizziness"), among=lambda m: Muscle.NECK in m.main) == []


def test_standing_on_one_leg_has_something_to_hold() -> None:
    on_one_leg = has(Caution.ONE_LEG_BALANCE)
    assert failing(lambda m: "hand on" in said(m) or "hold of" in said(m), among=on_one_leg) == []
    assert failing(lambda m: bool(m.equipment), among=on_one_leg) == []
    assert failing(on_one_leg, among=lambda m: "on one leg" in " ".join([m.how, *m.care]).lower()) == []


def test_folds_that_stretch_the_back_of_the_leg_name_tingling() -> None:
    def folds(movement: Movement) -> bool:
        holding = movement.kind not in (MovementKind.DYNAMIC, MovementKind.CONTROL)
        return holding and Muscle.HAMSTRINGS in worked(movement)

    assert failing(has(Caution.FOLD_WITH_LEG_SYMPTOMS), among=folds) == []


def test_a_low_head_comes_up_slowly() -> None:
    low = has(Caution.HEAD_BELOW_HEART)
    assert failing(low, among=lambda m: "head is low" in said(m)) == []
    assert "come up slowly" in caution_words()[Caution.HEAD_BELOW_HEART].text.lower()


def test_after_a_hip_replacement_the_crossed_or_folded_hip_waits_for_the_surgeon() -> None:
    held = (MovementKind.STATIC, MovementKind.ACTIVE, MovementKind.CONTRACT_RELAX)
    turned = lambda m: Muscle.HIP_ROTATORS in m.main and m.kind in held  # noqa: E731
    assert failing(has(Caution.JOINT_REPLACEMENT), among=turned) == []
    hips = {Muscle.GLUTES, Muscle.HIP_ROTATORS, Muscle.HIP_FLEXORS}
    among = lambda m: has(Caution.JOINT_REPLACEMENT)(m) and bool(hips & set(m.main)) and m.kind in held  # noqa: E731
    assert failing(lambda m: "replacement" in said(m) or "knee" in said(m), among=among) == []


def test_bending_back_and_lying_on_the_belly_are_said() -> None:
    assert failing(has(Caution.BACK_BEND), among=lambda m: "belly" in m.how and m.kind is MovementKind.STATIC) == []
    assert failing(has(Caution.PREGNANCY), among=lambda m: "on your belly" in m.how.lower()) == []


def test_every_thing_is_a_plain_one() -> None:
    things = {thing.name for movement in library().values() for thing in movement.equipment}
    assert things == THINGS


def test_repetitions_have_their_seconds_when_they_are_not_held() -> None:
    assert failing(lambda m: m.rep_seconds is not None, among=lambda m: m.kind in MOVING) == []
    assert failing(lambda m: m.rep_seconds is None, among=lambda m: m.kind is MovementKind.STATIC) == []


def test_a_variation_is_a_sentence_and_no_harder_movement() -> None:
    assert failing(lambda m: len({v.name for v in m.variations}) == len(m.variations)) == []
    assert failing(lambda m: bool(m.variations)) == []


def test_every_kneeling_or_lying_form_needs_something_soft() -> None:
    floor = re.compile(r"\b(?:lie|lying) (?:on|in)|hands and knees|\bkneel on", re.IGNORECASE)
    soft = {"mat", "bed"}
    on_floor = lambda m: bool(floor.search(m.how))  # noqa: E731
    assert failing(lambda m: bool(soft & {thing.name for thing in m.equipment}), among=on_floor) == []
