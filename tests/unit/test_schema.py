"""The JSON Schema for editors: whatever the checker reads, it allows; what is plainly wrong, it marks."""

from __future__ import annotations

import json
import random
from importlib.resources import files
from typing import Any

import pytest
from jsonschema import Draft202012Validator

from plans.nodes import read_nodes
from plans.reading import read_programme
from plans.schema import json_schema
from tests.mutating import mutant, verdict
from tests.texts import HEAD, REST, session

SCHEMA = Draft202012Validator(json_schema())
LIBRARY = files("plans.library")
SAMPLES = sorted(
    file.name for file in LIBRARY.iterdir() if file.name.endswith(".yaml") and file.name != "cautions.yaml"
)
ITEM = "{movement: reach, hold: 30, side: each}"


def complaints(text: str) -> list[str]:
    return [error.message for error in SCHEMA.iter_errors(read_nodes(text).data)]


def test_the_schema_is_one_and_has_no_names_of_the_program() -> None:
    Draft202012Validator.check_schema(json_schema())
    assert "Changing" not in json.dumps(json_schema())


@pytest.mark.parametrize("name", SAMPLES)
def test_the_samples_are_allowed_and_point_to_it(name: str) -> None:
    text = LIBRARY.joinpath(name).read_text(encoding="utf-8")
    assert text.startswith("# yaml-language-server: $schema=programme.schema.json\n")
    assert complaints(text) == []


WORDS: list[str] = [
    "{movement: reach, hold: {week 1: 30, day 9: 20-30}, side: each}",
    "{movement: reach, hold: {start: 30, each-week: 5, at-most: 2 min}, side: each}",
    "{movement: reach, hold: [10, 20, 30], side: each}",
    "{movement: {week 1: reach, week 2: far-reach}, reps: up to 12, last-hold: 20, side: each}",
    "{movement: sway, reps: As feels good, last-hold: {seconds: 20, equipment: [strap: towel], effort: 5}}",
    "{movement: sway, reps: {week 1: about 8, week 2: 8–10}, load: {start: 4 kg, each-week: 0.5 kg}, held: low}",
    "{movement: reach, reps: 16 in total, side: alternate, other-side: held, build-up: range, stop: early}",
    "{movement: reach, reps: 8, side: left, other-side: {movement: sway}, equipment: [mat, {strap: [towel, belt]}]}",
    "{movement: sway, flow: 2 min, from: week 2, until: day 20, optional: true, stance: {week 1: wide}, grip: soft}",
    "{movement: sway, reps: 8, sets: 2-3, squeeze: 3, rest: {week 1: 20, week 3: 10}, link: 'https://example.org/x'}",
    "{movement: reach, reps: 3, contract: 6, relax: 20, side: each, cue: {week 1: low, week 2: high}}",
    "{movement: sway, breaths: 6-8, practice: true, link: {to: 'https://example.org/x', start: '1:02'}}",
]


@pytest.mark.parametrize("item", WORDS)
def test_every_word_of_an_item_is_allowed_where_the_checker_reads_it(item: str) -> None:
    text = HEAD + f"  - session: {{blocks: [{{items: [{{movement: sway, reps: 8}}, {item}]}}]}}\n"
    read_programme(text)
    assert complaints(text) == []


def test_every_word_of_a_programme_is_allowed_where_the_checker_reads_it() -> None:
    head = HEAD.replace("muscles:", "ages: 65+\ntraining-days: [monday, friday]\npace: together\nmuscles:").replace(
        "days:\n",
        "settings: {pain-clean: 1}\nsessions:\n  short:\n    warm-up: {text: Walk., time: 3 min}\n"
        f"    blocks: [{{title: Round, time: 5 min, change: 5, items: [{ITEM}]}},"
        f" {{rounds: {{week 1: 2}}, items: [{ITEM}]}}]\n"
        "days:\n",
    )
    text = (
        head
        + "  - {session: short, times: 2, caution: Slow., link: 'https://example.org/x'}\n  - as-days: 1-2\n"
        + REST
    )
    read_programme(text)
    assert complaints(text) == []


WRONG: list[tuple[str, str]] = [
    ("hold: 30", "hodl: 30"),
    ("hold: 30", "hold: -5"),
    ("hold: 30", "hold: soon"),
    ("hold: 30", "hold: {weak 1: 30}"),
    ("side: each", "side: both-of-them"),
    ("rounds: 2", "rounds: many"),
    ("muscles: [hamstrings]", "muscles: [hamstring]"),
    ("title: Test hips", "title: ''"),
]


@pytest.mark.parametrize(("was", "now"), WRONG)
def test_what_is_plainly_wrong_is_marked(was: str, now: str) -> None:
    text: Any = (HEAD + session() + REST).replace(was, now)
    assert complaints(text) != []


def test_every_broken_file_that_the_checker_still_reads_is_allowed() -> None:
    chance = random.Random(11)
    read = [text for text in (mutant(chance) for _ in range(500)) if verdict(text) == "programme"]
    assert len(read) > 20
    assert [text for text in read if complaints(text)] == []
