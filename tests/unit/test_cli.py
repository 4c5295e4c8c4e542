"""The small commands and their contracts."""

from __future__ import annotations

import json
import re
import subprocess
import sys
from importlib.resources import files
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


def test_check_tells_the_dose_of_each_week_and_what_a_reader_is_told(tmp_path: Path) -> None:
    file = tmp_path / "p.yaml"
    file.write_text(HEAD + session(6) * 5 + REST * 2, encoding="utf-8")
    _code, out, _err = easeward("check", str(file))
    assert out.splitlines()[-2:] == [
        "week 1 (days 1-7): 5 sessions of 16 minutes, up to 6 rounds",
        "  hamstrings: 960 s dynamic; 900 s static (each side)",
    ]
    (found,) = json.loads(easeward("check", str(file), "--json")[1])
    assert list(found) == ["file", "title", "ok", "findings", "weeks", "reporting"]
    (week,) = found["weeks"]
    assert (week["days"], week["sessions"], week["minutes"], week["rounds"]) == ([1, 2, 3, 4, 5, 6, 7], 5, [16, 16], 6)
    assert week["seconds"]["hamstrings"]["left"] == {"dynamic": [960, 960], "static": [900, 900]}
    assert found["reporting"][2] == {
        "item": "3",
        "asks": "alone or in a group (company)",
        "answer": "alone",
        "by": "the programme",
    }


def test_check_writes_a_page_of_one_file(tmp_path: Path) -> None:
    file, page = tmp_path / "p.yaml", tmp_path / "p.html"
    file.write_text((HEAD + session(6) * 5 + REST * 2).replace("Test hips", "Hips <b>"), encoding="utf-8")
    assert easeward("check", str(file), "--html", str(page))[0] == 0
    text = page.read_text(encoding="utf-8")
    assert "Hips &lt;b&gt;" in text
    assert "day 1, left: 192 s dynamic" in text
    assert not re.search(r"(?:src|href)=|https?://|@import|url\((?!#)", text)
    code, _out, err = easeward("check", str(file), str(file), "--html", str(page))
    assert (code, err) == (2, "--html writes the page of one file; 2 were given\n")
    code, _out, err = easeward("check", str(file), "--html", str(tmp_path / "no" / "p.html"))
    assert (code, "cannot be written" in err) == (2, True)


def test_preview_is_the_message_of_a_day(tmp_path: Path) -> None:
    file = tmp_path / "p.yaml"
    file.write_text(HEAD + session() + REST, encoding="utf-8")
    code, out, _err = easeward("preview", str(file), "1", "--level", "1")
    assert code == 0
    assert out.splitlines() == [
        "Day 1, about 4 minutes · lighter",
        "",
        "First: Walk.",
        "1. Sway: 6 times",
        "2. Long reach: 20 s each side",
        "",
        "A pulling feeling is fine. Stop at sharp pain, numbness or tingling.",
        "",
        "[All done, no pain]",
        "[Done, some pain]  [Part of it]",
        "[Not today]",
        "[Sore, pain or something odd]",
        "[Lead me step by step]",
    ]
    assert "Walk a little." in easeward("preview", str(file), "2")[1]
    code, _out, err = easeward("preview", str(file), "3")
    assert (code, err) == (2, "day 3: Test hips has days 1 to 2\n")
    file.write_text("title: [", encoding="utf-8")
    assert easeward("preview", str(file), "1")[0] == 1


def test_compare_says_what_changed(tmp_path: Path) -> None:
    old, new = tmp_path / "old.yaml", tmp_path / "new.yaml"
    old.write_text(HEAD + session() + REST, encoding="utf-8")
    new.write_text((HEAD + session() + REST).replace("hold: 30", "hold: 45"), encoding="utf-8")
    assert easeward("compare", str(old), str(new))[:2] == (
        0,
        "day 1: Long reach: 30 s each side -> Long reach: 45 s each side\n",
    )
    assert easeward("compare", str(old), str(old))[:2] == (0, "Nothing that a client or a rule would see.\n")
    assert easeward("compare", str(old), str(tmp_path / "no.yaml"))[0] == 2


def test_schema_is_the_file_beside_the_samples() -> None:
    code, out, _err = easeward("schema")
    assert code == 0
    assert out == files("plans.library").joinpath("programme.schema.json").read_text(encoding="utf-8")


HEAVY = (
    *("telegram", "sqlalchemy", "alembic", "aiohttp", "apscheduler", "tzfpy", "rich", "jinja2", "babel", "numpy"),
    *("PIL", "resvg_py", "segno", "plans.figures.drawing", "plans.words_en", "asyncio"),
)
"""Modules that take long to load, and that a look at a file does not need."""


def test_checking_a_file_loads_only_what_it_needs(tmp_path: Path) -> None:
    file = tmp_path / "p.yaml"
    file.write_text(HEAD + session(6) * 5 + REST * 2, encoding="utf-8")
    assert heavy_after(f"app(['check', {str(file)!r}], standalone_mode=False)") == "0 []"


def test_small_questions_load_neither_chat_nor_database() -> None:
    for words in (["read-reply", "done"], ["when", "2026-12-01", "07:00", "UTC"], ["movements", "strap"]):
        found = heavy_after(f"app({words}, standalone_mode=False)")
        assert not any(name in found for name in ("telegram", "sqlalchemy", "aiohttp", "PIL")), (words, found)


def heavy_after(call: str) -> str:
    """What a command returns, and which heavy modules are there after it."""
    code = f"import sys\nfrom bot.cli import app\nprint({call}, [name for name in {HEAVY} if name in sys.modules])"
    done = subprocess.run([sys.executable, "-c", code], capture_output=True, text=True, check=True)
    return done.stdout.splitlines()[-1]


def test_the_schemas_of_what_is_exported_are_printed_and_a_strange_one_is_wrong_use() -> None:
    for name in ("record", "adverse-events"):
        code, out, _err = easeward("schema", name)
        assert code == 0
        assert json.loads(out)["$schema"] == "https://json-schema.org/draft/2020-12/schema"
    code, _out, err = easeward("schema", "fhir")
    assert (code, "record" in err) == (2, True)


def test_an_export_of_a_strange_kind_is_wrong_use() -> None:
    code, _out, err = easeward("export", "1", "nowhere", "--only", "pdf")
    assert code == 2
    assert "csv, json, events, fhir, calendar" in err
    assert not Path("nowhere").exists()
