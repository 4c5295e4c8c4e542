"""The drawing of the house is the code's, and imports go round no corner."""

from __future__ import annotations

from collections import Counter
from graphlib import CycleError
from pathlib import Path
from xml.etree import ElementTree

import pytest

from tests import drawn_house
from tests.drawn_house import between, drawn, heights, imports, in_order

ROOT = Path(__file__).parents[2]
SMALL = {
    "bot": frozenset[str](),
    "bot.app": frozenset({"bot.taps", "db.writer"}),
    "bot.taps": frozenset({"bot", "plans.rules"}),
    "db": frozenset[str](),
    "db.writer": frozenset({"plans.rules"}),
    "plans": frozenset[str](),
    "plans.rules": frozenset[str](),
}


def test_the_drawing_is_current_and_shown_to_developers() -> None:
    assert drawn_house.FILE.read_text(encoding="utf-8") == drawn(imports()), "run python -m tests.drawn_house"
    shown = (ROOT / "DEVELOPERS.md").read_text(encoding="utf-8")
    assert f"]({drawn_house.FILE.relative_to(ROOT).as_posix()})" in shown


def test_no_module_leads_back_to_itself() -> None:
    assert len(heights(imports())) > 250


def test_a_module_that_leads_back_to_itself_is_named() -> None:
    with pytest.raises(CycleError, match=r"bot\.taps"):
        heights({**SMALL, "bot.taps": frozenset({"bot.app"})})


def test_modules_stand_above_what_they_import_in_their_folder() -> None:
    height = heights(SMALL)
    assert (height["bot.app"], height["bot.taps"], height["bot"]) == (2, 1, 0)
    assert height["db.writer"] == 0, "other folders do not lift a module"


def test_folders_stand_by_layers_with_what_goes_between_them() -> None:
    assert in_order(SMALL) == ["bot", "db", "plans"]
    assert between(SMALL) == Counter({("bot", "db"): 1, ("bot", "plans"): 1, ("db", "plans"): 1})


def test_the_drawing_names_every_module_once() -> None:
    words = " ".join(ElementTree.fromstring(drawn(SMALL)).itertext()).split()
    assert [words.count(name) for name in ("app", "taps", "writer", "rules", "bot/", "db/", "plans/")] == [1] * 7
