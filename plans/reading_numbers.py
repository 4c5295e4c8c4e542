"""Which number of a reply is a pain, and which is a set, a day or a clock time. A pain is never guessed."""

from __future__ import annotations

import math
from collections.abc import Iterator
from dataclasses import dataclass
from itertools import pairwise

from plans.numbers_written import BODY, PAINFUL, Figure, Form
from plans.scopes import Said
from plans.wording import words

_UNITS_OF_MEASURES = words("cm cms centimetres centimeters in inch inches deg degs degree degrees ° mm")
_NOTPAINFUL = frozenset(("stretch-feeling",))
_NOT_PAIN = words("stretch-feeling")
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
        if figure.form in (Form.PLAIN, Form.SCALE) and _owner(reply, figure) == "tight" and 0 <= figure.value <= 10:
            return math.ceil(figure.value)
    return None


def pain_in(reply: Said) -> Pain:
    """The pain of a reply: the latest of a change, the higher of a range, the corrected one, the worst of several."""
    named = pain_figures(reply)
    complained = bool(reply.at("pain", "severe")) or sharp_beside(reply)
    if not named:
        changed = _changed(reply)
        return _without_number(reply, complained) if changed is None else Pain(changed)
    zeros = [index for index in _zeros(reply) if index > named[-1].last]
    if zeros and any(named[-1].last < mark < zeros[-1] for mark in reply.at("correction", "actually")):
        return Pain(value=0)
    kept = _kept(reply, named)
    wrong = next((figure for figure in kept if not 0 <= figure.value <= 10 or figure.form is Form.FRACTION), None)
    if wrong is not None:
        return Pain(asked=True, error=f"{_spelt(reply, wrong)} is not on the scale from 0 to 10")
    if any(_zero(reply)) and _contradicts(reply, kept):
        return Pain(worst=math.ceil(max(figure.value for figure in kept)), asked=True)
    value = math.ceil(max(figure.value for figure in kept))
    worst = max([value, *(math.ceil(figure.worst) for figure in kept if figure.worst <= 10)])
    if any(_denied(reply, figure) for figure in kept) and value > 0:
        return Pain(worst=worst, asked=True)
    alone = len(kept) == 1 and kept[0].form is Form.SCALE and _owner(reply, kept[0]) is None
    return Pain(value, worst, asked=alone and value >= 8)


def _changed(reply: Said) -> int | None:
    """ "Was a 5, now a 2", "started at 4, went down to 1": a change that can only be one of pain."""
    found = [figure for figure in reply.figures if figure.form is Form.PLAIN]
    if len(found) != 2 or len(reply.figures) != 2 or reply.at("tight", *_NOT_PAIN):
        return None
    first, last = found
    before = any(reply.concept(i) in ("was", "from") for i in range(first.first - 3, first.first))
    ahead = reply.units[max(0, first.first - 3) : first.first]
    before = before or any(unit.text.startswith(("was a", "it was")) for unit in ahead)
    after = any(reply.concept(i) in ("now", "to") for i in range(last.first - 3, last.last + 2))
    right = all(0 <= figure.value <= 10 for figure in found)
    return math.ceil(last.value) if before and after and right else None


def _contradicts(reply: Said, kept: list[Figure]) -> bool:
    """ "No pain at all, pain about a 6": both said of pain as such, with no place and no turn between them."""
    if reply.at("but", "now", "was", "yesterday", "correction", "actually", "left", "right", "gone", "settled"):
        return False
    return not reply.at(*BODY) and any(figure.value > 0 and _owner(reply, figure) == "pain" for figure in kept)


def sharp_beside(reply: Said) -> bool:
    """Whether "sharp" stands beside a pain or a part of the body; "a sharp drop in motivation" does not."""
    return any(reply.concept(j) in _NEAR_SHARP for i in reply.at("sharp") for j in range(i - 6, i + 7))


_NEAR_SHARP = BODY | {"pain", "severe", "sudden"}


def _without_number(reply: Said, complained: bool) -> Pain:
    if complained:
        return Pain(asked=True)
    return Pain(value=0) if any(_zero(reply)) else Pain()


def _zero(reply: Said) -> Iterator[bool]:
    """A True for every "no pain"."""
    return (True for _index in _zeros(reply))


def _zeros(reply: Said) -> Iterator[int]:
    """Where "no pain" is said of pain as such, not of a sharp pain or of the chest."""
    for index, unit in enumerate(reply.units):
        if unit.theirs:
            continue
        if unit.concept == "no-pain" or (
            unit.concept == "pain" and reply.negated[index] and not _narrowed(reply, index)
        ):
            yield index


def _narrowed(reply: Said, index: int) -> bool:
    start = index
    while start and reply.negated[start - 1]:
        start -= 1
    return any(
        reply.concept(i) in ("sharp", "sudden", "severe", "chest", "jaw", "arm", "night") for i in range(start, index)
    )


def pain_figures(reply: Said) -> list[Figure]:
    """The numbers that are pains, in order; one beside a completion only where no pain is named as such."""
    found: list[Figure] = []
    for figure in reply.figures:
        if figure.form is not Form.OTHER and _is_pain(reply, figure, found):
            found.append(figure)
    named = [figure for figure in found if not _is_beside_completion(reply, figure, found[: found.index(figure)])]
    return named if named or any(_zero(reply)) else found


def _is_pain(reply: Said, figure: Figure, earlier: list[Figure]) -> bool:
    if any(unit.theirs for unit in reply.units[max(0, figure.first - 3) : figure.first]):
        return False
    if _ruled_out(reply, figure) and not (earlier and _restated(reply, figure)):
        return False
    owner = _owner(reply, figure)
    if owner in ("tight", *_NOT_PAIN) or (_has_own_word(reply, figure) and (earlier or any(_zero(reply)))):
        return False
    if not 0 <= figure.value <= 10 and not _is_in_pains_clause(reply, figure) and owner in PAINFUL:
        return False
    if owner in PAINFUL or _goes_on(reply, figure, earlier) or _is_a_rating(reply, figure):
        return True
    if owner in BODY - {"heart"}:
        return figure.form is not Form.FRACTION and 0 <= figure.value <= 10
    if owner in _COMPLETION:
        return _is_beside_completion(reply, figure, earlier)
    return figure.form is Form.SCALE and owner is None and not _praise(reply, figure)


def _is_in_pains_clause(reply: Said, figure: Figure) -> bool:
    """Whether the number stands with the pain and not behind an "and" of its own: "… and outside is -6"."""
    clause = _clause_of(reply, figure)
    begin = max((i for i in clause if i < figure.first and reply.concept(i) == "and"), default=clause.start)
    return any(reply.concept(i) in PAINFUL for i in range(begin, clause.stop))


def _goes_on(reply: Said, figure: Figure, earlier: list[Figure]) -> bool:
    """Whether a number carries an earlier pain on: a change, a correction, "3 by the end"."""
    if not earlier:
        return False
    now = _beside(reply, figure, ("now",)) and _ends_bare(reply, figure)
    return now or _turned(reply, earlier[-1], figure)


def _is_beside_completion(reply: Said, figure: Figure, earlier: list[Figure]) -> bool:
    """Whether a bare number is a pain only because it stands right after a completion: "done, 3"."""
    owner = _owner(reply, figure)
    if owner not in _COMPLETION or figure.form is Form.FRACTION or _goes_on(reply, figure, earlier):
        return False
    if _is_a_rating(reply, figure) or (figure.first > 0 and _counts_the_work(reply, figure, owner)):
        return False
    return _ends_bare(reply, figure) or _owner_after(reply, figure) is not None


def _counts_the_work(reply: Said, figure: Figure, owner: str) -> bool:
    """ "Done in 20", "did all 6", "managed the first three": a number that belongs to the work."""
    before = reply.units[figure.first - 1]
    return (
        before.text == "in"
        or before.text.endswith((" all", " the"))
        or (owner in ("part", "half") and before.concept not in ("comma", "end", "dash", "colon", "and", "but"))
    )


def _has_own_word(reply: Said, figure: Figure) -> bool:
    """ "Grumpiness 9", "ten out of ten weather": a number that belongs to a word of its own."""
    after, before = reply.concept(figure.last + 1), reply.units[figure.first - 1] if figure.first else None
    owned = before is not None and before.concept == "word" and before.text.endswith(("ness", "ion", "ity", "ment"))
    return owned or (figure.form is Form.SCALE and after == "word")


def _is_a_rating(reply: Said, figure: Figure) -> bool:
    """ "It's a 6", "been like a 5 since": a rating in its form, of a pain that was named before."""
    told = reply.at("pain", "severe", "sharp", "dull", "burn", "shoot", "wake")
    alone = all(
        reply.concept(i) in ("pass", "number", "number-word", "comma", "end", "about")
        for i in _clause_of(reply, figure)
    )
    plain = [other for other in reply.figures if other.form in (Form.PLAIN, Form.SCALE)]
    instead = any(unit.text == "instead" for unit in reply.units[max(0, figure.first - 3) : figure.first])
    if alone and not instead and len(plain) == 1 and (told or reply.at(*_COMPLETION)):
        return True
    named = any(index < figure.first for index in reply.at("pain", "severe", "sharp", "dull", "burn", "shoot", "wake"))
    rated = reply.units[figure.first - 1].text.split(" ")[-1] in _RATED if figure.first else False
    rated = rated or alone
    ends = _ends_bare(reply, figure) or reply.units[figure.last + 1].text in ("since", "at", "when", "on", "in")
    return named and rated and ends


_RATED = words("a is was like say about around maybe probably roughly level number just only")


def _clause_of(reply: Said, figure: Figure) -> range:
    return reply.clauses[reply.clause[figure.first]]


def _ruled_out(reply: Said, figure: Figure) -> bool:
    return figure.first > 0 and reply.units[figure.first - 1].text in ("not", "no")


def _restated(reply: Said, figure: Figure) -> bool:
    """ "2, no, 3" or "2 … no 3": the "no" takes the number before it back."""
    at = figure.first - 1 - (reply.concept(figure.first - 1) == "comma")
    return at >= 0 and reply.units[at].text == "no" and reply.concept(at - 1) in ("end", "comma", "dash")


def _ends_bare(reply: Said, figure: Figure) -> bool:
    return reply.concept(figure.last + 1) in _BARE_END | {""}


def _turned(reply: Said, earlier: Figure, figure: Figure) -> bool:
    """Whether a number goes on from an earlier pain: "was 5, now 2", "3, sorry, 4", "not 5 but 3"."""
    between = range(earlier.last + 1, figure.first)
    if _takes_back(reply, earlier, figure) and _ends_bare(reply, figure):
        return True
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
        if concept in PAINFUL | _NOTPAINFUL or concept == "tight":
            return concept if stops <= 1 else body
        if concept in _COMPLETION:
            return body or (concept if not strangers else None)
        if concept in BODY:
            body = body or concept
        elif concept == "word":
            strangers += 1
        elif concept in ("end", "question"):
            stops += 1
        elif concept in ("number", "number-word", "clock"):
            continue
        elif concept not in _FILLING and reply.units[index].text != "at":
            return body
        if strangers > 2:
            return body
    return body


def _owner_after(reply: Said, figure: Figure) -> str | None:
    for index in range(figure.last + 1, figure.last + 6):
        concept = reply.concept(index)
        if concept in PAINFUL | _NOTPAINFUL | BODY or concept in ("tight", ""):
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
    if len(named) > 1 and all(
        any(reply.units[i].text == "then" for i in range(one.last + 1, other.first)) for one, other in pairwise(named)
    ):
        return [named[-1]]
    taken_back = [n for n in range(1, len(named)) if _takes_back(reply, named[n - 1], named[n])]
    if taken_back:
        named = named[taken_back[-1] :]
    today = [figure for figure in named if not _beside(reply, figure, ("yesterday",))] or named
    now = [figure for figure in today if _beside(reply, figure, ("now",))]
    was = [figure for figure in today if _beside(reply, figure, ("was", "yesterday")) or _after_was(reply, figure)]
    if now and len(was) + len(now) >= 2 and len(today) > 1:
        return [now[-1]]
    return [figure for figure in today if not _was_before(reply, figure)] or today


def _after_was(reply: Said, figure: Figure) -> bool:
    return figure.first > 0 and reply.units[figure.first - 1].text.startswith(("was a", "it was"))


def _was_before(reply: Said, figure: Figure) -> bool:
    """ "Before it was 6", "a 7 last week", "5 before": a pain of an earlier time."""
    ahead = [reply.units[i].text for i in range(max(0, figure.first - 3), figure.first)]
    after = reply.units[figure.last + 1] if figure.last + 1 < len(reply.units) else None
    return bool({"before", "down from", "was down from", "normally", "usually", "normal"} & set(ahead)) or (
        after is not None and (after.text == "before" or after.concept == "yesterday")
    )


def _takes_back(reply: Said, first: Figure, second: Figure) -> bool:
    """Whether the words between two pains take the first one back: "six sorry, zero", "a two, no, like a one"."""
    between = range(first.last + 1, second.first)
    return len(between) <= 14 and any(
        reply.concept(i) in ("actually", "correction") or reply.units[i].text in ("no", "wait", "sorry", "wrong")
        for i in between
        if not reply.negated[min(i + 1, len(reply.units) - 1)]
    )


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
