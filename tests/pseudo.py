"""A language that nobody speaks: every text that can be translated stands in brackets and is half as long again."""

from __future__ import annotations

import re
from gettext import NullTranslations

_KEPT = re.compile(r"%\(\w+\)[sd]|%%|\{\w*\}|</?\w+[^>]*>|&\w+;|/[a-z]+\b|https?://\S+")
"""What must come through a translation as it is: places for facts, tags, commands, addresses."""
_LETTERS = str.maketrans("aeiounscyAEIOUNSC", "áëîõüñšçýÁËÎÕÜÑŠÇ")
_BACK = {new: old for old, new in _LETTERS.items()}


class Pseudo(NullTranslations):
    """Its translations."""

    def gettext(self, message: str) -> str:
        return in_pseudo(message)

    def ngettext(self, one: str, many: str, n: int) -> str:
        return in_pseudo(one if n == 1 else many)


def in_pseudo(text: str) -> str:
    """The text in that language.

    >>> in_pseudo("Day %(day)s: <b>rest</b>")
    '⟦Dáý %(day)s: <b>rëšt</b>······⟧'
    """
    parts, at = [], 0
    for kept in _KEPT.finditer(text):
        parts += [text[at : kept.start()].translate(_LETTERS), kept[0]]
        at = kept.end()
    parts.append(text[at:].translate(_LETTERS))
    return f"⟦{''.join(parts)}{'·' * (sum(letter.isalpha() for letter in text) // 2)}⟧"


def read(text: str) -> str:
    """The English of a text that may stand in it.

    >>> read(in_pseudo("Day 3"))
    'Day 3'
    """
    return re.sub(r"·*⟧|⟦", "", text).translate(_BACK)


def english_in(text: str) -> list[str]:
    """The words of a text that no translation has gone through: they still have their plain vowels.

    >>> english_in(in_pseudo("Rest on %(day)s") % {"day": "Monday"})
    ['Monday']
    """
    return re.findall(r"[^\W\d_]*[aeiouAEIOU][^\W\d_]*", _KEPT.sub(" ", text))
