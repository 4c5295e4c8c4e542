"""The dead man's ping: while all is well the operator's own monitoring hears it; its silence is the alarm."""

from __future__ import annotations

import asyncio
import logging
from urllib.parse import urlsplit

import aiohttp

from bot.clocks import WRONG_SECONDS, Calendar, PlatformClock
from bot.ticks import Ticker
from bot.wellbeing import Trouble, troubles
from db.engine import Database
from db.trouble import passing

PING_SECONDS = 60.0
"""How often it is looked whether all is well. Our own choice."""
PATIENCE = 120.0
"""Seconds without the end of a tick, beside the pauses that are set between them, that count as stuck. Own choice."""
ANSWER_SECONDS = 10.0

log = logging.getLogger(__name__)


class UnfitPing(ValueError):
    """The address to ping cannot be used; the message says why and does not quote it."""


def checked(url: str) -> str:
    """The address, if it may be pinged: over TLS, or on this machine. Raises UnfitPing."""
    parts = urlsplit(url)
    if parts.scheme == "https" and parts.hostname:
        return url
    if parts.scheme == "http" and parts.hostname in ("localhost", "127.0.0.1", "::1"):
        return url
    raise UnfitPing("EASEWARD_PING_URL: an https address is needed, or http on this machine")


class Heartbeat:
    """Pings while ticks end, messages leave, the clock is right and the last backup is young enough."""

    def __init__(
        self,
        database: Database,
        ticker: Ticker,
        *,
        calendar: Calendar,
        url: str,
        backup_hours: int,
        tick_seconds: float,
        clock: PlatformClock | None = None,
    ) -> None:
        self._database = database
        self._ticker = ticker
        self._calendar = calendar
        self._url = checked(url)
        self._backup_hours = backup_hours
        self._longest = PATIENCE + 3 * tick_seconds
        self._clock = clock
        self._begun = asyncio.get_running_loop().time()
        self._known: set[str] = set()

    async def run(self) -> None:
        """Beats until cancelled; the first beat comes after a pause, so that a restart in a loop stays silent."""
        while True:
            await asyncio.sleep(PING_SECONDS)
            await self.beat()

    async def beat(self) -> bool:
        """Looks once, and pings if all is well; returns whether it is."""
        found = await self.look()
        self._tell({trouble.name for trouble in found})
        if not found:
            await self._ping()
        return not found

    async def look(self) -> list[Trouble]:
        """What is not well."""
        found = []
        off = self._clock.off_by() if self._clock is not None else None
        if off is not None and abs(off) > WRONG_SECONDS:
            found.append(Trouble("clock", f"{abs(off):.0f} s off"))
        still = asyncio.get_running_loop().time() - (self._ticker.ended_at or self._begun)
        if still > self._longest:
            found.append(Trouble("ticks", f"no tick has ended for {still:.0f} s"))
        try:
            async with asyncio.timeout(PING_SECONDS / 2), self._database.reading() as session:
                return [*found, *await troubles(session, self._calendar.now(), self._backup_hours)]
        except Exception as error:
            if not passing(error):
                raise
            return [*found, Trouble("database", type(error).__name__)]

    def _tell(self, now: set[str]) -> None:
        """Logs what has become wrong, and when all is well again."""
        for name in sorted(now - self._known):
            log.error("not-well", extra={"reason": name})
        if self._known and not now:
            log.info("well-again")
        self._known = now

    async def _ping(self) -> None:
        timeout = aiohttp.ClientTimeout(total=ANSWER_SECONDS)
        try:
            async with (
                aiohttp.ClientSession(timeout=timeout) as http,
                http.get(self._url, allow_redirects=False) as answer,
            ):
                if answer.status >= 300:
                    log.warning("ping-failed", extra={"count": answer.status})
        except (aiohttp.ClientError, TimeoutError, OSError) as error:
            log.warning("ping-failed", extra={"error": type(error).__name__})
