from __future__ import annotations

import asyncio
import logging
from collections.abc import AsyncIterator, Iterator
from pathlib import Path

import pytest
from sqlalchemy.ext.asyncio import AsyncSession
from telegram import Bot, InputFile
from telegram.error import BadRequest, Forbidden, InvalidToken, NetworkError, TelegramError, TimedOut

from bot.transport import AiohttpRequest, AnswerLost, CallInsideWrite, NeverConnected, TooMany, quiet_library_logs
from tests.integration.fakes import TOKEN, FakePlatform, bot_at, database_in, platform_running
from tests.postgres import free_port


@pytest.fixture
async def platform() -> FakePlatform:
    return FakePlatform()


@pytest.fixture
async def bot(platform: FakePlatform) -> AsyncIterator[Bot]:
    async with platform_running(platform) as url, bot_at(url, read_timeout=0.3) as bot:
        yield bot


async def test_a_message_arrives_with_its_fields_and_comes_back_with_its_id(bot: Bot, platform: FakePlatform) -> None:
    message = await bot.send_message(7, "2 < 3 & ü")
    assert message.message_id == 5001
    assert platform.arrived[0].fields["text"] == "2 < 3 & ü"
    assert platform.arrived[0].fields["chat_id"] == "7"


async def test_a_file_arrives_byte_for_byte_beside_its_fields(bot: Bot, platform: FakePlatform) -> None:
    body = bytes(range(256)) * 40
    await bot.send_document(7, InputFile(body, filename="week.csv"), caption="The week")
    fields = platform.arrived[0].fields
    assert body in fields.values()
    assert fields["caption"] == "The week"


async def test_a_file_is_fetched_byte_for_byte(bot: Bot, platform: FakePlatform) -> None:
    platform.files["F"] = b"title: x" * 1000
    file = await bot.get_file("F")
    assert bytes(await file.download_as_bytearray()) == platform.files["F"]


async def test_a_closed_port_is_never_connected() -> None:
    request = AiohttpRequest()
    async with request:
        with pytest.raises(NeverConnected):
            await request.post(f"http://127.0.0.1:{free_port()}/bot{TOKEN}/sendMessage")


async def test_a_wait_for_a_free_connection_that_takes_too_long_is_never_connected(platform: FakePlatform) -> None:
    platform.hold = asyncio.Event()
    async with platform_running(platform) as url, bot_at(url, connections=1, connect_timeout=0.2) as bot:
        first = asyncio.create_task(bot.send_message(7, "first"))
        while not platform.arrived:
            await asyncio.sleep(0.01)
        with pytest.raises(NeverConnected):
            await bot.send_message(8, "second")
        platform.hold.set()
        await first
    assert platform.texts() == ["first"]


async def test_a_transport_that_is_not_open_has_never_connected() -> None:
    with pytest.raises(NeverConnected, match="not open"):
        await AiohttpRequest().post("http://127.0.0.1:1/")


async def test_a_connection_cut_after_the_request_is_a_lost_answer(bot: Bot, platform: FakePlatform) -> None:
    platform.next_up = ["drop"]
    with pytest.raises(AnswerLost):
        await bot.send_message(7, "x")
    assert platform.texts() == ["x"]


async def test_an_answer_that_does_not_come_in_time_is_lost_and_a_timeout_to_the_library(
    bot: Bot, platform: FakePlatform
) -> None:
    platform.hold = asyncio.Event()
    with pytest.raises(TimedOut) as caught:
        await bot.send_message(7, "x")
    assert isinstance(caught.value, AnswerLost)
    assert not isinstance(caught.value, NeverConnected)


async def test_a_call_may_wait_longer_than_the_usual(bot: Bot, platform: FakePlatform) -> None:
    platform.hold = asyncio.Event()
    asyncio.get_running_loop().call_later(0.5, platform.hold.set)
    assert (await bot.send_message(7, "x", read_timeout=5)).message_id == 5001


@pytest.mark.parametrize(
    ("status", "error"), [(400, BadRequest), (401, InvalidToken), (403, Forbidden), (500, NetworkError)]
)
async def test_what_the_platform_refuses_is_the_librarys_own_error(
    bot: Bot, platform: FakePlatform, status: int, error: type[TelegramError]
) -> None:
    platform.next_up = [(status, "No")]
    with pytest.raises(error) as caught:
        await bot.send_message(7, "x")
    assert not isinstance(caught.value, TimedOut | NeverConnected)


async def test_too_many_requests_say_when_to_go_on(bot: Bot, platform: FakePlatform) -> None:
    platform.next_up = [(429, "Too Many Requests", {"retry_after": 3}), (429, "Too Many Requests")]
    with pytest.raises(TooMany) as caught:
        await bot.send_message(7, "x")
    assert caught.value.seconds == 3.0
    with pytest.raises(TooMany) as caught:
        await bot.send_message(7, "x")
    assert caught.value.seconds == 1.0


class Kept(logging.Handler):
    """Keeps what reaches the root logger, where this program's own handler stands."""

    def __init__(self, said: list[str]) -> None:
        super().__init__()
        self._said = said

    def emit(self, record: logging.LogRecord) -> None:
        self._said.append(f"{record.getMessage()} {record.args}")


@pytest.fixture
def records(monkeypatch: pytest.MonkeyPatch, caplog: pytest.LogCaptureFixture) -> Iterator[list[str]]:
    """What is logged at the root, in words; pytest's own capture also stands at loggers that are cut off from it."""
    monkeypatch.setattr(logging.getLogger("telegram"), "propagate", True)
    caplog.set_level(logging.DEBUG)
    said: list[str] = []
    handler = Kept(said)
    logging.getLogger().addHandler(handler)
    yield said
    logging.getLogger().removeHandler(handler)


async def test_no_error_and_no_log_record_quotes_the_token(platform: FakePlatform, records: list[str]) -> None:
    quiet_library_logs()
    said: list[str] = []
    platform.next_up = ["drop", (500, "No")]
    async with platform_running(platform) as url, bot_at(url) as bot:
        for _ in range(2):
            with pytest.raises(TelegramError) as caught:
                await bot.send_message(7, "x")
            said.append(chain(caught.value))
    async with AiohttpRequest() as request:
        for address in (f"http://127.0.0.1:{free_port()}/bot{TOKEN}/x", f"http://[broken/bot{TOKEN}/x"):
            with pytest.raises(TelegramError) as caught:
                await request.post(address)
            said.append(chain(caught.value))
    assert len(said) == 4
    assert not any("secret" in text for text in [*said, *records])


async def test_the_librarys_records_would_quote_the_token_if_they_were_let_out(
    platform: FakePlatform, records: list[str]
) -> None:
    async with platform_running(platform) as url, bot_at(url):
        pass
    assert any("secret" in text for text in records)


def chain(error: BaseException | None) -> str:
    """An error with everything that a traceback would show below it."""
    texts = []
    while error is not None:
        texts.append(repr(error))
        error = error.__cause__ or error.__context__
    return " ".join(texts)


async def test_a_call_inside_a_write_is_refused_and_its_write_undone(
    bot: Bot, platform: FakePlatform, tmp_path: Path
) -> None:
    async def job(session: AsyncSession) -> None:
        await bot.send_message(7, "x")

    async with database_in(tmp_path) as database:
        with pytest.raises(CallInsideWrite, match="outbox"):
            await database.write(job)
    assert platform.arrived == []
