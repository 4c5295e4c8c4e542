"""Replies with labels written by hand from the stated meaning of each field; source: this project, no outside data.

The rows marked held-out were written after the others and the word lists were not changed for them.
"""

from __future__ import annotations

import json
from collections import Counter
from functools import lru_cache
from pathlib import Path
from typing import Any, NamedTuple

import pytest

from plans.replies import read_reply


class Row(NamedTuple):
    """One labelled reply."""

    part: str
    text: str
    label: dict[str, Any]


@lru_cache(maxsize=1)
def rows() -> tuple[Row, ...]:
    lines = (Path(__file__).parent / "replies.tsv").read_text("utf-8").splitlines()[1:]
    split = [line.split("\t") for line in lines]
    return tuple(Row(part, text, json.loads(label)) for part, text, label in split)


def outcome(row: Row) -> str:
    """Right: all equal. Asked: unsure where the label is not. All else is wrong."""
    read = read_reply(row.text).as_json()
    if read == row.label:
        return "right"
    return "asked" if read["unsure"] and not row.label["unsure"] else "wrong"


def counted(part: str) -> tuple[Counter[str], int]:
    of_part = [row for row in rows() if row.part == part]
    sure = sum(not row.label["unsure"] for row in of_part)
    return Counter(outcome(row) for row in of_part), sure


def test_there_are_enough_replies_of_every_sort() -> None:
    parts = Counter(row.part for row in rows())
    assert parts["tuned"] >= 300
    assert parts["held-out"] >= 60
    assert {row.label["red_flag"] for row in rows()} == {None, "clinician", "same-day", "emergency"}


def test_every_label_has_exactly_the_fields_of_a_reading() -> None:
    assert {tuple(row.label) for row in rows()} == {tuple(read_reply("done").as_json())}


def test_no_red_flag_is_missed_among_the_tuned_replies() -> None:
    flagged = [row for row in rows() if row.part == "tuned" and row.label["red_flag"]]
    missed = [row.text for row in flagged if read_reply(row.text).as_json()["red_flag"] != row.label["red_flag"]]
    assert missed == []


def test_no_held_out_red_flag_is_passed_over_in_silence() -> None:
    flagged = [row for row in rows() if row.part == "held-out" and row.label["red_flag"]]
    assert [row.text for row in flagged if read_reply(row.text).red_flag is None] == []


@pytest.mark.parametrize(("part", "wrong", "asked"), [("tuned", 0.005, 0.10), ("held-out", 0.12, 0.12)])
def test_few_replies_are_read_wrong_and_few_are_asked_back(part: str, wrong: float, asked: float) -> None:
    found, sure = counted(part)
    assert found["wrong"] <= wrong * found.total()
    assert found["asked"] <= asked * sure
