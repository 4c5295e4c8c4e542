"""What a log line may hold, and that nothing else gets in whoever logs it."""

from __future__ import annotations

import ast
import io
import json
import logging
import subprocess
import sys
from collections.abc import Iterator
from pathlib import Path
from random import Random

import pytest

from bot.logs import ACTIONS, FACTS, MARK, TROUBLES, OneLine
from bot.wellbeing import LOOKED_FOR
from tests.log_fuzz import fuzz, pieces, token, wrong

ROOT = Path(__file__).parents[2]
SOURCES = [file for top in ("bot", "db") for file in sorted((ROOT / top).rglob("*.py")) if "practice" not in file.parts]


def line(log: str, message: object, **facts: object) -> dict[str, object]:
    made = logging.LogRecord(log, logging.INFO, "f.py", 1, message, None, None)
    vars(made).update(facts)
    found: dict[str, object] = json.loads(OneLine().format(made))
    return found


def calls() -> Iterator[tuple[Path, ast.Call]]:
    """Every call of a logger in the program."""
    for file in SOURCES:
        for node in ast.walk(ast.parse(file.read_text(encoding="utf-8"))):
            if isinstance(node, ast.Call) and isinstance(node.func, ast.Attribute):
                owner = node.func.value
                if isinstance(owner, ast.Name) and owner.id == "log":
                    yield file, node


def test_every_action_that_the_program_logs_is_listed_and_every_listed_one_is_logged() -> None:
    literals = {
        str(node.args[0].value) for _file, node in calls() if node.args and isinstance(node.args[0], ast.Constant)
    }
    assert literals - ACTIONS == set()
    text = "".join(file.read_text(encoding="utf-8") for file in SOURCES if file.name != "logs.py")
    assert {action for action in ACTIONS - {"crashed"} if f'"{action}"' not in text} == set()


def test_every_fact_that_the_program_logs_is_listed() -> None:
    named = {
        str(key.value)
        for _file, node in calls()
        for word in node.keywords
        if word.arg == "extra" and isinstance(word.value, ast.Dict)
        for key in word.value.keys
        if isinstance(key, ast.Constant)
    }
    assert named - FACTS.keys() == set()


def test_a_record_says_when_in_utc_what_where_and_whom_by_number() -> None:
    found = line("bot.sending", "send-failed", outbox=7, reason="blocked", state="refused", chat=500)
    assert str(found.pop("at")).endswith("+00:00")
    assert isinstance(found.pop("process"), int)
    assert found == {
        "level": "info",
        "action": "send-failed",
        "outbox": 7,
        "reason": "blocked",
        "state": "refused",
        "chat": 500,
    }


@pytest.mark.parametrize(
    ("log", "message", "facts", "expected"),
    [
        ("bot.x", "my knee hurts", {}, {"action": MARK}),
        ("bot.x", "knee", {}, {"action": MARK}),
        ("telegram.ext", "Ada wrote: my knee hurts", {}, {"action": "telegram"}),
        ("httpx", "GET https://api.telegram.org/bot123456789:AAF/getMe", {}, {"action": "httpx"}),
        ("123456789:AAFsecret", "x", {}, {"action": "other"}),
        ("bot.x", "send-failed", {"reason": "knee"}, {"reason": MARK}),
        ("bot.x", "send-failed", {"error": "Ada"}, {"error": MARK}),
        ("bot.x", "send-failed", {"error": "ValueError"}, {"error": "ValueError"}),
        ("bot.x", "send-failed", {"chat": "Ada"}, {"chat": MARK}),
        ("bot.x", "serving", {"bot": "easeward_bot", "kind": "all"}, {"bot": "easeward_bot", "kind": "all"}),
        ("bot.x", "serving", {"bot": "123:abcdef_bot"}, {"bot": MARK}),
    ],
)
def test_what_is_in_no_list_is_left_out(
    log: str, message: str, facts: dict[str, object], expected: dict[str, object]
) -> None:
    found = line(log, message, **facts)
    assert {name: found[name] for name in expected} == expected


def test_nothing_planted_gets_through_in_any_place_of_a_record() -> None:
    assert fuzz(seed=1, count=3000) == []


def test_the_check_of_the_fuzz_would_see_what_gets_through() -> None:
    secret = token(Random(1))
    assert next(pieces(f"https://x/bot{secret}/m")) == secret
    assert wrong(json.dumps({"action": secret}), secret) is not None
    assert wrong(json.dumps({"action": "x", "text": "a"}), "") is not None
    assert wrong(json.dumps({"action": "my hamstring"}), "my hamstring") is not None


def test_what_nobody_catches_is_a_record_without_the_words_of_the_error() -> None:
    code = (
        "import threading, warnings, asyncio, logging\n"
        "from bot.logs import set_up_logs\n"
        "set_up_logs('INFO')\n"
        "warnings.warn('Ada says her knee hurts')\n"
        "logging.getLogger('aiohttp').warning('%s %s', 'https://x/bot123456789:AAFsecret')\n"
        "def fail(): raise ValueError('Ada says her knee hurts')\n"
        "thread = threading.Thread(target=fail); thread.start(); thread.join()\n"
        "async def lost():\n"
        "    task = asyncio.create_task(asyncio.to_thread(fail)); await asyncio.sleep(0.1); del task\n"
        "asyncio.run(lost())\n"
        "fail()\n"
    )
    done = subprocess.run([sys.executable, "-c", code], capture_output=True, text=True, check=False, cwd=ROOT)
    assert done.returncode == 1
    found = [json.loads(one) for one in done.stderr.splitlines()]
    assert [one["action"] for one in found] == ["py", "aiohttp", "crashed", "asyncio", "crashed"]
    assert found[2]["error"] == "ValueError"
    assert found[2]["where"][-1] == "<string>:6 fail"
    assert not any(word in done.stderr for word in ("Ada", "knee", "AAF"))


def test_the_troubles_that_may_be_named_are_those_that_are_looked_for() -> None:
    assert set(LOOKED_FOR) == TROUBLES


def test_a_stream_gets_one_line_for_each_record() -> None:
    stream = io.StringIO()
    handler = logging.StreamHandler(stream)
    handler.setFormatter(OneLine())
    handler.handle(logging.LogRecord("bot.x", logging.INFO, "f", 1, "stopped\n{}", None, None))
    assert len(stream.getvalue().splitlines()) == 1
