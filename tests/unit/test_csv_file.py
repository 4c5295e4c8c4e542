"""CSV files: every cell comes back as it was, and none begins like a formula."""

from __future__ import annotations

import csv
from io import StringIO

import pytest
from hypothesis import given
from hypothesis import strategies as st

from bot.words.csv_file import Cell, csv_file


def read(body: bytes) -> list[list[str]]:
    return list(csv.reader(StringIO(body.decode("utf-8-sig"), newline="")))


@pytest.mark.parametrize("begins", ["=", "+", "-", "@", "\t", "\r", "\n", " =", "\u3000=", "＝", "＋", "－", "＠"])
def test_what_a_spreadsheet_would_reckon_with_is_quoted_as_text(begins: str) -> None:
    assert read(csv_file(["a"], [[f"{begins}1+1"]]))[1] == [f"'{begins}1+1"]


@given(st.lists(st.text(st.characters(codec="utf-8"), max_size=12), min_size=1, max_size=5))
def test_no_text_begins_like_a_formula_and_none_is_lost(cells: list[str]) -> None:
    row = read(csv_file(["h"] * len(cells), [cells]))[1]
    assert all(cell.lstrip()[:1] not in tuple("=+-@") for cell in row)
    assert all(back in (cell, f"'{cell}") for cell, back in zip(cells, row, strict=True))


def test_numbers_truth_and_nothing_are_said_plainly() -> None:
    row: list[Cell] = [3, 2.5, -1.25, True, False, None, 'a;b,"c"']
    assert read(csv_file(["h"] * 7, [row]))[1] == ["3", "2.5", "-1.25", "yes", "no", "", 'a;b,"c"']


def test_a_spreadsheet_knows_the_letters() -> None:
    assert csv_file(["Größe"], []).startswith(b"\xef\xbb\xbf")
