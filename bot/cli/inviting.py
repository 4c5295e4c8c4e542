"""`easeward invite-coach`: the link by which somebody becomes a coach."""

from __future__ import annotations

from collections.abc import Callable

from telegram.error import InvalidToken, TelegramError

from bot.app import CannotServe, refused, token_of
from bot.clocks import SystemCalendar
from bot.receiving import built
from bot.settings import Settings
from db import links, migrate
from db.engine import opened


async def invite_coach(settings: Settings, say: Callable[[str], None]) -> None:
    """Prints a one-time link for a coach. Raises CannotServe."""
    token = token_of(settings)
    await migrate.upgrade(settings.database_url)
    username = await _username(settings, token)
    now = SystemCalendar().now()
    async with opened(settings.database_url) as database:
        link = await database.write(lambda session: links.new_coach_link(session, now))
    say(f"https://t.me/{username}?start={link}")
    say(f"It opens once, within {links.COACH_LINK_DAYS} days.")


async def _username(settings: Settings, token: str) -> str:
    application = built(token, settings.api_url)
    try:
        await application.bot.initialize()
        return str(application.bot.username)
    except InvalidToken:
        raise refused() from None
    except TelegramError as error:
        raise CannotServe(f"the platform does not answer at {settings.api_url}: {type(error).__name__}") from None
    finally:
        await application.bot.shutdown()
