"""One browser a module; an empty database of the kind that a test runs on."""

from __future__ import annotations

from collections.abc import AsyncIterator
from pathlib import Path

import pytest
import pytest_asyncio
from playwright.async_api import Browser

from db.engine import Database
from tests.integration.browsers import launched
from tests.integration.fakes import database_in


@pytest_asyncio.fixture(scope="module", loop_scope="module")
async def browser() -> AsyncIterator[Browser]:
    async with launched() as found:
        yield found


@pytest.fixture
async def database(tmp_path: Path) -> AsyncIterator[Database]:
    async with database_in(tmp_path) as found:
        yield found
