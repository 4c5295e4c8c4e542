"""`easeward doctor`: looks at the installation and says what was found and what to do about it."""

from __future__ import annotations

import sys
from collections.abc import AsyncIterator
from datetime import timedelta
from importlib.metadata import version
from pathlib import Path

from sqlalchemy.exc import SQLAlchemyError
from sqlalchemy.ext.asyncio import AsyncSession
from telegram import Bot
from telegram.error import TelegramError

from bot.cli import surroundings
from bot.cli.finding import Finding
from bot.clocks import WRONG_SECONDS, SystemCalendar
from bot.settings import Settings
from bot.transport import AiohttpRequest
from bot.wellbeing import LOOKED_FOR, troubles
from db import alerts, engine, inbox, migrate, outbox
from plans.localtime import data_version

SAFE_SQLITE = (3, 51, 3)
"""Older ones have a rare race at a checkpoint with several connections."""


async def examine(settings: Settings) -> list[Finding]:
    """Looks at program, zone data, secrets, database and platform, in this order; changes nothing."""
    findings = [
        Finding("program", True, f"easeward {version('easeward')} on Python {sys.version.split()[0]}"),
        Finding("zone data", True, f"IANA {data_version()}, the program's own; {_host_zone_data()} and not used"),
    ]
    findings += surroundings.of_settings(settings)
    findings += [finding async for finding in _database(settings)]
    findings += [finding async for finding in _platform(settings)]
    return findings


HOST_ZONE_DATA = (Path("/usr/share/zoneinfo/tzdata.zi"), Path("/usr/share/zoneinfo/+VERSION"))
"""Where systems say which release of the zone data they hold: the first line, after a `#` and the word version."""


def _host_zone_data() -> str:
    for file in HOST_ZONE_DATA:
        if file.is_file():
            found = file.read_text(encoding="utf-8", errors="replace").partition("\n")[0].split()
            if found:
                return f"the host's is {found[-1]}"
    return "the host's says no release"


async def _database(settings: Settings) -> AsyncIterator[Finding]:
    try:
        address = engine.address_of(settings.database_url)
    except engine.UnfitDatabase as error:
        yield Finding("database", False, str(error), "Without it nothing can be kept. Set EASEWARD_DATABASE_URL.")
        return
    if engine.is_file(address) and not engine.file_of(address).exists():
        yield Finding("database", True, f"{address.database} is not there yet; serve or migrate makes it")
        return
    try:
        head, current = migrate.head(), await migrate.current(settings.database_url)
        todo = "" if head == current else "The program cannot read it like that. Run `easeward migrate`, or serve."
        yield Finding("tables", head == current, f"at version {current}, this program needs {head}", todo)
        if head != current:
            return
        async with engine.opened(settings.database_url) as database:
            yield _engine(database.version)
            async with database.reading() as session:
                yield _commits(await engine.forgetful(session))
                yield await alerts_of(session)
                yield _counts("messages out", await outbox.counts(session), "unknown", UNKNOWN)
                yield _counts("updates in", await inbox.counts(session), "failed", FAILED)
                for trouble in await troubles(session, SystemCalendar().now(), settings.backup_hours):
                    yield Finding(trouble.name, False, trouble.found, trouble.todo)
    except (SQLAlchemyError, OSError) as error:
        shown = address.render_as_string(hide_password=True)
        todo = "Nothing can be read or kept. Look at the address, the server or file, and its rights."
        yield Finding("database", False, f"{shown} cannot be read: {type(error).__name__}", todo)


def _engine(found: str) -> Finding:
    name, number = found.split()
    old = name == "SQLite" and tuple(int(part) for part in number.split(".")) < SAFE_SQLITE
    hint = ", older than 3.51.3: a rare race at checkpoints is known; one writer avoids it" if old else ""
    return Finding("engine", True, found + hint)


def _commits(off: list[str]) -> Finding:
    if not off:
        return Finding("commits", True, "what is confirmed is on disk")
    found = f"{', '.join(off)} off: after a crash messages may leave a second time and answers be lost"
    return Finding("commits", False, found, f"Set {', '.join(off)} to on in the server's configuration.")


UNSEEN = timedelta(hours=24)
"""An alert that nobody has seen for so long needs another way to somebody. Our own choice."""


async def alerts_of(session: AsyncSession) -> Finding:
    """Whether alerts reach somebody."""
    deaf = await alerts.deaf_coaches(session)
    unseen = await alerts.unseen_before(session, SystemCalendar().now() - UNSEEN)
    found, todo = [], []
    for coach, heard in deaf:
        found.append(f"coach {coach.id} has blocked the bot, " + ("an assistant hears" if heard else "nobody hears"))
    if deaf:
        todo.append("Pain of their clients may be heard by nobody. Tell that coach, or let them add an assistant.")
    if unseen:
        found.append(f"{unseen} open for more than a day and seen by nobody")
        todo.append("Clients wait for an answer. Ask the coaches to look, and to tap Seen.")
    return Finding("alerts", not found, "; ".join(found) or "every alert reaches somebody", " ".join(todo))


UNKNOWN = (
    "Unknown: they had left, and the platform's answer was lost. Who has such a session is offered it at the next "
    "contact. Some after a stop or a bad line are nothing; many say that the network or the platform fails."
)
FAILED = (
    "Failed: handling them raised an error three times. Their people and coaches were told that nothing was changed; "
    "the log has each as update-failed with its places in the code. Please report these."
)


def _counts(thing: str, counts: dict[str, int], odd: str, means: str) -> Finding:
    text = ", ".join(f"{count} {state}" for state, count in sorted(counts.items())) or "none"
    return Finding(thing, True, text, means if counts.get(odd) else "")


async def _platform(settings: Settings) -> AsyncIterator[Finding]:
    if settings.token is None:
        todo = "The bot cannot speak without one. Set EASEWARD_TOKEN or EASEWARD_TOKEN_FILE."
        yield Finding("platform", False, "no token", todo)
        return
    request = AiohttpRequest()
    bot = Bot(
        settings.token.get_secret_value(),
        base_url=f"{settings.api_url}/bot",
        base_file_url=f"{settings.api_url}/file/bot",
        request=request,
        get_updates_request=AiohttpRequest(),
    )
    try:
        async with bot:
            yield Finding("platform", True, f"answers as @{bot.username}")
            yield _clock(request.clock.off_by())
    except TelegramError as error:
        todo = "Nothing comes in or leaves. Check the token, EASEWARD_API_URL and the network."
        yield Finding("platform", False, f"does not answer: {type(error).__name__}", todo)


def _clock(off: float | None) -> Finding:
    if off is None:
        return Finding("clock", True, "the platform says no time to compare with")
    right = abs(off) <= WRONG_SECONDS
    todo = "" if right else LOOKED_FOR["clock"]
    return Finding("clock", right, f"{abs(off):.0f} s {'ahead of' if off > 0 else 'behind'} the platform's", todo)
