"""What a use case works with: the open transaction, the present moment, and a way to speak."""

from __future__ import annotations

import base64
from collections.abc import Sequence
from dataclasses import dataclass, field
from datetime import datetime
from typing import Any

from markupsafe import Markup
from sqlalchemy.ext.asyncio import AsyncSession

from bot.flows.installation import DEFAULTS, Installation
from bot.words import Words, words
from bot.words.message import Message
from bot.words.programmes import programme_in
from db import outbox
from db.attachments import attach_recipe
from db.courses import CourseState
from db.delivery import Kind
from db.schema import Course, LedgerRow, Person, ProgrammeVersion
from plans.programme import Programme
from plans.units import Units

TERMS = "2026-11-26"
"""The version of the text that a client agrees to."""


@dataclass(slots=True)
class Desk:
    """One use case's tools. `cause` names what set it off and makes its answers' keys unique."""

    session: AsyncSession
    now: datetime
    cause: str
    bot_username: str
    update_id: int | None = None
    machine_now: float = 0.0
    """The machine clock in seconds; only for what is to leave some seconds later."""
    said_at: datetime | None = None
    """When the words that set this off were first sent; an answer belongs to that date."""
    installation: Installation = DEFAULTS
    typed: bool = False
    """Whether it was words that set this off: they are answered below, a tap changes the message it was under."""
    tapped: int | None = None
    """The platform's number of the message under which a button was tapped."""
    _said: int = field(default=0)
    _versions: dict[int, ProgrammeVersion] = field(default_factory=dict)
    """Those that were read: a session forgets what nobody holds, and a long text would be read again."""

    def words(self, person: Person) -> Words:
        """The words in a person's language and units."""
        return words(person.language, Units(person.units))

    async def say(self, person: Person, message: Message) -> int:
        """Answers a person; returns the outbox row."""
        return await self.send(person, message, key=self._key(), kind=Kind.ANSWER)

    async def send(
        self,
        person: Person,
        message: Message,
        *,
        key: str,
        kind: Kind,
        late_after: datetime | None = None,
        lane: int | None = None,
        skipped: str | None = None,
    ) -> int:
        """Lets a message leave once for `key`; returns the outbox row. `lane` is the kind's own unless given.

        With `skipped`, a rule's name, it does not leave, and the row says why.
        """
        message = message.fitting()
        method = message.picture.method if message.picture else "send_message"
        more = {"late_after": late_after, "lane": lane, "skipped": skipped}
        return await self._put(person, method, await self._payload(message), key=key, kind=kind, **more)

    async def photos(self, person: Person, shown: Sequence[tuple[str, str]]) -> None:
        """Shows up to ten photos that the platform keeps, as (its id of the file, caption), side by side."""
        album = [{"type": "photo", "media": file_id, "caption": caption} for file_id, caption in shown]
        (file_id, caption), *others = shown
        alone = {"photo": {"file_id": file_id}, "caption": caption}
        if others:
            await self._put(person, "send_media_group", {"media": album})
        else:
            await self._put(person, "send_photo", alone)

    async def recording(self, person: Person, message: Message, kind: str, file_id: str) -> None:
        """Sends a coach's own video, animation or photo, by the platform's id, in the place of a message's picture.

        A file that the platform does not know any more falls back to the message as it is.
        """
        whole = message.fitting()
        method = whole.picture.method if whole.picture else "send_message"
        otherwise = {"method": method, "payload": await self._payload(whole)}
        own = {"caption": str(message.text), "parse_mode": "HTML"} | {
            name: value for name, value in message.payload().items() if name == "reply_markup"
        }
        await self._put(person, f"send_{kind}", {kind: {"file_id": file_id}, **own, "otherwise": otherwise})

    async def picture(self, person: Person, file: dict[str, str], caption: Markup) -> None:
        """Sends a picture that is there already, as `base64` with its `filename`."""
        await self._put(person, "send_photo", {"photo": file, "caption": str(caption), "parse_mode": "HTML"})

    async def document(
        self,
        person: Person,
        filename: str,
        body: bytes,
        caption: Markup,
        *,
        key: str | None = None,
        kind: Kind = Kind.ANSWER,
        late_after: datetime | None = None,
    ) -> None:
        """Sends a file of the person's own; it is kept with its message only, until that has left.

        Without a `key` it is an answer to what set this off.
        """
        file = {"base64": base64.b64encode(body).decode(), "filename": filename}
        payload = {"document": file, "caption": str(caption), "parse_mode": "HTML"}
        await self._put(person, "send_document", payload, key=key, kind=kind, late_after=late_after)

    async def edit(self, person: Person, message: Message, row: int, *, after: float | None = None) -> None:
        """Changes a message sent before, named by its outbox row; it keeps its picture unless a new one comes.

        With `after` it is a timer: it leaves so many seconds from now, unless it is dropped before.
        """
        message = message.fitting()
        await self._put(
            person,
            "edit_message_media" if message.picture else "edit_message_text",
            await self._payload(message),
            kind=Kind.EDIT if after is None else Kind.TIMER,
            edits=row,
            not_before=0.0 if after is None else self.machine_now + after,
        )

    async def change_tapped(self, person: Person, message: Message) -> None:
        """Changes the message under which a button was tapped; without one it is said anew. Words only."""
        if self.tapped is None:
            await self.say(person, message)
            return
        payload = message.payload() | {"message_id": self.tapped}
        await self._put(person, "edit_message_text", payload, kind=Kind.EDIT)

    async def _put(
        self,
        person: Person,
        method: str,
        payload: dict[str, Any],
        *,
        key: str | None = None,
        kind: Kind = Kind.ANSWER,
        **more: Any,
    ) -> int:
        """An outbox row to a person; without a `key` it is an answer to what set this off."""
        key, chat = key or self._key(), person.chat
        return await outbox.put(
            self.session, key=key, chat=chat, kind=kind, method=method, payload=payload, now=self.now, **more
        )

    async def _payload(self, message: Message) -> dict[str, Any]:
        picture = message.picture
        if picture is None:
            return message.payload()
        if picture.personal:
            file = {"recipe": picture.recipe, "digest": picture.digest, "filename": picture.filename}
        else:
            file = await attach_recipe(self.session, picture.digest, picture.recipe, picture.filename)
        return {"photo" if picture.method == "send_photo" else "animation": file} | message.payload()

    async def take_buttons(self, person: Person, message_id: int) -> None:
        """Takes the buttons of an answered question away."""
        await self._put(person, "edit_message_reply_markup", {"message_id": message_id}, kind=Kind.EDIT)

    async def answer_tap(self, person: Person, query: str, text: str = "") -> None:
        """Tells the platform that a tap was seen; `text` (at most 200 characters) shows for a moment."""
        payload = {"callback_query_id": query, "text": text[:200]}
        await self._put(person, "answer_callback_query", payload, kind=Kind.TAP)

    async def programme(self, course: Course) -> Programme:
        """The programme version that a course keeps, in its client's language."""
        return await self._read(course, course.version_id)

    async def next_programme(self, course: Course, reader: Person | None = None) -> Programme:
        """The programme version that the next row will be of: the one that the coach has chosen to go over to.

        In its client's language, or in a reader's.
        """
        chosen = course.next_version_id if course.state == CourseState.ACTIVE else None
        return await self._read(course, chosen or course.version_id, reader)

    async def programme_of(self, course: Course, row: LedgerRow) -> Programme:
        """The version whose day a row holds, which its course may have left since, in its client's language."""
        return await self._read(course, row.version_id or course.version_id)

    async def programme_for(self, reader: Person, course: Course) -> Programme:
        """The programme version that a course keeps, in a reader's language."""
        return await self._read(course, course.version_id, reader)

    async def _read(self, course: Course, version_id: int, reader: Person | None = None) -> Programme:
        whose = reader if reader is not None else await self.session.get_one(Person, course.person_id)
        return programme_in(await self._version(version_id), whose.language)

    async def _version(self, id_: int) -> ProgrammeVersion:
        if id_ not in self._versions:
            self._versions[id_] = await self.session.get_one(ProgrammeVersion, id_)
        return self._versions[id_]

    def _key(self) -> str:
        self._said += 1
        return f"{self.cause}:{self._said}"
