"""Answering hours: what a typed line comes to, and how it is said again."""

from __future__ import annotations

from datetime import time

import pytest

from bot.flows import answering
from bot.flows.answering import Hours
from bot.words import words


@pytest.mark.parametrize(
    ("typed", "days"),
    [
        ("17:00-20:00", None),
        ("Mon-Fri 17:00-20:00", (0, 1, 2, 3, 4)),
        ("monday to friday, 17:00 to 20:00", (0, 1, 2, 3, 4)),
        ("17:00-20:00 on Tue and Thu", (1, 3)),
        ("Fri-Mon 17:00-20:00", (0, 4, 5, 6)),
        ("sat, sun 17:00-20:00", (5, 6)),
        ("Mon-Sun 17:00-20:00", None),
        ("from 17:00 to 20:00 wednesdays", (2,)),
    ],
)
def test_a_line_is_read_with_its_weekdays(typed: str, days: tuple[int, ...] | None) -> None:
    assert answering.read(typed) == Hours(time(17), time(20), days)


def test_weekdays_are_read_in_the_coachs_language_too() -> None:
    assert answering.read("Mo bis Mi 17:00-20:00, Samstag", "de") == Hours(time(17), time(20), (0, 1, 2, 5))


@pytest.mark.parametrize("typed", ["", "Mon-Fri", "17:00", "17:00-17:00", "25:00-26:00", "1, 2, 3"])
def test_a_line_without_two_times_is_not_read(typed: str) -> None:
    assert answering.read(typed) is None


@pytest.mark.parametrize(
    ("days", "said"),
    [
        (None, "17:00 - 20:00"),
        ((0, 1, 2, 3, 4), "Mon - Fri, 17:00 - 20:00"),
        ((1, 3), "Tue, Thu, 17:00 - 20:00"),
        ((5, 6), "Sat, Sun, 17:00 - 20:00"),
    ],
)
def test_hours_are_said_with_their_weekdays(days: tuple[int, ...] | None, said: str) -> None:
    assert answering.said(Hours(time(17), time(20), days), words("en")) == said
