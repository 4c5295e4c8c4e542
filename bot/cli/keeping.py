"""Keeping the data: its tables, a backup while the bot serves, putting one back, and moving to another database."""

from __future__ import annotations

from collections.abc import Callable
from datetime import UTC, datetime
from pathlib import Path

from sqlalchemy.ext.asyncio import AsyncSession

from bot.clocks import SystemCalendar
from bot.flows import restored
from bot.settings import Settings
from db import copying, erasure, restoring, watched
from db import migrate as migrations
from db.copying import NotEmpty
from db.engine import address_of, opened, served_alone, writing_engine
from db.restoring import Restored

Say = Callable[[str], None]


class UnfitFile(ValueError):
    """A file is no backup that can be put back."""


async def migrate(settings: Settings, say: Say) -> None:
    """Brings the database to this program's tables, alone with it."""
    async with served_alone(settings.database_url):
        say(f"the tables are at version {await migrations.upgrade(settings.database_url)}")


async def backup(settings: Settings, file: Path, say: Say) -> None:
    """Copies one moment of the database, while it is served, into a new SQLite file, and compares it row for row."""
    await copying.check_version(settings.database_url)
    async with opened(settings.database_url) as database, copying.snapshot(database) as source:
        rows = await copying.into_file(source, file)
    async with opened(settings.database_url) as database:
        await database.write(lambda session: watched.note_backup(session, SystemCalendar().now()))
    say(f"{file}: {sum(rows.values())} rows of {len(rows)} tables, compared row for row")


async def move_data(settings: Settings, target: str, say: Say) -> None:
    """Copies a whole database into another, empty one, and compares it row for row. Nobody may serve meanwhile."""
    if address_of(settings.database_url) == address_of(target):
        raise NotEmpty("the data is there already: the two addresses are the same")
    await copying.check_version(settings.database_url)
    async with served_alone(settings.database_url), served_alone(target):
        await migrations.upgrade(target)
        async with (
            opened(settings.database_url) as database,
            copying.snapshot(database) as source,
            writing_engine(target) as engine,
            engine.begin() as written,
        ):
            await copying.refuse_rows(written)
            await copying.copy(source, written)
            rows = await copying.compare(source, written)
    for name, count in rows.items():
        if count:
            say(f"{name}: {count} rows, all the same")
    say("Moved. Set EASEWARD_DATABASE_URL to the new address; the old data is still where it was.")


async def restore(settings: Settings, file: Path, erasures_of: Path | None, say: Say) -> None:
    """Puts a backup in the place of what is there, which is kept in a backup of its own. Nobody may serve meanwhile."""
    for one in (file, *([erasures_of] if erasures_of else [])):
        await _check(one)
    async with served_alone(settings.database_url):
        await migrations.upgrade(settings.database_url)
        known = await _known_erasures(settings.database_url)
        if erasures_of is not None:
            known += await _known_erasures(f"sqlite:///{erasures_of}")
        kept = await _keep_present(settings, file.parent)
        if kept is not None:
            say(f"what was there is kept in {kept}")
        now = SystemCalendar().now()
        async with (
            opened(f"sqlite:///{file}") as backup,
            copying.snapshot(backup) as source,
            writing_engine(settings.database_url) as engine,
            engine.begin() as target,
        ):
            done = await restoring.put_back(source, target, known)
            async with AsyncSession(bind=target, join_transaction_mode="conditional_savepoint") as session:
                await restored.tell_coaches(session, done, now)
                await session.commit()
    say(_told(done))


def _told(done: Restored) -> str:
    until = f" of a copy that ends at {done.newest:%Y-%m-%d %H:%M} UTC" if done.newest else ""
    return (
        f"restored {done.rows} rows{until}; {done.not_sent_again} messages that were on their way are not sent again, "
        f"{done.erased_again} people were erased again"
        + (f"; {done.coaches_stay} coaches who were erased have clients in it, and stay" if done.coaches_stay else "")
    )


async def _check(file: Path) -> None:
    if not file.is_file():
        raise UnfitFile(f"{file}: there is no such file")
    damage = copying.damage_of(file)
    if damage is not None:
        raise UnfitFile(f"{file}: that is no whole backup: {damage}")
    await copying.check_version(f"sqlite:///{file}")


async def _known_erasures(url: str) -> list[tuple[int, datetime, datetime]]:
    async with opened(url) as database, database.reading() as session:
        return await erasure.erased(session)


async def _keep_present(settings: Settings, folder: Path) -> Path | None:
    async with opened(settings.database_url) as database, copying.snapshot(database) as source:
        if not any((await copying.counts(source)).values()):
            return None
        file = folder / f"before-restore-{datetime.now(UTC):%Y%m%dT%H%M%S.%f}.sqlite"
        await copying.into_file(source, file)
        return file
