"""One browser a module."""

from __future__ import annotations

from collections.abc import AsyncIterator

import pytest_asyncio
from playwright.async_api import Browser

from tests.integration.browsers import launched


@pytest_asyncio.fixture(scope="module", loop_scope="module")
async def browser() -> AsyncIterator[Browser]:
    async with launched() as found:
        yield found
