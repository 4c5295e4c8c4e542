"""The painter's process: drawn once however many ask, gone when idle, and replaced when it has died."""

from __future__ import annotations

import asyncio
import os
import signal
from collections.abc import AsyncIterator

import pytest
import pytest_asyncio

from bot import painting
from bot.painting import NotDrawn, Painting

CARD = {"kind": "card", "of": {"title": "Day 1", "length": "", "parts": ["First: walk."], "caution": "Stop at pain."}}


@pytest_asyncio.fixture
async def painter() -> AsyncIterator[Painting]:
    found = Painting()
    yield found
    await found.close()


def process_of(painter: Painting) -> int:
    assert painter._painter is not None
    return painter._painter.pid


async def test_what_many_ask_for_is_drawn_once(painter: Painting) -> None:
    files = await asyncio.gather(*(painter.picture("d", CARD) for _ in range(20)))
    assert files[0].startswith(b"\x89PNG")
    assert all(file is files[0] for file in files)


async def test_what_is_kept_is_given_without_a_painter(painter: Painting) -> None:
    first = await painter.picture("d", CARD)
    os.kill(process_of(painter), signal.SIGKILL)
    assert await painter.picture("d", CARD) is first


async def test_what_cannot_be_drawn_is_said_and_the_next_is_drawn(painter: Painting) -> None:
    with pytest.raises(NotDrawn, match="KeyError: 'poem'"):
        await painter.picture("p", {"kind": "poem", "of": {}})
    assert (await painter.picture("d", CARD)).startswith(b"\x89PNG")


async def test_a_painter_that_died_is_replaced(painter: Painting) -> None:
    await painter.picture("d", CARD)
    first = process_of(painter)
    os.kill(first, signal.SIGKILL)
    assert painter._painter is not None
    await painter._painter.wait()
    await painter.picture("e", CARD)
    assert process_of(painter) != first


async def test_a_painter_that_hangs_is_ended(painter: Painting, monkeypatch: pytest.MonkeyPatch) -> None:
    await painter.picture("d", CARD)
    os.kill(process_of(painter), signal.SIGSTOP)
    monkeypatch.setattr(painting, "SECONDS", 0.2)
    with pytest.raises(NotDrawn, match="TimeoutError"):
        await painter.picture("e", CARD)
    monkeypatch.undo()
    assert (await painter.picture("e", CARD)).startswith(b"\x89PNG")


async def test_an_idle_painter_goes(painter: Painting, monkeypatch: pytest.MonkeyPatch) -> None:
    monkeypatch.setattr(painting, "IDLE_SECONDS", 0.05)
    await painter.picture("d", CARD)
    assert painter._painter is not None
    await asyncio.wait_for(painter._painter.wait(), 5)
    monkeypatch.undo()
    assert (await painter.picture("e", CARD)).startswith(b"\x89PNG")


async def test_closing_ends_the_process_and_whoever_waits_hears_it(painter: Painting) -> None:
    await painter.picture("d", CARD)
    pid = process_of(painter)
    waiting = asyncio.ensure_future(painter.picture("e", CARD))
    await asyncio.sleep(0)
    await painter.close()
    with pytest.raises(asyncio.CancelledError):
        await waiting
    with pytest.raises(ProcessLookupError):
        os.kill(pid, 0)


async def test_a_painter_that_is_about_to_go_is_followed_by_another(painter: Painting) -> None:
    await painter.picture("d", CARD)
    painter._leave()
    assert (await painter.picture("e", CARD)).startswith(b"\x89PNG")
