"""The pinned lists are current: they cover what pyproject asks for, and what is installed is what they pin."""

from __future__ import annotations

import re
import tomllib
from importlib.metadata import distribution, requires
from pathlib import Path

from packaging.requirements import Requirement
from packaging.utils import canonicalize_name

ROOT = Path(__file__).parents[2]
LISTS = {"bot/requirements.txt": (), "tests/requirements.txt": ("test",)}


LINE = re.compile(r"^([A-Za-z0-9_.-]+)(?:\[([^\]]*)\])?==([^\s;\\]+)", re.MULTILINE)


def pins(name: str) -> dict[str, str]:
    text = (ROOT / name).read_text(encoding="utf-8")
    return {canonicalize_name(found[1]): found[3] for found in LINE.finditer(text)}


def extras_of(name: str) -> dict[str, set[str]]:
    text = (ROOT / name).read_text(encoding="utf-8")
    return {canonicalize_name(found[1]): set((found[2] or "").split(",")) for found in LINE.finditer(text)}


def asked(extras: tuple[str, ...]) -> list[Requirement]:
    project = tomllib.loads((ROOT / "pyproject.toml").read_text(encoding="utf-8"))["project"]
    lines = [*project["dependencies"], *(line for e in extras for line in project["optional-dependencies"][e])]
    return [Requirement(line) for line in lines]


def closure(wanted: list[Requirement]) -> set[tuple[str, frozenset[str]]]:
    """All distributions that the wanted ones need here, with the extras that are asked of each."""
    found: set[tuple[str, frozenset[str]]] = set()
    queue = [(canonicalize_name(r.name), frozenset(r.extras)) for r in wanted]
    while queue:
        name, extras = queue.pop()
        if (name, extras) in found:
            continue
        found.add((name, extras))
        for line in requires(name) or []:
            need = Requirement(line)
            if need.marker is None or any(need.marker.evaluate({"extra": extra}) for extra in (*extras, "")):
                queue.append((canonicalize_name(need.name), frozenset(need.extras)))
    return found


def test_every_requirement_is_pinned_within_its_bounds() -> None:
    for name, extras in LISTS.items():
        pinned = pins(name)
        for need in asked(extras):
            assert need.specifier.contains(pinned[canonicalize_name(need.name)]), f"{name}: {need}"


def test_the_lists_cover_everything_that_is_needed_at_the_installed_versions() -> None:
    for name, extras in LISTS.items():
        pinned = pins(name)
        for needed, _extras in closure(asked(extras)):
            assert pinned.get(needed) == distribution(needed).version, f"{name}: {needed}"


def test_the_lists_keep_the_extras_that_are_asked_for() -> None:
    """An older pip takes `coverage[toml]` for not pinned when the list says `coverage` and a newer version is out."""
    for name, extras in LISTS.items():
        kept = extras_of(name)
        for needed, wanted in closure(asked(extras)):
            assert wanted <= kept[needed], f"{name}: {needed}[{','.join(sorted(wanted))}]"


def test_the_lists_name_no_address() -> None:
    for name in (*LISTS, "tests/foreign/requirements.txt"):
        text = (ROOT / name).read_text(encoding="utf-8")
        assert "://" not in text
        assert text.count("--hash=sha256:") >= len(pins(name))
