"""Words that may be a red flag: a closed table of signs. One flag is no diagnosis; it says stop and get checked."""

from __future__ import annotations

import re
from collections.abc import Iterator
from dataclasses import dataclass, replace

from plans.checkin import Flag
from plans.doubt import speaks_against, suspected
from plans.glossing import UNKNOWN, in_english, languages_of
from plans.numbers_written import BODY
from plans.scopes import Said, said
from plans.wording import ends_lines, words

WINDOW, FAR, NEXT_TO = 7, 14, 4
"""Units between the words of one sign; a far one may also go on in the next sentence, an unread word is close by."""


@dataclass(frozen=True, slots=True)
class FlagFound:
    """A sign that was read: how soon it must be seen, a stable key, whether the words leave no doubt, and those words.

    `span` is (start, end) in the normalised text. `lasts` is what was said about a nerve sign: True still there,
    False gone, None not said.
    """

    level: Flag
    sign: str
    sure: bool
    words: str
    span: tuple[int, int]
    lasts: bool | None = None
    doubted: bool = False
    """The words around it speak of the past, of what might be, of somebody else, or ask."""
    theirs: bool = False
    """It is plainly said of somebody else: "my dad had a stroke"; not "my wife called, chest pain"."""


@dataclass(frozen=True, slots=True)
class _Sign:
    key: str
    level: Flag
    needs: tuple[frozenset[str], ...]
    sure: bool
    window: int


def _sign(key: str, level: Flag, *needs: str, sure: bool = True, window: int = WINDOW) -> _Sign:
    return _Sign(
        key, level, tuple(frozenset(need.split()) for need in needs), sure, 12 if level is Flag.EMERGENCY else window
    )


_E, _S, _C = Flag.EMERGENCY, Flag.SAME_DAY, Flag.CLINICIAN

SIGNS = (
    _sign("saddle", _E, "saddle", "numb tingle no-feel"),
    _sign("bladder", _E, "cant-pee"),
    _sign("bladder", _E, "bladder", "control odd numb"),
    _sign("bladder", _E, "bladder", "by-itself"),
    _sign("bladder", _E, "bladder", "too-hard", sure=False),
    _sign("chest", _E, "chest", "press pain squeeze"),
    _sign("chest", _E, "chest", "tight burn odd sharp shoot dull numb", sure=False),
    _sign("chest", _E, "neck jaw arm", "press"),
    _sign("chest", _E, "jaw", "pain dull", sure=False),
    _sign("chest", _E, "neck jaw arm", "pain dull", "sweat"),
    _sign("chest", _E, "on-chest"),
    _sign("chest", _E, "heart-attack"),
    _sign("chest", _E, "heart", "pain press tight dull"),
    _sign("breath", _E, "breathless"),
    _sign("breath", _E, "puffed", "severe lasts", sure=False),
    _sign("faint", _E, "faint"),
    _sign("heart", _E, "palpitations"),
    _sign("heart", _E, "heart", "racing odd", sure=False),
    _sign("stroke", _E, "face", "droop weak no-power"),
    _sign("stroke", _E, "face", "numb tingle", sure=False),
    _sign("stroke", _E, "stroke"),
    _sign("stroke", _E, "talk", "odd sudden droop weak no-power vision"),
    _sign("stroke", _E, "speech"),
    _sign("stroke", _E, "vision"),
    _sign("stroke", _E, "half-seen", "look"),
    _sign("stroke", _E, "half-seen", sure=False),
    _sign("stroke", _E, "one-side", "weak no-power numb droop tingle"),
    _sign("stroke", _E, "sudden", "weak no-power"),
    _sign("calf", _S, "calf thigh leg", "swell"),
    _sign("calf", _S, "calf thigh leg", "throb warm", "warm throb swell bruise"),
    _sign("calf", _S, "calf thigh", "throb", sure=True),
    _sign("calf", _S, "calf", "warm", sure=False),
    _sign("gives-way", _S, "gives-way"),
    _sign("weight-bearing", _S, "no-weight"),
    _sign("weight-bearing", _S, "barely-walk", sure=False),
    _sign("pop", _S, "pop"),
    _sign("bruise", _S, "bruise"),
    _sign("swelling", _S, "swell"),
    _sign("nerve", _C, "numb tingle electric"),
    _sign("nerve", _C, "no-feel", "limb leg arm calf thigh face"),
    _sign("nerve", _C, "shoot", "pain limb leg arm calf thigh trunk numb tingle"),
    _sign("nerve", _C, "burn", "limb leg arm calf thigh pain"),
    _sign("weakness", _C, "weak"),
    _sign("weakness", _C, "no-power", "arm leg limb calf thigh trunk face"),
    _sign("weakness", _C, "no-power", sure=False),
    _sign("weakness", _C, "grip", sure=False),
    _sign("dizzy", _C, "dizzy"),
    _sign("night-pain", _C, "wake", "pain dull sore throb", window=12),
    _sign("night-pain", _C, "night", "pain dull throb", "lasts"),
    _sign("night-pain", _C, "nightlong", "pain dull throb"),
    _sign("night-pain", _C, "night", "pain dull throb", sure=False),
    _sign("fever", _C, "fever", "pain hurts-more dull sore swell", window=FAR),
    _sign("fever", _C, "fever", "warm", sure=False, window=FAR),
    _sign("weight-loss", _C, "weight-loss", "pain hurts-more dull sore fever wake night tired", window=FAR),
    _sign("weight-loss", _C, "weight-loss", "by-itself", sure=False),
)
"""Each row: key, level, the word classes that stand near each other in one sentence, and whether that is enough."""

_DOUBT = frozenset(("past", "hypothetical", "hedge", "pleasant", "almost-none"))


def find_flag(text: str, *, language: str = "en") -> FlagFound | None:
    """The gravest sign in a text, or None. When in doubt it is found with `sure` False.

    The text is of `language`; where it has none there, in the others that it may be of.

    >>> find_flag("heard a pop in my left calf").sign
    'pop'
    >>> find_flag("no tingling, no numbness") is None
    True
    """
    joined = _in_text(text, language)
    if "\n" not in text.strip():
        return joined
    ended, order = _in_text(ends_lines(text), language), [None, *Flag]
    levels = [order.index(flag.level if flag is not None else None) for flag in (joined, ended)]
    return replace(joined, sure=False, doubted=True) if joined is not None and levels[0] > levels[1] else ended


def _in_text(text: str, language: str) -> FlagFound | None:
    found = [flag for one in languages_of(text, language) if (flag := flag_in(said(in_english(text, one)))) is not None]
    return min(found, key=lambda flag: flag.sign == SUSPECTED, default=None)


SUSPECTED = "suspected"
"""The key of a sign that no row of the table has and that the second reader sees."""


def flag_in(reply: Said) -> FlagFound | None:
    """The gravest sign in a reply that is already split: by level, then the surer one, then the earlier one."""
    order = {level: rank for rank, level in enumerate(Flag)}
    found = list(_all(reply))
    if not found:
        found = [
            replace(flag, sure=False, doubted=True, theirs=_is_plainly_theirs(reply, flag))
            for flag in _all(replace(reply, of_theirs=True))
        ]
    if not found:
        found = list(_in_unread_words(reply))
    if not found:
        level = suspected(reply)
        return (
            None
            if level is None
            else FlagFound(level, SUSPECTED, False, reply.text, (0, len(reply.text)), doubted=True)
        )
    flag = max(found, key=lambda flag: (order[flag.level], flag.sure, -flag.span[0]))
    doubted = flag.sure and speaks_against(reply, flag.level)
    return replace(flag, sure=False, doubted=True) if doubted else flag


def _is_plainly_theirs(reply: Said, flag: FlagFound) -> bool:
    """Whether nothing but small words stands between the other person and the first word of the sign."""
    at = next(i for i, unit in enumerate(reply.units) if unit.start >= flag.span[0])
    for index in range(at - 1, -1, -1):
        unit = reply.units[index]
        if unit.concept == "someone" or unit.text in _THEM:
            return True
        if unit.concept not in _SMALL and unit.text not in _HAVING | _OF_MINE:
            return False
    return False


_THEM = words("he she her his")
_SMALL = BODY | words("pass was left right both lasts now yesterday someone about severe past")
_OF_MINE = words("me mine ours")
_HAVING = words(
    "and fell falls slipped tripped broke suffers suffered suffering complaining of with s having got paw tail"
)


def _in_unread_words(reply: Said) -> Iterator[FlagFound]:
    """What is said of the heart or the bladder in words of another language that no table has is asked back."""
    for index in reply.at(*_VITAL):
        if any(reply.units[i].text == UNKNOWN for i in _near(reply, index, NEXT_TO)):
            unit = reply.units[index]
            yield FlagFound(_E, _VITAL[unit.concept], False, unit.text, (unit.start, unit.end))


_VITAL = {"heart": "heart", "bladder": "bladder"}


def _all(reply: Said) -> Iterator[FlagFound]:
    for sign in SIGNS:
        if not all(need & reply.concepts for need in sign.needs):
            continue
        for anchor in reply.at(*sign.needs[0]):
            members = _members(reply, sign, anchor)
            if members is not None:
                yield _flag(reply, sign, members)


def _members(reply: Said, sign: _Sign, anchor: int) -> list[int] | None:
    """Where the words of a sign stand around its first word; None if one is missing, too far off or denied."""
    members = [anchor]
    for need in sign.needs[1:]:
        near = [
            i
            for i in _near(reply, anchor, sign.window)
            if reply.concept(i) in need and i not in members and not reply.negated[i] and not _is_zero(reply, i)
        ]
        if not near:
            return None
        members.append(min(near, key=lambda i: abs(i - anchor)))
    return members


def _is_zero(reply: Said, index: int) -> bool:
    """ "Pain 0" is no pain beside a sign."""
    after = next(
        (
            unit
            for unit in reply.units[index + 1 : index + 6]
            if unit.concept not in ("pass", "colon", "about", "now", "was") and unit.text != "by"
        ),
        None,
    )
    return reply.concept(index) == "pain" and after is not None and after.value == 0


def _near(reply: Said, anchor: int, window: int) -> Iterator[int]:
    """The indexes of the same sentence within the window, not across a "but"."""
    for step in (-1, 1):
        for index in range(anchor + step, anchor + step * (window + 1), step):
            if not 0 <= index < len(reply.units):
                break
            if reply.sentence[index] != reply.sentence[anchor] and window < FAR:
                break
            if reply.concept(index) == "but":
                break
            yield index


def _flag(reply: Said, sign: _Sign, members: list[int]) -> FlagFound:
    first, last = min(members), max(members)
    span = (reply.units[first].start, reply.units[last].end)
    lasts = _lasts(reply, first)
    doubted = any(_doubted(reply, index) for index in members) or _is_of_a_thing(reply, sign, first)
    doubted = doubted or _is_seen_plainly(reply, first)
    open_still = (sign.key == "nerve" and lasts is not True) or (sign.level is Flag.SAME_DAY and lasts is False)
    sure = sign.sure and not doubted and not open_still
    return FlagFound(sign.level, sign.key, sure, reply.text[span[0] : span[1]], span, lasts, doubted)


_OF_THINGS = words("pop swelling gives-way faint vision breath")
"""Signs whose words are also said of things: a band that snapped, a river that is swollen, a phone that passed out."""

_NO_THINGS = words("i it he she they something and so then suddenly also just")


def _is_of_a_thing(reply: Said, sign: _Sign, index: int) -> bool:
    """Whether the subject is a word that is no part of the body: then it is asked back and not taken for sure."""
    if sign.key not in _OF_THINGS or any(reply.concept(i) in BODY for i in reply.clauses[reply.clause[index]]):
        return False
    before = index - 1
    while before >= 0 and reply.concept(before) in ("pass", "was") and reply.units[before].text in _VERBS:
        before -= 1
    subject = reply.units[before] if 0 <= before < index and reply.clause[before] == reply.clause[index] else None
    return (
        subject is not None
        and subject.concept == "word"
        and not subject.text.endswith("ly")
        and subject.text not in _NO_THINGS
    )


def _is_seen_plainly(reply: Said, index: int) -> bool:
    """ "Saw two herons", "tunnel vision on my thesis": sight may be meant, and is asked about."""
    text, after = reply.units[index].text, reply.concept(index + 1)
    if text == "tunnel vision":
        return reply.units[min(index + 1, len(reply.units) - 1)].text == "on"
    return text in ("saw two", "seeing two", "see two") and after == "word"


_VERBS = words("is was are were has have had got gets")


def _lasts(reply: Said, index: int) -> bool | None:
    near = range(max(0, index - 18), min(len(reply.units), index + 19))
    here = {reply.concept(i) for i in near}
    same = any(reply.units[i].text.startswith("still ") for i in near if reply.concept(i) == "same")
    short = {reply.units[i].text for i in near if reply.concept(i) == "lasts"} == {"lasted"} and "gone" in here
    if short:
        return False
    if same or here & {"lasts", "nightlong"} or any(_since_when(reply, i) for i in near):
        return True
    return False if "gone" in here or "settled" in here else None


def _since_when(reply: Said, index: int) -> bool:
    """ "Since two days", "since last night": it began then and is still there."""
    since = reply.units[index].text == "since" and reply.concept(index) != "because"
    return since and any(
        reply.units[i].text.split(" ")[-1] in _TIMES for i in range(index + 1, min(index + 5, len(reply.units)))
    )


_TIMES = words(
    "day days hour hours week weeks month months yesterday night monday tuesday wednesday thursday friday saturday "
    "sunday"
)


def _is_long_ago(reply: Said, index: int) -> bool:
    """Whether the sentence puts the sign into the past and says nothing of now: "I had a swollen ankle, ages ago"."""
    sentence = [i for i, number in enumerate(reply.sentence) if number == reply.sentence[index]]
    concepts = {reply.concept(i) for i in sentence if abs(i - index) <= FAR}
    other = {reply.clause[i] for i in sentence if reply.concept(i) == "past"} - {reply.clause[index]}
    if other and any(reply.clause[i] in other and reply.concept(i) in SIGNS_OF_BODY for i in sentence):
        return False
    long = any(reply.concept(i) == "past" and not reply.units[i].text.startswith(_EVENTS) for i in sentence)
    return long and "past" in concepts and not concepts & {"lasts", "now", "same", "worse"}


_EVENTS = ("when i", "before i", "used to", "at school", "previously")
"""Words of the past that say when something begins as well: they count in their own clause only."""


SIGNS_OF_BODY = frozenset(need for sign in SIGNS for need in sign.needs[0]) - BODY


_ASKS_WHETHER = words("is are am do does could can")
_YEAR = re.compile(r"\b(?:in|since|back in|from) (?:19|20)\d\d\b")


def _doubted(reply: Said, index: int) -> bool:
    """Whether the words around a sign speak of the past, of what might be, of somebody else, or ask."""
    clause = [
        i for i in range(max(0, index - 10), min(len(reply.units), index + 8)) if reply.clause[i] == reply.clause[index]
    ]
    concepts = {reply.concept(i) for i in clause}
    if _is_long_ago(reply, index):
        return True
    if _YEAR.search(reply.text[reply.units[clause[0]].start : reply.units[clause[-1]].end]):
        return True
    first = reply.units[clause[0]]
    if (
        first.concept == "asks"
        and first.text.split(" ")[0] in _ASKS_WHETHER
        and reply.clauses[reply.clause[index]].start in clause
    ):
        return True
    concepts |= {"hedge"} & {reply.concept(i) for i in range(index - 3, index + 4)}
    return reply.doubtful[index] or bool(concepts & _DOUBT) or "question" in concepts
