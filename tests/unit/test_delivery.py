from __future__ import annotations

import pytest

from db.delivery import (
    ENOUGH,
    LANES,
    REPEATED,
    Failure,
    Kind,
    Next,
    Reason,
    State,
    after_failure,
    as_repeat,
    changed,
    without_markup,
)


def following(reason: Reason, kind: Kind = Kind.ANSWER, attempts: int = 1, marked_up: bool = False) -> Next:
    return after_failure(Failure(reason, "Name", retry_after=7.0), kind=kind, attempts=attempts, marked_up=marked_up)


@pytest.mark.parametrize("kind", Kind)
@pytest.mark.parametrize("reason", [Reason.NEVER_CONNECTED, Reason.SERVER_ERROR, Reason.TOKEN_REFUSED])
def test_what_surely_did_not_arrive_is_tried_again_whatever_it_is(kind: Kind, reason: Reason) -> None:
    assert following(reason, kind, attempts=3) == Next(State.WAITING, why="Name", pause=4.0)


@pytest.mark.parametrize("kind", [Kind.SESSION, Kind.NUDGE, Kind.DIGEST])
def test_a_lost_answer_leaves_a_session_nudge_or_digest_unknown(kind: Kind) -> None:
    assert following(Reason.ANSWER_LOST, kind) == Next(State.UNKNOWN, why="Name")


@pytest.mark.parametrize("kind", [Kind.ANSWER, Kind.EDIT, Kind.TAP])
def test_a_lost_answer_sends_answers_edits_and_taps_again_but_not_for_ever(kind: Kind) -> None:
    assert following(Reason.ANSWER_LOST, kind) == Next(State.WAITING, why="Name", pause=1.0)
    assert following(Reason.ANSWER_LOST, kind, attempts=ENOUGH).state is State.UNKNOWN


def test_a_lost_answer_sends_an_alert_again_marked_as_a_repeat_however_often() -> None:
    assert following(Reason.ANSWER_LOST, Kind.ALERT, attempts=100) == Next(
        State.WAITING, why="Name", pause=300.0, repeat=True
    )


def test_too_many_waits_as_long_as_the_platform_says() -> None:
    assert following(Reason.TOO_MANY).pause == 7.0


def test_a_block_is_final_and_makes_the_chat_unreachable() -> None:
    assert following(Reason.BLOCKED) == Next(State.REFUSED, why="Name", unreachable=True)


@pytest.mark.parametrize("reason", [Reason.NOT_MODIFIED, Reason.QUERY_TOO_OLD])
def test_an_edit_that_changes_nothing_and_a_late_tap_count_as_sent(reason: Reason) -> None:
    assert following(reason).state is State.SENT


def test_markup_that_cannot_be_read_is_taken_away_once_and_then_the_message_is_refused() -> None:
    assert following(Reason.BAD_REQUEST, marked_up=True) == Next(State.WAITING, why="Name", plain=True)
    assert following(Reason.BAD_REQUEST) == Next(State.REFUSED, why="Name")


def test_an_alert_that_is_refused_is_tried_again_before_it_waits_for_its_next_call() -> None:
    assert following(Reason.BAD_REQUEST, Kind.ALERT, marked_up=True).plain is True
    assert following(Reason.BAD_REQUEST, Kind.ALERT, attempts=2) == Next(State.WAITING, why="Name", pause=2.0)
    assert following(Reason.BAD_REQUEST, Kind.ALERT, attempts=ENOUGH).state is State.REFUSED


def test_every_reason_leads_somewhere_for_every_kind() -> None:
    ends = {following(reason, kind).state for reason in Reason for kind in Kind}
    assert ends == {State.WAITING, State.SENT, State.UNKNOWN, State.REFUSED}


def test_alerts_go_before_everything_else() -> None:
    assert min(LANES, key=lambda kind: LANES[kind]) is Kind.ALERT
    assert set(LANES) == set(Kind)


def test_a_repeat_says_so_once_in_its_own_words_or_ours() -> None:
    once = as_repeat({"text": "Please look."})
    assert once["text"] == f"{REPEATED}\n\nPlease look."
    assert as_repeat(once) == once
    assert as_repeat({"text": "Bitte.", "again": "Noch einmal:"})["text"] == "Noch einmal:\n\nBitte."
    assert as_repeat({"photo": {}, "caption": "See."})["caption"] == f"{REPEATED}\n\nSee."


def test_plain_text_has_no_tags_and_keeps_its_smaller_than_signs() -> None:
    payload = {"caption": '<a href="x">go</a> &amp; 3 < 5 <i>now', "parse_mode": "HTML", "photo": {}}
    assert without_markup(payload) == {"caption": "go & 3 < 5 now", "photo": {}}


def test_another_try_without_a_change_keeps_the_payload() -> None:
    assert changed({"text": "<b>x</b>"}, Next(State.WAITING)) == {"text": "<b>x</b>"}
