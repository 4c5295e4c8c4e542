"""From what a person typed to a row of units: normalised, split, spelled right, phrases joined."""

from __future__ import annotations

import html
import re
import unicodedata
from collections.abc import Iterator, Sequence
from dataclasses import dataclass
from functools import lru_cache

from plans import words_en
from plans.slips import slips

LONGEST = 4096
"""Characters that are read; what a chat message can hold at most."""

_LINE = re.compile(r"([^\s.,;:!?(-])[ \t]*(?:\r?\n\s*)+(?=\S)")
_TAG = re.compile(r"</?[a-z][^<>]{0,200}>")
_WITHOUT = re.compile(r"\bw/o\b")
_HALF = re.compile(
    r"\b(\d|one|two|three|four|five|six|seven|eight|nine)(?: and a half| 1/2| and half(?= ?(?:[.,!]|$)))(?! hours?| an)"
)
_STEPS = re.compile(r"\b(\d+) ?(?:→|➡|-+>) ?\d+ ?(?=→|➡|-+>)")
_MINUTES_OF = re.compile(
    r"\b(\d+) (?:min|mins|minutes) (?:of|from|out of) (?:the |my |those )?(?:planned |full |whole )?"
    r"(\d+)\b(?! sets| reps)"
)
_SHORT = re.compile(r"\b(l8r|l8er|gr8|2day|2moro|2nite|2night|b4|m8|4got|4get|2mrw|w8|l8|sum1|ne1|any1)\b")
_SHORT_FOR = {"l8r": "later", "l8er": "later", "gr8": "great", "2day": "today", "2moro": "tomorrow"} | {
    "2nite": "tonight",
    "2night": "tonight",
    "b4": "before",
    "m8": "mate",
    "4got": "forgot",
    "4get": "forget",
    "2mrw": "tomorrow",
    "w8": "wait",
    "l8": "late",
    "sum1": "someone",
    "ne1": "anyone",
    "any1": "anyone",
}
_BEFORE = re.compile(
    r"\bbefore (?:(?:it|the pain|my pain|pain) was )?(\d+)[,;]? (?:and |but )?"
    r"(?:now|after)(?: it)?(?: is| was)?(?: only| just)? (\d+)"
    r"|\b(\d+) before[,;]? (?:and |but )?(?:now|after)(?: only| just)? (\d+)"
    r"|\b(\d+) before[,;]? (?:and |but )?(\d+) after\b"
)
_TILL = re.compile(r"\b(\d+) ?(?:till|til|until) ?(?=\d+\b)")
_POINT = re.compile(r"\b(zero|\d|one|two|three|four|five|six|seven|eight|nine) point five\b|\bhalf a point\b")
_ISH = re.compile(r"(?<=\d) ?ish\b")
_DIGITS = {"zero": 0, "one": 1, "two": 2, "three": 3, "four": 4, "five": 5, "six": 6, "seven": 7, "eight": 8, "nine": 9}
_MINUS = re.compile(
    r"(?<!it )(?<!all )(?<!thing )(?<!lot )(?<!session )\b(?:minus|negative) "
    r"(?=\d|(?:one|two|three|four|five|six|seven|eight|nine|ten)\b)"
)
_BELOW = re.compile(
    r"\b(?:below|under|beneath|less than|lower than|sub) (?:zero|nought|0)\b(?!\.| degree| outside| out)"
)
_FORM = re.compile(r"\bform (?=\d)|\btoo (?=\d)")
_LETTER = re.compile(r"^([yn])(?=[.! ]*$| ?[,.-])")
_N = re.compile(r"(?<=[a-z] )'?n'?(?= [a-z])")
_SIGH = re.compile(r"^(?:u+g+h+|a+r+g+h+|oo+f+|a+ch|u+m+|e+r+m+|hm+|pf+),? (?=[a-z])")
_TOO = re.compile(
    r"\b(?:2|to) (?=(?:hard|heavy|difficult|much|tough|tired|busy|advanced|intense|late|sore|stiff|painful)\b)"
)
_FRACTIONS = str.maketrans({"½": " 1/2", "¼": " 1/4", "¾": " 3/4", "⅓": " 1/3", "⅔": " 2/3"})
_FIRST = re.compile(r"\b1st\b")
_HYPHEN = re.compile(r"(?<=[^\W\d_])-(?=[^\W\d_])")
_PIECE = re.compile(
    r"(?P<clock>\d{1,2}[:h]\d{2}(?!\d))"
    r"|(?P<number>\d+(?:[.,]\d+)?)"
    r"|(?P<word>[^\W\d_]+(?:'[^\W\d_]+)*)"
    r"|(?P<arrow>-+>|=+>|[→➡])"
    r"|(?P<mark>[^\s\w]|_)"
)
_SAME = str.maketrans(
    {"’": "'", "‘": "'", "`": "'", "´": "'", "“": '"', "”": '"', "–": "-", "—": "-", "‑": "-", "−": "-"}
    | {"×": "x", "…": ".", "\u200b": "", "\u200d": "", "\ufe0f": "", "\u20e3": "", "¿": "", "¡": ""}
)
_BREAKS = {".": "end", "!": "end", "?": "question", ";": "end", ",": "comma", "(": "comma", ")": "comma"} | {
    ":": "colon",
    "-": "dash",
    "/": "slash",
    "&": "and",
    "+": "plus",
    "%": "percent",
    "~": "about",
    "°": "degree",
}


@dataclass(frozen=True, slots=True)
class Unit:
    """One word, joined phrase, number or mark. `concept` is what it is about; "word" when the lexicon knows nothing."""

    concept: str
    text: str
    start: int
    end: int
    value: float | None = None
    theirs: bool = False
    """Said of somebody else, as far as the words go."""


def words(text: str) -> frozenset[str]:
    """The words of a text as a set, so that a table of words reads as words."""
    return frozenset(text.split())


def ends_lines(text: str) -> str:
    """The text with each line as a sentence of its own, unless a mark says otherwise.

    >>> ends_lines("No pain\\nhalf of it")
    'No pain. half of it'
    """
    return _LINE.sub(r"\1. ", text.strip())


def normalise(text: str) -> str:
    """The text in one form: no markup, small letters without accents, straight quotes, single spaces.

    >>> normalise("  <b>Didn’t</b>  HURT ")
    "didn't hurt"
    """
    text = html.unescape(text[:LONGEST]).translate(_FRACTIONS)
    letters = unicodedata.normalize("NFKD", unicodedata.normalize("NFKC", text).casefold())
    plain = " ".join("".join(letter for letter in letters if not unicodedata.combining(letter)).split())
    plain = _TOO.sub("too ", _SIGH.sub("", plain))
    plain = _ISH.sub("", _TAG.sub(" ", plain.translate(_SAME)))
    plain = _SHORT.sub(lambda found: _SHORT_FOR[found[0]], plain)
    plain = _POINT.sub(lambda found: f"{_DIGITS.get(found[1] or 'zero', found[1] or 0)}.5", plain)
    plain = _FORM.sub(lambda found: "from " if found[0] == "form " else "to ", plain)
    plain = _LETTER.sub(lambda found: "yes" if found[1] == "y" else "no", _N.sub("and", _BELOW.sub("-1", plain)))
    plain = plain.replace(" @ ", " at ").replace(" comma ", ", ").replace("per cent", "percent")
    plain = _MINUTES_OF.sub(r"\1/\2", _STEPS.sub(r"\1 ", plain.replace(" out off ", " out of ")))
    plain = _TILL.sub(r"\1 to ", _BEFORE.sub(_changed, plain))
    plain = _MINUS.sub("-", _HALF.sub(_with_half, plain))
    return " ".join(_HYPHEN.sub(" ", _FIRST.sub("first", _WITHOUT.sub("without", plain))).split())


def _changed(found: re.Match[str]) -> str:
    """ "4 before, 8 after" as "was 4 now 8"."""
    first, last = (number for number in found.groups() if number is not None)
    return f"was {first} now {last}"


def _with_half(found: re.Match[str]) -> str:
    """ "Two and a half" as 2.5, so that it can be rounded up."""
    return f"{_DIGITS.get(found[1], found[1])}.5"


def units(text: str) -> list[Unit]:
    """The units of a normalised text, in order."""
    return list(_joined(list(_pieces(text))))


def _pieces(text: str) -> Iterator[Unit]:
    for found in _PIECE.finditer(text):
        kind, raw = found.lastgroup, found.group()
        start, end = found.span()
        if kind == "number":
            yield Unit("number", raw, start, end, _value(raw))
        elif kind == "word":
            for word in _words(raw):
                yield Unit("word", word, start, end)
        elif kind == "mark" and raw not in "\"'*_":
            yield Unit(words_en.SIGNS.get(raw) or _BREAKS.get(raw, "mark"), raw, start, end)
        elif kind in ("clock", "arrow"):
            yield Unit(kind, raw, start, end)


def _value(raw: str) -> float:
    return float(raw.replace(",", ".")) if len(raw) <= 12 else float("inf")


def _words(raw: str) -> list[str]:
    """A word as the lexicon spells it: contractions opened, plain misspellings put right."""
    if raw in words_en.CONTRACTIONS:
        return words_en.CONTRACTIONS[raw].split()
    if raw.endswith("n't") and len(raw) > 3:
        return [raw[:-3], "not"]
    bare = raw.split("'")[0] or raw.replace("'", "")
    return words_en.CONTRACTIONS.get(bare, spelled(bare)).split()


@dataclass(frozen=True, slots=True)
class Lexicon:
    """Phrases with their concepts, how long those are by their first word, all words, and what slips may mean."""

    phrases: dict[tuple[str, ...], str]
    lengths: dict[str, tuple[int, ...]]
    known: frozenset[str]
    targets: dict[str, list[str]]


@lru_cache(maxsize=1)
def lexicon() -> Lexicon:
    """The tables of `words_en`, opened once on first use."""
    phrases: dict[tuple[str, ...], str] = {}
    for concept, lines in words_en.PHRASES.items():
        phrases.update(dict.fromkeys(opened(lines), concept))
    return lexicon_of(phrases)


def lexicon_of(phrases: dict[tuple[str, ...], str]) -> Lexicon:
    """A lexicon of some phrases, each with its concept."""
    lengths: dict[str, set[int]] = {}
    for phrase in phrases:
        lengths.setdefault(phrase[0], set()).add(len(phrase))
    known = frozenset(word for phrase in phrases for word in phrase) | frozenset(words_en.LOOKALIKES.split())
    targets: dict[str, list[str]] = {}
    for word in words_en.TYPED_WRONG.split():
        targets.setdefault(word[0], []).append(word)
    ordered = {first: tuple(sorted(found, reverse=True)) for first, found in lengths.items()}
    return Lexicon(phrases, ordered, known, targets)


def is_english(word: str) -> bool:
    """Whether a word stands in the English tables, as it is or misspelt."""
    return word in lexicon().known or word in words_en.MISSPELT or word in words_en.CONTRACTIONS


def opened(lines: str) -> Iterator[tuple[str, ...]]:
    """Every phrase of a comma-separated list of patterns."""
    for line in lines.split(","):
        yield from filter(None, _opened(line.split()))


def _opened(pattern: list[str]) -> Iterator[tuple[str, ...]]:
    """Every phrase that a pattern stands for: `a|b_c` is "a" or "b c", a word with `?` may be missing."""
    if not pattern:
        yield ()
        return
    head = pattern[0].removesuffix("?").split("|")
    for rest in _opened(pattern[1:]):
        if pattern[0].endswith("?"):
            yield rest
        for word in head:
            yield (*word.split("_"), *rest)


@lru_cache(maxsize=4096)
def spelled(word: str) -> str:
    """The word of the lexicon that a misspelt longer word most likely means; otherwise the word itself."""
    tables = lexicon()
    if word in words_en.MISSPELT:
        return words_en.MISSPELT[word]
    shrunk = re.sub(r"(.)\1{2,}", r"\1", word)
    if word in tables.known or len(word) > 24:
        return word
    single = re.sub(r"(.)\1", r"\1", word) if len(word) > 4 else word
    whole = word + "g" if word.endswith("in") and len(word) > 4 else word
    for simpler in (shrunk, single, whole):
        if simpler in tables.known:
            return simpler
    slip = slips().get(word)
    if slip is not None:
        return slip
    return nearest(word, tables.targets.get(word[0], []))


def nearest(word: str, candidates: Sequence[str]) -> str:
    """The candidate that is a letter off, two from nine letters on; the word itself when none is, or it is short."""
    from rapidfuzz.distance import OSA

    allowed = 0 if len(word) < 5 else 1 if len(word) < 9 else 2
    best = word
    for candidate in candidates:
        distance = OSA.distance(word, candidate, score_cutoff=allowed)
        if 0 < distance <= allowed:
            best, allowed = candidate, distance - 1
    return best


def _joined(pieces: list[Unit]) -> Iterator[Unit]:
    """The pieces with every phrase of the lexicon joined, the longest first."""
    tables = lexicon()
    at = 0
    while at < len(pieces):
        size, concept = _longest(pieces, at, tables)
        first, last = pieces[at], pieces[at + size - 1]
        text = " ".join(piece.text for piece in pieces[at : at + size])
        yield Unit(concept, text, first.start, last.end, first.value if size == 1 else None)
        at += size


def _longest(pieces: list[Unit], at: int, lexicon: Lexicon) -> tuple[int, str]:
    if pieces[at].concept != "word":
        return 1, pieces[at].concept
    for size in lexicon.lengths.get(pieces[at].text, ()):
        if at + size > len(pieces):
            continue
        concept = lexicon.phrases.get(tuple(piece.text for piece in pieces[at : at + size]))
        if concept is not None:
            return size, concept
    return 1, "word"
