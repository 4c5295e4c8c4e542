"""Somebody's own data as a page that can be read anywhere."""

from __future__ import annotations

from bot.words import Words
from db.own_data import OwnData


def page(data: OwnData, words: Words) -> str:
    """One HTML page with everything, in tables, without scripts or addresses."""
    return words.page("own_data.html", data=data)
