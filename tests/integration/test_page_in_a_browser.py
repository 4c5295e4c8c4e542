"""The practice chat's page in a real browser, against the server itself and a bot that answers everything."""

from __future__ import annotations

import asyncio
import re
from collections.abc import AsyncIterator, Iterator
from contextlib import asynccontextmanager, suppress
from datetime import datetime
from html import escape
from importlib.resources import files

import pytest
import pytest_asyncio
from playwright.async_api import Browser, FilePayload, expect
from telegram import Bot, InlineKeyboardButton, InlineKeyboardMarkup, Message, Update

from bot.practice.clock import StandingCalendar, Unsettled
from bot.practice.shapes import BOT_USERNAME
from bot.practice.store import Store
from bot.practising import ZONE
from tests.integration.browsers import NARROWEST, ONE_LOOP, PHONE, WIDE, opened
from tests.integration.practice.places import ANN, START, Place, StepByStep, place, png

COACH = ANN
CLIENT = 202
ANSWERS = InlineKeyboardMarkup(
    [[InlineKeyboardButton("Done", callback_data="done"), InlineKeyboardButton("Not today", callback_data="none")]]
)


# --- a small bot ------------------------------------------------------------------------------------------------------


async def _answer(bot: Bot, update: Update) -> None:
    if update.callback_query is not None and isinstance(update.callback_query.message, Message):
        await update.callback_query.answer("Noted, thank you")
        await update.callback_query.message.edit_text(f"You tapped {update.callback_query.data}", reply_markup=ANSWERS)
    elif update.message is not None and update.message.document is not None:
        fetched = await (await update.message.document.get_file()).download_as_bytearray()
        await update.message.reply_text(f"{update.message.document.file_name} says {fetched.decode()}")
    elif update.message is not None:
        await update.message.reply_html(
            f"You said <b>{escape(update.message.text or '')}</b>. /help", reply_markup=ANSWERS
        )


async def _answering(bot: Bot) -> None:
    offset = 0
    while True:
        for update in await bot.get_updates(offset=offset, timeout=20):
            offset = update.update_id + 1
            await _answer(bot, update)


@asynccontextmanager
async def _practice(*, hanging: bool = False) -> AsyncIterator[Place]:
    """A coach, a client and the small bot; with a mover that something holds up if asked for."""
    mover = _Hanging(StandingCalendar(Store(None), START)) if hanging else None
    async with place(mover=mover) as here, here.bot() as bot:
        here.platform.say(CLIENT, "Good morning", first_name="Robin (invented)")
        task = asyncio.create_task(_answering(bot))
        try:
            yield here
        finally:
            task.cancel()
            with suppress(asyncio.CancelledError):
                await task


class _Hanging(StepByStep):
    async def move(self, target: datetime) -> None:
        raise Unsettled(["1 message waits to be sent"])


# --- the page ---------------------------------------------------------------------------------------------------------


@pytest_asyncio.fixture(loop_scope="module")
async def here() -> AsyncIterator[Place]:
    async with _practice() as found:
        yield found


# --- what people do ---------------------------------------------------------------------------------------------------


@pytest.mark.browser
@ONE_LOOP
async def test_client_and_coach_are_side_by_side_with_their_names(here: Place, browser: Browser) -> None:
    async with opened(browser, here.address, WIDE) as page:
        await expect(page.get_by_role("heading", name="Client: Robin (invented)")).to_be_visible()
        await expect(page.get_by_role("heading", name="Coach: Ann")).to_be_visible()
        await expect(page.get_by_role("log", name="Messages of Robin (invented)")).to_contain_text("Good morning")
        await expect(page.get_by_role("log", name="Messages of Ann")).to_contain_text("Hello")


@pytest.mark.browser
@ONE_LOOP
async def test_what_is_typed_is_sent_with_enter_and_answered_in_bold(here: Place, browser: Browser) -> None:
    async with opened(browser, here.address, WIDE) as page:
        box = page.get_by_role("textbox", name="Write as Robin (invented)")
        await box.fill("a < b")
        await box.press("Enter")
        await expect(box).to_have_value("")
        await expect(page.locator("#client .own").last).to_contain_text("a < b")
        await expect(page.locator("#client .words b").last).to_have_text("a < b")


@pytest.mark.browser
@ONE_LOOP
async def test_a_tap_by_keyboard_changes_the_message_and_keeps_its_place(here: Place, browser: Browser) -> None:
    async with opened(browser, here.address, WIDE) as page:
        button = page.locator("#client").get_by_role("button", name="Not today")
        await button.focus()
        await page.keyboard.press("Enter")
        await expect(page.locator("#client article").last).to_contain_text("You tapped none")
        await expect(page.locator("#client article").last).to_contain_text("changed")
        await expect(page.locator("#client .answer")).to_have_text("Noted, thank you")
        await expect(button).to_be_focused()


@pytest.mark.browser
@ONE_LOOP
async def test_a_command_in_a_message_is_sent_by_tapping_it(here: Place, browser: Browser) -> None:
    async with opened(browser, here.address, WIDE) as page:
        await page.locator("#client").get_by_role("button", name="/help").click()
        await expect(page.locator("#client .own").last).to_contain_text("/help")


@pytest.mark.browser
@ONE_LOOP
async def test_a_file_sent_in_the_page_reaches_the_bot_whole(here: Place, browser: Browser) -> None:
    async with opened(browser, here.address, WIDE) as page:
        file = FilePayload(name="days.yaml", mimeType="text/yaml", buffer="title: Früh".encode())
        await page.locator("#coach input[type=file]").set_input_files(file)
        await expect(page.locator("#coach article").last).to_contain_text("days.yaml says title: Früh")
        await expect(page.locator("#coach .own").last).to_contain_text("File: days.yaml (12 bytes)")


@pytest.mark.browser
@ONE_LOOP
async def test_the_bots_link_opens_as_a_new_client(here: Place, browser: Browser) -> None:
    await here.result("sendMessage", chat_id=COACH, text=f"Invite: https://t.me/{BOT_USERNAME}?start=join-aB_9")
    async with opened(browser, here.address, WIDE) as page:
        await page.locator("#coach").get_by_role("button", name="start=join-aB_9").click()
        dialog = page.get_by_role("dialog", name="Open this link")
        await expect(dialog.get_by_role("radio", name="A new person")).to_be_checked()
        await dialog.get_by_role("textbox", name="First name of the new person").fill("Noa")
        await dialog.get_by_role("button", name="Open").click()
        await expect(page.get_by_role("heading", name="Client: Noa")).to_be_visible()
        await expect(page.locator("#client .own")).to_contain_text("/start join-aB_9")


@pytest.mark.browser
@ONE_LOOP
async def test_the_bots_link_opens_as_the_person_of_this_chat(here: Place, browser: Browser) -> None:
    await here.result("sendMessage", chat_id=CLIENT, text=f"https://t.me/{BOT_USERNAME}?start=join-1")
    async with opened(browser, here.address, WIDE) as page:
        await page.locator("#client").get_by_role("button", name="start=join-1").click()
        await page.get_by_role("radio", name="Robin (invented), in this chat").check()
        await page.get_by_role("button", name="Open", exact=True).click()
        await expect(page.locator("#client .own").last).to_contain_text("/start join-1")
        await expect(page.get_by_role("heading", name="Client: Robin (invented)")).to_be_visible()


@pytest.mark.browser
@ONE_LOOP
async def test_another_person_is_chosen_and_still_shown_after_a_reload(here: Place, browser: Browser) -> None:
    here.platform.say(303, "I am here too", first_name="Sam")
    async with opened(browser, here.address, WIDE) as page:
        await page.get_by_role("combobox", name="Show whose chat as client").select_option("Sam")
        await expect(page.locator("#client .own")).to_contain_text("I am here too")
        await page.reload()
        await expect(page.get_by_role("heading", name="Client: Sam")).to_be_visible()


@pytest.mark.browser
@ONE_LOOP
async def test_a_picture_stands_with_its_words_and_a_deleted_message_goes(here: Place, browser: Browser) -> None:
    async with opened(browser, here.address, WIDE) as page:
        status, sent = await here.upload("sendPhoto", "photo", png(40, 30), chat_id=str(CLIENT), caption="Calf stretch")
        assert status == 200
        picture = page.get_by_role("img", name="Picture of what the words below say")
        await expect(picture).to_be_visible()
        await expect(picture).to_have_js_property("naturalWidth", 40)
        await expect(page.locator("#client article").last).to_contain_text("Calf stretch")
        await here.result("deleteMessage", chat_id=CLIENT, message_id=sent["result"]["message_id"])
        await here.result("sendMessage", chat_id=CLIENT, text="Next")
        await expect(page.locator("#client article").last).to_contain_text("Next")
        await expect(picture).to_have_count(0)


@pytest.mark.browser
@ONE_LOOP
async def test_without_a_bot_behind_the_server_there_are_only_the_chats(here: Place, browser: Browser) -> None:
    async with opened(browser, here.address, WIDE) as page:
        await expect(page.get_by_role("log", name="Messages of Ann")).to_be_visible()
        await expect(page.locator("#course")).to_be_hidden()
        await expect(page.locator(".strip")).to_have_count(0)
    async with opened(browser, here.address, PHONE) as page:
        await expect(page.get_by_role("tab")).to_have_count(2)


# --- the calendar -----------------------------------------------------------------------------------------------------


@pytest.mark.browser
@ONE_LOOP
async def test_the_calendar_goes_to_the_next_morning_and_a_week_on(here: Place, browser: Browser) -> None:
    async with opened(browser, here.address, WIDE) as page:
        await expect(page.locator("#now")).to_have_text("Monday 2 March 2026, 07:00")
        await page.get_by_role("button", name="Next morning").click()
        await expect(page.locator("#now")).to_have_text("Tuesday 3 March 2026, 07:00")
        await page.get_by_role("button", name="A week on").click()
        await expect(page.locator("#now")).to_have_text("Tuesday 10 March 2026, 07:00")
        await page.get_by_role("textbox", name="Write as Robin (invented)").fill("Later")
        await page.keyboard.press("Enter")
        await expect(page.locator("#client .date").last).to_have_text("Tuesday 10 March 2026")
        await page.get_by_role("combobox", name="Show dates and times as in").select_option("UTC")
        await expect(page.locator("#client .own time").last).to_have_text("07:00")


@pytest.mark.browser
@ONE_LOOP
async def test_what_holds_the_calendar_up_is_said(browser: Browser) -> None:
    async with _practice(hanging=True) as here, opened(browser, here.address, WIDE) as page:
        await page.get_by_role("button", name="Next morning").click()
        await expect(page.locator("#problem")).to_have_text("Still open: 1 message waits to be sent.")
        await expect(page.locator("#next-morning")).not_to_have_attribute("aria-disabled", "true")


@pytest.mark.browser
@ONE_LOOP
async def test_what_the_platform_refuses_is_said_under_the_chat_and_the_words_stay(
    here: Place, browser: Browser
) -> None:
    async with opened(browser, here.address, WIDE) as page:
        here.platform.block(CLIENT, True)
        box = page.get_by_role("textbox", name="Write as Robin (invented)")
        await box.fill("Anybody there?")
        await box.press("Enter")
        await expect(page.locator("#client").get_by_role("alert")).to_contain_text("has blocked the bot")
        await expect(box).to_have_value("Anybody there?")


# --- a phone ----------------------------------------------------------------------------------------------------------


@pytest.mark.browser
@ONE_LOOP
async def test_a_phone_shows_one_chat_at_a_time_and_says_what_is_new_in_the_other(
    here: Place, browser: Browser
) -> None:
    async with opened(browser, here.address, PHONE) as page:
        await expect(page.locator("#coach")).to_be_hidden()
        await here.result("sendMessage", chat_id=COACH, text="Robin has joined")
        await expect(page.get_by_role("tab", name="Coach, 1 new")).to_be_visible()
        await page.get_by_role("tab", name="Client").focus()
        await page.keyboard.press("ArrowRight")
        await expect(page.get_by_role("tabpanel", name="Coach: Ann")).to_be_visible()
        await expect(page.locator("#client")).to_be_hidden()
        await expect(page.get_by_role("tab", name="Coach", exact=True)).to_have_attribute("aria-selected", "true")


@pytest.mark.browser
@ONE_LOOP
@pytest.mark.parametrize("size", [PHONE, NARROWEST], ids=["390", "320"])
async def test_nothing_runs_off_a_narrow_screen(here: Place, browser: Browser, size: tuple[int, int]) -> None:
    """WCAG 2.2, 1.4.10: no sideways scrolling at 320 CSS pixels; 2.5.5 of AAA: targets of 44 pixels."""
    numbers = [[{"text": str(n), "callback_data": str(n)} for n in row] for row in (range(1, 6), range(6, 11))]
    long = [[{"text": "Sore, pain or something odd that has no other name", "callback_data": "odd"}]]
    await here.result(
        "sendMessage", chat_id=CLIENT, text="x" * 300, reply_markup={"inline_keyboard": [*numbers, *long]}
    )
    async with opened(browser, here.address, size) as page:
        await expect(page.locator("#client .rows").last).to_be_visible()
        over = "(node) => node.scrollWidth > node.clientWidth"
        assert not await page.locator("html").evaluate(over)
        assert not await page.locator("#client .log").evaluate(over)
        heights = await page.locator("#client .rows button").evaluate_all("(all) => all.map((b) => b.offsetHeight)")
        assert min(heights) >= 44


@pytest.mark.browser
@ONE_LOOP
async def test_new_lines_do_not_pull_the_page_from_under_a_reader(here: Place, browser: Browser) -> None:
    for number in range(12):
        await here.result("sendMessage", chat_id=CLIENT, text=f"Line {number}\n\nand its second one")
    async with opened(browser, here.address, PHONE) as page:
        log = page.locator("#client .log")
        await expect(page.locator("#client article").last).to_be_in_viewport()
        await log.hover()
        await page.mouse.wheel(0, -3000)
        await expect(page.locator("#client article").first).to_be_in_viewport()
        await here.result("sendMessage", chat_id=CLIENT, text="One more")
        newer = page.get_by_role("button", name="1 new below")
        await expect(newer).to_be_visible()
        await expect(page.locator("#client article").first).to_be_in_viewport()
        await newer.click()
        await expect(page.locator("#client article").last).to_be_in_viewport()
        await expect(newer).to_be_hidden()


# --- what needs no browser --------------------------------------------------------------------------------------------


def test_the_page_knows_the_bots_name_and_where_the_demo_people_live() -> None:
    assert f"t\\.me\\/{BOT_USERNAME}\\?start=" in _page("entry.js")
    assert f'DEMO_ZONE = "{ZONE}"' in _page("tools.js")


@pytest.mark.parametrize("ground", ["desk", "paper", "band"])
@pytest.mark.parametrize("ink", ["ink", "quiet", "mark"])
def test_words_stand_out_from_their_ground_by_day_and_night(ink: str, ground: str) -> None:
    """WCAG 2.2, 1.4.3: at least 4.5 to 1."""
    for colours in _colours():
        assert _contrast(colours[ink], colours[ground]) >= 4.5


def test_main_buttons_and_the_edges_of_fields_stand_out_by_day_and_night() -> None:
    """WCAG 2.2, 1.4.3 and 1.4.11: 4.5 to 1 for words, 3 to 1 for what shows where to press."""
    for colours in _colours():
        assert _contrast(colours["on-mark"], colours["mark"]) >= 4.5
        assert _contrast(colours["line"], colours["paper"]) >= 3


def test_the_contrast_of_black_and_white_is_twenty_one() -> None:
    """The formula of WCAG 2.2 at its own example's ends."""
    assert _contrast("#000000", "#ffffff") == pytest.approx(21)


def _page(name: str) -> str:
    return files("bot.practice").joinpath("page", name).read_text(encoding="utf-8")


def _colours() -> Iterator[dict[str, str]]:
    """The page's colours by day and by night."""
    found = re.findall(r":root \{(.*?)\}", _page("page.css"), re.DOTALL)
    assert len(found) == 2
    for block in found:
        yield dict(re.findall(r"--([\w-]+): (#[0-9a-f]{6});", block))


def _contrast(one: str, other: str) -> float:
    light, dark = sorted((_luminance(one), _luminance(other)), reverse=True)
    return (light + 0.05) / (dark + 0.05)


def _luminance(colour: str) -> float:
    parts = [int(colour[at : at + 2], 16) / 255 for at in (1, 3, 5)]
    red, green, blue = (part / 12.92 if part <= 0.04045 else ((part + 0.055) / 1.055) ** 2.4 for part in parts)
    return 0.2126 * red + 0.7152 * green + 0.0722 * blue
