"""Numbers as they are written: plain, out of ten, a share, a range, a change, or counting something else."""

from __future__ import annotations

from collections.abc import Iterator
from dataclasses import dataclass
from enum import Enum
from typing import Protocol

from plans.counted import is_a_score, names_something, verdicts
from plans.wording import Unit, words

WORDS = {"one": 1, "two": 2, "three": 3, "four": 4, "five": 5, "six": 6, "seven": 7, "eight": 8, "nine": 9, "ten": 10}
WORDS |= {"nought": 0, "naught": 0}
WORDS |= {"eleven": 11, "twelve": 12, "thirteen": 13, "fourteen": 14, "fifteen": 15, "sixteen": 16, "seventeen": 17}
WORDS |= {"eighteen": 18, "nineteen": 19, "twenty": 20, "thirty": 30, "forty": 40, "fifty": 50, "sixty": 60}
WORDS |= {"seventy": 70, "eighty": 80, "ninety": 90, "hundred": 100, "thousand": 1000, "million": 1000000}
_MINUTES = words("min mins minute minutes")
PAINFUL = words("pain sore dull sharp sudden severe scale throb no-pain worse hurts-more same bit-better")
"""Concepts that make a number beside them a pain."""
BODY = words("chest neck jaw arm face calf thigh leg heart limb trunk saddle bladder")
"""Concepts that are a part of the body."""


class Form(Enum):
    """How a number was written."""

    PLAIN = "plain"
    SCALE = "out of ten"
    FRACTION = "a part of something else"
    OTHER = "with a unit, a clock time, a count"


@dataclass(frozen=True, slots=True)
class Figure:
    """A number with where it stands: units `first` to `last`. A range keeps its higher end, a change its last."""

    value: float
    first: int
    last: int
    form: Form
    worst: float


class Row(Protocol):
    """A row of units in which numbers are looked for."""

    @property
    def units(self) -> tuple[Unit, ...]: ...

    @property
    def text(self) -> str: ...

    def concept(self, index: int) -> str: ...


def written(reply: Row) -> Iterator[Figure]:
    """Every number of a reply with the form it has, ranges and changes as one."""
    index = 0
    while index < len(reply.units):
        value = _value(reply, index)
        if value is None:
            index += 1
            continue
        figure = _figure(reply, index, value)
        yield figure
        index = figure.last + 1


def _value(reply: Row, index: int) -> float | None:
    unit = reply.units[index] if 0 <= index < len(reply.units) else None
    if unit is None:
        return None
    if unit.concept == "number":
        return unit.value
    if unit.concept == "number-word":
        return WORDS[unit.text]
    if unit.concept == "one" and _one_counts(reply, index):
        return 1
    return None


def _one_counts(reply: Row, index: int) -> bool:
    """ "One" is a number only where a number must stand: alone, after "pain", after a comma at the end."""
    before, after = reply.concept(index - 1), reply.concept(index + 1)
    if after in ("scale", "slash") and _value(reply, index + 2) is not None:
        return True
    if after == "counted" or (_text(reply, index + 1) in ("of the", "of") and _value(reply, index + 2) is not None):
        return True
    if _after_pain(reply, index) and after in (
        "",
        "end",
        "comma",
        "but",
        "and",
        "now",
        "slash",
        "scale",
        "done",
        "finish",
    ):
        return True
    if before == "scale" and after in ("word", "pass", *BODY):
        return False
    ends = after in ("", "end", "comma", "slash", "scale")
    if _a_rating(reply, index - 1) and after in ("", "end", "comma", "now"):
        return True
    return before in ("pain", "colon", "scale") or (before in ("", "comma", "dash", "about", "done", "to") and ends)


def _after_pain(reply: Row, index: int) -> bool:
    """ "Pain is one", "pain today about one": only small words between."""
    for here in range(index - 1, max(-1, index - 5), -1):
        if reply.concept(here) == "pain":
            return True
        if reply.concept(here) not in ("pass", "was", "about", "now", "colon", "dash"):
            return False
    return False


def _a_rating(reply: Row, index: int) -> bool:
    """Whether "a", "like a" or "a solid" stands there, so that "one" after it is a number."""
    here = index - (reply.concept(index) in ("word", "fine") and _text(reply, index) in _STRENGTHS)
    return _text(reply, here).split(" ")[-1:] == ["a"] and reply.concept(here - 1) != "neg"


_STRENGTHS = words("solid good strong weak steady mere clear gentle decent firm")


def _figure(reply: Row, index: int, value: float) -> Figure:
    first = index
    if _minus(reply, index):
        value, first = -value, index - 1
    link, other, second = reply.concept(index + 1), _value(reply, index + 2), index + 2
    if other is None and link == "to" and reply.units[second : second + 1] and reply.units[second].text in ("a", "an"):
        other, second = _value(reply, index + 3), index + 3
    if other == 10 and link == "from" and value <= other:
        return _of(reply, first, index + 2, value, other)
    if other is not None and link == "from" and value < other and reply.concept(index + 3) in ("unit", "counted"):
        return Figure(value, first, index + 2, Form.FRACTION, value)
    last = _whole(reply, index)
    if last is not None:
        return _of(reply, first, last, value, _value(reply, last) or 0)
    share = _share_of_things(reply, index)
    if share is not None:
        return Figure(value, first, share, Form.FRACTION, value)
    if other is not None and link == "to" and "scale" in reply.units[index - 1].text:
        return Figure(value, first, index + 2, Form.OTHER, value)
    if other is not None and _text(reply, index + 1) in ("until", "till") and _after_pain(reply, index):
        return _span(reply, first, second, value, other, "dash")
    if other is not None and link in ("dash", "to", "or", "arrow", "and") and _is_range(reply, index, link):
        return _span(reply, first, second, value, other, link)
    return Figure(value, first, index, Form.OTHER if _unrelated(reply, first, index) else Form.PLAIN, value)


def _whole(reply: Row, index: int) -> int | None:
    """Where the whole stands of which the number is a share: "3/5", "3 of 5", "three out of the five"."""
    last = index + 2 + (_text(reply, index + 2) in ("the", "all", "your", "my"))
    if _text(reply, index + 1) in ("point", "points", "pts") and reply.concept(index + 2) in ("slash", "scale"):
        return index + 3 if _value(reply, index + 3) == 10 else None
    if _text(reply, index + 1) in _OF_TEN:
        return (
            index + 2
            if _value(reply, index + 2) == 10 and reply.concept(index + 3) not in ("unit", "counted")
            else None
        )
    if reply.concept(index + 1) not in ("slash", "scale") and _text(reply, index + 1) not in ("of", "of the"):
        return None
    return last if _value(reply, last) is not None else None


_OF_TEN = words("on upon over by sur auf von")
"""Words for "out of" before a ten: "3 on 10"."""


def _text(reply: Row, index: int) -> str:
    return reply.units[index].text if 0 <= index < len(reply.units) else ""


def _share_of_things(reply: Row, index: int) -> int | None:
    """Where the whole stands of "1 round out of 2", "10 minutes of the 20"; None for "3 sets of 10"."""
    thing, link = _text(reply, index + 1), _text(reply, index + 2)
    if reply.concept(index + 1) not in ("counted", "unit") or link not in ("out of", "of the", "of", "from"):
        return None
    told = link != "of" or thing in _MINUTES or thing.startswith(_WHOLES)
    last = (index + 3 if link == "from" and _value(reply, index + 3) else _whole(reply, index + 1)) if told else None
    timed = last is not None and _text(reply, last + 1).split(" ")[0] in _SPANS | {"seconds", "secs", "reps"}
    return None if timed and thing not in _MINUTES else last


_WHOLES = ("round", "stretches", "exercises", "movements", "moves", "poses")


def _minus(reply: Row, index: int) -> bool:
    """A dash that touches the number but not what stands before it."""
    if reply.concept(index - 1) != "dash":
        return False
    dash = reply.units[index - 1]
    return dash.end == reply.units[index].start and (dash.start == 0 or reply.text[dash.start - 1] in " :=")


def _is_range(reply: Row, index: int, link: str) -> bool:
    return link != "and" or reply.concept(index - 1) == "between"


def _of(reply: Row, first: int, last: int, value: float, whole: float) -> Figure:
    """ "3/10" or "3 out of 10" is on the scale; with a thing counted after it, or of another number, it is not."""
    counted = reply.concept(last + 1) in ("unit", "counted")
    if not counted and _unrelated(reply, first, last) and reply.units[first - 1].text != "did":
        form = Form.OTHER
    elif whole == 10 and not counted and not _is_of_the_work(reply, first, last):
        form = Form.SCALE
    else:
        form = Form.FRACTION
    return Figure(value, first, last, form, value)


def _is_of_the_work(reply: Row, first: int, last: int) -> bool:
    """ "I make six from ten": a share of the session, with no pain beside it."""
    did = _text(reply, first - 1).split(" ")[-1] in ("did", "made", "make", "do", "managed")
    return did and not any(reply.concept(i) in PAINFUL for i in range(last + 1, last + 4))


def _span(reply: Row, first: int, last: int, value: float, other: float, link: str) -> Figure:
    ahead = {reply.concept(first - 1), reply.concept(first - 2)}
    changed = link == "arrow" or "from" in ahead or (link == "to" and other < value)
    figure_last, form = last, Form.OTHER if _unrelated(reply, first, last) else Form.PLAIN
    whole = _value(reply, last + 2)
    if whole is not None and (reply.concept(last + 1) in ("slash", "scale") or _text(reply, last + 1) == "of"):
        figure_last, form = last + 2, Form.SCALE if whole == 10 else Form.FRACTION
    return Figure(other if changed else max(value, other), first, figure_last, form, max(value, other))


def _counts_things(reply: Row, first: int, last: int) -> bool:
    """Whether the number counts what stands after it: "2 men", "6 baby hats", "two toes", "3 hours later"."""
    after = reply.units[last + 1 : last + 3]
    if after and after[0].text.split(" ")[0] in _SPANS:
        return True
    if (
        after
        and after[0].text in ("of my", "of the", "of")
        and any(_of_the_body(reply, i) for i in (last + 2, last + 3))
    ):
        return True
    if not after or _is_led_by_pain(reply, first):
        return False
    if (after[0].concept == "word" or after[0].concept in BODY) and _is_plural(after[0]):
        return True
    if len(after) < 2:
        return False
    if after[0].text in _SIZES and (after[1].concept == "word" or after[1].concept in BODY):
        return _is_plural(after[1])
    told = after[0].concept in ("word", "time", "other-why", "harmless", "someone", "fine")
    single = after[0].concept == "fine" and _value(reply, first) == 1
    return told and (after[1].concept == "word" or after[1].concept in BODY) and (single or _is_plural(after[1]))


_SIZES = words("big small little tiny middle smallest biggest outer inner old young tall short fat new")


def _is_led_by_pain(reply: Row, first: int) -> bool:
    """Whether a pain stands before a number and has none of its own yet: not "0 pain, 1 happy camper"."""
    if reply.concept(first - 1) in PAINFUL:
        return True
    rated = reply.concept(first - 1) == "comma" and reply.concept(first - 3) in ("number", "number-word", "neg")
    return reply.concept(first - 2) in PAINFUL and not rated


def _of_the_body(reply: Row, index: int) -> bool:
    """ "Two of my fingers"."""
    return reply.concept(index) in BODY and _is_plural(reply.units[index])


_SPANS = words("hours days weeks months years minutes mins")
_NO_PLURAL = words("always perhaps this thus us yes is was as less plus because thanks course besides afterwards")


def _is_plural(unit: Unit) -> bool:
    last = unit.text.split(" ")[-1]
    if last == "side":
        return True
    plural = last.endswith("s") and not last.endswith("ss") and len(last) > 3 and last not in _NO_PLURAL
    return plural or last in ("men", "women", "people", "children", "feet", "teeth")


def _unrelated(reply: Row, first: int, last: int) -> bool:
    """Whether a unit, a clock or a counted thing stands around the number."""
    before, after = reply.concept(first - 1), reply.concept(last + 1)
    if _names_or_scores(reply, first, last):
        return True
    if (
        before in ("pain", "about")
        and reply.concept(first - 2) in ("night", "wake", "nightlong")
        and _led_by(reply, first)
    ):
        return True
    if (
        before == "pain"
        and _text(reply, last + 1) in _WHOLE_SESSION
        and reply.concept(last + 2) in ("yes", "done", "finish")
    ):
        return False
    if after in ("unit", "counted", "percent", "degree", "clock") or _counts_things(reply, first, last):
        return True
    if first and reply.units[first - 1].text.split(" ")[-1] == "other":
        return True
    if before not in ("before-number", "counted"):
        return False
    if reply.units[first - 1].text == "only" and after in ("", "end", "comma"):
        return False
    if _text(reply, first - 1) == "number" and reply.concept(first - 2) in ("comma", "end") and after in ("", "end"):
        return False
    if _text(reply, first - 1) == "session" and "after" in (_text(reply, first - 2), _text(reply, first - 3)):
        return False
    if _text(reply, first - 1) == "at" and _text(reply, first - 2).split(" ")[-1] in ("is", "was", "now", "s"):
        earlier = range(_begin(reply, first), first)
        if any(reply.concept(i) == "pain" for i in earlier):
            return False
    near = [reply.concept(i) for i in _back_to_meaning(reply, first - 2)]
    said_of_pain = bool(set(near) & (PAINFUL | BODY))
    return not (reply.units[first - 1].text in ("at", "only", "by", "number") and said_of_pain)


def _names_or_scores(reply: Row, first: int, last: int) -> bool:
    listed = any(first in verdict.numbers for verdict in verdicts(reply.units))
    return listed or is_a_score(reply.units, first, last) or (first == last and names_something(reply.units, first))


_WHOLE_SESSION = words("session stretches exercises workout routine")


def _led_by(reply: Row, first: int) -> bool:
    """ "Wakes me every night around 3": an hour."""
    return _text(reply, first - 1) in ("around", "about", "at", "at about", "at around")


def _back_to_meaning(reply: Row, index: int) -> Iterator[int]:
    """The units before an "at" or "by", over small words, up to the first that means something."""
    for here in range(index, max(-1, index - 4), -1):
        yield here
        if reply.concept(here) not in ("was", "now") and _text(reply, here).split(" ")[-1] not in (
            "is",
            "are",
            "be",
            "s",
        ):
            return


def _begin(reply: Row, index: int) -> int:
    """Where the sentence of a unit begins."""
    while index > 0 and reply.concept(index - 1) not in ("end", "question"):
        index -= 1
    return index
