"""A stored programme in a reader's language."""

from __future__ import annotations

from functools import lru_cache

from bot.words import words
from db.schema import ProgrammeVersion
from plans.programme import Programme
from plans.reading import read_programme
from plans.translated import in_language


def programme_in(version: ProgrammeVersion, language: str | None = None) -> Programme:
    """The programme of a stored version, as it is written or for a reader of a language."""
    return _read(version.source, language)


@lru_cache(maxsize=256)
def _read(source: str, language: str | None) -> Programme:
    if language is None:
        return read_programme(source)
    return in_language(_read(source, None), language, words(language).gettext)
