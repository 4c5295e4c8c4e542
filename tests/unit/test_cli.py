"""The small commands and their contracts."""

from __future__ import annotations

import json
import subprocess
import sys
from pathlib import Path

import pytest

from tests.texts import HEAD, REST, session


def easeward(*words: str, stdin: str = "") -> tuple[int, str, str]:
    done = subprocess.run(
        [sys.executable, "-m", "bot.cli", *words], input=stdin, capture_output=True, text=True, timeout=60, check=False
    )
    return done.returncode, done.stdout, done.stderr


def test_when_prints_the_instant_and_a_skipped_day() -> None:
    assert easeward("when", "2026-03-29", "01:30", "Europe/London", "--json")[:2] == (
        0,
        '{"utc": "2026-03-29T01:30Z"}\n',
    )
    assert easeward("when", "2011-12-30", "07:00", "Pacific/Apia", "--json")[:2] == (0, '{"no_such_day": true}\n')


def test_when_reads_lines_in_order_and_goes_on_after_a_bad_one() -> None:
    code, out, _err = easeward("when", "-", stdin="2026-12-01 07:00 Asia/Kolkata\nx\n2026-12-01,07:00:30,UTC\n")
    lines = [json.loads(line) for line in out.splitlines()]
    assert code == 1
    assert lines[0] == {"utc": "2026-12-01T01:30Z"}
    assert set(lines[1]) == {"error"}
    assert lines[2] == {"utc": "2026-12-01T07:00:30Z"}


def test_an_unknown_zone_is_wrong_use_and_gets_its_neighbours() -> None:
    code, _out, err = easeward("when", "2026-12-01", "07:00", "Europe/Lisbn")
    assert code == 2
    assert "Europe/Lisbon" in err


def test_read_reply_prints_the_contract() -> None:
    code, out, _err = easeward("read-reply", "done, my left hamstring hurts 4", "--json")
    found = json.loads(out)
    assert code == 0
    assert list(found) == ["completion", "pain", "sore", "red_flag", "side", "place", "kind", "why", "unsure"]
    assert (found["completion"], found["pain"], found["side"]) == ("done", 4, "left")


def test_read_reply_reads_one_a_line() -> None:
    code, out, _err = easeward("read-reply", "-", "--json", stdin="done\n\nno pain\n")
    assert code == 0
    assert [json.loads(line)["pain"] for line in out.splitlines()] == [None, None, 0]


@pytest.mark.parametrize(
    ("text", "code"), [(HEAD + session(6) * 5 + REST * 2, 0), (HEAD + session() + REST, 1), ("title: [", 1)]
)
def test_check_says_whether_a_file_can_be_published(tmp_path: Path, text: str, code: int) -> None:
    file = tmp_path / "p.yaml"
    file.write_text(text, encoding="utf-8")
    found, out, _err = easeward("check", str(file), "--json")
    assert found == code
    assert json.loads(out)[0]["ok"] is (code == 0)


def test_check_of_a_file_that_is_not_there_is_wrong_use(tmp_path: Path) -> None:
    code, _out, err = easeward("check", str(tmp_path / "no.yaml"))
    assert code == 2
    assert "no.yaml: cannot be read" in err


def test_small_commands_do_not_load_what_they_do_not_need() -> None:
    heavy = ("telegram", "sqlalchemy", "aiohttp")
    code = f"import sys, bot.cli, plans.replies, plans.localtime; print([m for m in {heavy} if m in sys.modules])"
    done = subprocess.run([sys.executable, "-c", code], capture_output=True, text=True, check=True)
    assert done.stdout.strip() == "[]"
