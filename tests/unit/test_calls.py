"""From a stored message to a request, and from the platform's answer to what it means (Bot API, "Making requests")."""

from __future__ import annotations

import json
from typing import Any

import pytest

from bot.calls import Accepted, File, Upload, call_of, file_id_of, message_id_of, outcome_of
from db.delivery import Failure, Kind, Reason
from db.letters import Letter


def letter(method: str, payload: dict[str, Any], message_id: int | None = None) -> Letter:
    return Letter(1, 7, 1, Kind.ANSWER, method, payload, 0, message_id)


def refused(description: str, **more: Any) -> bytes:
    return json.dumps({"ok": False, "description": description} | more).encode()


@pytest.mark.parametrize(
    ("status", "body", "reason", "seconds"),
    [
        (429, refused("Too Many Requests", parameters={"retry_after": 7}), Reason.TOO_MANY, 7.0),
        (429, b"busy", Reason.TOO_MANY, 1.0),
        (429, refused("Too Many Requests", parameters={"retry_after": "soon"}), Reason.TOO_MANY, 1.0),
        (403, refused("Forbidden: bot was blocked by the user"), Reason.BLOCKED, 0.0),
        (403, refused("Forbidden: user is deactivated"), Reason.BLOCKED, 0.0),
        (401, refused("Unauthorized"), Reason.TOKEN_REFUSED, 0.0),
        (404, refused("Not Found"), Reason.TOKEN_REFUSED, 0.0),
        (400, refused("Bad Request: message is not modified"), Reason.NOT_MODIFIED, 0.0),
        (400, refused("Bad Request: query is too old and response timeout expired"), Reason.QUERY_TOO_OLD, 0.0),
        (400, refused("Bad Request: chat not found"), Reason.BLOCKED, 0.0),
        (400, refused("Bad Request: can't parse entities"), Reason.BAD_REQUEST, 0.0),
        (400, b"", Reason.BAD_REQUEST, 0.0),
        (500, refused("Internal Server Error"), Reason.SERVER_ERROR, 0.0),
        (502, b"<html>", Reason.SERVER_ERROR, 0.0),
        (302, b"", Reason.SERVER_ERROR, 0.0),
        (200, b"<html>", Reason.ANSWER_LOST, 0.0),
        (200, b"[]", Reason.ANSWER_LOST, 0.0),
        (200, refused("no"), Reason.ANSWER_LOST, 0.0),
    ],
)
def test_every_answer_means_one_thing(status: int, body: bytes, reason: Reason, seconds: float) -> None:
    found = outcome_of(status, body)
    assert isinstance(found, Failure)
    assert (found.reason, found.retry_after) == (reason, seconds)


def test_an_accepted_message_gives_its_number_and_its_files_id() -> None:
    result = {"message_id": 5, "photo": [{"file_id": "small"}, {"file_id": "large"}]}
    found = outcome_of(200, json.dumps({"ok": True, "result": result}).encode())
    assert isinstance(found, Accepted)
    assert (message_id_of(found.result), file_id_of(found.result)) == (5, "large")
    assert (message_id_of(True), file_id_of(True), file_id_of({"message_id": 1})) == (None, None, None)


def test_a_request_has_the_platforms_spelling_and_only_its_fields() -> None:
    keyboard: dict[str, Any] = {"inline_keyboard": []}
    call = call_of(letter("send_message", {"text": "Day 1", "reply_markup": keyboard, "again": "Again."}), None)
    assert (call.method, call.fields, call.upload) == (
        "sendMessage",
        {"text": "Day 1", "reply_markup": keyboard, "chat_id": 7},
        None,
    )
    call = call_of(letter("answer_callback_query", {"callback_query_id": "q"}), None)
    assert (call.method, call.fields) == ("answerCallbackQuery", {"callback_query_id": "q"})
    call = call_of(letter("edit_message_reply_markup", {"reply_markup": None}, message_id=9), None)
    assert (call.method, call.fields) == ("editMessageReplyMarkup", {"chat_id": 7, "message_id": 9})


def test_a_file_goes_along_once_and_is_then_named() -> None:
    photo = letter("send_photo", {"photo": {"attachment": "d", "filename": "a.png"}, "caption": "Day"})
    call = call_of(photo, File(b"png", None))
    assert (call.fields, call.upload) == ({"caption": "Day", "chat_id": 7}, Upload("photo", "a.png", b"png"))
    call = call_of(photo, File(b"png", "F1"))
    assert (call.fields, call.upload) == ({"caption": "Day", "chat_id": 7, "photo": "F1"}, None)


@pytest.mark.parametrize(
    ("method", "payload"),
    [
        ("get_me", {}),
        ("send_document", {"document": {"filename": "x"}}),
        ("send_document", {"document": {"filename": "x", "base64": "!"}}),
        ("edit_message_text", {"text": "x"}),
    ],
)
def test_what_nobody_could_send_is_refused(method: str, payload: dict[str, Any]) -> None:
    with pytest.raises((LookupError, ValueError)):
        call_of(letter(method, payload), None)
