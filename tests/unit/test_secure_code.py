"""What the program's own source never does, read from the source: each line here is a hole that others have had."""

from __future__ import annotations

import ast
import re
import ssl
from collections.abc import Iterator
from functools import cache
from pathlib import Path

import pytest

from bot.settings import Settings
from db import links

ROOT = Path(__file__).parents[2]
SOURCES = [file for top in ("bot", "db", "plans") for file in sorted((ROOT / top).rglob("*.py"))]
PAGES = [file for ending in ("*.js", "*.html", "*.j2") for file in sorted((ROOT / "bot").rglob(ending))]


@cache
def nodes() -> list[tuple[str, ast.AST]]:
    """Every node of the source, with its file; parsed once for all tests."""
    trees = {str(file.relative_to(ROOT)): ast.parse(file.read_text(encoding="utf-8")) for file in SOURCES}
    return [(file, node) for file, tree in trees.items() for node in ast.walk(tree)]


def called() -> Iterator[tuple[str, str, ast.Call]]:
    """Every call, with the file and the whole name of what is called."""
    for file, node in nodes():
        if isinstance(node, ast.Call):
            yield file, ast.unparse(node.func), node


def imported() -> Iterator[tuple[str, str]]:
    for file, node in nodes():
        if isinstance(node, ast.Import):
            yield from ((file, name.name) for name in node.names)
        if isinstance(node, ast.ImportFrom) and node.module:
            yield file, node.module


def test_nothing_is_run_that_was_made_of_text() -> None:
    bad = {"eval", "exec", "compile", "os.system", "os.popen", "subprocess.run", "subprocess.Popen", "__import__"}
    assert [(file, name) for file, name, _node in called() if name in bad or name.endswith("subprocess_shell")] == []


def test_other_programs_are_our_own_with_fixed_words() -> None:
    found = [(file, node) for file, name, node in called() if name.endswith("create_subprocess_exec")]
    assert {file for file, _node in found} == {"bot/painting.py", "bot/rehearser.py"}
    for _file, node in found:
        words = [ast.unparse(argument) for argument in node.args]
        assert words in (["sys.executable", "'-m'", "'bot.painter'"], ["sys.executable", "'-m'", "'bot.rehearsed'"])


def test_nothing_is_unpacked_that_could_run() -> None:
    bad = {"pickle", "marshal", "shelve", "dill", "yaml", "xml", "lxml", "zipfile", "tarfile", "gzip", "ctypes"}
    found = {(file, name) for file, name in imported() if name.partition(".")[0] in bad}
    assert found == {("bot/exports/files.py", "zipfile")}
    [opened] = [node for _file, name, node in called() if name.endswith("ZipFile")]
    assert ast.unparse(opened.args[1]) == "'w'", "archives are written only"


def test_only_strong_hashes_and_unguessable_numbers_are_used() -> None:
    hashes = {name.partition("hashlib.")[2].partition("(")[0] for _file, name, _node in called() if "hashlib." in name}
    assert hashes == {"sha256"}
    chance = {file for file, name in imported() if name == "random"}
    invented = {"bot/grouping.py", "bot/practice/invented.py"}
    assert chance == {"bot/rehearsing.py", "plans/simulated.py", "plans/rehearsal.py"} | invented
    assert "secrets" in {name for file, name in imported() if file == "db/links.py"}
    token = links._token(links.JOIN)
    assert len(token.removeprefix(links.JOIN)) * 6 >= 128
    assert links._token(links.JOIN) != token


STATEMENTS_MADE = {
    "db/postgres.py": "a constant word",
    "db/engine.py": "names of settings from a constant list",
    "db/migrate.py": "a constant number",
    "db/marks.py": "parts of a statement from a constant table",
    "db/sqlite.py": "pragmas from a constant list",
}
"""Where a statement is put together as text, and of what."""


def test_statements_are_built_from_values_only_as_parameters() -> None:
    found = set()
    for file, name, node in called():
        takes_text = name.rpartition(".")[2] in ("text", "exec_driver_sql", "execute") and node.args
        if takes_text and isinstance(node.args[0], ast.JoinedStr | ast.BinOp):
            found.add(file)
    assert found - {file for file in found if "migrations" in file or "practice" in file} <= STATEMENTS_MADE.keys()


def test_templates_come_from_the_package_and_escape_what_they_are_given() -> None:
    environments = [node for _file, name, node in called() if name.endswith("Environment")]
    assert len(environments) >= 2
    for node in environments:
        words = {word.arg: ast.unparse(word.value) for word in node.keywords}
        assert words["autoescape"] == "True"
        assert words["loader"].startswith("PackageLoader")
    assert [(file, name) for file, name, _node in called() if name.endswith(("from_string", "Template"))] == []
    for file in PAGES:
        assert "|safe" not in file.read_text(encoding="utf-8").replace(" ", "") or file.suffix == ".html", file


def test_no_pattern_is_made_of_what_somebody_typed() -> None:
    names = {f"re.{name}" for name in ("compile", "match", "search", "fullmatch", "sub", "split", "findall")}
    made = [node.args[0] for _file, name, node in called() if name in names and isinstance(node.args[0], ast.JoinedStr)]
    parts = [ast.unparse(part.value) for one in made for part in one.values if isinstance(part, ast.FormattedValue)]
    assert [part for part in parts if not re.fullmatch(r"_[A-Z_]+", part)] == []


def test_requests_go_out_from_the_transport_and_the_ping_alone() -> None:
    files = {file for file, name, _node in called() if name.endswith("ClientSession")}
    assert {file for file in files if "practice" not in file} == {"bot/transport.py", "bot/heartbeat.py"}
    for file, _name, node in called():
        for word in node.keywords:
            assert (word.arg, ast.unparse(word.value)) not in (("ssl", "False"), ("verify", "False")), file


def test_no_cookie_no_redirect_no_socket_and_no_trust_in_a_proxys_words() -> None:
    bad = ("set_cookie", "HTTPFound", "WebSocketResponse", "X-Forwarded", "request.remote", "Access-Control", "jsonp")
    for file in SOURCES:
        text = file.read_text(encoding="utf-8")
        assert [word for word in bad if word in text] == [], file


def test_pages_put_words_in_as_words() -> None:
    bad = ("innerHTML", "outerHTML", "insertAdjacentHTML", "document.write", "eval(", "postMessage", "new Function")
    for file in PAGES:
        text = file.read_text(encoding="utf-8")
        assert [word for word in bad if word in text] == [], file


def test_the_page_in_the_browser_keeps_how_it_is_shown_and_nothing_else() -> None:
    stored = [file.name for file in PAGES if re.search(r"(local|session)Storage|indexedDB|cookie", file.read_text())]
    assert stored == ["tools.js"]


def test_tls_is_as_new_as_recommended_and_certificates_are_checked() -> None:
    context = ssl.create_default_context()
    assert context.minimum_version >= ssl.TLSVersion.TLSv1_2
    assert context.verify_mode is ssl.CERT_REQUIRED
    assert context.check_hostname


@pytest.mark.parametrize(("name", "default"), [("web_host", "127.0.0.1"), ("web_port", None), ("minors", False)])
def test_nothing_is_open_unless_it_is_asked_for(name: str, default: object) -> None:
    assert Settings.model_fields[name].default == default
    assert str(Settings.model_fields["api_url"].default).startswith("https://")
