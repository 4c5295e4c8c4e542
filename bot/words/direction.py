"""Names from right to left among other words: each keeps to itself, and what stands around it stays in place."""

from __future__ import annotations

import re

ISOLATE, END = "\N{FIRST STRONG ISOLATE}", "\N{POP DIRECTIONAL ISOLATE}"
"""Unicode's bidirectional isolates (UAX #9)."""

_RIGHT_TO_LEFT = "\u0590-\u08ff\ufb1d-\ufdff\ufe70-\ufefc"
"""The blocks of Hebrew, Arabic and their neighbours."""
_RUN = re.compile(rf"[{_RIGHT_TO_LEFT}](?:[{_RIGHT_TO_LEFT} .,'’-]*[{_RIGHT_TO_LEFT}])?")
_TAG = re.compile(r"<[^>]*>|&\w+;")
_LATIN = re.compile(r"[A-Za-z]")


def isolated(text: str) -> str:
    """The text with every run from right to left isolated, in lines that also have other words.

    >>> isolated("plain") == "plain"
    True
    >>> isolated("דנה done") == f"{ISOLATE}דנה{END} done"
    True
    """
    return "\n".join(map(_line, text.split("\n"))) if _RUN.search(text) else text


def _line(text: str) -> str:
    return _RUN.sub(rf"{ISOLATE}\g<0>{END}", text) if _LATIN.search(_TAG.sub("", text)) else text
