"""Which number of a reply is a pain, and which is a set, a day or a clock time. A pain is never guessed."""

from __future__ import annotations

import math
from dataclasses import dataclass, replace
from itertools import pairwise

from plans.glossing import UNKNOWN
from plans.numbers_written import BODY, Figure, Form
from plans.reading_figures import (
    NOT_PAIN,
    beside,
    is_later,
    overruled_figures,
    owner_of,
    pain_figures,
    restated,
    takes_back,
    words_in,
    zeros_of,
)
from plans.scopes import Said
from plans.wording import words

_UNITS_OF_MEASURES = words("cm cms centimetres centimeters in inch inches deg degs degree degrees ° mm")


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
    found = reply.figures
    if len(found) != 1 or found[0].form not in (Form.PLAIN, Form.OTHER) or found[0].first > 1:
        return None
    before = [unit.concept for unit in reply.units[: found[0].first]]
    after = [unit for unit in reply.units[found[0].last + 1 :] if unit.concept != "end"]
    if before not in ([], ["dash"], ["plus"]) or len(after) > 1 or (after and after[0].text not in _UNITS_OF_MEASURES):
        return None
    return found[0].value


def tightness_in(reply: Said) -> int | None:
    """The tightness 0-10 when it is named as such: "tightness 4"."""
    for figure in reply.figures:
        if figure.form in (Form.PLAIN, Form.SCALE) and owner_of(reply, figure) == "tight" and 0 <= figure.value <= 10:
            return math.ceil(figure.value)
    return None


def pain_in(reply: Said) -> Pain:
    """The pain of a reply: the latest of a change, the higher of a range, the corrected one, the worst of several."""
    named = pain_figures(reply)
    complained = _complains(reply) or sharp_beside(reply)
    if not named:
        changed = _changed(reply)
        return _without_number(reply, complained) if changed is None else Pain(changed, changed)
    zeros = [index for index in zeros_of(reply) if index > named[-1].last]
    if zeros and any(named[-1].last < mark < zeros[-1] for mark in reply.at("correction", "actually")):
        return Pain(0, max((math.ceil(figure.value) for figure in named if figure.value <= 10), default=0))
    today = [index for index in zeros_of(reply) if not _is_past(reply, index)]
    if today and all(beside(reply, figure, ("yesterday", "past")) for figure in named):
        return Pain(0, max((math.ceil(figure.value) for figure in named if figure.value <= 10), default=0))
    kept = _kept(reply, list(named))
    wrong = next((figure for figure in kept if not 0 <= figure.value <= 10 or figure.form is Form.FRACTION), None)
    if wrong is not None:
        told = [figure.value for figure in (*kept, *overruled_figures(reply))]
        worst = max((math.ceil(value) for value in told if 0 <= value <= 10), default=0)
        return Pain(worst=worst, asked=True, error=f"{_spelt(reply, wrong)} is not on the scale from 0 to 10")
    if (zeros_of(reply) and _contradicts(reply, kept)) or _says_two_things(reply, kept):
        return Pain(worst=math.ceil(max(figure.value for figure in kept)), asked=True)
    value = math.ceil(max(figure.value for figure in kept))
    worst = max([value, *(math.ceil(figure.worst) for figure in kept if figure.worst <= 10)])
    if any(_denied(reply, figure) for figure in kept) and value > 0:
        return Pain(worst=worst, asked=True)
    alone = len(kept) == 1 and kept[0].form is Form.SCALE and owner_of(reply, kept[0]) is None
    return Pain(value, worst, asked=(alone and value >= 8) or _leaves_a_later_one(reply, value))


def _leaves_a_later_one(reply: Said, value: int) -> bool:
    """ "Pain 3, tonight 8", "done, 2, overnight 9": a higher number right after a time of day may be a pain."""
    return any(
        figure.form is Form.PLAIN
        and value < figure.value <= 10
        and figure not in pain_figures(reply)
        and _is_a_time(reply, figure.first - 1)
        and reply.concept(figure.last + 1) in ("", "end", "comma", "mark", "face")
        for figure in reply.figures
    )


def _is_a_time(reply: Said, index: int) -> bool:
    if index < 0:
        return False
    told = reply.concept(index) in ("later", "night", "nightlong") or reply.units[index].text in _TIMES
    return told or (index > 0 and reply.units[index - 1].text == "after")


_TIMES = ("overnight", "at night", "last night", "later", "evening", "afterwards")


def _is_past(reply: Said, index: int) -> bool:
    return any(reply.concept(i) in ("yesterday", "past", "was") for i in reply.clauses[reply.clause[index]])


def _complains(reply: Said) -> bool:
    """Whether a pain is named; what is said of an earlier time does not count beside "today nothing hurts"."""
    over = {reply.clause[i] for i in reply.at("past", "yesterday")} if zeros_of(reply) else set()
    strange = {reply.clause[i] for i, unit in enumerate(reply.units) if unit.text == UNKNOWN}
    more = [i for i in reply.at("hurts-more") if reply.clause[i] not in strange]
    return any(reply.clause[i] not in over for i in (*reply.at("pain", "severe"), *more))


def _changed(reply: Said) -> int | None:
    """ "Was a 5, now a 2", "started at 4, went down to 1": a change that can only be one of pain."""
    found = [figure for figure in reply.figures if figure.form is Form.PLAIN]
    if len(found) != len(reply.figures) or len(found) not in (1, 2) or reply.at("tight", *NOT_PAIN):
        return None
    first, last = found[0], found[-1]
    ahead = range(max(0, first.first - 3), first.first)
    before = any(reply.concept(i) in ("was", "from") or reply.units[i].text.startswith(_WAS) for i in ahead)
    if first is last:
        after = first.first < first.last and (first.value < first.worst or bool(reply.at("pain", "sore")))
    else:
        near = range(max(0, last.first - 3), min(last.last + 2, len(reply.units)))
        after = any(reply.concept(i) in ("now", "to") for i in near) or bool(
            words_in(reply, near) & {"then", "after", "afterwards"}
        )
    clause = reply.clauses[reply.clause[first.first]]
    told = any(reply.concept(i) in _OF_AN_HOUR and reply.units[i].text not in _FELL for i in clause)
    hours = told and any(reply.concept(i) == "from" for i in ahead) and not reply.at("pain", "sore")
    right = all(0 <= figure.value <= 10 for figure in found) and not hours
    return math.ceil(last.value) if before and after and right else None


_WAS = ("was a", "it was")
_OF_AN_HOUR = words("time time-part other-why someone none unit counted word")
"""What numbers of a clause belong to where no pain is named: "in meetings from eight to six", "worked from 9 to 5"."""
_FELL = words("went down dropped fell eased came improved reduced better back started stretching session so thing way")


def _contradicts(reply: Said, kept: list[Figure]) -> bool:
    """ "No pain at all, pain about a 6": both said of pain as such, with no place and no turn between them."""
    said = {figure.last + 1 for figure in kept}
    turned = [i for i in reply.at("now") if i in said or reply.concept(i + 1) not in ("comma", "end")]
    turned += [
        i for i in reply.at("was") if reply.concept(i + 1) not in ("neg", "no-pain") and reply.concept(i - 1) != "pain"
    ]
    if turned or reply.at("but", "yesterday", "correction", "actually", "left", "right", "gone", "settled"):
        return False
    return not reply.at(*BODY) and any(figure.value > 0 and owner_of(reply, figure) == "pain" for figure in kept)


def _says_two_things(reply: Said, kept: list[Figure]) -> bool:
    """ "Pain is 1. Pain is 7.": two numbers of one pain in two sentences, with no place and no turn between them."""
    joined = [i for i in reply.at("and") if kept[0].last < i < kept[-1].first and reply.concept(i + 1) == "pain"]
    apart = len(kept) == len({reply.sentence[figure.first] for figure in kept}) or len(kept) == len(joined) + 1
    if not apart or len({f.value for f in kept}) < 2:
        return False
    if len(reply.at("pain")) < 2 or any(owner_of(reply, figure) != "pain" for figure in kept):
        return False
    between = range(kept[0].first, kept[-1].last + 1)
    return all(reply.concept(i) in _BARELY for i in between) and not reply.at(*BODY, "left", "right")


_BARELY = words("number number-word pain pass end is about and")


def sharp_beside(reply: Said) -> bool:
    """Whether "sharp" stands beside a pain or a part of the body; "a sharp drop in motivation" does not."""
    return any(reply.concept(j) in _NEAR_SHARP for i in reply.at("sharp") for j in range(i - 6, i + 7))


_NEAR_SHARP = BODY | {"pain", "severe", "sudden"}


def _without_number(reply: Said, complained: bool) -> Pain:
    worst = max([0, *(math.ceil(figure.value) for figure in overruled_figures(reply) if figure.value <= 10)])
    if complained or any(_is_saved_from(reply, index) for index in zeros_of(reply)):
        return Pain(worst=worst, asked=True)
    return Pain(0, worst) if zeros_of(reply) else Pain()


def _is_saved_from(reply: Said, index: int) -> bool:
    """ "No pain except my lower back", "nothing hurts but my knee"; not "no pain, but my knee is stiff"."""
    near = range(index + 1, min(index + 4, len(reply.units)))
    saved = next((i for i in near if reply.units[i].text in _SAVING), None)
    if saved is None or (reply.units[saved].text == "but" and saved != index + 1):
        return False
    after = range(saved + 1, min(saved + 6, len(reply.units)))
    body = [i for i in after if reply.concept(i) in BODY]
    led = bool(body) and all(reply.concept(i) in _BEFORE_A_LIMB for i in range(saved + 1, body[0]))
    return led and (reply.units[saved].text != "but" or reply.concept(body[-1] + 1) in ("", "end"))


_SAVING = ("except", "except for", "apart from", "other than", "besides", "but", "bar", "save for")
_BEFORE_A_LIMB = words("pass left right both one-side about")


def _kept(reply: Said, named: list[Figure]) -> list[Figure]:
    """The pains that still stand after corrections, changes and remarks about an earlier day."""
    corrected = sorted([*reply.at("correction"), *(figure.first - 1 for figure in named if restated(reply, figure))])
    later = [figure for figure in named if corrected and figure.first > corrected[-1]]
    if later:
        return later
    if len(named) > 1 and reply.concept(named[-1].first - 1) == "to" and reply.units[named[-1].first - 1].text != "to":
        return [named[-1]]
    if len(named) > 1 and all(
        any(reply.units[i].text == "then" for i in range(one.last + 1, other.first)) for one, other in pairwise(named)
    ):
        return [named[-1]]
    latest = _latest(reply, named)
    if latest is not None:
        return [latest]
    if len(named) > 1 and words_in(reply, range(named[0].first)) & _BELIEVED and _turns_between(reply, named):
        return [named[-1]]
    taken_back = [n for n in range(1, len(named)) if takes_back(reply, named[n - 1], named[n])]
    if taken_back:
        named = named[taken_back[-1] :]
    today = [figure for figure in named if not beside(reply, figure, ("yesterday", "past"))] or named
    now = [figure for figure in today if beside(reply, figure, ("now",))]
    was = [
        figure for figure in today if beside(reply, figure, ("was", "yesterday", "past")) or _after_was(reply, figure)
    ]
    if now and len(was) + len(now) >= 2 and len(today) > 1:
        return [now[-1]]
    return [figure for figure in today if not _was_before(reply, figure)] or today


_BELIEVED = words("thought wrote typed said believed")


def _turns_between(reply: Said, named: list[Figure]) -> bool:
    return any(reply.concept(i) == "but" for i in range(named[-2].last + 1, named[-1].first))


def _latest(reply: Said, named: list[Figure]) -> Figure | None:
    """The last pain when it is said to be the later one of the same place: "5, now 2", "5, after the session 3".

    What was worse before stays known as `worst`.
    """
    if len(named) < 2:
        return None
    first, last = named[-2], named[-1]
    between = range(first.last + 1, last.first)
    if any(reply.concept(i) in BODY | {"left", "right", "both"} for i in between):
        return None
    own = range(max(between.start, reply.clauses[reply.clause[last.first]].start), last.first)
    late = any(is_later(reply, i) for i in own) and not words_in(reply, own) & {"before", "earlier", "woke"}
    now = reply.units[last.last + 1].text if last.last + 1 < len(reply.units) else ""
    gone = any(reply.concept(i) in ("gone", "settled") for i in between)
    if late or gone or now in _AFTERWARDS:
        return (
            last if beside(reply, first, ("yesterday", "past")) else replace(last, worst=max(first.worst, last.worst))
        )
    return None


_AFTERWARDS = ("now", "right now", "at the moment", "after", "afterwards", "at the end", "by the end")


def _after_was(reply: Said, figure: Figure) -> bool:
    return figure.first > 0 and reply.units[figure.first - 1].text.startswith(_WAS)


def _was_before(reply: Said, figure: Figure) -> bool:
    """ "Before it was 6", "a 7 last week", "5 before": a pain of an earlier time."""
    ahead = [reply.units[i].text for i in range(max(0, figure.first - 3), figure.first)]
    after = reply.units[figure.last + 1] if figure.last + 1 < len(reply.units) else None
    if reply.concept(figure.first - 1) == "from":
        return True
    return bool({"before", "down from", "was down from", "normally", "usually", "normal"} & set(ahead)) or (
        after is not None and (after.text == "before" or after.concept == "yesterday")
    )


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
