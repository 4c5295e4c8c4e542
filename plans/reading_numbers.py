"""Which number of a reply is a pain, and which is a set, a day or a clock time. A pain is never guessed."""

from __future__ import annotations

import math
from collections.abc import Iterator
from dataclasses import dataclass
from enum import Enum

from plans.scopes import BODY, Said
from plans.wording import words

WORDS = {"one": 1, "two": 2, "three": 3, "four": 4, "five": 5, "six": 6, "seven": 7, "eight": 8, "nine": 9, "ten": 10}
_UNITS_OF_MEASURES = words("cm cms centimetres centimeters in inch inches deg degs degree degrees ° mm")
_PAIN = words("pain sore dull sharp sudden severe scale throb no-pain worse same bit-better")
_MINUTES = words("min mins minute minutes")
_NOT_PAIN = frozenset(("stretch-feeling",))
_COMPLETION = words("done finish yes part half")
_FILLING = words(
    """
    pass about left right both colon dash comma now was so and yesterday to from here elsewhere night wake
    lasts gone mark was hedge one-side between
    """
)
_TURNS = words("now was but correction actually arrow or to then yesterday neg and hedge")
_BARE_END = (
    words(
        """
    comma end question but because and fine yes thanks hedge mark face left right both slash now tight
    pain sore dull correction actually asks stretch-feeling so colon dash neg no-pain later or here elsewhere
    about pleasant same settled worse bit-better harmless yesterday
    """
    )
    | BODY
)


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


@dataclass(frozen=True, slots=True)
class Pain:
    """What was said of pain: `value` 0-10 or None; `worst` of all that was named; `asked`: it must be asked back."""

    value: int | None = None
    worst: int = 0
    asked: bool = False
    error: str | None = None


def bare_number(reply: Said) -> float | None:
    """The number when the reply is nothing but one number, with or without cm, in or degrees.

    >>> from plans.scopes import said
    >>> bare_number(said("-3,5 cm"))
    -3.5
    """
    found = list(figures(reply))
    if len(found) != 1 or found[0].form not in (Form.PLAIN, Form.OTHER) or found[0].first > 1:
        return None
    before = [unit.concept for unit in reply.units[: found[0].first]]
    after = [unit for unit in reply.units[found[0].last + 1 :] if unit.concept != "end"]
    if before not in ([], ["dash"], ["plus"]) or len(after) > 1 or (after and after[0].text not in _UNITS_OF_MEASURES):
        return None
    return found[0].value


def tightness_in(reply: Said) -> int | None:
    """The tightness 0-10 when it is named as such: "tightness 4"."""
    for figure in figures(reply):
        if figure.form in (Form.PLAIN, Form.SCALE) and _owner(reply, figure) == "tight" and 0 <= figure.value <= 10:
            return math.ceil(figure.value)
    return None


def pain_in(reply: Said) -> Pain:
    """The pain of a reply: the latest of a change, the higher of a range, the corrected one, the worst of several."""
    named = pain_figures(reply)
    complained = bool(reply.at("pain", "sharp", "severe"))
    if not named:
        return _without_number(reply, complained)
    kept = _kept(reply, named)
    wrong = next((figure for figure in kept if not 0 <= figure.value <= 10 or figure.form is Form.FRACTION), None)
    if wrong is not None:
        return Pain(asked=True, error=f"{_spelt(reply, wrong)} is not on the scale from 0 to 10")
    value = math.ceil(max(figure.value for figure in kept))
    worst = max([value, *(math.ceil(figure.worst) for figure in kept if figure.worst <= 10)])
    if any(_denied(reply, figure) for figure in kept) and value > 0:
        return Pain(worst=worst, asked=True)
    alone = len(kept) == 1 and kept[0].form is Form.SCALE and _owner(reply, kept[0]) is None
    return Pain(value, worst, asked=alone and value >= 8)


def _without_number(reply: Said, complained: bool) -> Pain:
    if complained:
        return Pain(asked=True)
    return Pain(value=0) if any(_zero(reply)) else Pain()


def _zero(reply: Said) -> Iterator[bool]:
    """Every "no pain" that says it of pain as such, not of a sharp pain or of the chest."""
    for index, unit in enumerate(reply.units):
        if unit.concept == "no-pain" or (
            unit.concept == "pain" and reply.negated[index] and not _narrowed(reply, index)
        ):
            yield True


def _narrowed(reply: Said, index: int) -> bool:
    start = index
    while start and reply.negated[start - 1]:
        start -= 1
    return any(
        reply.concept(i) in ("sharp", "sudden", "severe", "chest", "jaw", "arm", "night") for i in range(start, index)
    )


def pain_figures(reply: Said) -> list[Figure]:
    """The numbers that are pains, in order."""
    found: list[Figure] = []
    for figure in figures(reply):
        if figure.form is not Form.OTHER and _is_pain(reply, figure, found):
            found.append(figure)
    return found


def _is_pain(reply: Said, figure: Figure, earlier: list[Figure]) -> bool:
    if _ruled_out(reply, figure) and not (earlier and _restated(reply, figure)):
        return False
    owner = _owner(reply, figure)
    if owner in ("tight", *_NOT_PAIN):
        return False
    if owner in _PAIN:
        return True
    if owner in BODY - {"heart"}:
        return figure.form is not Form.FRACTION and 0 <= figure.value <= 10
    if owner in _COMPLETION:
        counted = figure.first > 0 and reply.units[figure.first - 1].text == "in"
        return (
            figure.form is not Form.FRACTION
            and not counted
            and (_ends_bare(reply, figure) or _owner_after(reply, figure) is not None)
        )
    if earlier and _turned(reply, earlier[-1], figure):
        return True
    return figure.form is Form.SCALE and owner is None and not _praise(reply, figure)


def _ruled_out(reply: Said, figure: Figure) -> bool:
    return figure.first > 0 and reply.units[figure.first - 1].text in ("not", "no")


def _restated(reply: Said, figure: Figure) -> bool:
    """ "2, no, 3" or "2 … no 3": the "no" takes the number before it back."""
    opens = reply.concept(figure.first - 2) in ("end", "comma", "dash")
    return figure.first > 0 and reply.units[figure.first - 1].text == "no" and opens


def _ends_bare(reply: Said, figure: Figure) -> bool:
    return reply.concept(figure.last + 1) in _BARE_END | {""}


def _turned(reply: Said, earlier: Figure, figure: Figure) -> bool:
    """Whether a number goes on from an earlier pain: "was 5, now 2", "3, sorry, 4", "not 5 but 3"."""
    between = range(earlier.last + 1, figure.first)
    return len(between) <= 5 and any(reply.concept(i) in _TURNS for i in between) and _ends_bare(reply, figure)


def _praise(reply: Said, figure: Figure) -> bool:
    return reply.concept(figure.last + 1) in ("word", "fine", "pleasant", "hypothetical", "unit", "counted", "pass")


def _owner(reply: Said, figure: Figure) -> str | None:
    """What a number speaks of: the nearest telling word before it, else right after it."""
    after = reply.concept(figure.last + 1)
    before = _owner_before(reply, figure)
    if after in ("pain", "sore", "tight") and before not in ("pain", "sore", "tight", *_NOT_PAIN):
        return after
    return before if before is not None else _owner_after(reply, figure)


def _owner_before(reply: Said, figure: Figure) -> str | None:
    body, strangers, stops = None, 0, 0
    for index in range(figure.first - 1, max(-1, figure.first - 12), -1):
        concept = reply.concept(index)
        if concept in _PAIN | _NOT_PAIN or concept == "tight":
            return concept if stops <= 1 else body
        if concept in _COMPLETION:
            return body or (concept if not strangers else None)
        if concept in BODY:
            body = body or concept
        elif concept == "word":
            strangers += 1
        elif concept in ("end", "question"):
            stops += 1
        elif concept not in _FILLING and reply.units[index].text != "at":
            return body
        if strangers > 2:
            return body
    return body


def _owner_after(reply: Said, figure: Figure) -> str | None:
    for index in range(figure.last + 1, figure.last + 6):
        concept = reply.concept(index)
        if concept in _PAIN | _NOT_PAIN | BODY or concept in ("tight", ""):
            return concept or None
        if concept not in ("pass", "about", "left", "right", "both") and reply.units[index].text != "for":
            return None
    return None


def _kept(reply: Said, named: list[Figure]) -> list[Figure]:
    """The pains that still stand after corrections, changes and remarks about an earlier day."""
    corrected = sorted([*reply.at("correction"), *(figure.first - 1 for figure in named if _restated(reply, figure))])
    later = [figure for figure in named if corrected and figure.first > corrected[-1]]
    if later:
        return later
    if len(named) > 1 and reply.concept(named[-1].first - 1) == "to" and reply.units[named[-1].first - 1].text != "to":
        return [named[-1]]
    today = [figure for figure in named if not _beside(reply, figure, ("yesterday",))] or named
    now = [figure for figure in today if _beside(reply, figure, ("now",))]
    was = [figure for figure in today if _beside(reply, figure, ("was", "yesterday"))]
    if now and len(was) + len(now) >= 2 and len(today) > 1:
        return [now[-1]]
    return today


def _beside(reply: Said, figure: Figure, concepts: tuple[str, ...]) -> bool:
    """Whether one of the concepts stands right by the number, not past another number."""
    for step, edge in ((-1, figure.first), (1, figure.last)):
        for index in range(edge + step, edge + 4 * step, step):
            concept = reply.concept(index)
            if concept in concepts:
                return True
            if concept in ("number", "comma", "end", "but", ""):
                break
    return False


def _denied(reply: Said, figure: Figure) -> bool:
    """Whether the number hangs on a denied pain: "no pain 3"."""
    for index in range(figure.first - 1, max(-1, figure.first - 4), -1):
        if reply.concept(index) in ("pain", "no-pain"):
            return reply.negated[index] or reply.concept(index) == "no-pain"
        if reply.concept(index) not in ("pass", "about"):
            return False
    return False


def _spelt(reply: Said, figure: Figure) -> str:
    return reply.text[reply.units[figure.first].start : reply.units[figure.last].end]


# --- numbers as they are written ------------------------------------------------------------------------------------


def figures(reply: Said) -> Iterator[Figure]:
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


def _value(reply: Said, index: int) -> float | None:
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


def _one_counts(reply: Said, index: int) -> bool:
    """ "One" is a number only where a number must stand: alone, after "pain", after a comma at the end."""
    before, after = reply.concept(index - 1), reply.concept(index + 1)
    ends = after in ("", "end", "comma", "slash", "scale")
    return before in ("pain", "colon", "scale") or (before in ("", "comma", "dash", "about", "done") and ends)


def _figure(reply: Said, index: int, value: float) -> Figure:
    first = index
    if _minus(reply, index):
        value, first = -value, index - 1
    link, other = reply.concept(index + 1), _value(reply, index + 2)
    if other is not None and (link in ("slash", "scale") or reply.units[index + 1].text == "of"):
        return _of(reply, first, index + 2, value, other)
    whole = _value(reply, index + 3)
    if (
        whole is not None
        and reply.units[index + 1].text in _MINUTES
        and reply.units[index + 2].text in ("of", "out of")
    ):
        return Figure(value, first, index + 3, Form.FRACTION, value)
    if other is not None and link in ("dash", "to", "or", "arrow", "and") and _is_range(reply, index, link):
        return _span(reply, first, index + 2, value, other, link)
    return Figure(value, first, index, Form.OTHER if _unrelated(reply, first, index) else Form.PLAIN, value)


def _minus(reply: Said, index: int) -> bool:
    """A dash that touches the number but not what stands before it."""
    if reply.concept(index - 1) != "dash":
        return False
    dash = reply.units[index - 1]
    return dash.end == reply.units[index].start and (dash.start == 0 or reply.text[dash.start - 1] in " :=")


def _is_range(reply: Said, index: int, link: str) -> bool:
    return link != "and" or reply.concept(index - 1) == "between"


def _of(reply: Said, first: int, last: int, value: float, whole: float) -> Figure:
    """ "3/10" or "3 out of 10" is on the scale; with a thing counted after it, or of another number, it is not."""
    counted = reply.concept(last + 1) in ("unit", "counted")
    if not counted and _unrelated(reply, first, last) and reply.units[first - 1].text != "did":
        form = Form.OTHER
    elif whole == 10 and not counted:
        form = Form.SCALE
    else:
        form = Form.FRACTION
    return Figure(value, first, last, form, value)


def _span(reply: Said, first: int, last: int, value: float, other: float, link: str) -> Figure:
    changed = link == "arrow" or reply.concept(first - 1) == "from" or (link == "to" and other < value)
    figure_last, form = last, Form.OTHER if _unrelated(reply, first, last) else Form.PLAIN
    whole = _value(reply, last + 2)
    if whole is not None and reply.concept(last + 1) in ("slash", "scale"):
        figure_last, form = last + 2, Form.SCALE if whole == 10 else Form.FRACTION
    return Figure(other if changed else max(value, other), first, figure_last, form, max(value, other))


def _unrelated(reply: Said, first: int, last: int) -> bool:
    """Whether a unit, a clock or a counted thing stands around the number."""
    before, after = reply.concept(first - 1), reply.concept(last + 1)
    if after in ("unit", "counted", "percent", "degree", "clock"):
        return True
    if before not in ("before-number", "counted"):
        return False
    said_of_pain = bool({reply.concept(first - 2), reply.concept(first - 3)} & (_PAIN | BODY))
    return not (reply.units[first - 1].text == "at" and said_of_pain)
