"""The table of security requirements is held to what is there: each names its test or document, or says why not."""

from __future__ import annotations

import ast
import re
from collections import Counter
from collections.abc import Mapping
from dataclasses import dataclass
from functools import cache
from pathlib import Path

import pytest

from bot import painting, receiving, rehearser, sending, webhook
from bot.flows import groups
from bot.practice.limits import MEBIBYTE
from db import links
from plans import nodes
from plans.figures import raster

ROOT = Path(__file__).parents[2]
TABLE = ROOT / "tests" / "references" / "asvs-5.0.tsv"
README, DEVELOPERS = ((ROOT / name).read_text(encoding="utf-8") for name in ("README.md", "DEVELOPERS.md"))


@dataclass(frozen=True, slots=True)
class Row:
    number: str
    level: str
    about: str
    answer: str
    by: str
    why: str


def rows() -> list[Row]:
    lines = [line for line in TABLE.read_text(encoding="utf-8").splitlines() if not line.startswith("#")]
    return [Row(*line.split("\t")) for line in lines[1:]]


@cache
def functions_in(file: str) -> frozenset[str]:
    tree = ast.parse((ROOT / file).read_text(encoding="utf-8"))
    kinds = (ast.FunctionDef, ast.AsyncFunctionDef)
    return frozenset(node.name for node in ast.walk(tree) if isinstance(node, kinds))


def test_all_requirements_of_both_levels_are_answered_once() -> None:
    found = rows()
    numbers = [tuple(int(part) for part in row.number.split(".")) for row in found]
    assert numbers == sorted(set(numbers))
    assert Counter(row.level for row in found) == {"1": 70, "2": 184}
    assert {number[0] for number in numbers} == set(range(1, 18))


@pytest.mark.parametrize("row", rows(), ids=lambda row: row.number)
def test_an_answer_names_what_is_there_and_says_why(row: Row) -> None:
    assert row.answer in ("held", "operator", "not-used", "open")
    assert len(row.why) > 15, "each says why"
    assert row.why.endswith((".", ")"))
    assert (row.answer == "held") <= bool(row.by), "what is held is held by something"
    assert (row.answer == "not-used") <= (row.by == "")
    for name in row.by.split():
        file, _, test = name.partition("::")
        assert (ROOT / file).is_file(), name
        assert not test or test in functions_in(file), name


def test_what_is_open_and_what_the_operator_has_to_do_stands_in_the_readme() -> None:
    section = README.partition("## Security")[2].partition("\n## ")[0]
    for row in rows():
        if row.answer == "open":
            assert row.number in section, f"{row.number} is open and not told"
    for words in ("proxy", "verify-full", "two-step", "token", "backup"):
        assert words in section


LIMITS: Mapping[str, int | float] = {
    "programme file, bytes": receiving.LARGEST_DOCUMENT,
    "programme file, characters": nodes.LONGEST,
    "programme file, values": nodes.MOST,
    "programme file, lists in lists": nodes.DEEPEST,
    "update by webhook, bytes": webhook.LARGEST_UPDATE,
    "wrong links a chat and hour": links.GUESSES,
    "coach's link, days": links.COACH_LINK_DAYS,
    "message to many, characters": groups.LONGEST,
    "drawing, pixels": raster.MOST_PIXELS,
    "drawing, seconds": painting.SECONDS,
    "rehearsal, seconds": rehearser.SECONDS,
    "message's picture, seconds": sending.DRAWING_SECONDS,
}


def test_the_limits_in_the_documents_are_the_codes() -> None:
    section = DEVELOPERS.partition("## Limits and cryptography")[2].partition("\n## ")[0]
    told = {
        name: float(number.replace(",", ""))
        for name, number in re.findall(r"^\| ([a-z][^|]+) \| ([\d,.]+) \|", section, re.M)
    }
    assert told == {name: float(number) for name, number in LIMITS.items()}
    assert receiving.LARGEST_DOCUMENT == 5 * MEBIBYTE
