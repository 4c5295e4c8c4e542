"""Weeks of a course in a language that nobody speaks: whatever does not come in it cannot be translated."""

from __future__ import annotations

import re
from collections.abc import Iterator, Mapping
from pathlib import Path
from typing import Any

import pytest

import bot.words
import bot.words.programmes
from tests.pseudo import Pseudo, english_in, read
from tests.simulation.faults import NONE
from tests.simulation.phones import Phone, Seen
from tests.simulation.samples import programme_of
from tests.simulation.watch import Watch
from tests.simulation.world import Plan, simulate

PLACES = "Europe America Asia Africa Pacific Australia UTC"
NAMES = re.compile(
    rf"\b(Client|Coach|{'|'.join(PLACES.split())}|English|Español|Deutsch|YAML|JSON|CSV|PNG)\b[/\w]*"
    r'|"[^"]*"|\b[0-9a-f]{6}\b|(?<=wrîtëš······⟧</b>\n).*'
)
"""What people, places, languages and kinds of files are called whatever the language; what people said; digests."""


@pytest.fixture
def said(monkeypatch: pytest.MonkeyPatch) -> Iterator[list[str]]:
    """Everything that the bot lets leave, while every language is the one that nobody speaks."""
    found: list[str] = []
    leaves = Watch.leaves

    def noted(self: Watch, method: str, params: Mapping[str, Any]) -> Any:
        found.extend(_texts(params))
        return leaves(self, method, params)

    monkeypatch.setattr(Watch, "leaves", noted)
    monkeypatch.setattr(Phone, "shows", _read_by_its_people)
    monkeypatch.setattr(bot.words, "translations", lambda _language: Pseudo())
    monkeypatch.setitem(bot.words.LOCALES, "en", "el")  # dates in Greek letters
    _forget()
    yield found
    _forget()


_shows = Phone.shows


def _read_by_its_people(self: Phone, body: Mapping[str, Any]) -> Seen:
    words = {name: read(body[name]) for name in ("text", "caption") if body.get(name)}
    return _shows(self, {**body, **words})


def _forget() -> None:
    bot.words.words.cache_clear()
    bot.words.programmes._read.cache_clear()


def _texts(params: Mapping[str, Any]) -> Iterator[str]:
    yield from (params[name] for name in ("text", "caption") if params.get(name))
    rows = (params.get("reply_markup") or {}).get("inline_keyboard", ())
    yield from (button["text"] for row in rows for button in row)


@pytest.mark.parametrize(("seed", "programme"), [(3, "rowing-club"), (4, "hill-walkers"), (7, "pit-musicians")])
def test_every_word_can_be_translated(tmp_path: Path, said: list[str], seed: int, programme: str) -> None:
    found = simulate(Plan(seed, days=8, clients=4, shared=False, programme=programme, rates=NONE), tmp_path)
    assert not found.broken, found.report()
    assert len(said) > 100
    title = re.compile("|".join(programme_of(programme).title.split()))  # as its coach knows it
    strange = {text: words for text in said if (words := english_in(NAMES.sub(" ", title.sub(" ", text))))}
    assert not strange, "\n---\n".join(f"{words}: {text}" for text, words in sorted(strange.items())[:40])
