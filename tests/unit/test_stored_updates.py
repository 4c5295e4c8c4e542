"""What of an update is kept, whose it is, and which number it may have."""

from __future__ import annotations

import math
from typing import Any

import pytest

from db import inbox


@pytest.mark.parametrize(
    ("update", "chat"),
    [
        ({"update_id": 1, "message": {"chat": {"id": -5}}}, -5),
        ({"update_id": 1, "callback_query": {"from": {"id": 7}, "message": {"chat": {"id": 8}}}}, 8),
        ({"update_id": 1, "callback_query": {"from": {"id": 7}, "inline_message_id": "x"}}, 7),
        ({"update_id": 1, "my_chat_member": {"chat": {"id": 9}, "from": {"id": 7}}}, 9),
        ({"update_id": 1, "message": {"chat": {"id": "9"}, "from": {"id": 7}}}, 7),
        ({"update_id": 1, "message": {"chat": {"id": 2**63}}}, 0),
        ({"update_id": 1, "message": {"chat": {"id": 2**63 - 1}}}, 2**63 - 1),
        ({"update_id": 1, "poll": {"id": "x"}}, 0),
        ({"update_id": 1}, 0),
    ],
)
def test_an_update_belongs_to_the_chat_of_its_message_or_else_to_who_sent_it(update: dict[str, Any], chat: int) -> None:
    assert inbox.chat_of(update) == chat


@pytest.mark.parametrize(
    ("number", "is_one"),
    [(0, True), (2**63 - 1, True), (2**63, False), (-1, False), (True, False), (1.0, False), (None, False)],
)
def test_an_updates_number_is_one_that_every_database_keeps(number: object, is_one: bool) -> None:
    assert inbox.is_update({"update_id": number}) is is_one


@pytest.mark.parametrize(
    ("place", "kept"),
    [
        ({"latitude": 38.726, "longitude": -9.134, "horizontal_accuracy": 5}, {"latitude": 38.73, "longitude": -9.13}),
        ({"latitude": "far"}, None),
        ({"latitude": 1.0, "longitude": math.inf}, None),
        ({"latitude": 10**400, "longitude": 1}, None),
        ("here", None),
    ],
)
def test_a_place_is_kept_to_about_a_kilometre_or_not_at_all(place: object, kept: object) -> None:
    assert inbox.without_identity({"location": place}) == {"location": kept}
