"""Slips of the fingers in short words are put right; words that are words stay what they are."""

from __future__ import annotations

import pytest

from plans.replies import read_reply
from plans.scopes import said
from plans.slips import slips
from plans.wording import is_english


@pytest.mark.parametrize(
    ("text", "read"),
    [
        ("dobe, oain 3", "done, pain 3"),
        ("i ddi it all, lef knee hrts 2", "i did it all, left knee hurts 2"),
        ("teh snpa in my calf", "the snap in my calf"),
        ("stpo sending thse", "stop sending these"),
        ("onyl hlaf, no tmie", "only half, no time"),
    ],
)
def test_a_reply_with_slips_reads_as_it_was_meant(text: str, read: str) -> None:
    assert read_reply(text).as_json() == read_reply(read).as_json()


@pytest.mark.parametrize("word", ["form", "trial", "how", "gone", "paid", "soup", "knew", "calm", "seen", "tied"])
def test_an_ordinary_word_is_no_slip(word: str) -> None:
    assert word not in slips()
    assert said(word).units[0].text == word


def test_every_slip_leads_to_a_word_that_the_tables_have() -> None:
    assert {word for word in slips().values() if not is_english(word)} <= {"could", "would", "should", "took", "take"}
    assert not slips().keys() & set(slips().values())
