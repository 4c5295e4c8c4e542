"""How invented clients answer in the practice chat: a tidy, a sore and a chaotic one.

They see what a person sees, the messages of their chat and the buttons under them, and do what a person can do: tap
and type. Everything here is a function of plain values; the same chat gives the same answer. What they say is an
invention, chosen so that a week shows much of what can follow.
"""

from __future__ import annotations

import html
from collections.abc import Iterator, Mapping, Sequence
from dataclasses import dataclass
from enum import StrEnum
from typing import Any

from bot.words import LOCALES, words
from plans.measures import MEASURES

CITY = "Lisbon"
MOST = 16
"""Acts in a row; joining takes the most of them."""


class Manner(StrEnum):
    """How a client answers."""

    TIDY = "tidy"
    SORE = "sore"
    CHAOTIC = "chaotic"


@dataclass(frozen=True, slots=True)
class Tap:
    """A button that is tapped."""

    message: int
    data: str
    label: str


@dataclass(frozen=True, slots=True)
class Say:
    """Words that are typed."""

    text: str


Act = Tap | Say


@dataclass(frozen=True, slots=True)
class Scene:
    """A chat's messages as `GET /practice/messages` gives them, its journal, and what was just done in it."""

    messages: Sequence[Mapping[str, Any]]
    journal: Mapping[str, Any]
    done: tuple[Act, ...] = ()

    @property
    def dates(self) -> int:
        """How many dates the course has so far."""
        return len(self.journal["rows"])


@dataclass(frozen=True, slots=True)
class Asked:
    """What is open in a chat: the name of the question, and the buttons that answer it by their value."""

    name: str
    message: int
    buttons: Mapping[str, tuple[str, str]]
    """Value to data and label."""

    def tap(self, *values: str) -> Tap:
        """The first of these values that there is, else the first button."""
        value = next((value for value in values if value in self.buttons), next(iter(self.buttons)))
        return Tap(self.message, *self.buttons[value])


# --- what is open ---------------------------------------------------------------------------------------------------

_OF_A_DAY = ("pain", "half", "why", "kind", "place", "area", "flag", "tight")
_ELSEWHERE = ("join", "time", "zone", "begin", "well", "today", "found")


def asked(messages: Sequence[Mapping[str, Any]]) -> Asked | None:
    """The newest question with buttons; None when the newest day is answered.

    >>> asked([{"id": 5, "from": "bot", "buttons": [[{"label": "Settled", "data": "m:2:settled"}]]}]).name
    'morning'
    """
    for message in reversed(messages):
        data = [(button["data"] or "", button["label"]) for row in message["buttons"] for button in row]
        named = [found for each in data if (found := _question(each[0])) is not None]
        if message["from"] != "bot" or not named:
            continue
        name = named[0][0]
        if name == "answered":
            return None
        buttons = {value: each for each in data for found, value in [_question(each[0]) or ("", "")] if found == name}
        return Asked(name, message["id"], buttons)
    return None


def _question(data: str) -> tuple[str, str] | None:
    """The question that a button's data answers, and with what; None for a button of no question."""
    verb, *rest = data.split(":")
    if verb in ("c", "n") and len(rest) == 2 and rest[1] in ("all", "some", "part", "none"):
        return "session", rest[1]
    if verb in ("c", "n") and len(rest) == 3 and rest[1] in _OF_A_DAY:
        return rest[1], rest[2]
    if verb in ("c", "n"):
        return "answered", rest[-1]
    if verb == "m":
        return "morning", rest[-1]
    if verb == "screen" and len(rest) == 3:
        return f"screen-{rest[1]}", rest[2]
    return (verb, rest[-1]) if verb in _ELSEWHERE and rest else None


def city_is_asked(messages: Sequence[Mapping[str, Any]]) -> bool:
    questions = {html.unescape(str(words(language).say("joining.zone"))) for language in LOCALES}
    return bool(messages) and messages[-1]["from"] == "bot" and messages[-1]["text"] in questions


def _test_is_open(journal: Mapping[str, Any]) -> str | None:
    """The measure that the newest date asks for and has not got, now or when the same day came before."""
    newest = journal["rows"][-1] if journal["rows"] else None
    if newest is None or any(row["tests"] for row in journal["rows"] if row.get("day") == newest.get("day")):
        return None
    return str(newest["test"]) if newest["test"] else None


# --- what follows from it -------------------------------------------------------------------------------------------

PLAIN = {
    "join": "agree",
    "screen-age": "adult",
    "screen-inside": "none",
    "screen-outside": "none",
    "screen-limits": "none",
    "screen-active": "yes",
    "screen-usual": "0",
    "time": "0700",
    "begin": "today",
    "session": "all",
    "pain": "1",
    "half": "yes",
    "why": "time",
    "kind": "dull-both",
    "place": "here-both",
    "area": "lower-back",
    "flag": "no",
    "morning": "settled",
    "tight": "3",
}
"""What anybody says who has nothing to tell."""


@dataclass(frozen=True, slots=True)
class _Day:
    """One day of the sore client."""

    session: str
    pain: str = "0"
    morning: str = "settled"
    """How the pain of the day before is this morning."""
    why: str = "too-hard"
    half: str = "yes"
    kind: str = "dull-both"


_SORE = (
    _Day("some", "4"),
    _Day("some", "5", "settled"),
    _Day("part", "4", "same", half="no"),
    _Day("none", morning="settled", why="time"),
    _Day("some", "6"),
    _Day("all"),
    _Day("some", "3", "same"),
    _Day("some", "5", "worse"),
)
"""Hard sessions, in turns: they bring the day again, lighter days, a day off with an alert, and some go well."""

_TYPED = (
    "dun all of it, no pain",
    "did abt half, no time 2day. pain 1",
    "ok done but hamys sore, like a 3",
    "not today sry, work",
    "all done!! 0",
    "done. pain 2, can i swim tomorow?",
    "only the first bit.. too hard, 2",
)
"""What the chaotic client types instead of tapping."""


_TODAY = Say("/today")


def next_act(manner: Manner, scene: Scene) -> Act | None:
    """What this client does next; None when nothing is open, or when nothing new comes of trying."""
    if len(scene.done) >= MOST or (scene.done and scene.done[-3:] == scene.done[-1:] * 3):
        return None
    if manner is Manner.CHAOTIC and (noise := _noise(scene)) is not None:
        return noise
    if city_is_asked(scene.messages):
        return Say(CITY)
    question = asked(scene.messages)
    measure = _test_is_open(scene.journal)
    if measure is not None and (question is None or question.name == "session"):
        number = _test(measure, manner, scene)
        vague = Say(f"about {number} cm i think")
        return vague if manner is Manner.CHAOTIC and vague not in scene.done else Say(f"{number}, {number}, {number}")
    act = next(_answers(manner, question, scene), None) if question is not None else None
    if act in scene.done and _TODAY not in scene.done:
        return _TODAY  # what was answered is not today's: the morning's message has not arrived
    return act


def _answers(manner: Manner, question: Asked, scene: Scene) -> Iterator[Act]:
    if question.name == "tight" and manner is not Manner.TIDY:
        return
    if manner is Manner.SORE and scene.dates:
        yield question.tap(str(getattr(_sore_day(scene), question.name, "")), PLAIN.get(question.name, ""))
    if manner is Manner.CHAOTIC and question.name == "session":
        typed = Say(_TYPED[scene.dates % len(_TYPED)])
        if typed not in scene.done:
            yield typed
    if manner is Manner.TIDY and question.name == "session" and scene.dates % 5 == 3:
        yield question.tap("some")
    yield question.tap(PLAIN.get(question.name, ""))


def _sore_day(scene: Scene) -> _Day:
    return _SORE[(scene.dates - 1) % len(_SORE)]


def _noise(scene: Scene) -> Act | None:
    """What a chaotic client does first: taps something old, or writes what nobody asked for."""
    if scene.done or not scene.dates or scene.journal.get("state") in ("finished", "stopped"):
        return None
    old = [message for message in scene.messages[:-1] if message["from"] == "bot" and message["buttons"]]
    if scene.dates % 2 and len(old) > 1:
        button = old[0]["buttons"][0][0]
        if button["data"]:
            return Tap(old[0]["id"], button["data"], button["label"])
    return Say(("hi", "/today", "👍", "which day is it?")[scene.dates // 2 % 4])


_FIRST_TESTS = {"fingertip-to-floor": 14, "sit-and-reach": 18, "knee-to-wall": 7, "back-scratch": -6}
"""What somebody stiff may have, in the unit of the test; an invention like all that they say."""


def _test(measure: str, manner: Manner, scene: Scene) -> int:
    """A number that can be, better by twice the error of the test for a tidy client who took it before."""
    found = MEASURES[measure]
    value = _FIRST_TESTS.get(measure, round((found.low + found.high) / 2))
    taken = sum(len(row["tests"]) for row in scene.journal["rows"])
    if taken and manner is Manner.TIDY:
        better = round(2 * found.mdc * (-1 if found.lower_is_better else 1))
        value = round(min(found.high, max(found.low, value + better)))
    return value
