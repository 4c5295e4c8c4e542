"""A coach's own videos and photos of movements: named by caption or button, shown to their clients, let go of."""

from __future__ import annotations

from typing import Any

import pytest
from sqlalchemy import select
from sqlalchemy.ext.asyncio import AsyncSession

from bot.flows import how, listening, recordings
from bot.flows.rights import NotAllowed
from db import outbox
from db.delivery import Failure, Kind, Reason
from db.engine import Database
from db.erasure import erase
from db.letters import Letter
from db.schema import Coach, Course, Outbox, Person, Recording
from tests.integration.desks import (
    COACH,
    NOW,
    buttons_of,
    client_in,
    coach_in,
    desk_of,
    text_of,
    told,
    version_in,
    writing,
)

pytestmark = pytest.mark.usefixtures("store")

KIM = 11
HIP = "hip-hinge-drill"


async def scene(session: AsyncSession) -> tuple[Person, Coach, Person]:
    person, coach = await coach_in(session)
    version = await version_in(session, coach)
    client, _course = await client_in(session, version, "Kim", chat=KIM, said=[{}])
    return person, coach, client


async def sends(session: AsyncSession, person: Person, caption: str, *, kind: str = "video", n: int = 1) -> bool:
    return await recordings.arrived(desk_of(session, f"film:{n}"), person, kind, f"FILE{n}", caption)


async def shown(session: AsyncSession, person: Person, name: str, n: int = 1) -> dict[str, Any]:
    await how.asked(desk_of(session, f"how:{n}"), person, name)
    return (await told(session, person.chat))[-1]


async def test_a_video_with_a_movements_name_takes_the_drawings_place_for_this_coachs_clients(
    database: Database,
) -> None:
    async with writing(database) as session:
        person, _coach, client = await scene(session)
        _other, rival = await coach_in(session, chat=2)
        stranger, _c = await client_in(session, await version_in(session, rival), "Lee", chat=12, said=[{}])
        assert await sends(session, person, "hip hinge drill")
        mine = await shown(session, client, "hip hinge drill")
        theirs = await shown(session, stranger, "hip hinge drill", 2)
    assert mine["video"] == {"file_id": "FILE1"}
    assert mine["caption"] == theirs["caption"]
    assert "video" not in theirs
    assert "animation" in theirs


async def test_a_later_recording_takes_the_place_of_an_earlier_one(database: Database) -> None:
    async with writing(database) as session:
        person, _coach, client = await scene(session)
        await sends(session, person, "hip hinge drill")
        await sends(session, person, "Hip hinge drill", kind="photo", n=2)
        assert (await shown(session, client, "hip hinge drill"))["photo"] == {"file_id": "FILE2"}
        assert len((await session.scalars(select(Recording))).all()) == 1


async def test_without_a_name_it_is_asked_for_by_buttons_or_typed(database: Database) -> None:
    async with writing(database) as session:
        person, coach, client = await scene(session)
        assert await sends(session, person, "")
        asked = (await told(session, COACH))[-1]
        assert list(buttons_of(asked)) == ["Sway", "Long reach", "Leave it"]
        number, what, value = buttons_of(asked)["Long reach"].split(":")[1:]
        await recordings.tapped(desk_of(session, "x"), person, coach, int(number), what, value)
        assert (await shown(session, client, "long reach"))["video"] == {"file_id": "FILE1"}
        await sends(session, person, "nothing of the kind at all", n=2)
        await listening.heard(desk_of(session, "y"), person, "sway")
        assert (await shown(session, client, "sway", 2))["video"] == {"file_id": "FILE2"}
        assert person.asking is None


async def test_it_can_be_let_go_of_and_the_drawing_is_back(database: Database) -> None:
    async with writing(database) as session:
        person, coach, client = await scene(session)
        await sends(session, person, "hip hinge drill")
        forget = buttons_of((await told(session, COACH))[-1])["Forget it again"].split(":")
        await recordings.show_all(desk_of(session, "all"), person, "")
        assert list(buttons_of((await told(session, COACH))[-1])) == ["Forget: Hip hinge with a stick"]
        await recordings.tapped(desk_of(session, "x"), person, coach, int(forget[1]), forget[2], "")
        assert "see the drawing of <b>Hip hinge with a stick</b> again" in text_of((await told(session, COACH))[-1])
        assert "animation" in await shown(session, client, "hip hinge drill")


@pytest.mark.parametrize("reason", [Reason.FILE_FORGOTTEN, Reason.BAD_REQUEST])
async def test_a_file_that_the_platform_does_not_take_falls_back_to_the_drawing(
    database: Database, reason: Reason
) -> None:
    async with writing(database) as session:
        person, _coach, client = await scene(session)
        await sends(session, person, "hip hinge drill")
        await shown(session, client, "hip hinge drill")
        row = await session.scalar(select(Outbox).where(Outbox.chat == KIM, Outbox.method == "send_video"))
        assert row is not None
        row.state, row.worker = "sending", "w"
        await session.flush()
        letter = Letter(row.id, KIM, row.lane, Kind.ANSWER, row.method, dict(row.payload), 0, None)

        async def nobody(_session: AsyncSession, _chat: int) -> None:
            raise AssertionError("the chat is reachable")

        await outbox.failed(
            session, letter, "w", Failure(reason, "BadRequest"), machine_now=1.0, now=NOW, on_unreachable=nobody
        )
        await session.refresh(row)
        assert (row.state, row.method) == ("waiting", "send_animation")
        assert "attachment" in row.payload["animation"]
        assert row.payload["caption"] == letter.payload["caption"]


async def test_a_clients_photo_and_a_warning_sign_are_none(database: Database) -> None:
    async with writing(database) as session:
        person, _coach, client = await scene(session)
        assert not await sends(session, client, "hip hinge drill")
        assert not await sends(session, person, "chest pain since this morning")
        course = Course(person_id=person.id, coach_id=_coach.id, version_id=1, state="active", day=1, level=0)
        course.rests_taken, course.created_at = 0, NOW
        session.add(course)
        await session.flush()
        assert not await sends(session, person, "", kind="photo"), "a coach's own photo beside a test"
        assert (await session.scalars(select(Recording))).all() == []


async def test_another_coach_has_no_say(database: Database) -> None:
    async with writing(database) as session:
        person, _coach, _client = await scene(session)
        await sends(session, person, "hip hinge drill")
        row = await session.scalar(select(Recording))
        assert row is not None
        other, rival = await coach_in(session, chat=2)
        for what, value in (("is", HIP), ("forget", ""), ("page", "1")):
            with pytest.raises(NotAllowed):
                await recordings.tapped(desk_of(session, "x"), other, rival, row.id, what, value)
        with pytest.raises(NotAllowed):
            await recordings.type_movement(desk_of(session, "x"), other, rival, row.id, "sway")


async def test_a_coach_who_is_erased_takes_their_recordings_along(database: Database) -> None:
    async with writing(database) as session:
        person, _coach = await coach_in(session)
        await sends(session, person, "hip hinge drill")
        await erase(session, person, NOW)
        assert (await session.scalars(select(Recording))).all() == []
