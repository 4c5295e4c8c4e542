"""A real browser for tests of the page: where it is, how a page is opened in it, and what axe-core says of a page."""

from __future__ import annotations

import os
import shutil
from collections.abc import AsyncIterator
from contextlib import asynccontextmanager
from importlib.resources import files
from pathlib import Path
from typing import Literal

import pytest
from playwright.async_api import Browser, Page, async_playwright, expect

WIDE, PHONE, NARROWEST = (1280, 800), (390, 844), (320, 640)
ONE_LOOP = pytest.mark.asyncio(loop_scope="module")
"""All tests of a module share the browser, so they share its event loop."""
ARGUMENTS = (
    "--headless=new",
    "--no-sandbox",
    "--disable-gpu",
    "--disable-quic",
    "--no-first-run",
    "--disable-background-networking",
    "--disable-component-update",
    "--disable-sync",
    "--disable-dev-shm-usage",
)
AXE = "axe.run(document, {resultTypes: ['violations'], rules: {'target-size': {enabled: true}}})"


def chromium() -> str:
    """Where Chromium is. Skips the test without one, and fails it where CI must have one."""
    found = shutil.which("chromium") or "/usr/bin/chromium"
    if not Path(found).exists():
        if os.environ.get("CI") == "true":
            pytest.fail("no Chromium here: tests/prepare installs one")
        pytest.skip("no Chromium here: tests/prepare installs one")
    return found


@asynccontextmanager
async def launched() -> AsyncIterator[Browser]:
    """A Chromium while the block runs."""
    path = chromium()
    async with async_playwright() as playwright:
        found = await playwright.chromium.launch(executable_path=path, args=ARGUMENTS)
        yield found
        await found.close()


@asynccontextmanager
async def opened(
    browser: Browser, address: str, size: tuple[int, int], *, colours: Literal["light", "dark"] = "light"
) -> AsyncIterator[Page]:
    """The page in a window of a size; whatever it complains about in its console fails the test."""
    width, height = size
    page = await browser.new_page(
        viewport={"width": width, "height": height}, reduced_motion="reduce", color_scheme=colours
    )
    complaints: list[str] = []
    page.on("pageerror", lambda error: complaints.append(str(error)))
    page.on("console", lambda line: complaints.append(line.text) if "Content Security" in line.text else None)
    await page.goto(address)
    await expect(page.locator("#client article").first).to_be_visible()
    yield page
    await page.close()
    assert complaints == []


async def violations(page: Page) -> list[str]:
    """What axe-core finds wrong with the page as it stands, a line each."""
    if not await page.evaluate("'axe' in globalThis"):
        await page.evaluate(files("axe_playwright_python").joinpath("axe.min.js").read_text(encoding="utf-8"))
    found = (await page.evaluate(AXE))["violations"]
    return [f"{rule['id']}: {node['html'][:200]}" for rule in found for node in rule["nodes"]]
