"""Replies in Spanish and German with labels written by hand; source: this project, no outside data.

*Own* replies were written beside the tables, which are held to them to the letter. *By others*: written and labelled by
somebody who had not seen the tables, and never learnt from.
"""

from __future__ import annotations

import json
from functools import lru_cache
from pathlib import Path
from typing import Any, NamedTuple

import pytest

from plans.glossing import GLOSSED, in_english, tables_of
from plans.replies import read_reply

PLAIN = read_reply("done").as_json() | {"completion": None}


class Row(NamedTuple):
    """One labelled reply."""

    language: str
    text: str
    label: dict[str, Any]


@lru_cache(maxsize=1)
def own() -> tuple[Row, ...]:
    return tuple(row for language in GLOSSED for row in _rows(language, f"replies-{language}.tsv"))


def _rows(language: str, name: str) -> list[Row]:
    lines = (Path(__file__).parent / name).read_text("utf-8").splitlines()
    return [Row(language, text, PLAIN | json.loads(label)) for text, label in (line.split("\t") for line in lines)]


@pytest.mark.parametrize("row", own(), ids=lambda row: f"{row.language}: {row.text[:60]}")
def test_it_is_read_as_it_is_labelled_or_asked_back(row: Row) -> None:
    found = read_reply(row.text, language=row.language).as_json()
    asked = row.label | {"unsure": True}
    suspected = asked | {"red_flag": row.label["red_flag"] or found["red_flag"]}
    assert found in (row.label, asked, suspected), in_english(row.text, row.language)


def test_few_of_them_are_asked_back_without_need() -> None:
    sure = [row for row in own() if not row.label["unsure"]]
    asked = [row.text for row in sure if read_reply(row.text, language=row.language).unsure]
    assert len(asked) <= 0.03 * len(sure), asked


@pytest.mark.parametrize("language", GLOSSED)
def test_there_are_enough_of_them_and_red_flags_of_every_level(language: str) -> None:
    labels = [row.label for row in own() if row.language == language]
    assert len(labels) >= 150
    assert {label["red_flag"] for label in labels} == {None, "clinician", "same-day", "emergency"}


@pytest.mark.parametrize("language", GLOSSED)
def test_no_phrase_stands_twice(language: str) -> None:
    from plans.wording import opened

    seen: dict[tuple[str, ...], str] = {}
    for english, lines in tables_of(language).PHRASES.items():
        for phrase in opened(lines):
            assert seen.setdefault(phrase, english) == english, phrase
