"""One practice chat a module, in a folder of its own."""

from __future__ import annotations

from collections.abc import AsyncIterator
from pathlib import Path

import pytest
import pytest_asyncio

from tests.acceptance.driver import Practice, practice


@pytest.fixture(scope="module")
def folder(tmp_path_factory: pytest.TempPathFactory) -> Path:
    return tmp_path_factory.mktemp("practice")


@pytest_asyncio.fixture(scope="module", loop_scope="module")
async def chat(folder: Path) -> AsyncIterator[Practice]:
    async with practice(folder) as (found, _process):
        yield found
