"""What doctor finds, each with what it means and what to do."""

from __future__ import annotations

import os
import subprocess
import sys
from pathlib import Path

import pytest
from pydantic import SecretStr
from sqlalchemy.ext.asyncio import AsyncSession

from bot.cli.examination import examine
from bot.cli.finding import Finding
from bot.cli.surroundings import is_open, of_settings
from bot.settings import Settings
from db import migrate
from db.engine import opened
from db.schema import Inbox
from tests.integration.fakes import NOON
from tests.stores import here

pytestmark = pytest.mark.usefixtures("store")

ROOT = Path(__file__).parents[2]


def by_thing(findings: list[Finding]) -> dict[str, Finding]:
    return {finding.thing: finding for finding in findings}


async def test_a_fresh_installation_has_nothing_wrong_but_the_missing_token(tmp_path: Path) -> None:
    url = await here().url(tmp_path, tables=False)
    await migrate.upgrade(url)
    tmp_path.chmod(0o700)
    found = by_thing(await examine(Settings(database_url=url)))
    found.pop("commits", None)  # the tests' own server is set to forget
    assert [thing for thing, finding in found.items() if not finding.fine] == ["platform"]
    assert "EASEWARD_TOKEN" in found["platform"].todo
    assert "EASEWARD_PING_URL" in found["monitoring"].todo


async def test_everything_wrong_says_what_it_means_and_what_to_do(tmp_path: Path) -> None:
    url = await here().url(tmp_path, tables=False)
    await migrate.upgrade(url)

    async def job(session: AsyncSession) -> None:
        session.add(Inbox(update_id=5, chat=1, payload=None, state="failed", tries=3, stored_at=NOON))

    async with opened(url) as database:
        await database.write(job)
    token = tmp_path / "token"
    token.write_text("1:x", encoding="utf-8")
    token.chmod(0o644)
    settings = Settings(database_url=url, token_file=token, token=None, api_url="http://127.0.0.1:9")
    found = by_thing(await examine(settings))
    assert not found["secrets"].fine
    assert f"chmod 600 {token}" in found["secrets"].todo
    assert found["updates in"].fine
    assert "update-failed" in found["updates in"].todo
    assert not found["platform"].fine
    for finding in found.values():
        assert finding.fine or (finding.todo.endswith((".", str(token), str(tmp_path)))), finding
        assert finding.fine or finding.in_words().count("\n") == 1


def test_a_database_that_others_can_read_is_named(tmp_path: Path) -> None:
    file = tmp_path / "easeward.sqlite"
    file.write_bytes(b"")
    settings = Settings(database_url=f"sqlite:///{file}", ping_url=SecretStr("https://example.org/x"))
    file.chmod(0o644)
    tmp_path.chmod(0o755)
    found = by_thing(of_settings(settings))
    assert not found["data"].fine
    assert f"chmod 700 {tmp_path}" in found["data"].todo
    tmp_path.chmod(0o700)
    found = by_thing(of_settings(settings))
    assert found["data"].fine
    assert "example.org" not in found["monitoring"].found


@pytest.mark.parametrize(
    ("address", "fine"),
    [
        ("postgresql://bot@db.example.org/clients", False),
        ("postgresql://bot@db.example.org/clients?ssl=prefer", False),
        ("postgresql://bot@db.example.org/clients?ssl=verify-full", True),
        ("postgresql://bot@127.0.0.1/clients", True),
        ("postgresql:///clients", True),
    ],
)
def test_a_connection_that_could_be_listened_to_is_named(address: str, fine: bool) -> None:
    assert by_thing(of_settings(Settings(database_url=address)))["line"].fine is fine


def test_files_that_the_program_makes_can_be_read_by_its_user_alone(tmp_path: Path) -> None:
    file, copy = tmp_path / "new" / "easeward.sqlite", tmp_path / "copy.sqlite"
    file.parent.mkdir(mode=0o700)
    environment = {"EASEWARD_DATABASE_URL": f"sqlite:///{file}", "PATH": os.environ["PATH"], "HOME": str(tmp_path)}
    for words in (["migrate"], ["backup", str(copy)]):
        command = [sys.executable, "-m", "bot.cli", *words]
        done = subprocess.run(command, env=environment, capture_output=True, text=True, cwd=ROOT, check=False)
        assert done.returncode == 0, done.stderr
    for one in (file, copy):
        assert not is_open(one)
