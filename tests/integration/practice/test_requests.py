"""Requests that cannot be read, a token that is none, and the page's own files."""

from __future__ import annotations

import io

import aiohttp
import pytest

from bot.clocks import SystemMachine
from bot.practice.clock import StandingCalendar
from bot.practice.platform import Platform
from bot.practice.server import LARGEST_REQUEST
from bot.practice.store import Store
from tests.integration.practice.places import ANN, START, TOKEN, Place


@pytest.mark.parametrize(
    ("kind", "content", "words"),
    [
        ("application/json", b"{", "can't parse JSON object"),
        ("application/json", b"\xff\xfe", "can't parse the request's body"),
        ("multipart/form-data", b"x", "can't parse the request's body"),
    ],
)
async def test_a_body_that_cannot_be_read_is_refused(here: Place, kind: str, content: bytes, words: str) -> None:
    async with here.http.post(
        f"{here.address}/bot{TOKEN}/sendMessage", data=content, headers={"Content-Type": kind}
    ) as answer:
        assert (answer.status, (await answer.json())["description"]) == (400, f"Bad Request: {words}")


async def test_a_request_beyond_all_limits_is_answered_in_the_platforms_form(here: Place) -> None:
    form = aiohttp.FormData({"chat_id": str(ANN)})
    form.add_field("document", io.BytesIO(bytes(LARGEST_REQUEST + 1)), filename="a.bin")
    async with here.http.post(f"{here.address}/bot{TOKEN}/sendDocument", data=form) as answer:
        assert answer.status == 413
        assert await answer.json() == {"ok": False, "error_code": 413, "description": "Request Entity Too Large"}


@pytest.mark.parametrize(
    ("path", "kind"), [("", "text/html"), ("page.css", "text/css"), ("page.js", "text/javascript")]
)
async def test_the_page_comes_from_the_package(here: Place, path: str, kind: str) -> None:
    async with here.http.get(f"{here.address}/{path}") as answer:
        assert (answer.status, answer.content_type) == (200, kind)
        assert await answer.text()


@pytest.mark.parametrize("token", ["", "practice", "12:", ":x", "12:a b"])
def test_a_token_of_another_form_is_refused_without_being_repeated(token: str) -> None:
    with Store(None) as store, pytest.raises(ValueError, match="is not of the form") as found:
        Platform(token, calendar=StandingCalendar(store, START), machine=SystemMachine(), store=store)
    assert not token or token not in str(found.value)
