"""Records that try to get a token, a name or somebody's words into the log, in every place that a record has."""

from __future__ import annotations

import json
import logging
import random
import re
import sys
from collections.abc import Callable, Iterator
from functools import cache
from pathlib import Path
from typing import Any

from bot.logs import ACTIONS, FACTS, MARK, NAMES, OneLine
from plans.words_en import AREAS

REPLIES = Path(__file__).parent / "references" / "replies.tsv"
LOGGERS = ("bot.sending", "db.trouble", "telegram.ext", "httpx", "aiohttp.client", "asyncio", "sqlalchemy.engine", "py")
NAMED = ("Oriel", "Wenzel Ambrose", "Ines-Maria", "Þóra", "Зоя", "李小龙")
SIGNS = ("chest pain", "numbness", "tingling", "dizzy", "swollen calf", "pregnant", "bladder", "fainted", "sciatica")
ALPHABET = "ABCDEFGHIJKLMNOPQRSTUVWXYZabcdefghijklmnopqrstuvwxyz0123456789_-"
KEYS = frozenset({"at", "level", "process", "action", "error", "where", *FACTS})


@cache
def replies() -> tuple[str, ...]:
    """What people write of their bodies."""
    return tuple(line.split("\t")[0] for line in REPLIES.read_text(encoding="utf-8").splitlines() if line)


def token(rng: random.Random) -> str:
    """What looks like a bot's token."""
    return f"{rng.randrange(10**8, 10**10)}:{''.join(rng.choices(ALPHABET, k=35))}"


def planted(rng: random.Random) -> str:
    """Something that may not be in a log."""
    area = rng.choice(rng.choice(list(AREAS.values())).split())
    word = rng.choice((token(rng), rng.choice(replies()), rng.choice(NAMED), rng.choice(SIGNS), f"my {area}"))
    shapes = (
        "{}",
        "https://api.telegram.org/bot{}/sendMessage",
        "https://example.org/?q={}",
        '{{"text": "{}"}}',
        "a\n{}\n",
        "\u2028{}\x00\x1b[31m",
        "%s {} %d",
        "[SQL: INSERT] [parameters: ('{}',)]",
    )
    return rng.choice(shapes).format(word)


class Said(Exception):
    """An error with somebody's words."""


def _error(rng: random.Random, text: str) -> Any:
    try:
        try:
            raise Said(text)
        except Said as first:
            kind = rng.choice((ValueError, KeyError, OSError, Said))
            raise kind(text) from first
    except Exception:
        return sys.exc_info()


class Odd:
    """Something whose text is somebody's words."""

    def __init__(self, text: str) -> None:
        self._text = text

    def __str__(self) -> str:
        return self._text

    __repr__ = __str__


def record(rng: random.Random) -> tuple[logging.LogRecord, str]:
    """A record, and what was planted in it."""
    text = planted(rng)
    places: tuple[Callable[[], Any], ...] = (lambda: text, lambda: Odd(text), lambda: [text], lambda: text.encode())
    anything = rng.choice(places)
    made = logging.LogRecord(
        rng.choice((*LOGGERS, text)),
        rng.choice((logging.INFO, logging.WARNING, logging.ERROR, 35)),
        text,
        rng.randrange(1000),
        rng.choice((text, "send-failed", anything())),
        rng.choice(((), (text,), ({"a": text},))),
        _error(rng, text) if rng.random() < 0.3 else None,
        func=text,
        sinfo=text,
    )
    made.threadName = made.processName = text
    for name in rng.sample(sorted(FACTS), k=rng.randrange(4)):
        setattr(made, name, anything())
    setattr(made, rng.choice(("text", "label", "url", "body")), anything())
    return made, text


def wrong(line: str, text: str) -> str | None:
    """What is wrong with a line, given what was planted in its record; None when nothing is."""
    if len(line.splitlines()) != 1:
        return "more than one line"
    found = json.loads(line)
    if found.keys() - KEYS:
        return f"other facts: {sorted(found.keys() - KEYS)}"
    for name in ("kind", "reason", "state"):
        if found.get(name) not in (None, MARK, *NAMES):
            return f"{name} is {found[name]}"
    for piece in pieces(text):
        if piece in line:
            return f"{piece!r} got through"
    return None


HARMLESS = frozenset(("send", "parameters", "insert", "example"))
"""Long words of a planted text that are nobody's."""


def pieces(text: str) -> Iterator[str]:
    """The parts of a planted text by which it would be known again."""
    yield from re.findall(r"\d{8,}:[\w-]{10,}", text)
    ours = {*re.findall(r"[a-z]+", json.dumps([*ACTIONS, *NAMES])), *HARMLESS}
    for word in re.findall(r"[^\W\d_]{5,}", text):
        if not any(word.lower() in one for one in ours | _CODE):
            yield word


_CODE = frozenset({"log_fuzz", "_error", "aiohttp", "telegram", "sqlalchemy", "asyncio", "httpx", "process", "warning"})
"""Words that a line has from the code itself."""


def fuzz(seed: int, count: int) -> list[str]:
    """So many lines; what got through, with the seed."""
    rng, formatter, bad = random.Random(seed), OneLine(), []
    for number in range(count):
        made, text = record(rng)
        line = formatter.format(made)
        if (trouble := wrong(line, text)) is not None:
            bad.append(f"seed {seed}, line {number}: {trouble}: {line}")
    return bad
