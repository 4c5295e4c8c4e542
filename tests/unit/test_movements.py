"""The library of movements hangs together: chains are whole, texts fit a phone, and what needs a caution has one."""

from __future__ import annotations

import re
from collections import Counter
from collections.abc import Callable, Iterator
from importlib.resources import files

from plans.movements import Movement, MovementKind, Muscle, harder_than, library
from plans.nodes import read_nodes

CHAINS = [
    ["cross-body-shoulder", "sleeper-stretch"],
    ["deep-squat-hold", "goblet-squat-hold"],
    ["hip-hinge-drill", "romanian-deadlift"],
    ["side-lying-quadriceps", "standing-quadriceps"],
    ["supine-figure-four", "seated-figure-four", "pigeon-on-a-bench"],
    ["supine-hamstring-strap", "standing-hamstring-hinge", "elevated-hamstring-hinge"],
    ["supine-hip-flexor-edge", "half-kneeling-hip-flexor", "rear-foot-raised-hip-flexor"],
    ["wall-calf-stretch", "step-calf-stretch"],
]
KNEELING = re.compile(r"\bkneel\w*|\bhands and knees\b", re.IGNORECASE)
ONE_LEG = re.compile(r"\bon one leg\b", re.IGNORECASE)
PROMISES = re.compile(r"\b(?:prevent|posture|cure|heal|fix|correct|guarantee|detox)\w*|!", re.IGNORECASE)
MOVING = (MovementKind.DYNAMIC, MovementKind.CONTROL)


def failing(good: Callable[[Movement], bool], *, among: Callable[[Movement], bool] | None = None) -> list[str]:
    """The keys of the movements that are not good; raises when there is none to look at."""
    chosen = [movement for movement in library().values() if among is None or among(movement)]
    if not chosen:
        raise LookupError("no movement of this sort in the library")
    return [movement.key for movement in chosen if not good(movement)]


def neighbours() -> Iterator[tuple[Movement, Movement]]:
    """Every pair of an easier and a harder movement, as the easier one names it."""
    return ((m, library()[m.harder]) for m in library().values() if m.harder is not None)


def cautioned(*words: str) -> Callable[[Movement], bool]:
    """Whether one caution of a movement has all the words."""
    return lambda movement: any(all(word in text.lower() for word in words) for text in movement.cautions)


def texts(movement: Movement) -> list[str]:
    variations = [variation.how for variation in movement.variations]
    return [movement.how, *movement.cues, *movement.faults, *movement.cautions, *variations]


def sentences(text: str) -> int:
    return len(re.findall(r"\.(?:\s|$)", text))


def test_there_are_movements_for_the_whole_body_but_the_forearms() -> None:
    assert len(library()) >= 25
    worked = {muscle for movement in library().values() for muscle in movement.main}
    assert set(Muscle) - worked == {Muscle.FOREARMS}


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


def test_the_chains_are_these_and_no_others() -> None:
    starts = [m.key for m in library().values() if m.easier is None and m.harder is not None]
    assert sorted([key, *harder_than(key, library())] for key in starts) == CHAINS
    in_a_chain = {m.key for m in library().values() if m.easier or m.harder}
    assert in_a_chain == {key for chain in CHAINS for key in chain}


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


def test_loaded_work_says_who_should_leave_it_out() -> None:
    assert failing(cautioned("under load", "qualified"), among=lambda m: m.kind is MovementKind.LOADED) == []


def test_kneeling_says_what_to_do_for_the_knees() -> None:
    assert failing(cautioned("knee"), among=lambda m: bool(KNEELING.search(m.how))) == []


def test_neck_work_stays_short_of_the_end_and_stops_with_dizziness() -> None:
    among = failing(lambda m: Muscle.NECK not in m.main)
    assert among == ["neck-turns", "neck-side-bend"]
    assert failing(cautioned("short of the end", "dizziness"), among=lambda m: m.key in among) == []


def test_standing_on_one_leg_has_something_to_hold() -> None:
    def on_one_leg(movement: Movement) -> bool:
        return any(ONE_LEG.search(text) for text in movement.cautions)

    assert failing(lambda m: cautioned("keep a hand")(m) or cautioned("keep hold")(m), among=on_one_leg) == []
    assert failing(lambda m: bool(m.equipment), among=on_one_leg) == []
    assert len(library()) - len(failing(on_one_leg)) >= 4


def test_folds_that_stretch_the_back_of_the_leg_name_tingling() -> None:
    def folds(movement: Movement) -> bool:
        worked = {*movement.main, *movement.also}
        return movement.kind is MovementKind.STATIC and Muscle.HAMSTRINGS in worked

    assert failing(cautioned("tingles"), among=folds) == []


def test_a_head_below_the_heart_comes_up_slowly() -> None:
    low = ("childs-pose", "standing-hamstring-hinge", "overhead-lat-reach")
    assert failing(cautioned("head is low", "come up slowly"), among=lambda m: m.key in low) == []


def test_after_a_hip_replacement_the_crossed_hip_waits_for_the_surgeon() -> None:
    assert failing(cautioned("hip replacement", "surgeon"), among=lambda m: Muscle.HIP_ROTATORS in m.main) == []
