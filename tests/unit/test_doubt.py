"""The second voice: it asks back where the words do not go with what was read, and changes no reading."""

from __future__ import annotations

import pytest

from plans import doubts_en
from plans.checkin import Completion
from plans.doubt import HOW, WHY, Read, doubt_in
from plans.replies import read_reply
from plans.scopes import said
from plans.weighing import ANY, sums_of, words_of
from tests.bench.doubting import labelled, learnt

REPLIES = [
    *(labelled(f"blimp {tail}", {"completion": "done"}) for tail in ("today", "again", "now", "early", "late")),
    *(labelled(f"zorp {tail}", {"completion": "none", "why": "time"}) for tail in ("today", "again", "now", "early")),
]


@pytest.mark.parametrize("text", ["done", "done, pain 2", "no time today", "did half, too tired", "👍", "all done, 0"])
def test_what_is_said_plainly_is_not_doubted(text: str) -> None:
    assert read_reply(text).asked_back is None


@pytest.mark.parametrize(
    ("text", "about"),
    [
        ("every last wibble wobbled through, pain 1", "completion"),
        ("all done, the third one came out funny", "completion"),
        ("skipped it, our oven burst", "why"),
        ("said 5 but nearer to 3, all done", "pain"),
    ],
)
def test_loose_ends_are_asked_back(text: str, about: str) -> None:
    assert read_reply(text).asked_back == about


def test_what_was_not_read_is_named_and_what_was_read_stays() -> None:
    reply = read_reply("skipped it, our oven burst")
    assert (reply.completion, reply.why, reply.unsure) == (Completion.NONE, None, True)


def test_words_that_mostly_go_with_another_answer_raise_a_doubt() -> None:
    text = said("way too busy at work with meetings, no time left at all")
    none, done = (Read(completion, None, None, requested=False) for completion in (Completion.NONE, Completion.DONE))
    assert doubt_in(text, done) == "completion"
    assert doubt_in(text, none) == "why"


def test_the_words_of_a_reply_mark_the_first_and_the_last_and_take_numbers_as_one() -> None:
    assert words_of(said("done at 7")) == {"done", "at", "#", "<done", "#>"}
    assert words_of(said("")) == frozenset()


def test_every_word_of_the_table_has_a_weight_for_every_answer() -> None:
    entries = [entry.split() for entry in doubts_en.WEIGHTS.split(";")]
    assert {len(entry) for entry in entries} == {1 + len(HOW) + len(WHY)}
    assert ANY in {entry[0] for entry in entries}
    assert len({entry[0] for entry in entries}) == len(entries)


def test_the_table_is_learnt_the_same_from_the_same_replies_and_knows_no_rare_word() -> None:
    table = learnt(REPLIES)
    assert table == learnt(list(REPLIES))
    assert "early" not in table
    sums = sums_of(words_of(said("zorp")), table)
    how, why = sums[: len(HOW)], sums[len(HOW) :]
    assert HOW[how.index(max(how))] == "none"
    assert WHY[why.index(max(why))] == "time"
