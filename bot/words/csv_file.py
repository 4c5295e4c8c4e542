"""Tables as CSV files that a spreadsheet opens as they are: no cell is ever taken for a formula."""

from __future__ import annotations

import csv
from collections.abc import Iterable, Sequence
from io import StringIO

from plans.checkin import CheckIn

_FORMULA = ("=", "+", "-", "@", "\t", "\r", "\n", "＝", "＋", "－", "＠")
"""What a spreadsheet may read as the beginning of a formula (OWASP, "CSV Injection")."""

Cell = str | int | float | bool | None


def csv_file(head: Sequence[str], rows: Iterable[Sequence[Cell]]) -> bytes:
    """A file in UTF-8 with a mark at its beginning, by which spreadsheets know it; every cell is in quotes."""
    out = StringIO(newline="")
    writer = csv.writer(out, quoting=csv.QUOTE_ALL, lineterminator="\r\n")
    writer.writerow(head)
    writer.writerows([_cell(cell) for cell in row] for row in rows)
    return out.getvalue().encode("utf-8-sig")


def _cell(cell: Cell) -> str:
    """The words of a cell; what a spreadsheet would reckon with is quoted as text by an apostrophe.

    >>> [_cell(cell) for cell in ("=1+1", -3.5, True, None, " @x")]
    ["'=1+1", '-3.5', 'yes', '', "' @x"]
    """
    if cell is None:
        return ""
    if isinstance(cell, bool):
        return "yes" if cell else "no"
    if isinstance(cell, int | float):
        return f"{cell:g}" if isinstance(cell, float) else str(cell)
    return f"'{cell}" if cell.startswith(_FORMULA) or cell.lstrip().startswith(_FORMULA) else cell


ANSWERED = (
    "done",
    "half",
    "why_not",
    "pain",
    "pain_kind",
    "pain_place",
    "pain_area",
    "pain_side",
    "sore",
    "tightness",
    "red_flag",
    "red_flag_state",
)
"""The columns of what was answered about a date, in every table that has one."""


def answered(said: CheckIn) -> tuple[Cell, ...]:
    """The cells under `ANSWERED`."""
    return (
        said.completion,
        said.half,
        said.why,
        said.pain,
        said.kind,
        said.place,
        said.area,
        said.side,
        said.sore or None,
        said.tightness,
        said.flag,
        said.flag_state,
    )
