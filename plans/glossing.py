"""A reply of another language word for word in English, so that one grammar, with one set of safety rules, reads all.

The result is no English to show anybody: it is what the English tables know. A word that a language's own table does
not have becomes one that stands for any word, so that no foreign word is taken for an English one.
"""

from __future__ import annotations

import re
from collections.abc import Iterator, Mapping
from dataclasses import dataclass
from functools import cache, lru_cache
from importlib import import_module
from types import ModuleType

from plans.wording import is_english, nearest, normalise, opened

GLOSSED = ("es", "de")
"""The languages that are read by way of English."""
UNKNOWN = "qx"
"""Any word that a table does not have."""
ENOUGH = 0.6
"""From this share of known words on a text is taken to be of a language (own choice)."""

_LETTERS = re.compile(r"[^\W\d_]+")
_PIECE = re.compile(r"[^\W\d_]+|(?:(?<![^\s:=])-)?\d(?:[\d.,:/]*\d)?|-+>|\S")


@dataclass(frozen=True, slots=True)
class _Table:
    """`phrases` by their words; `lengths` of the phrases that begin with a word, longest first."""

    phrases: Mapping[tuple[str, ...], str]
    lengths: Mapping[str, tuple[int, ...]]
    known: frozenset[str]
    targets: Mapping[str, tuple[str, ...]]
    misspelt: Mapping[str, str]
    rewrites: tuple[tuple[re.Pattern[str], str], ...]


def tables_of(language: str) -> ModuleType:
    """The written tables of a language, `plans/words_es.py` and its like."""
    return import_module(f"plans.words_{language}")


@cache
def _table(language: str) -> _Table:
    table = tables_of(language)
    phrases = {phrase: english for english, lines in table.PHRASES.items() for phrase in opened(lines)}
    phrases = {_written(phrase, table.MISSPELT): english for phrase, english in phrases.items()} | phrases
    lengths: dict[str, set[int]] = {}
    for phrase in phrases:
        lengths.setdefault(phrase[0], set()).add(len(phrase))
    targets: dict[str, list[str]] = {}
    for word in table.TYPED_WRONG.split():
        targets.setdefault(word[0], []).append(word)
    return _Table(
        phrases,
        {first: tuple(sorted(found, reverse=True)) for first, found in lengths.items()},
        frozenset(word for phrase in phrases for word in phrase) | frozenset(table.LOOKALIKES.split()),
        {first: tuple(found) for first, found in targets.items()},
        table.MISSPELT,
        tuple((re.compile(pattern), by) for pattern, by in table.REWRITES),
    )


def _written(phrase: tuple[str, ...], misspelt: Mapping[str, str]) -> tuple[str, ...]:
    """The phrase as it is looked up once its words are put right."""
    return tuple(" ".join(misspelt.get(word, word) for word in phrase).split())


def in_english(text: str, language: str) -> str:
    """The text as the English tables know it; English stays as it is.

    Raises ValueError for a language that has no tables.

    >>> in_english("Hecho, me duele la rodilla 4", "es")
    'done , my knee hurts 4'
    """
    if language == "en":
        return text
    if language not in GLOSSED:
        raise ValueError(f"no word list for language {language!r}: known are en, {', '.join(GLOSSED)}")
    return " ".join(said for said, _size in _glossed(text, language))


def knows(text: str, language: str, *, enough: float = ENOUGH) -> bool:
    """Whether so large a share of a text's words stands in a language's table that it may well be of that language."""
    if language == "en":
        pieces = [piece for piece in _PIECE.findall(normalise(text)) if piece.isalpha()]
        return bool(pieces) and sum(map(is_english, pieces)) >= enough * len(pieces)
    found = [(said, size) for said, size in _glossed(text, language) if said[:1].isalpha()]
    known = sum(size for said, size in found if said != UNKNOWN)
    return bool(found) and known >= enough * sum(size for _said, size in found)


def languages_of(text: str, own: str) -> Iterator[str]:
    """The languages that a text may be of, the writer's own first; only that one if its tables have every word."""
    yield own
    if knows(text, own, enough=1):
        return
    yield from (other for other in ("en", *GLOSSED) if other != own and knows(text, other))


@lru_cache(maxsize=len(GLOSSED))
def _glossed(text: str, language: str) -> tuple[tuple[str, int], ...]:
    """What each phrase is in English, and how many of the reply's words it is of."""
    return tuple(_phrases(text, _table(language)))


def _phrases(text: str, table: _Table) -> Iterator[tuple[str, int]]:
    plain = _LETTERS.sub(lambda found: table.misspelt.get(found[0], found[0]), normalise(text))
    for pattern, by in table.rewrites:
        plain = pattern.sub(by, plain)
    pieces = [piece for raw in _PIECE.findall(plain) for piece in _spelled(raw, table).split()]
    at = 0
    while at < len(pieces):
        sizes = (n for n in table.lengths.get(pieces[at], ()) if tuple(pieces[at : at + n]) in table.phrases)
        size = next(sizes, 0)
        if size:
            yield table.phrases[tuple(pieces[at : at + size])], size
        else:
            yield (UNKNOWN if pieces[at].isalpha() else pieces[at]), 1
        at += size or 1


def _spelled(raw: str, table: _Table) -> str:
    """The word of the table that is meant, by its list of misspellings or a letter or two away; else as it is."""
    if raw in table.misspelt:
        return table.misspelt[raw]
    word = re.sub(r"(.)\1{2,}", r"\1", raw)
    if raw in table.known or not raw.isalpha() or len(raw) > 40:
        return raw
    return word if word in table.known else nearest(word, table.targets.get(word[0], ()))
