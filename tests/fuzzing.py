"""Updates made at random: what people can send in any order, and what no platform would send at all.

The first must be handled whatever it says; the second may fail, but alone, and never before it is stored.
"""

from __future__ import annotations

import json
import random
from collections import Counter
from collections.abc import Callable, Mapping
from copy import deepcopy
from datetime import UTC, date, datetime, time
from functools import partial
from importlib.resources import files
from typing import Any

from sqlalchemy.ext.asyncio import AsyncSession

from bot import webhook
from bot.commands import COMMANDS
from bot.receiving import QuietApplication
from bot.taps import TAPS
from db import due, inbox
from db.engine import Database
from db.schema import Coach, Course, Person, ProgrammeVersion
from tests.integration import updates
from tests.log_fuzz import replies
from tests.mutating import mutant

NOW = datetime(2026, 5, 4, 6, 0, tzinfo=UTC)
COACH, CLIENT, STRANGER = 11, 12, 13
BOT: dict[str, Any] = {"id": 1000, "is_bot": True, "first_name": "Easeward", "username": "easeward_bot"}
SAMPLE = files("plans.library").joinpath("rowing-club.yaml").read_text(encoding="utf-8")

Update = dict[str, Any]
Rng = random.Random


async def people(session: AsyncSession) -> None:
    """A coach, a client of theirs on the first day, and nobody else."""
    for number, chat in ((9001, COACH), (9002, CLIENT)):
        session.add(Person(id=number, chat=chat, label="P", zone="UTC", morning=time(7), created_at=NOW))
    await session.flush()
    session.add(Coach(id=9001, person_id=9001, created_at=NOW))
    await session.flush()
    session.add(
        ProgrammeVersion(id=9001, coach_id=9001, digest="d", title="R", source=SAMPLE, stored_at=NOW, published_at=NOW)
    )
    await session.flush()
    course = Course(id=9001, person_id=9002, coach_id=9001, version_id=9001, state="active", starts_on=date(2026, 5, 4))
    course.created_at = NOW
    session.add(course)
    await due.plan(session, due.DueKind.MORNING, 9002, NOW)


# --- what people can send ---------------------------------------------------------------------------------------------

ODD_TEXT = (
    "",
    " ",
    "0",
    "-1",
    "9" * 30,
    "1e999",
    "٣",
    "½",
    "\u202e\u200b\ufeff",
    "e\u0301" * 50,
    "🤕" * 400,
    "<b>&lt;/b>{{7*7}}{% raw %}",
    "'; DROP TABLE person; --",
    "../../etc/passwd",
    "%s%n%x",
    "=1+1",
    "a\nb\r\nc\td",
    "x" * 4096,
)


def words(rng: Rng) -> str:
    """Something typed."""
    return rng.choice((rng.choice(replies()), rng.choice(ODD_TEXT), str(rng.randrange(-5, 200)), rng.choice(ODD_TEXT)))


def _argument(rng: Rng) -> str:
    numbers = (str(rng.randrange(-1, 5)), str(2**63), str(rng.randrange(10**6)), "9001", "1.5", "१")
    names = ("yes", "no", "all", "all:1", "none", "x", "", "done", "part", "pain", "2026-05-05", "2026-13-40", "UTC")
    return rng.choice((rng.choice(numbers), rng.choice(names), rng.choice(ODD_TEXT)[:20], "wall-calf-stretch"))


def tap_data(rng: Rng) -> str:
    """A button's data: a word that we have, and whatever after it; at most 64 bytes, as the platform keeps them."""
    verb = rng.choice((*TAPS, "nothing", ""))
    data = ":".join([verb, *(_argument(rng) for _ in range(rng.randrange(5)))])
    return data.encode()[:64].decode(errors="ignore")


def _message(rng: Rng, number: int, chat: int, **content: Any) -> Update:
    person = {
        "id": chat,
        "is_bot": False,
        "first_name": words(rng)[:64] or "P",
        "language_code": rng.choice(("en", "pt-BR", "xx")),
    }
    inside = {
        "message_id": number,
        "date": int(NOW.timestamp()),
        "chat": {"id": chat, "type": "private"},
        "from": person,
    }
    return inside | content


def _said(rng: Rng, number: int, chat: int) -> Update:
    text = words(rng)
    if rng.random() < 0.3:
        text = f"/{rng.choice((*COMMANDS, 'nothing'))} {words(rng)}"[:4096]
    entities = [{"type": "bot_command", "offset": 0, "length": len(text.split()[0])}] if text.startswith("/") else []
    which = rng.choice(("message", "message", "edited_message"))
    more = {"edit_date": int(NOW.timestamp())} if which == "edited_message" else {}
    return {"update_id": number, which: _message(rng, number, chat, text=text or "x", entities=entities, **more)}


def _tapped(rng: Rng, number: int, chat: int) -> Update:
    query = {
        "id": str(number),
        "from": {"id": chat, "is_bot": False, "first_name": "P"},
        "chat_instance": "1",
        "data": tap_data(rng),
        "message": _message(rng, rng.randrange(1, 9), chat, text="x"),
    }
    return {"update_id": number, "callback_query": query}


STICKER = {"file_id": "s", "file_unique_id": "u", "width": 1, "height": 1, "type": "regular"}
STICKER |= {"is_animated": False, "is_video": False}


def _sent(rng: Rng, number: int, chat: int) -> Update:
    sizes = [{"file_id": "p", "file_unique_id": "u", "width": rng.choice((1, 10**9)), "height": 1}]
    name = rng.choice(("p.yaml", "../../x.yaml", "con\x00.yaml", "a" * 300, ""))
    kinds: tuple[dict[str, Any], ...] = (
        {"photo": sizes, "caption": words(rng)[:1024]},
        {"document": {"file_id": "d", "file_unique_id": "u", "file_name": name}, "caption": words(rng)[:1024]},
        {"video": {"file_id": "v", "file_unique_id": "u", "width": 1, "height": 1, "duration": 1}},
        {"voice": {"file_id": "v", "file_unique_id": "u", "duration": 10**9}},
        {"location": {"latitude": rng.uniform(-90, 90), "longitude": rng.uniform(-180, 180)}},
        {"sticker": STICKER},
        {"contact": {"phone_number": "1", "first_name": "P"}},
    )
    return {"update_id": number, "message": _message(rng, number, chat, **rng.choice(kinds))}


def _membership(rng: Rng, number: int, chat: int) -> Update:
    person = {"id": chat, "is_bot": False, "first_name": "P"}
    bot = {"user": BOT, "status": "member"}
    gone = {"user": BOT, "status": "kicked", "until_date": 0}
    change = {"chat": {"id": chat, "type": "private"}, "from": person, "date": int(NOW.timestamp())}
    old, new = rng.choice(((bot, gone), (gone, bot)))
    return {"update_id": number, "my_chat_member": change | {"old_chat_member": old, "new_chat_member": new}}


WAYS: tuple[Callable[[Rng, int, int], Update], ...] = (_said, _said, _tapped, _tapped, _tapped, _sent, _membership)


def possible(rng: Rng, number: int) -> Update:
    """An update as the platform makes them."""
    return rng.choice(WAYS)(rng, number, rng.choice((COACH, CLIENT, CLIENT, STRANGER)))


# --- what no platform would send --------------------------------------------------------------------------------------

ODD: tuple[Any, ...] = (
    None,
    True,
    -1,
    2**63,
    2**200,
    1.5,
    float("nan"),
    float("inf"),
    "",
    "\x00",
    "\ud800",
    "x" * 20_000,
    [],
    {},
    [[[[]]]],
    {"id": {"id": {}}},
)


def broken(rng: Rng, number: int) -> Update:
    """The same with some of its values, at any depth, taken away or made into something else; the number stays."""
    found = deepcopy(possible(rng, number))
    for _ in range(rng.randrange(1, 4)):
        holder: Any = found
        while True:
            keys = list(holder) if isinstance(holder, dict) else list(range(len(holder)))
            if not keys:
                break
            key = rng.choice(keys)
            if isinstance(holder[key], dict | list) and holder[key] and rng.random() < 0.7:
                holder = holder[key]
                continue
            if key != "update_id":
                if rng.random() < 0.3:
                    del holder[key]
                else:
                    holder[key] = deepcopy(rng.choice(ODD))
            break
    return found


def body(rng: Rng, number: int) -> bytes:
    """What could come in at the webhook's address."""
    whole = json.dumps(broken(rng, number)).encode()
    at = rng.randrange(len(whole))
    ways: tuple[Callable[[], bytes], ...] = (
        lambda: whole,
        lambda: whole[:at],
        lambda: whole[:at] + bytes(rng.randrange(256) for _ in range(4)) + whole[at:],
        lambda: rng.randbytes(rng.randrange(200)),
        lambda: b'{"update_id": 1, "message": ' + b"[" * rng.randrange(1, 50_000),
        lambda: b'{"a":' * 2000 + b"1" + b"}" * 2000,
        lambda: json.dumps({"update_id": rng.choice(ODD)}).encode(),
        lambda: b"\xef\xbb\xbf" + whole,
        lambda: b'{"update_id": ' + b"9" * 5000 + b"}",
    )
    return rng.choice(ways)()


# --- letting them in --------------------------------------------------------------------------------------------------


async def _stored(update: Update, session: AsyncSession) -> None:
    await inbox.store(session, [update], NOW)


async def handled(database: Database, app: QuietApplication, update: Mapping[str, Any], document: bytes | None) -> None:
    """Handles an update as the inbox's worker does. Raises what its handler raises."""

    async def job(_session: AsyncSession) -> None:
        await updates.handled(app, inbox.without_identity(update), NOW, document)

    await database.write(job)


async def run(database: Database, seed: int, count: int) -> tuple[Counter[str], list[str]]:
    """Lets so many updates in, most of them possible; what came of them, and what should not have."""
    rng, app, found, wrong = Rng(seed), updates.offline(BOT["username"]), Counter[str](), list[str]()
    for number in range(1, count + 1):
        is_broken = rng.random() < 0.3
        update = broken(rng, number) if is_broken else possible(rng, number)
        document = (
            mutant(rng).encode("utf-8", "replace") if "document" in str(update)[:2000] and rng.random() < 0.8 else None
        )
        try:
            await database.write(partial(_stored, update))
        except Exception as error:
            wrong.append(f"seed {seed}, {number}: not stored, {type(error).__name__}: {error}\n{str(update)[:600]}")
            continue
        try:
            await handled(database, app, update, document)
            found["broken and handled" if is_broken else "handled"] += 1
        except Exception as error:
            found[f"{'broken' if is_broken else 'possible'} and failed"] += 1
            if not is_broken:
                wrong.append(f"seed {seed}, {number}: {type(error).__name__}: {error}\n{str(update)[:600]}")
    return found, wrong


def read_bodies(seed: int, count: int) -> Counter[str]:
    """Reads so many bodies as the webhook does. Raises what it should not raise."""
    rng, found = Rng(seed), Counter[str]()
    for number in range(1, count + 1):
        found["update" if webhook.update_in(body(rng, number)) is not None else "refused"] += 1
    return found
