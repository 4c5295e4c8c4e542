"""The Bot API's methods, called and read by python-telegram-bot, a client that was not written for this server."""

from __future__ import annotations

import json
from datetime import timedelta
from typing import Any

import aiohttp
import pytest
from telegram import (
    Bot,
    BotCommand,
    BotCommandScopeChat,
    ForceReply,
    InlineKeyboardButton,
    InlineKeyboardMarkup,
    InputMediaDocument,
    InputMediaPhoto,
    LinkPreviewOptions,
    MessageEntity,
)
from telegram.constants import ChatAction
from telegram.error import BadRequest, Forbidden, InvalidToken, RetryAfter

from bot.cli.drawing import picture_of
from bot.practice.platform import Rates
from tests.integration.practice.places import ANN, BEN, START, TOKEN, Place, place, png

BUTTONS = InlineKeyboardMarkup(
    [
        [InlineKeyboardButton("All done", callback_data="d:1"), InlineKeyboardButton("Not today", callback_data="n:1")],
        [InlineKeyboardButton("The coach's recording", url="https://example.org/clip?t=40")],
    ]
)


async def test_the_bot_learns_who_it_is(bot: Bot) -> None:
    me = await bot.get_me()
    assert (me.id, me.is_bot, me.username) == (4321, True, "easeward_practice_bot")
    assert me.link == "https://t.me/easeward_practice_bot"


async def test_a_message_comes_back_as_it_was_sent_with_its_markup_taken_out(bot: Bot, here: Place) -> None:
    sent = await bot.send_message(
        ANN,
        " <b>Hips</b> &amp; <i>hamstrings</i> \U0001f9d8 <code>30 s</code>\n",
        parse_mode="HTML",
        reply_markup=BUTTONS,
        link_preview_options=LinkPreviewOptions(is_disabled=True),
    )
    assert sent.text == "Hips & hamstrings \U0001f9d8 30 s"
    assert [(e.type, sent.parse_entity(e)) for e in sent.entities] == [
        ("bold", "Hips"),
        ("italic", "hamstrings"),
        ("code", "30 s"),
    ]
    assert sent.reply_markup == BUTTONS
    assert sent.link_preview_options == LinkPreviewOptions(is_disabled=True)
    assert sent.date == START
    assert (sent.chat.id, sent.chat.type, sent.chat.first_name) == (ANN, "private", "Ann")
    assert sent.from_user == await bot.get_me()


async def test_entities_can_be_sent_ready_made(bot: Bot) -> None:
    sent = await bot.send_message(ANN, "Hold 30 s", entities=[MessageEntity("bold", 5, 4)])
    assert [(e.type, sent.parse_entity(e)) for e in sent.entities] == [("bold", "30 s")]


async def test_other_keyboards_are_taken_and_leave_nothing_in_the_message(bot: Bot) -> None:
    assert (await bot.send_message(ANN, "x", reply_markup=ForceReply())).reply_markup is None


async def test_an_edit_changes_text_and_buttons_and_an_edit_of_nothing_is_refused(bot: Bot, here: Place) -> None:
    sent = await bot.send_message(ANN, "<b>One</b>", parse_mode="HTML", reply_markup=BUTTONS)
    here.calendar.put(START + timedelta(minutes=5))
    changed = await bot.edit_message_text("Two", ANN, sent.message_id)
    assert not isinstance(changed, bool)
    assert (changed.message_id, changed.text, changed.entities, changed.reply_markup) == (
        sent.message_id,
        "Two",
        (),
        None,
    )
    assert changed.edit_date == START + timedelta(minutes=5)
    with pytest.raises(BadRequest, match="Message is not modified: specified new message content"):
        await bot.edit_message_text("Two", ANN, sent.message_id)
    again = await bot.edit_message_reply_markup(ANN, sent.message_id, reply_markup=BUTTONS)
    assert not isinstance(again, bool)
    assert (again.text, again.reply_markup) == ("Two", BUTTONS)
    with pytest.raises(BadRequest, match="Message is not modified"):
        await bot.edit_message_reply_markup(ANN, sent.message_id, reply_markup=BUTTONS)


async def test_an_edit_of_a_message_that_is_not_there_or_not_the_bots_is_refused(bot: Bot, here: Place) -> None:
    with pytest.raises(BadRequest, match="Message to edit not found"):
        await bot.edit_message_text("x", ANN, 999)
    hers = here.platform.say(ANN, "Mine")
    with pytest.raises(BadRequest, match="Message can't be edited"):
        await bot.edit_message_text("x", ANN, hers)


async def test_a_photo_is_uploaded_once_and_sent_again_by_its_id(bot: Bot, here: Place) -> None:
    picture = png(30, 40)
    first = await bot.send_photo(ANN, picture, caption="<b>Day 3</b>", parse_mode="HTML", reply_markup=BUTTONS)
    assert (first.caption, first.caption_entities[0].type, first.reply_markup) == ("Day 3", "bold", BUTTONS)
    size = first.photo[-1]
    assert (size.width, size.height, size.file_size) == (30, 40, len(picture))
    second = await bot.send_photo(ANN, size.file_id)
    assert second.photo[-1].file_unique_id == size.file_unique_id
    assert (second.caption, second.message_id) == (None, first.message_id + 1)
    file = await bot.get_file(size.file_id)
    assert bytes(await file.download_as_bytearray()) == picture


async def test_a_caption_can_be_changed_but_a_photo_has_no_text_to_change(bot: Bot) -> None:
    sent = await bot.send_photo(ANN, png(4, 4), caption="One")
    changed = await bot.edit_message_caption(ANN, sent.message_id, caption="Two", reply_markup=BUTTONS)
    assert not isinstance(changed, bool)
    assert (changed.caption, changed.photo[-1].file_id) == ("Two", sent.photo[-1].file_id)
    with pytest.raises(BadRequest, match="There is no text in the message to edit"):
        await bot.edit_message_text("Two", ANN, sent.message_id)
    words = await bot.send_message(ANN, "One")
    with pytest.raises(BadRequest, match="There is no caption in the message to edit"):
        await bot.edit_message_caption(ANN, words.message_id, caption="Two")


async def test_a_film_has_its_sides_and_is_a_document_too(bot: Bot) -> None:
    body = picture_of("cat-cow", ".gif")
    sent = await bot.send_animation(ANN, body, filename="film.gif", caption="Cat and cow")
    film = sent.animation
    assert film is not None
    assert (film.file_name, film.mime_type, max(film.width, film.height)) == ("film.gif", "image/gif", 540)
    assert sent.document is not None
    assert sent.document.file_id == film.file_id
    again = await bot.send_animation(ANN, film.file_id)
    assert again.animation == film
    changed = await bot.edit_message_caption(ANN, sent.message_id, caption="Slowly")
    assert not isinstance(changed, bool)
    assert (changed.caption, changed.animation) == ("Slowly", film)


async def test_a_photo_can_take_the_place_of_a_photo_or_of_words(bot: Bot) -> None:
    sent = await bot.send_photo(ANN, png(4, 4), caption="One")
    media = InputMediaPhoto(png(9, 5), caption="<i>Two</i>", parse_mode="HTML")
    changed = await bot.edit_message_media(media, ANN, sent.message_id, reply_markup=BUTTONS)
    assert not isinstance(changed, bool)
    assert (changed.caption, changed.photo[-1].width, changed.reply_markup) == ("Two", 9, BUTTONS)
    words = await bot.send_message(ANN, "One")
    seen = await bot.edit_message_media(InputMediaPhoto(sent.photo[-1].file_id), ANN, words.message_id)
    assert not isinstance(seen, bool)
    assert (seen.text, seen.photo[-1].width) == (None, 4)
    with pytest.raises(BadRequest, match="not modified"):
        await bot.edit_message_media(InputMediaPhoto(sent.photo[-1].file_id), ANN, words.message_id)
    with pytest.raises(BadRequest, match="only a photo"):
        await bot.edit_message_media(InputMediaDocument(b"x", filename="x"), ANN, sent.message_id)


async def test_a_document_keeps_its_name_and_bytes(bot: Bot) -> None:
    body = b"day,pain\n1,0\n"
    sent = await bot.send_document(ANN, body, filename="days.csv", caption="This week")
    document = sent.document
    assert document is not None
    assert (document.file_name, document.mime_type, document.file_size) == ("days.csv", "text/csv", len(body))
    file = await bot.get_file(document.file_id)
    assert bytes(await file.download_as_bytearray()) == body
    again = await bot.send_document(ANN, document.file_id)
    assert again.document == document


async def test_what_is_no_picture_or_of_the_wrong_kind_is_refused(bot: Bot) -> None:
    with pytest.raises(BadRequest, match="Image_process_failed"):
        await bot.send_photo(ANN, b"just words")
    photo = await bot.send_photo(ANN, png(4, 4))
    with pytest.raises(BadRequest, match="Can't use file of type photo as document"):
        await bot.send_document(ANN, photo.photo[-1].file_id)
    with pytest.raises(BadRequest, match="Wrong file identifier/http url specified"):
        await bot.send_photo(ANN, "AgACnothing")
    with pytest.raises(BadRequest, match="Invalid file_id"):
        await bot.get_file("AgACnothing")


async def test_a_file_part_can_stand_under_another_name(here: Place) -> None:
    form = aiohttp.FormData({"chat_id": str(ANN), "document": "attach://part"})
    form.add_field("part", b"x", filename="a.txt")
    async with here.http.post(f"{here.address}/bot{TOKEN}/sendDocument", data=form) as answer:
        assert (await answer.json())["result"]["document"]["file_name"] == "a.txt"
    status, body = await here.call("sendDocument", chat_id=ANN, document="attach://part")
    assert (status, body["description"]) == (400, "Bad Request: there is no document in the request")
    status, body = await here.call("sendPhoto", chat_id=ANN)
    assert (status, body["description"]) == (400, "Bad Request: there is no photo in the request")


async def test_a_message_can_be_deleted_once(bot: Bot, here: Place) -> None:
    sent = await bot.send_message(ANN, "x")
    assert await bot.delete_message(ANN, sent.message_id)
    assert [m["message_id"] for _, m in here.platform.messages(ANN)] == [1]
    with pytest.raises(BadRequest, match="Message to delete not found"):
        await bot.delete_message(ANN, sent.message_id)


async def test_a_tap_is_answered_and_its_words_are_shown(bot: Bot, here: Place) -> None:
    sent = await bot.send_message(ANN, "x", reply_markup=BUTTONS)
    tap = here.platform.tap(ANN, sent.message_id, "All done")
    assert here.platform.tap_answer(tap) is None
    (update,) = await bot.get_updates()
    query = update.callback_query
    assert query is not None
    assert (query.id, query.data, query.from_user.first_name) == (tap, "d:1", "Ann")
    assert query.message == sent
    assert await bot.answer_callback_query(query.id, "Noted")
    assert here.platform.tap_answer(tap) == "Noted"


async def test_an_answer_to_no_tap_or_to_a_very_old_one_is_refused(bot: Bot, here: Place) -> None:
    with pytest.raises(BadRequest, match="Query is too old and response timeout expired or query id is invalid"):
        await bot.answer_callback_query("no-such")
    here.platform.store.put_tap("old", ANN, here.platform.machine.now() - 3600)
    with pytest.raises(BadRequest, match="Query is too old"):
        await bot.answer_callback_query("old")


async def test_commands_are_kept_by_scope_and_language(bot: Bot) -> None:
    everybody, coach = [BotCommand("today", "Show today's")], [BotCommand("people", "Your people")]
    await bot.set_my_commands(everybody)
    await bot.set_my_commands(coach, scope=BotCommandScopeChat(ANN), language_code="en")
    assert list(await bot.get_my_commands()) == everybody
    assert list(await bot.get_my_commands(BotCommandScopeChat(ANN), "en")) == coach
    assert list(await bot.get_my_commands(BotCommandScopeChat(ANN))) == []


@pytest.mark.parametrize("name", ["To-Day", "heute!", "TODAY"])
async def test_a_command_is_of_small_letters_digits_and_underscores(here: Place, name: str) -> None:
    status, body = await here.call("setMyCommands", commands=[{"command": name, "description": "x"}])
    assert (status, body["description"]) == (400, "Bad Request: BOT_COMMAND_INVALID")
    assert await here.result("setMyCommands", commands=[{"command": "to_day2", "description": "x"}])


async def test_the_bot_asks_about_a_chat_and_shows_that_it_is_typing(bot: Bot) -> None:
    chat = await bot.get_chat(ANN)
    assert (chat.id, chat.type, chat.first_name) == (ANN, "private", "Ann")
    assert await bot.send_chat_action(ANN, ChatAction.TYPING)
    with pytest.raises(BadRequest, match="Wrong parameter action in request"):
        await bot.send_chat_action(ANN, "dancing")


async def test_nobody_can_be_written_to_who_never_spoke_or_has_blocked_the_bot(bot: Bot, here: Place) -> None:
    with pytest.raises(BadRequest, match="Chat not found"):
        await bot.send_message(BEN, "x")
    here.platform.block(ANN, True)
    with pytest.raises(Forbidden, match="bot was blocked by the user"):
        await bot.send_message(ANN, "x")
    with pytest.raises(Forbidden, match="bot was blocked by the user"):
        await bot.send_photo(ANN, png(4, 4))
    here.platform.block(ANN, False)
    assert (await bot.send_message(ANN, "x")).text == "x"


async def test_blocking_is_told_as_a_change_of_membership(bot: Bot, here: Place) -> None:
    here.platform.block(ANN, True)
    here.platform.block(ANN, True)
    here.platform.block(ANN, False)
    changes = [update.my_chat_member for update in await bot.get_updates()]
    assert [(c.old_chat_member.status, c.new_chat_member.status) for c in changes if c] == [
        ("member", "kicked"),
        ("kicked", "member"),
    ]
    assert changes[0] is not None
    assert (changes[0].chat.id, changes[0].from_user.id, changes[0].new_chat_member.user.id) == (ANN, ANN, 4321)


@pytest.mark.parametrize(
    ("fields", "words"),
    [
        ({}, "chat_id is empty"),
        ({"chat_id": "@somebody"}, "chat not found"),
        ({"chat_id": ANN, "text": "a < b", "parse_mode": "HTML"}, 'Unsupported start tag "" at byte offset 2'),
        ({"chat_id": ANN, "text": "x", "parse_mode": "Markdown"}, "unsupported parse_mode"),
        ({"chat_id": ANN, "text": "x", "entities": [{"type": "bold"}]}, "can't parse entities"),
        ({"chat_id": ANN, "text": "x", "reply_markup": "{"}, "can't parse reply_markup"),
        ({"chat_id": ANN, "text": "x", "reply_markup": []}, "object expected as reply markup"),
        ({"chat_id": ANN, "text": "x", "reply_markup": {"inline_keyboard": [1]}}, "must be an Array of Arrays"),
        ({"chat_id": ANN, "text": "x", "link_preview_options": []}, "object expected as link preview options"),
    ],
)
async def test_a_request_that_makes_no_sense_is_refused_with_words(
    here: Place, fields: dict[str, Any], words: str
) -> None:
    status, body = await here.call("sendMessage", **fields)
    assert (status, body["ok"], body["error_code"]) == (400, False, 400)
    assert words in body["description"]


@pytest.mark.parametrize(
    ("button", "words"),
    [
        ({"text": "Go"}, "Text buttons are unallowed in the inline keyboard"),
        ({"text": " ", "callback_data": "x"}, "button text must be non-empty"),
        ({"callback_data": "x"}, 'field "text" must be of type String'),
        ({"text": "Go", "url": "javascript:alert(1)"}, "BUTTON_URL_INVALID"),
    ],
)
async def test_a_button_that_does_nothing_is_refused(here: Place, button: dict[str, str], words: str) -> None:
    markup = {"inline_keyboard": [[button]]}
    status, body = await here.call("sendMessage", chat_id=ANN, text="x", reply_markup=markup)
    assert status == 400
    assert words in body["description"]


async def test_a_wrong_token_and_an_unknown_method_are_told_apart(here: Place) -> None:
    assert await here.call("getMe", token="4321:other") == (
        401,
        {"ok": False, "error_code": 401, "description": "Unauthorized"},
    )
    status, body = await here.call("makeCoffee")
    assert (status, body["error_code"]) == (404, 404)
    async with here.http.get(f"{here.address}/file/bot4321:other/documents/x") as answer:
        assert answer.status == 401
    async with here.http.get(f"{here.address}/file/bot{TOKEN}/documents/x") as answer:
        assert answer.status == 404
    stranger = Bot("4321:other", base_url=f"{here.address}/bot")
    with pytest.raises(InvalidToken):
        await stranger.initialize()
    await stranger.shutdown()


async def test_fields_come_as_query_form_or_json_and_names_of_methods_in_any_case(here: Place) -> None:
    address, fields = f"{here.address}/bot{TOKEN}/SENDMESSAGE", {"chat_id": str(ANN), "text": "x"}
    async with here.http.get(address, params=fields) as answer:
        first = (await answer.json())["result"]
    async with here.http.post(address, data=fields) as answer:
        second = (await answer.json())["result"]
    async with here.http.post(address, json={"chat_id": ANN, "text": "x"}) as answer:
        third = (await answer.json())["result"]
    assert [each["text"] for each in (first, second, third)] == ["x", "x", "x"]
    async with here.http.post(address, data=json.dumps([1]), headers={"Content-Type": "application/json"}) as answer:
        assert (answer.status, (await answer.json())["description"]) == (400, "Bad Request: object expected")


async def test_more_than_the_rate_is_put_off_and_is_taken_a_second_later(monkeypatch: pytest.MonkeyPatch) -> None:
    monkeypatch.setenv("PTB_TIMEDELTA", "1")
    async with place(rates=Rates(per_second=3, per_chat_second=2)) as here, here.bot() as bot:
        here.platform.say(BEN, "Hello")
        await bot.send_message(ANN, "1")
        await bot.send_message(ANN, "2")
        with pytest.raises(RetryAfter) as in_one_chat:
            await bot.send_message(ANN, "3")
        assert in_one_chat.value.retry_after == timedelta(seconds=1)
        await bot.send_message(BEN, "1")
        status, body = await here.call("sendMessage", chat_id=BEN, text="2")
        assert (status, body["parameters"]) == (429, {"retry_after": 1})
        assert body["description"] == "Too Many Requests: retry after 1"
        await _until_taken(here)


async def _until_taken(here: Place) -> None:
    started = here.platform.machine.now()
    while (await here.call("sendMessage", chat_id=BEN, text="2"))[0] == 429:
        assert here.platform.machine.now() - started < 5
