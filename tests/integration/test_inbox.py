from __future__ import annotations

import asyncio
import json
from datetime import timedelta
from typing import Any

import pytest

from db import inbox, leads
from db.engine import Database
from db.inbox import Claimed, LeaseLost
from db.schema import Inbox
from tests.integration.fakes import NOON, plan

pytestmark = pytest.mark.usefixtures("store")


def said(update_id: int, chat: int = 7, text: str = "done") -> dict[str, Any]:
    person = {"id": chat, "is_bot": False, "first_name": "Ada", "last_name": "Quill", "username": "aq"}
    message = {
        "message_id": update_id,
        "date": 1,
        "chat": {"id": chat, "type": "private", "first_name": "Ada", "last_name": "Quill"},
        "from": person | {"language_code": "de"},
        "text": text,
    }
    return {"update_id": update_id, "message": message}


async def store(database: Database, *updates: dict[str, Any]) -> int:
    return await database.write(lambda session: inbox.store(session, updates, NOON))


async def claim(database: Database, worker: str = "w", at: float = 0.0, limit: int = 10) -> list[Claimed]:
    return await database.write(
        lambda session: inbox.claim(session, worker, machine_now=at, lease_seconds=60, limit=limit)
    )


async def finish(database: Database, update_id: int, worker: str = "w") -> bool:
    return await database.write(lambda session: inbox.handled(session, update_id, worker))


async def row(database: Database, update_id: int) -> Inbox:
    async with database.reading() as session:
        return await session.get_one(Inbox, update_id)


async def test_a_repeated_update_is_stored_once(database: Database) -> None:
    assert await store(database, said(5), said(6)) == 2
    assert await store(database, said(6), said(7)) == 1
    assert [c.update_id for c in await claim(database)] == [5]


async def test_nothing_is_stored_for_an_empty_answer(database: Database) -> None:
    assert await store(database) == 0
    async with database.reading() as session:
        assert await inbox.next_offset(session, NOON) is None


async def test_only_the_first_name_the_language_and_a_rough_place_of_a_person_are_kept(database: Database) -> None:
    update = said(1)
    update["message"]["contact"] = {"phone_number": "+1555", "first_name": "Bo", "vcard": "BEGIN:VCARD"}
    update["message"]["location"] = {"latitude": 38.72243, "longitude": -9.13934, "live_period": 60}
    update["message"]["venue"] = {"title": "Home", "location": {"latitude": 1.0, "longitude": 2.0}}
    await store(database, update)
    kept = json.dumps((await row(database, 1)).payload)
    assert '"first_name": "Ada"' in kept
    assert '"language_code": "de"' in kept
    assert '"location": {"latitude": 38.72, "longitude": -9.14}' in kept
    for gone in ("Quill", "aq", "+1555", "VCARD", "Home", "live_period", "38.722", "contact"):
        assert gone not in kept


async def test_the_offset_follows_the_last_stored_update_and_is_forgotten_after_a_quiet_week(
    database: Database,
) -> None:
    assert await database.write(lambda session: inbox.store_fetched(session, [said(41), said(42)], NOON)) == 2
    assert (await row(database, 42)).state == "waiting", "stored before the platform is told so"
    async with database.reading() as session:
        assert await inbox.next_offset(session, NOON + inbox.OFFSET_LASTS) == 43
        assert await inbox.next_offset(session, NOON + timedelta(days=1)) == 43
        assert await inbox.next_offset(session, NOON + timedelta(days=7)) is None
    await database.write(lambda session: inbox.store_fetched(session, [said(10)], NOON))
    async with database.reading() as session:
        assert await inbox.next_offset(session, NOON) == 11


async def test_a_chat_is_handled_one_by_one_and_many_chats_at_once(database: Database) -> None:
    await store(database, said(1, chat=7), said(2, chat=7), said(3, chat=8))
    assert [c.update_id for c in await claim(database)] == [1, 3]
    assert await claim(database) == []
    assert await finish(database, 1)
    assert [c.update_id for c in await claim(database)] == [2]


async def test_an_update_without_a_chat_is_claimed_like_any_other(database: Database) -> None:
    await store(database, {"update_id": 1, "poll": {"id": "x"}}, said(2))
    assert [(c.update_id, c.chat) for c in await claim(database)] == [(1, 0), (2, 7)]


async def test_what_was_handled_keeps_no_words(database: Database) -> None:
    await store(database, said(1))
    await claim(database)
    await finish(database, 1)
    kept = await row(database, 1)
    assert (kept.state, kept.payload, kept.document) == ("handled", None, None)


async def test_a_worker_that_slept_past_its_lease_marks_nothing(database: Database) -> None:
    await store(database, said(1))
    await claim(database, "slow", at=0)
    assert [c.tries for c in await claim(database, "quick", at=61)] == [2]
    assert not await finish(database, 1, "slow")
    with pytest.raises(LeaseLost):
        await database.write(lambda session: inbox.retry_or_fail(session, 1, "slow", failure="X", machine_now=62))
    assert await finish(database, 1, "quick")


async def test_a_lease_is_over_at_its_very_end(database: Database) -> None:
    await store(database, said(1))
    await claim(database, "slow", at=0)
    assert await claim(database, "quick", at=59.9) == []
    assert [c.update_id for c in await claim(database, "quick", at=60)] == [1]


async def test_an_update_that_comes_late_waits_for_a_later_one_of_its_chat_that_is_in_hand(database: Database) -> None:
    await store(database, said(2), said(9, chat=8))
    await claim(database, "first", at=0)
    await store(database, said(1))
    assert await claim(database, "second", at=30) == []
    assert [c.update_id for c in await claim(database, "second", at=60)] == [1, 9], "the first worker's lease is over"
    await finish(database, 1, "second")
    assert [c.update_id for c in await claim(database, "second", at=61)] == [2]


async def test_the_third_failure_is_final_and_the_chat_goes_on(database: Database) -> None:
    await store(database, said(1), said(2))
    at, outcomes = 0.0, []
    for _ in range(3):
        assert [c.update_id for c in await claim(database, at=at)] == [1]
        at += 10
        outcomes.append(
            await database.write(
                lambda session: inbox.retry_or_fail(session, 1, "w", failure="KeyError", machine_now=at)  # noqa: B023
            )
        )
        at += 10
    assert outcomes == [False, False, True]
    failed = await row(database, 1)
    assert (failed.state, failed.failure) == ("failed", "KeyError")
    assert [c.update_id for c in await claim(database, at=at)] == [2]


async def test_a_retry_waits_and_holds_up_only_its_own_chat(database: Database) -> None:
    await store(database, said(1, chat=7), said(2, chat=7), said(3, chat=8))
    await claim(database, limit=1)
    await database.write(lambda session: inbox.retry_or_fail(session, 1, "w", failure="X", machine_now=0))
    assert [c.update_id for c in await claim(database, at=0.5)] == [3]
    async with database.reading() as session:
        assert (await inbox.behind(session)).next_at == 1.0
    assert [c.update_id for c in await claim(database, at=1.5)] == [1]


async def test_a_new_process_frees_what_a_dead_one_held(database: Database) -> None:
    await store(database, said(1), said(2, chat=8))
    await claim(database, "dead", limit=1)
    await claim(database, "me", limit=1)
    assert await database.write(lambda session: inbox.release_others(session, "me")) == 1
    assert [c.update_id for c in await claim(database, "me")] == [1]


async def test_a_document_stays_beside_its_update_until_it_is_handled(database: Database) -> None:
    await store(database, said(1))
    (claimed,) = await claim(database)
    carrying = inbox.with_document(claimed, b"title: x", None)
    assert await database.write(lambda session: inbox.keep_document(session, carrying, "w"))
    assert (await row(database, 1)).document == b"title: x"
    assert not await database.write(lambda session: inbox.keep_document(session, carrying, "other"))
    await finish(database, 1)
    assert (await row(database, 1)).document is None


async def test_why_a_document_is_missing_stands_in_the_payload(database: Database) -> None:
    await store(database, said(1))
    (claimed,) = await claim(database)
    noted = inbox.with_document(claimed, None, "too-large")
    await database.write(lambda session: inbox.keep_document(session, noted, "w"))
    payload = (await row(database, 1)).payload
    assert payload is not None
    assert payload["document_left_out"] == "too-large"


async def test_sixteen_claimers_share_two_hundred_updates_without_a_double(database: Database) -> None:
    await store(database, *(said(n, chat=n % 20) for n in range(200)))
    order: list[tuple[int, int]] = []

    async def worker(name: str) -> None:
        while claimed := await claim(database, name, limit=3):
            for one in claimed:
                order.append((one.chat, one.update_id))
                assert await finish(database, one.update_id, name)

    await asyncio.gather(*(worker(f"w{n}") for n in range(16)))
    while left := await claim(database):
        for one in left:
            order.append((one.chat, one.update_id))
            await finish(database, one.update_id)
    assert sorted(update_id for _, update_id in order) == list(range(200))
    for chat in range(20):
        mine = [update_id for where, update_id in order if where == chat]
        assert mine == sorted(mine)


async def test_open_work_names_what_is_not_handled(database: Database) -> None:
    await store(database, said(1), said(2, chat=8))
    await claim(database, limit=1)
    async with database.reading() as session:
        assert await inbox.open_work(session) == [
            "update 1 is leased after 1 tries",
            "update 2 is waiting after 0 tries",
        ]
        assert await inbox.counts(session) == {"leased": 1, "waiting": 1}


async def test_a_claim_walks_the_index_of_open_updates(database: Database) -> None:
    steps = await plan(database, inbox._free().params(machine_now=1.0, most=5))
    assert any("ix_inbox_open " in f"{step} " for step in steps), steps
    assert any("ix_inbox_open_chat" in step for step in steps), steps
    assert not any(("SCAN inbox" in step and "INDEX" not in step) or "Seq Scan" in step for step in steps), steps


async def test_an_update_in_whose_hands_the_process_dies_again_and_again_fails_at_its_first_error(
    database: Database,
) -> None:
    """After ten takings that nobody ended, one error is enough; at the tenth itself it is not."""
    await store(database, said(1), said(2, chat=8))
    for n in range(inbox.BEGUN):
        await claim(database, at=n * 100.0, limit=1)
    at = inbox.BEGUN * 100.0

    async def fail(number: int) -> bool:
        return await database.write(
            lambda session: inbox.retry_or_fail(session, number, "w", failure="MemoryError", machine_now=at)
        )

    assert not await fail(1)
    assert [c.tries for c in await claim(database, at=at + 1, limit=1)] == [inbox.BEGUN + 1]
    assert await fail(1)
    failed = await row(database, 1)
    assert (failed.state, failed.failures, failed.worker, failed.lease_until) == ("failed", 2, None, None)
    assert failed.failure == "MemoryError"


async def test_the_pause_before_a_try_doubles(database: Database) -> None:
    await store(database, said(1))
    for at, pause in ((0.0, 1.0), (10.0, 2.0)):
        await claim(database, at=at)
        await database.write(lambda session: inbox.retry_or_fail(session, 1, "w", failure="X", machine_now=at))  # noqa: B023
        waiting = await row(database, 1)
        assert (waiting.state, waiting.worker, waiting.lease_until) == ("waiting", None, at + pause)


async def test_a_worker_gives_back_what_it_had_and_no_more(database: Database) -> None:
    await store(database, said(1), said(2, chat=8), said(3, chat=9))
    await claim(database, "me", limit=1)
    await claim(database, "other", limit=1)
    assert await database.write(lambda session: inbox.release(session, "me")) == 1
    assert await database.write(lambda session: inbox.release(session, "me")) == 0
    given_back, others = await row(database, 1), await row(database, 2)
    assert (given_back.state, given_back.worker, given_back.lease_until) == ("waiting", None, None)
    assert (others.state, others.worker) == ("leased", "other")
    async with database.reading() as session:
        assert (await inbox.behind(session)).next_at is None


async def test_what_a_worker_held_that_gives_no_more_signs_of_life_is_free_before_its_lease_is_over(
    database: Database,
) -> None:
    await store(database, said(1), said(2, chat=8), said(3, chat=9))
    for worker, alive in (("dead", 10.0), ("alive", 20.0)):
        await database.write(lambda session: leads.beat(session, worker, now=0.0, seconds=alive))  # noqa: B023
    for worker in ("dead", "alive", "silent"):
        await claim(database, worker, limit=1)

    async def recover(at: float) -> int:
        return await database.write(lambda session: inbox.recover(session, at))

    assert await recover(9.9) == 0
    assert await recover(10.0) == 1
    freed = await row(database, 1)
    assert (freed.state, freed.worker, freed.lease_until) == ("waiting", None, None)
    assert [(await row(database, n)).worker for n in (2, 3)] == ["alive", "silent"]


async def test_open_work_names_no_more_than_it_was_asked_for(database: Database) -> None:
    await store(database, *(said(n, chat=n) for n in range(1, 23)))
    async with database.reading() as session:
        assert len(await inbox.open_work(session)) == 20
        assert await inbox.open_work(session, limit=1) == ["update 1 is waiting after 0 tries"]
