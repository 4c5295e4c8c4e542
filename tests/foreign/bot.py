"""A small bot of the strict client: `python bot.py ADDRESS TOKEN [--webhook PORT]`.

It plays a coach's bot over one day: a link, an agreement, questions, a session with its picture and buttons, taps, what
is typed, files both ways, and everything that can be changed in a chat. Each answer is read by the client's own shapes
first. On SIGTERM it prints one JSON object: `flaws`, the `methods` it called, and what the `people` did.
"""

from __future__ import annotations

import argparse
import asyncio
import json
import signal
import struct
import zlib
from collections.abc import Awaitable
from typing import Any

from aiogram import Bot, Dispatcher, F
from aiogram.client.default import DefaultBotProperties
from aiogram.client.session.aiohttp import AiohttpSession
from aiogram.client.telegram import TelegramAPIServer
from aiogram.exceptions import TelegramBadRequest, TelegramForbiddenError
from aiogram.filters import Command, CommandObject, CommandStart
from aiogram.types import (
    BotCommand,
    BotCommandScopeChat,
    BufferedInputFile,
    CallbackQuery,
    ChatMemberUpdated,
    InlineKeyboardButton,
    InlineKeyboardMarkup,
    InputMediaPhoto,
    LinkPreviewOptions,
    Message,
)
from aiogram.webhook.aiohttp_server import SimpleRequestHandler
from aiohttp import web
from exact import flaws_of_answer  # type: ignore[import-not-found]

SECRET = "a-secret-of-enough-letters"
ABOUT = (
    "<b>Before we begin</b>\nYour coach sees your answers &amp; your tests.\n<a href='https://example.org/'>More</a>"
)


class Strict(AiohttpSession):  # type: ignore[misc]
    """The client's own way to the platform, which also holds every answer against the shapes."""

    def __init__(self, api: TelegramAPIServer) -> None:
        super().__init__(api=api)
        self.flaws: list[str] = []
        self.methods: set[str] = set()

    def check_response(self, bot: Bot, method: Any, status_code: int, content: str) -> Any:
        name = method.__api_method__
        self.methods.add(name)
        found = flaws_of_answer(name, json.loads(content))
        self.flaws += [f"{name} answered {status_code}: {flaw}" for flaw in found]
        return super().check_response(bot, method, status_code, content)


def keyboard(*rows: tuple[str, ...]) -> InlineKeyboardMarkup:
    """Buttons whose data is their label in small letters."""
    return InlineKeyboardMarkup(
        inline_keyboard=[[InlineKeyboardButton(text=text, callback_data=text.lower()) for text in row] for row in rows]
    )


def picture(shade: int) -> bytes:
    """A small picture of one grey."""

    def chunk(kind: bytes, content: bytes) -> bytes:
        return struct.pack(">I", len(content)) + kind + content + struct.pack(">I", zlib.crc32(kind + content))

    rows = zlib.compress((b"\0" + bytes([shade]) * 60) * 40)
    head = chunk(b"IHDR", struct.pack(">IIBBBBB", 60, 40, 8, 0, 0, 0, 0))
    return b"\x89PNG\r\n\x1a\n" + head + chunk(b"IDAT", rows) + chunk(b"IEND", b"")


async def refused(asked: Awaitable[Any], words: str) -> None:
    """Wants an error of the platform, in the words that clients know it by."""
    try:
        await asked
    except (TelegramBadRequest, TelegramForbiddenError) as error:
        if words not in error.message:
            raise
    else:
        raise AssertionError(f"what should be refused ({words}) was taken")


UNDER_A_SESSION = keyboard(("All done", "Some pain"), ("How",), ("Lead me",))
SCALE = keyboard(tuple(str(n) for n in range(1, 6)), tuple(str(n) for n in range(6, 11)))


class Talk:
    """What the bot answers."""

    def __init__(self, bot: Bot) -> None:
        self.bot = bot
        self.people: list[str] = []
        self.pictures: list[str] = []

    def listen(self, to: Dispatcher) -> None:
        """Takes every kind of update that the talk has."""
        to.message.register(self.starts, CommandStart(deep_link=True))
        to.message.register(self.today, Command("today"))
        to.message.register(self.forgets, Command("mine"))
        to.message.register(self.sends_a_file, F.document)
        to.message.register(self.sends_a_picture, F.photo)
        to.message.register(self.sends_a_film, F.video)
        to.message.register(self.shares_a_place, F.location)
        to.message.register(self.says, F.text)
        to.edited_message.register(self.changes)
        to.callback_query.register(self.taps)
        to.my_chat_member.register(self.blocks)

    async def starts(self, message: Message, command: CommandObject) -> None:
        person = message.from_user
        self.people.append(f"start {command.args} {person.first_name} {person.language_code}")
        await self.bot.get_chat(message.chat.id)
        scope = BotCommandScopeChat(chat_id=message.chat.id)
        await self.bot.set_my_commands([BotCommand(command="people", description="Whom to look at")], scope=scope)
        assert (await self.bot.get_my_commands(scope=scope))[0].command == "people"
        calm = LinkPreviewOptions(is_disabled=True)
        await message.answer(ABOUT, reply_markup=keyboard(("I agree", "No")), link_preview_options=calm)

    async def says(self, message: Message) -> None:
        self.people.append(f"says {message.text}")
        if message.text == "Lisbon":
            await message.answer("When shall the morning be?", reply_markup=keyboard(("07:00", "08:00")))
        else:
            await message.answer(f"Noted: {message.html_text}")

    async def changes(self, message: Message) -> None:
        self.people.append(f"changes to {message.text} at {message.edit_date is not None}")
        await message.answer("Changed.")

    async def today(self, message: Message) -> None:
        self.people.append("today")
        await self.bot.send_chat_action(message.chat.id, "upload_photo")
        await self.session(message.chat.id)

    async def session(self, chat: int) -> None:
        """The day's message: uploaded once, then by its id."""
        photo = self.pictures[0] if self.pictures else BufferedInputFile(picture(120), "day.png")
        text = "<b>Day 1</b>\n1. Long reach: 30 s each side"
        sent = await self.bot.send_photo(chat, photo, caption=text, reply_markup=UNDER_A_SESSION)
        assert (sent.photo[-1].width, sent.photo[-1].height) == (60, 40)
        assert sent.caption_entities[0].extract_from(sent.caption) == "Day 1"
        self.pictures.append(sent.photo[-1].file_id)

    async def taps(self, query: CallbackQuery) -> None:
        self.people.append(f"taps {query.data}")
        message, chat = query.message, query.message.chat.id
        if query.data == "i agree":
            await message.edit_text("Which city do you live in?")
        elif query.data == "07:00":
            await message.edit_reply_markup(reply_markup=None)
            await self.session(chat)
        elif query.data == "some pain":
            await message.edit_reply_markup(reply_markup=SCALE)
        elif query.data == "how":
            await self.shows(chat)
        elif query.data == "lead me":
            await self.leads(message)
        else:
            await message.edit_caption(caption=f"Noted: <i>{query.data}</i>", reply_markup=keyboard(("Change",)))
            await self.changes_nothing(message)
        await query.answer("Noted" if query.data != "lead me" else None)

    async def changes_nothing(self, message: Message) -> None:
        """The same edit once more is refused, in the words that clients know it by."""
        seen = await message.edit_caption(caption="Tomorrow is day 2.")
        await refused(seen.edit_caption(caption="Tomorrow is day 2."), "message is not modified")

    async def shows(self, chat: int) -> None:
        """A movement: as a film, as the coach's own recording, and as two pictures."""
        await self.bot.send_animation(chat, BufferedInputFile(b"GIF89a" + bytes(40), "how.gif"), caption="There, back")
        await self.bot.send_video(chat, BufferedInputFile(bytes(64), "how.mp4"), caption="As I do it")
        other = await self.bot.send_photo(chat, BufferedInputFile(picture(40), "b.png"))
        both = [self.pictures[0], other.photo[-1].file_id]
        await self.bot.send_media_group(chat, [InputMediaPhoto(media=one, caption="<b>side</b>") for one in both])

    async def leads(self, message: Message) -> None:
        """Words become a picture, another picture, and are gone."""
        step = await self.bot.send_message(message.chat.id, "Hold")
        new = BufferedInputFile(picture(200), "step.png")
        changed = await step.edit_media(InputMediaPhoto(media=new, caption="30 s"), reply_markup=keyboard(("Next",)))
        await changed.edit_media(InputMediaPhoto(media=self.pictures[0], caption="Other side"))
        await changed.delete()

    async def sends_a_file(self, message: Message) -> None:
        found = await self.bot.get_file(message.document.file_id)
        body = (await self.bot.download_file(found.file_path)).read()
        self.people.append(f"file {message.document.file_name} {len(body)} {found.file_size} {message.caption}")
        report = BufferedInputFile(b"<p>fine</p>" + body, "report.html")
        sent = await message.answer_document(
            report, caption="The checker's report", reply_markup=keyboard(("Publish",))
        )
        await message.answer_document(sent.document.file_id)

    async def sends_a_picture(self, message: Message) -> None:
        largest = message.photo[-1]
        body = (await self.bot.download(largest.file_id)).read()
        self.people.append(f"picture {largest.width}x{largest.height} {len(body)}")
        await message.answer_photo(largest.file_id)

    async def sends_a_film(self, message: Message) -> None:
        self.people.append(f"film {message.video.file_name}")
        await message.answer_video(message.video.file_id)

    async def shares_a_place(self, message: Message) -> None:
        self.people.append(f"place {message.location.latitude} {message.location.longitude}")
        await message.answer("I only keep the clock of that place.")

    async def forgets(self, message: Message) -> None:
        self.people.append("mine")
        gone = await message.answer("All of it")
        await gone.delete()
        await message.answer("Nothing is kept any more.")

    async def blocks(self, change: ChatMemberUpdated) -> None:
        self.people.append(f"was {change.old_chat_member.status} is {change.new_chat_member.status}")
        if change.new_chat_member.status == "kicked":
            await refused(self.bot.send_message(change.chat.id, "Are you there?"), "blocked by the user")


class Hook(SimpleRequestHandler):  # type: ignore[misc]
    """The client's own webhook, which also holds every update against the shapes."""

    def __init__(self, strict: Strict, dispatcher: Dispatcher, bot: Bot) -> None:
        super().__init__(dispatcher, bot, handle_in_background=False, secret_token=SECRET)
        self._strict = strict

    async def handle(self, request: web.Request) -> Any:
        found = flaws_of_answer("getUpdates", {"ok": True, "result": [await request.json()]})
        self._strict.flaws += [f"webhook: {flaw}" for flaw in found]
        return await super().handle(request)


async def ask(dispatcher: Dispatcher, bot: Bot, stop: asyncio.Event) -> None:
    """Asks for updates until it is stopped."""
    await bot.delete_webhook(drop_pending_updates=False)
    asking = asyncio.create_task(
        dispatcher.start_polling(bot, polling_timeout=2, handle_signals=False, handle_as_tasks=False)
    )
    print("ready", flush=True)
    await stop.wait()
    await dispatcher.stop_polling()
    await asking


async def be_told(dispatcher: Dispatcher, bot: Bot, strict: Strict, stop: asyncio.Event, port: int) -> None:
    """Has updates brought until it is stopped."""
    app = web.Application()
    Hook(strict, dispatcher, bot).register(app, "/in")
    runner = web.AppRunner(app)
    await runner.setup()
    await web.TCPSite(runner, "127.0.0.1", port).start()
    kinds = dispatcher.resolve_used_update_types()
    await bot.set_webhook(f"http://127.0.0.1:{port}/in", secret_token=SECRET, allowed_updates=kinds, max_connections=5)
    assert set((await bot.get_webhook_info()).allowed_updates) == set(kinds)
    print("ready", flush=True)
    await stop.wait()
    await bot.delete_webhook()
    await runner.cleanup()


async def main() -> None:
    """Plays until SIGTERM."""
    words = argparse.ArgumentParser()
    words.add_argument("address")
    words.add_argument("token")
    words.add_argument("--webhook", type=int)
    said = words.parse_args()
    stop = asyncio.Event()
    asyncio.get_running_loop().add_signal_handler(signal.SIGTERM, stop.set)
    strict = Strict(TelegramAPIServer.from_base(said.address))
    bot = Bot(said.token, session=strict, default=DefaultBotProperties(parse_mode="HTML"))
    dispatcher, talk = Dispatcher(), Talk(bot)
    talk.listen(dispatcher)
    failed: list[str] = []

    async def fails(event: Any) -> bool:
        failed.append(repr(event.exception))
        return True

    dispatcher.errors.register(fails)
    await bot.me()
    if said.webhook is None:
        await ask(dispatcher, bot, stop)
    else:
        await be_told(dispatcher, bot, strict, stop, said.webhook)
    await bot.session.close()
    found = {"flaws": strict.flaws + failed, "methods": sorted(strict.methods), "people": talk.people}
    print(json.dumps(found), flush=True)


if __name__ == "__main__":
    asyncio.run(main())
