from __future__ import annotations

import asyncio
from datetime import datetime, timedelta
from typing import Any

import pytest
from sqlalchemy import insert, select
from sqlalchemy.exc import IntegrityError
from sqlalchemy.ext.asyncio import AsyncSession

from db import leads, letters, marks, outbox, tidying
from db.attachments import attach, found, remember_upload
from db.delivery import Failure, Kind, Next, Reason, State
from db.engine import Database
from db.letters import Letter
from db.marks import Mark
from db.schema import Attachment, Outbox, Person
from tests.integration.fakes import NOON, plan

pytestmark = pytest.mark.usefixtures("store")


async def put(database: Database, key: str, kind: Kind = Kind.ANSWER, chat: int = 7, **more: Any) -> int:
    arguments: dict[str, Any] = {"method": "send_message", "payload": {"text": key}, "now": NOON} | more
    return await database.write(lambda session: outbox.put(session, key=key, chat=chat, kind=kind, **arguments))


async def claim(
    database: Database,
    worker: str = "w",
    *,
    at: float = 0.0,
    now: datetime = NOON,
    limit: int = 10,
) -> list[Letter]:
    async def job(session: AsyncSession) -> list[Letter]:
        await tidying.tidy(session, machine_now=at, now=now)
        return await letters.claim(session, worker, machine_now=at, now=now, lease_seconds=60, limit=limit)

    return await database.write(job)


async def mark(database: Database, id_: int, to: State, worker: str = "w", message: int | None = None) -> bool:
    return await database.merged(marks.apply_marks, Mark(id_, worker, to, NOON, message))


async def send(database: Database, id_: int, worker: str = "w", message: int = 1) -> None:
    assert await mark(database, id_, State.SENDING, worker)
    assert await mark(database, id_, State.SENT, worker, message)


async def fail(
    database: Database, letter: Letter, reason: Reason, worker: str = "w", at: float = 0.0, after: float = 0.0
) -> tuple[Next | None, list[int]]:
    told: list[int] = []

    async def unreachable(session: AsyncSession, chat: int) -> None:
        assert session.in_transaction()
        told.append(chat)

    following = await database.write(
        lambda session: outbox.failed(
            session,
            letter,
            worker,
            Failure(reason, "Name", after),
            machine_now=at,
            now=NOON,
            on_unreachable=unreachable,
        )
    )
    return following, told


async def row(database: Database, id_: int) -> Outbox:
    async with database.reading() as session:
        return await session.get_one(Outbox, id_)


def keys(letters: list[Letter]) -> list[str]:
    return [letter.payload["text"] for letter in letters]


async def test_a_second_put_with_the_same_key_is_the_first_one(database: Database) -> None:
    first = await put(database, "a")
    assert await put(database, "a", payload={"text": "other"}) == first
    assert keys(await claim(database)) == ["a"]


async def test_what_nobody_could_send_is_refused_at_once(database: Database) -> None:
    with pytest.raises(ValueError, match="'send_sticker' cannot be sent"):
        await put(database, "a", method="send_sticker")
    with pytest.raises(ValueError, match="names a row to edit"):
        await put(database, "a", method="edit_message_text")
    with pytest.raises(ValueError, match="names a row to edit"):
        await put(database, "b", edits=1)
    with pytest.raises(ValueError, match="'gossip'"):
        await put(database, "a", kind="gossip")  # type: ignore[arg-type]


async def test_the_most_urgent_lane_leaves_first_and_then_the_oldest(database: Database) -> None:
    for key, kind in [("d", Kind.DIGEST), ("s", Kind.SESSION), ("a", Kind.ANSWER), ("x", Kind.ALERT)]:
        await put(database, key, kind, chat=ord(key))
    await put(database, "t", Kind.SESSION, chat=1)
    assert keys(await claim(database, limit=3)) == ["x", "a", "s"]
    assert keys(await claim(database)) == ["t", "d"]


async def test_one_message_a_chat_is_in_flight(database: Database) -> None:
    first = await put(database, "a")
    await put(database, "b")
    await put(database, "x", Kind.ALERT)
    alert = (await claim(database))[0]
    assert alert.payload["text"] == "x"
    assert await claim(database) == []
    await send(database, alert.id)
    assert [letter.id for letter in await claim(database)] == [first]


async def test_the_database_itself_refuses_a_second_message_in_flight(database: Database) -> None:
    await put(database, "a")
    second = await put(database, "b")
    await claim(database)

    async def force(session: AsyncSession) -> None:
        (await session.get_one(Outbox, second)).state = "leased"

    with pytest.raises(IntegrityError):
        await database.write(force)


async def test_an_edit_waits_for_its_messages_id_and_brings_it(database: Database) -> None:
    session_row = await put(database, "s", Kind.SESSION)
    await put(database, "e", Kind.EDIT, method="edit_message_text", edits=session_row)
    (first,) = await claim(database)
    assert first.id == session_row
    await send(database, first.id, message=77)
    (edit,) = await claim(database)
    assert (edit.payload["text"], edit.message_id) == ("e", 77)


async def test_an_edit_that_waits_does_not_hold_up_an_answer(database: Database) -> None:
    slow = await put(database, "s", Kind.SESSION)
    await claim(database)
    letter = Letter(slow, 7, 2, Kind.SESSION, "send_message", {"text": "s"}, 0, None)
    await fail(database, letter, Reason.SERVER_ERROR)
    await put(database, "e", Kind.EDIT, method="edit_message_text", edits=slow)
    await put(database, "a")
    assert keys(await claim(database)) == ["a"]


async def test_an_edit_of_a_message_that_never_left_is_skipped(database: Database) -> None:
    target = await put(database, "s", Kind.SESSION)
    edit = await put(database, "e", Kind.EDIT, method="edit_message_text", edits=target)
    (letter,) = await claim(database)
    await mark(database, target, State.SENDING)
    await fail(database, letter, Reason.ANSWER_LOST)
    assert await claim(database) == []
    assert ((await row(database, edit)).state, (await row(database, edit)).why) == (
        "skipped",
        "nothing-to-edit",
    )


async def test_what_is_late_by_the_calendar_is_skipped(database: Database) -> None:
    late = await put(database, "s", Kind.SESSION, late_after=NOON + timedelta(hours=1))
    assert await claim(database, now=NOON + timedelta(hours=1)) == []
    assert ((await row(database, late)).state, (await row(database, late)).why) == ("skipped", "late")


async def test_backoff_is_waited_for_and_its_end_can_be_asked(database: Database) -> None:
    await put(database, "a")
    (letter,) = await claim(database)
    await mark(database, letter.id, State.SENDING)
    await fail(database, letter, Reason.SERVER_ERROR, at=100.0)
    assert await claim(database, at=100.5) == []
    async with database.reading() as session:
        assert (await letters.behind(session, 100.5)).next_at == 101.0
    (again,) = await claim(database, at=101.0)
    assert again.attempts == 1
    async with database.reading() as session:
        assert (await letters.behind(session, 101.0)).next_at is None


async def test_backoff_keeps_the_order_of_its_lane_until_it_has_failed_too_often(database: Database) -> None:
    await put(database, "first")
    await put(database, "second")
    await put(database, "alert", Kind.ALERT)
    await send(database, (await claim(database))[0].id)
    at = 0.0
    for _ in range(4):
        (letter,) = await claim(database, at=at)
        assert letter.payload["text"] == "first"
        await mark(database, letter.id, State.SENDING)
        await fail(database, letter, Reason.SERVER_ERROR, at=at)
        assert await claim(database, at=at) == []
        at += 500
    (letter,) = await claim(database, at=at)
    await mark(database, letter.id, State.SENDING)
    await fail(database, letter, Reason.SERVER_ERROR, at=at)
    assert keys(await claim(database, at=at)) == ["second"]


async def test_chats_that_are_paced_get_nothing_but_callback_answers(database: Database) -> None:
    for chat in (7, 9):
        id_ = await put(database, f"first to {chat}", chat=chat)
        await claim(database)
        await mark(database, id_, State.SENDING)
        await database.merged(marks.apply_marks, Mark(id_, "w", State.SENT, NOON, 1, chat=chat, free_at=1.0))
    await put(database, "a")
    await put(database, "b", chat=8)
    await put(database, "c", Kind.TAP, chat=9, method="answer_callback_query")
    assert keys(await claim(database, at=0.9)) == ["b", "c"]
    async with database.reading() as session:
        assert (await letters.behind(session, 0.9)).next_at == 1.0
    assert keys(await claim(database, at=1.0)) == ["a"]


async def test_marks_hold_only_for_the_worker_that_has_the_lease(database: Database) -> None:
    await put(database, "a")
    (letter,) = await claim(database, "slow", at=0.0)
    assert [again.id for again in await claim(database, "quick", at=61.0)] == [letter.id]
    assert not await mark(database, letter.id, State.SENDING, "slow")
    await send(database, letter.id, "quick", message=5)
    assert not await mark(database, letter.id, State.SENT, "slow")
    assert await mark(database, letter.id, State.SENT, "quick", message=5), "the same once more, its commit unseen"
    assert (await fail(database, letter, Reason.SERVER_ERROR, "slow"))[0] is None
    sent = await row(database, letter.id)
    assert (sent.state, sent.message_id, sent.attempts, sent.sent_at) == ("sent", 5, 1, NOON)


async def test_many_marks_at_once_each_learn_about_their_own_fence(database: Database) -> None:
    for n in range(20):
        await put(database, f"k{n}", chat=n)
    letters = await claim(database, limit=20)
    mine = await asyncio.gather(
        *(mark(database, letter.id, State.SENDING, "w" if n % 2 else "thief") for n, letter in enumerate(letters))
    )
    assert mine == [bool(n % 2) for n in range(20)]
    sent = await asyncio.gather(
        *(mark(database, letter.id, State.SENT, message=letter.id + 1000) for letter in letters)
    )
    assert sent == mine
    async with database.reading() as session:
        kept = await session.execute(select(Outbox.id, Outbox.message_id).where(Outbox.state == "sent"))
        assert all(message == id_ + 1000 for id_, message in kept)


async def test_a_block_refuses_the_message_and_tells_once(database: Database) -> None:
    async def join(session: AsyncSession) -> None:
        session.add(Person(chat=7, label="Ada", created_at=NOON))

    await database.write(join)
    await put(database, "a")
    await put(database, "b")
    told: list[list[int]] = []
    for _ in range(2):
        (letter,) = await claim(database)
        await mark(database, letter.id, State.SENDING)
        told.append((await fail(database, letter, Reason.BLOCKED))[1])
        assert (await row(database, letter.id)).state == "refused"
    assert told == [[7], []]
    async with database.reading() as session:
        assert (await session.scalars(select(Person.unreachable_since))).one() == NOON


async def test_a_lost_alert_comes_again_marked_as_a_repeat(database: Database) -> None:
    await put(database, "x", Kind.ALERT, payload={"text": "Please look.", "again": "Perhaps again:"})
    (letter,) = await claim(database)
    await mark(database, letter.id, State.SENDING)
    await fail(database, letter, Reason.ANSWER_LOST)
    (again,) = await claim(database, at=10.0)
    assert again.payload["text"] == "Perhaps again:\n\nPlease look."


async def test_markup_that_the_platform_refuses_is_tried_as_plain_text_once(database: Database) -> None:
    await put(database, "a", payload={"text": "<b>x", "parse_mode": "HTML"})
    (letter,) = await claim(database)
    await mark(database, letter.id, State.SENDING)
    await fail(database, letter, Reason.BAD_REQUEST)
    (again,) = await claim(database)
    assert again.payload == {"text": "x"}
    await fail(database, again, Reason.BAD_REQUEST)
    assert (await row(database, letter.id)).state == "refused"


async def test_after_a_crash_the_unsent_waits_and_what_was_being_sent_follows_its_kind(
    database: Database,
) -> None:
    for n, kind in enumerate([Kind.SESSION, Kind.ANSWER, Kind.ALERT, Kind.NUDGE]):
        await put(database, kind, kind, chat=n)
    letters = await claim(database, "dead")
    for letter in letters:
        if letter.kind is not Kind.NUDGE:
            await mark(database, letter.id, State.SENDING, "dead")
    count = await database.write(lambda session: tidying.recover(session, machine_now=0.0, now=NOON, all_but="new"))
    states = {letter.kind: (await row(database, letter.id)).state for letter in letters}
    assert count == 4
    assert states == {"session": "unknown", "answer": "waiting", "alert": "waiting", "nudge": "waiting"}


async def test_only_what_outlived_its_lease_is_recovered_beside_other_workers(database: Database) -> None:
    await put(database, "a", Kind.SESSION)
    (letter,) = await claim(database, "other", at=0.0)
    await mark(database, letter.id, State.SENDING, "other")

    async def recover(at: float) -> int:
        return await database.write(lambda session: tidying.recover(session, machine_now=at, now=NOON))

    assert await recover(59.0) == 0
    assert await recover(60.0) == 1
    assert (await row(database, letter.id)).state == "unknown"


async def test_what_a_worker_held_that_gives_no_more_signs_of_life_is_dealt_with_before_its_lease_is_over(
    database: Database,
) -> None:
    sending, leased, kept = [await put(database, f"s{n}", Kind.SESSION, chat=n) for n in range(3)]
    for worker in ("dead", "alive"):
        seconds = {"dead": 10.0, "alive": 20.0}[worker]
        await database.write(lambda session: leads.beat(session, worker, now=0.0, seconds=seconds))  # noqa: B023
    await claim(database, "dead", limit=2)
    await mark(database, sending, State.SENDING, "dead")
    await claim(database, "alive", limit=1)

    async def recover(at: float) -> int:
        return await database.write(lambda session: tidying.recover(session, machine_now=at, now=NOON))

    assert await recover(9.9) == 0
    assert await recover(10.0) == 2
    lost, free = await row(database, sending), await row(database, leased)
    assert (lost.state, lost.payload, lost.worker, lost.lease_until) == ("unknown", {}, None, None)
    assert (free.state, free.payload, free.worker, free.lease_until) == ("waiting", {"text": "s1"}, None, None)
    assert (await row(database, kept)).worker == "alive"


async def test_a_stopping_worker_gives_back_what_it_never_began(database: Database) -> None:
    await put(database, "a")
    await put(database, "b", chat=8)
    first, _ = await claim(database)
    await mark(database, first.id, State.SENDING)
    assert await database.write(lambda session: tidying.release(session, "w")) == 1
    async with database.reading() as session:
        assert await outbox.counts(session) == {"sending": 1, "waiting": 1}
        assert len(await outbox.open_work(session)) == 2


async def test_a_stopping_worker_leaves_alone_what_another_has(database: Database) -> None:
    mine, others = await put(database, "a"), await put(database, "b", chat=8)
    await claim(database, "w", limit=1)
    await claim(database, "other", limit=1)
    assert await database.write(lambda session: tidying.release(session, "w")) == 1
    assert await database.write(lambda session: tidying.release(session, "w")) == 0
    free, kept = await row(database, mine), await row(database, others)
    assert (free.state, free.worker, free.lease_until) == ("waiting", None, None)
    assert (kept.state, kept.worker) == ("leased", "other")


async def test_sixteen_claimers_share_two_hundred_messages_without_a_double(database: Database) -> None:
    for n in range(200):
        await put(database, f"k{n}", chat=n % 20)
    order: list[tuple[int, int]] = []

    async def worker(name: str) -> None:
        idle = 0
        while idle < 3:
            letters = await claim(database, name, limit=2)
            idle = 0 if letters else idle + 1
            for letter in letters:
                order.append((letter.chat, letter.id))
                await send(database, letter.id, name)

    await asyncio.gather(*(worker(f"w{n}") for n in range(16)))
    assert len(order) == len(set(order)) == 200
    for chat in range(20):
        mine = [id_ for where, id_ in order if where == chat]
        assert mine == sorted(mine)


async def test_a_message_leaves_until_the_moment_from_which_it_is_late(database: Database) -> None:
    id_ = await put(database, "s", Kind.SESSION, late_after=NOON + timedelta(hours=1))

    async def claim_untidied(now: datetime) -> list[Letter]:
        return await database.write(
            lambda session: letters.claim(session, "w", machine_now=0.0, now=now, lease_seconds=60, limit=1)
        )

    assert await claim_untidied(NOON + timedelta(hours=1)) == []
    assert keys(await claim_untidied(NOON + timedelta(minutes=59))) == ["s"]
    assert (await row(database, id_)).lease_until == 60.0


async def test_a_message_of_the_right_lane_leaves_no_sooner_than_it_was_put_for(database: Database) -> None:
    id_ = await put(database, "later", Kind.TIMER, lane=0, not_before=30.0)
    assert await claim(database, at=29.9) == []
    (letter,) = await claim(database, at=30.0)
    assert (letter.id, letter.lane, letter.kind, letter.attempts) == (id_, 0, Kind.TIMER, 0)


async def test_what_is_put_as_skipped_keeps_its_reason_and_no_words(database: Database) -> None:
    id_ = await put(database, "n", Kind.NUDGE, skipped="silent")
    kept = await row(database, id_)
    assert (kept.state, kept.why, kept.payload) == ("skipped", "silent", {})
    assert await claim(database) == []


async def test_a_message_is_found_by_its_key(database: Database) -> None:
    id_ = await put(database, "a")
    async with database.reading() as session:
        assert await outbox.by_key(session, "a") == id_
        assert await outbox.by_key(session, "b") is None


async def test_what_is_let_go_of_is_of_one_kind_and_chat_and_keeps_no_words(database: Database) -> None:
    gone = await put(database, "t", Kind.TIMER)
    others = [await put(database, "a"), await put(database, "u", Kind.TIMER, chat=8)]
    await database.write(lambda session: outbox.drop(session, 7, Kind.TIMER))
    dropped = await row(database, gone)
    assert (dropped.state, dropped.why, dropped.payload) == ("skipped", "moved-on", {})
    assert [(await row(database, other)).state for other in others] == ["waiting", "waiting"]


async def test_what_has_begun_to_leave_is_not_let_go_of(database: Database) -> None:
    begun, sent = await put(database, "t", Kind.TIMER), await put(database, "u", Kind.TIMER, chat=8)
    await claim(database)
    await send(database, sent)
    await mark(database, begun, State.SENDING)
    for chat in (7, 8):
        await database.write(lambda session: outbox.drop(session, chat, Kind.TIMER))  # noqa: B023
    assert [(await row(database, id_)).state for id_ in (begun, sent)] == ["sending", "sent"]


async def test_what_comes_by_itself_is_withdrawn_and_what_answers_or_has_begun_is_not(database: Database) -> None:
    by_itself = [await put(database, kind, kind) for kind in (Kind.SESSION, Kind.NUDGE, Kind.TIMER)]
    kept = [await put(database, kind, kind) for kind in (Kind.ANSWER, Kind.ALERT, Kind.DIGEST)]
    kept.append(await put(database, "to somebody else", Kind.SESSION, chat=8))
    begun, leased = (
        await put(database, "begun", Kind.SESSION, chat=9),
        await put(database, "leased", Kind.NUDGE, chat=7),
    )
    for letter in await claim(database, limit=10):
        if letter.id == begun:
            assert await mark(database, begun, State.SENDING)
    assert await database.write(lambda session: outbox.withdraw(session, 9, "stopped")) == 0
    assert await database.write(lambda session: outbox.withdraw(session, 7, "stopped", row=leased)) == 1
    assert await database.write(lambda session: outbox.withdraw(session, 7, "stopped")) == 3
    for id_ in (*by_itself, leased):
        gone = await row(database, id_)
        assert (gone.state, gone.why, gone.payload) == ("skipped", "stopped", {})
    assert {(await row(database, id_)).state for id_ in kept} == {"waiting", "leased"}
    assert (await row(database, begun)).state == "sending"


async def test_what_was_claimed_and_is_withdrawn_cannot_begin(database: Database) -> None:
    id_ = await put(database, "s", Kind.SESSION)
    await claim(database)
    assert await database.write(lambda session: outbox.withdraw(session, 7, "erased")) == 1
    gone = await row(database, id_)
    assert (gone.state, gone.worker, gone.lease_until) == ("skipped", None, None)
    assert not await mark(database, id_, State.SENDING)


@pytest.mark.parametrize("reason", [Reason.NEVER_CONNECTED, Reason.TOO_MANY, Reason.SERVER_ERROR])
async def test_what_was_leaving_when_it_was_withdrawn_is_not_tried_again(database: Database, reason: Reason) -> None:
    id_ = await put(database, "s", Kind.SESSION)
    [letter] = await claim(database)
    assert await mark(database, id_, State.SENDING)
    assert await database.write(lambda session: outbox.withdraw(session, 7, "replaced")) == 0
    assert (await row(database, id_)).state == "sending"
    await fail(database, letter, reason)
    gone = await row(database, id_)
    assert (gone.state, gone.why, gone.payload, gone.worker) == ("skipped", "replaced", {}, None)


async def test_what_was_leaving_when_it_was_withdrawn_may_arrive(database: Database) -> None:
    id_ = await put(database, "s", Kind.SESSION)
    await claim(database)
    assert await mark(database, id_, State.SENDING)
    await database.write(lambda session: outbox.withdraw(session, 7, "replaced"))
    assert await mark(database, id_, State.SENT)
    arrived = await row(database, id_)
    assert (arrived.state, arrived.why) == ("sent", None)


async def test_why_an_earlier_try_failed_does_not_withdraw_a_message(database: Database) -> None:
    id_ = await put(database, "s", Kind.SESSION)
    for _ in range(2):
        [letter] = await claim(database, at=1000.0)
        assert await mark(database, id_, State.SENDING)
        await fail(database, letter, Reason.SERVER_ERROR)
        assert (await row(database, id_)).state == "waiting"


async def test_an_edit_of_a_picture_says_that_it_is_one(database: Database) -> None:
    for chat, method in ((7, "send_photo"), (8, "send_message")):
        target = await put(database, f"s{chat}", Kind.SESSION, chat=chat, method=method)
        await put(database, f"e{chat}", Kind.EDIT, chat=chat, method="edit_message_caption", edits=target)
    for letter in await claim(database):
        await send(database, letter.id, message=letter.chat * 10)
    edits = await claim(database)
    assert [(edit.chat, edit.message_id, edit.captioned) for edit in edits] == [(7, 70, True), (8, 80, False)]


async def test_what_is_given_back_before_it_began_has_cost_no_try(database: Database) -> None:
    id_ = await put(database, "a")
    await claim(database)
    assert await mark(database, id_, State.WAITING)
    back = await row(database, id_)
    assert (back.state, back.worker, back.lease_until, back.attempts) == ("waiting", None, None, 0)
    await claim(database)
    assert await mark(database, id_, State.SENDING)
    assert not await mark(database, id_, State.WAITING), "what has begun cannot be given back"
    assert not await mark(database, id_, State.SENDING), "nor begun once more"


async def test_what_has_left_keeps_no_words_and_a_failed_try_keeps_them(database: Database) -> None:
    id_ = await put(database, "a")
    (letter,) = await claim(database)
    await mark(database, id_, State.SENDING)
    await fail(database, letter, Reason.SERVER_ERROR, at=5.0)
    tried = await row(database, id_)
    assert (tried.state, tried.payload, tried.next_at) == ("waiting", {"text": "a"}, 6.0)
    assert (tried.worker, tried.lease_until, tried.sent_at, tried.attempts) == (None, None, None, 1)
    await claim(database, at=6.0)
    await send(database, id_, message=3)
    sent = await row(database, id_)
    assert (sent.payload, sent.why, sent.lease_until) == ({}, None, None)


async def test_a_file_that_the_platform_has_forgotten_is_sent_as_what_stands_in_for_it(database: Database) -> None:
    otherwise = {"method": "send_photo", "payload": {"caption": "drawn"}}
    for chat, reason in ((7, Reason.FILE_FORGOTTEN), (8, Reason.BAD_REQUEST), (9, Reason.SERVER_ERROR)):
        await put(
            database, f"v{chat}", chat=chat, method="send_video", payload={"caption": "own", "otherwise": otherwise}
        )
        (letter,) = [one for one in await claim(database) if one.chat == chat]
        await mark(database, letter.id, State.SENDING)
        following, _told = await fail(database, letter, reason)
        assert following is not None
        assert following.state is State.WAITING
        tried = await row(database, letter.id)
        if reason is Reason.SERVER_ERROR:
            assert (tried.method, tried.payload["caption"]) == ("send_video", "own")
        else:
            assert (tried.method, tried.payload, tried.next_at) == ("send_photo", {"caption": "drawn"}, 0.0)


async def test_a_picture_that_the_platform_refuses_leaves_as_its_words_alone(database: Database) -> None:
    id_ = await put(database, "p", method="send_photo", payload={"photo": "drawn", "caption": "Day 3"})
    (letter,) = await claim(database)
    await mark(database, id_, State.SENDING)
    await fail(database, letter, Reason.BAD_REQUEST)
    (again,) = await claim(database)
    assert (again.method, again.payload["text"]) == ("send_message", "Day 3")
    assert "photo" not in again.payload


async def test_tidying_counts_what_is_late_what_has_nothing_to_edit_and_what_was_lost(database: Database) -> None:
    target = await put(database, "gone", Kind.SESSION, skipped="silent")
    await put(database, "e", Kind.EDIT, method="edit_message_text", edits=target)
    await put(database, "late", Kind.SESSION, chat=8, late_after=NOON)
    for chat in (9, 10):
        await put(database, f"lost {chat}", Kind.ANSWER, chat=chat)
    for letter in await database.write(
        lambda session: letters.claim(session, "dead", machine_now=0.0, now=NOON, lease_seconds=60, limit=2)
    ):
        if letter.chat == 9:
            await mark(database, letter.id, State.SENDING, "dead")
    assert await database.write(lambda session: tidying.tidy(session, machine_now=60.0, now=NOON)) == 4
    assert await database.write(lambda session: tidying.tidy(session, machine_now=60.0, now=NOON)) == 0


async def test_the_next_moment_is_the_earliest_of_backoff_and_pace_that_somebody_waits_for(database: Database) -> None:
    async def next_due(at: float) -> float | None:
        async with database.reading() as session:
            return (await letters.behind(session, at)).next_at

    for chat, free_at in ((7, 20.0), (8, 30.0)):
        id_ = await put(database, f"first to {chat}", chat=chat)
        await claim(database)
        await mark(database, id_, State.SENDING)
        await database.merged(marks.apply_marks, Mark(id_, "w", State.SENT, NOON, 1, chat=chat, free_at=free_at))
    assert await next_due(0.0) is None, "nothing waits for either"
    await put(database, "b", chat=8)
    assert await next_due(0.0) == 30.0
    await put(database, "a", chat=7)
    assert await next_due(0.0) == 20.0
    await put(database, "c", chat=9, not_before=10.0)
    assert await next_due(0.0) == 10.0
    assert await next_due(10.0) == 20.0
    assert await next_due(30.0) is None


async def test_open_work_is_told_in_words_without_timers(database: Database) -> None:
    first, second = await put(database, "a"), await put(database, "b", chat=8)
    await put(database, "t", Kind.TIMER, chat=9)
    await claim(database, limit=1)
    async with database.reading() as session:
        assert await outbox.open_work(session) == [
            f"message {first} (answer) is leased after 0 tries",
            f"message {second} (answer) is waiting after 0 tries",
        ]
        assert len(await outbox.open_work(session, limit=1)) == 1


async def test_a_file_is_kept_once_and_remembers_its_upload(database: Database) -> None:
    first = await database.write(lambda session: attach(session, b"png", "a.png"))
    second = await database.write(lambda session: attach(session, b"png", "b.png"))
    assert first["attachment"] == second["attachment"]
    digest = first["attachment"]
    await database.write(lambda session: remember_upload(session, digest, "send_photo", "F1"))
    async with database.reading() as session:
        assert (await found(session, digest)).file_ids == {"send_photo": "F1"}
        assert len((await session.scalars(select(Attachment))).all()) == 1
        with pytest.raises(LookupError, match="no attachment 00"):
            await found(session, "00")


async def test_a_claim_walks_indexes_and_never_the_whole_table(database: Database) -> None:
    steps = await plan(database, letters._ready().params(machine_now=1.0, now=NOON, most=16, last=5))
    assert any("ix_outbox_waiting " in f"{step} " for step in steps), steps
    assert not any("TEMP B-TREE" in step or "Sort" in step or "Seq Scan" in step for step in steps), steps
    assert any("uq_outbox_one_in_flight_a_chat" in step for step in steps), steps
    assert any("ix_outbox_waiting_chat" in step for step in steps), steps


async def test_a_claim_among_a_hundred_thousand_waiting_messages_stays_quick(database: Database) -> None:
    async def fill(session: AsyncSession) -> None:
        rows = [
            {
                "key": str(n),
                "chat": n // 4,
                "lane": 2,
                "kind": "session",
                "method": "send_message",
                "payload": {"text": str(n)},
                "state": "waiting",
                "attempts": 0,
                "next_at": 0.0,
                "late_after": NOON + timedelta(hours=5),
                "made_at": NOON,
            }
            for n in range(100_000)
        ]
        await session.execute(insert(Outbox), rows)

    await database.write(fill)
    clock = asyncio.get_running_loop().time
    taken = []
    for _ in range(20):
        start = clock()
        assert len(await claim(database, limit=16)) == 16
        taken.append(clock() - start)
    assert sorted(taken)[10] < 0.05  # seconds; a walk over all rows takes several times as long
