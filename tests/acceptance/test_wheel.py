"""The wheel, installed into an empty environment, runs the practice chat from an empty folder."""

from __future__ import annotations

import asyncio
import re
import subprocess
import sys
import zipfile
from pathlib import Path

import aiohttp
import pytest

from tests.acceptance.driver import Practice

ROOT = Path(__file__).parents[2]


def run(*words: str, cwd: Path) -> None:
    done = subprocess.run(words, cwd=cwd, capture_output=True, text=True, check=False)
    assert done.returncode == 0, done.stderr[-2000:]


@pytest.mark.timeout(600)
async def test_the_wheel_runs_the_practice_chat_from_an_empty_folder(tmp_path: Path) -> None:
    run(sys.executable, "-m", "build", "--wheel", "--no-isolation", "--outdir", str(tmp_path), str(ROOT), cwd=tmp_path)
    (wheel,) = tmp_path.glob("*.whl")
    names = zipfile.ZipFile(wheel).namelist()
    assert not any(name.startswith("tests") for name in names)
    for wanted in ("plans/library/rowing-club.yaml", "bot/practice/page/index.html", "bot/words/templates/day.j2"):
        assert wanted in names
    run(sys.executable, "-m", "venv", "env", cwd=tmp_path)
    pip = [str(tmp_path / "env/bin/python"), "-m", "pip", "install", "--quiet", "--disable-pip-version-check"]
    run(*pip, "--require-hashes", "-r", str(ROOT / "bot/requirements.txt"), cwd=tmp_path)
    run(*pip, "--no-deps", str(wheel), cwd=tmp_path)
    empty = tmp_path / "empty"
    empty.mkdir()
    process = await asyncio.create_subprocess_exec(
        str(tmp_path / "env/bin/easeward"),
        *("practice", "--port", "0", "--no-open", "--data", str(tmp_path / "data")),
        cwd=empty,
        stdout=asyncio.subprocess.PIPE,
        env={"PATH": "/usr/bin:/bin"},
    )
    try:
        if process.stdout is None:
            raise RuntimeError("the process has no output to read")
        line = (await asyncio.wait_for(process.stdout.readline(), 60)).decode()
        address = re.search(r"http://127\.0\.0\.1:\d+", line)
        assert address is not None, line
        async with aiohttp.ClientSession() as http:
            chat = Practice(address[0], http)
            assert any(said.text.startswith("Day 1:") for said in await chat.from_bot(2001))
            async with http.get(f"{address[0]}/") as page:
                assert page.status == 200
                assert "<title>" in await page.text()
    finally:
        process.terminate()
        assert await asyncio.wait_for(process.wait(), 20) == 0
    assert list(empty.iterdir()) == []
