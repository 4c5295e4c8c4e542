"""What only `easeward practice` has beside the platform: the course behind a chat, the samples, invented answers.

These are routes of people's side. They read the bot's database or do what a person could do; the platform and the bot
know nothing of them.
"""

from __future__ import annotations

from importlib.resources import files
from typing import Protocol

from aiohttp import web

from bot.practice.asked import body_of, number_of, text_of
from bot.practice.controls import Route
from bot.practice.journal import journal
from bot.practice.manners import Act, Manner, Say, Scene, Tap, next_act
from bot.practice.platform import Platform
from bot.practice.showing import shown_all
from db.engine import Database
from plans.reading import read_programme

SAMPLES = ("rowing-club.yaml", "hill-walkers.yaml", "pit-musicians.yaml")


class House(Protocol):
    """The bot that stands behind the platform."""

    def database(self) -> Database:
        """Its database. Raises Unsettled while it is still starting."""
        ...

    async def settle(self) -> None:
        """Waits until everything that was said is answered. Raises Unsettled."""
        ...


def routes(platform: Platform, house: House) -> tuple[Route, ...]:
    """The routes, for the server's own table."""
    side = _Side(platform, house)
    manners = ", ".join(Manner)
    return (
        Route(
            "GET",
            "course",
            side.course,
            "?chat= -> {programme, days, state, rows, ahead, letters}: a client's dates with every stored vote",
        ),
        Route("GET", "samples", side.samples, "-> [{name, title, text}]: the sample programmes"),
        Route(
            "POST",
            "act",
            side.act,
            f"{{chat, as}} -> {{did}}: an invented client ({manners}) answers what is open in a chat",
        ),
    )


def sample(name: str) -> str:
    """A sample programme's file."""
    return files("plans.library").joinpath(name).read_text(encoding="utf-8")


class _Side:
    def __init__(self, platform: Platform, house: House) -> None:
        self._platform = platform
        self._house = house

    async def course(self, request: web.Request) -> web.Response:
        chat = request.query.get("chat", "")
        if not chat.isdecimal():
            raise ValueError(f"chat is {chat!r}: a whole number is needed")
        return web.json_response(await journal(self._house.database(), int(chat)))

    async def samples(self, _request: web.Request) -> web.Response:
        texts = {name: sample(name) for name in SAMPLES}
        found = [{"name": name, "title": read_programme(text).title, "text": text} for name, text in texts.items()]
        return web.json_response(found)

    async def act(self, request: web.Request) -> web.Response:
        body = await body_of(request)
        chat, manner = number_of(body, "chat"), text_of(body, "as")
        if manner not in list(Manner):
            raise ValueError(f"as is {manner!r}: one of {', '.join(Manner)} is needed")
        return web.json_response({"did": [_words(act) for act in await self._acted(chat, Manner(manner))]})

    async def _acted(self, chat: int, manner: Manner) -> tuple[Act, ...]:
        done: tuple[Act, ...] = ()
        while (act := next_act(manner, await self._scene(chat, done))) is not None:
            self._do(chat, act)
            done = (*done, act)
        return done

    async def _scene(self, chat: int, done: tuple[Act, ...]) -> Scene:
        await self._house.settle()
        messages = shown_all(self._platform, chat, self._platform.messages(chat))
        return Scene(messages, await journal(self._house.database(), chat), done)

    def _do(self, chat: int, act: Act) -> None:
        if isinstance(act, Say):
            self._platform.say(chat, act.text)
        else:
            self._platform.tap(chat, act.message, act.data)


def _words(act: Act) -> str:
    return f"tapped {act.label}" if isinstance(act, Tap) else f"typed {act.text}"
