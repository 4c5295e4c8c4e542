"""One practice chat a test."""

from __future__ import annotations

from collections.abc import AsyncIterator

import pytest
from telegram import Bot

from tests.integration.practice.places import Place, place


@pytest.fixture
async def here() -> AsyncIterator[Place]:
    async with place() as found:
        yield found


@pytest.fixture
async def bot(here: Place) -> AsyncIterator[Bot]:
    async with here.bot() as found:
        yield found
