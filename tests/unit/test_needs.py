"""Whom a coach looks at first: each reason by itself, and their order."""

from __future__ import annotations

from dataclasses import replace
from datetime import date, timedelta
from typing import Any

import pytest

from plans.checkin import CheckIn, Completion
from plans.comparing import Due, completion
from plans.needs import Standing, Told, Why, first, named, needs
from plans.trends import Direction, Trend

LAST = date(2026, 4, 26)
FLAT = Trend(Direction.UNCLEAR, 20, 27, 0.0, -0.5, 0.5)
RISING = Trend(Direction.RISING, 20, 27, 2.0, 0.5, 3.0)
ALWAYS = [Due(LAST - timedelta(days=back), CheckIn(Completion.DONE)) for back in range(56)]
FINE = Standing(
    waiting=False,
    finished=False,
    reachable=True,
    silent=0,
    told=(),
    pain=FLAT,
    tightness=FLAT,
    completion=completion([ALWAYS], LAST),
)
NOW = Told("excessive", {"pain": 6}, at_once=True, new=True)
LISTED = Told("stuck", {"tries": 3}, at_once=False, new=True)
LESS = completion(
    [[replace(one, said=CheckIn(Completion.NONE)) if one.on > LAST - timedelta(days=28) else one for one in ALWAYS]],
    LAST,
)


def whys(**what: Any) -> list[Why]:
    return [need.why for need in needs(replace(FINE, **what))]


def test_most_clients_need_nothing() -> None:
    assert needs(FINE) == ()


@pytest.mark.parametrize(
    ("what", "why"),
    [
        ({"waiting": True}, Why.WAITING),
        ({"told": [NOW]}, Why.ALERT),
        ({"told": [replace(NOW, new=False)]}, Why.ALERT),
        ({"reachable": False, "silent": 9}, Why.UNREACHABLE),
        ({"pain": RISING}, Why.PAIN_RISES),
        ({"silent": 3}, Why.SILENT),
        ({"told": [LISTED]}, Why.LISTED),
        ({"worse": ["knee to wall"]}, Why.TEST_WORSE),
        ({"completion": LESS}, Why.LESS_DONE),
        ({"tightness": RISING}, Why.TIGHTNESS_RISES),
        ({"finished": True}, Why.FINISHED),
    ],
)
def test_each_reason_by_itself(what: dict[str, Any], why: Why) -> None:
    assert whys(**what) == [why]


@pytest.mark.parametrize(
    "what",
    [
        {"silent": 2},
        {"told": [replace(LISTED, new=False)]},
        {"told": [replace(LISTED, cause="silent")]},
        {"pain": replace(RISING, change=0.4)},
        {"pain": Trend(Direction.TOO_FEW, 4, 9)},
    ],
)
def test_what_is_little_or_said_anyway_is_no_reason(what: dict[str, Any]) -> None:
    assert whys(**what) == []


def test_a_waiting_client_is_told_of_once_with_the_gravest_alert() -> None:
    found = needs(
        replace(FINE, waiting=True, silent=5, told=[LISTED, NOW, Told("red-flag", {"flag": "x"}, True, True)])
    )
    assert [need.why for need in found] == [Why.WAITING, Why.ALERT, Why.LISTED]
    assert found[0].facts == {"cause": "red-flag", "flag": "x"}
    assert [need.why for need in named(found, 2)] == [Why.WAITING, Why.LISTED]


def test_the_most_urgent_come_first_and_of_two_alike_the_graver() -> None:
    clients = {
        "less": needs(replace(FINE, completion=LESS)),
        "six": needs(replace(FINE, told=[NOW])),
        "seven": needs(replace(FINE, told=[replace(NOW, facts={"pain": 7})])),
        "silent": needs(replace(FINE, silent=4)),
        "longer": needs(replace(FINE, silent=9)),
        "waits": needs(replace(FINE, waiting=True)),
    }
    assert sorted(clients, key=lambda name: first(clients[name])) == [
        "waits",
        "seven",
        "six",
        "longer",
        "silent",
        "less",
    ]
