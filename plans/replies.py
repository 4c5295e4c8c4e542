"""What a client's free text says about one day. A closed grammar: the same text reads the same; doubt is asked back."""

from __future__ import annotations

from dataclasses import dataclass, replace

from plans.checkin import Area, Completion, Flag, Kind, Morning, Place, Side, Why
from plans.doubt import doubt_in
from plans.glossing import GLOSSED, in_english, languages_of
from plans.reading_feel import area_in, body_in, is_sharp, kind_in, place_in, side_in, sore_in
from plans.reading_how import completion_in
from plans.reading_numbers import Pain, bare_number, pain_in, tightness_in
from plans.reading_parts import half_in
from plans.reading_requests import morning_in, request_in
from plans.reading_why import hints_at_why, why_in
from plans.redflags import SUSPECTED, FlagFound, flag_in
from plans.scopes import Said, said
from plans.wording import ends_lines

LANGUAGES = ("en", *GLOSSED)
"""Languages that can be read."""

STRONG = 8
"""From this pain on (0-10) the number alone is a red flag."""
SHARP = 3
"""From this pain on (0-10) a sharp or sudden pain is a red flag."""


@dataclass(frozen=True, slots=True)
class Reply:
    """A reply as read; None means not said. `unsure` means that it would be asked back, about `asked_back`.

    `pain` and `tightness` are 0-10. `lasts` is what was said about a nerve sign. `body` is the part of the body that
    was named, in the client's word; `area` is where a pain is that is elsewhere. `sign` is the red flag's stable key.
    `number` is set when the whole text is one number, with or without a unit, in that unit. `error` says why a number
    was refused.
    """

    completion: Completion | None = None
    pain: int | None = None
    sore: bool = False
    red_flag: Flag | None = None
    side: Side | None = None
    place: Place | None = None
    kind: Kind | None = None
    why: Why | None = None
    unsure: bool = False
    morning: Morning | None = None
    half: bool | None = None
    tightness: int | None = None
    request: str | None = None
    asked_back: str | None = None
    number: float | None = None
    error: str | None = None
    sign: str | None = None
    lasts: bool | None = None
    body: str | None = None
    area: Area | None = None

    def as_json(self) -> dict[str, str | int | bool | None]:
        """The stable part of a reading, as the command `read-reply --json` prints it."""
        return {
            "completion": self.completion,
            "pain": self.pain,
            "sore": self.sore,
            "red_flag": self.red_flag,
            "side": self.side,
            "place": self.place,
            "kind": self.kind,
            "why": self.why,
            "unsure": self.unsure,
        }


def read_reply(text: str, *, language: str = "en") -> Reply:
    """Read one reply of up to 4,096 characters. Raises ValueError for a language that has no word list.

    What says nothing in that language is tried in the others, as people do not always write in their own.

    >>> read_reply("done but my left hamstring hurts 4").pain
    4
    """
    if "\n" in text.strip():
        return _of_lines(_of_text(ends_lines(text), language), _of_text(text, language))
    return _of_text(text, language)


def _of_lines(ended: Reply, joined: Reply) -> Reply:
    """A line break ends a sentence, or only a line: a sign that stands across it is asked about, as is what turns."""
    order = [None, *Flag]
    if order.index(joined.red_flag) > order.index(ended.red_flag):
        return replace(_flagged(ended, joined), unsure=True, asked_back=joined.asked_back or "flag")
    turned = None not in (ended.completion, joined.completion) and ended.completion is not joined.completion
    return replace(ended, unsure=True, asked_back="completion") if turned and ended.red_flag is None else ended


def _of_text(text: str, language: str) -> Reply:
    own, *others = (_read(in_english(text, one), drops_theirs=one == "en") for one in languages_of(text, language))
    found = next((reply for reply in (own, *others) if not _says_nothing(reply)), own)
    if found.red_flag is None:
        flagged = next((reply for reply in others if reply.sign not in (None, SUSPECTED)), None)
        return found if flagged is None else _flagged(found, flagged)
    return found


def _flagged(reply: Reply, other: Reply) -> Reply:
    """A reply with the red flag that was read of it in another language."""
    return replace(
        reply,
        red_flag=other.red_flag,
        sign=other.sign,
        lasts=other.lasts,
        kind=reply.kind or other.kind,
        unsure=other.unsure,
        asked_back=other.asked_back,
    )


def _says_nothing(reply: Reply) -> bool:
    return reply.asked_back == "meaning" and reply.request is None and reply.error is None


def _read(text: str, *, drops_theirs: bool) -> Reply:
    """`drops_theirs`: a sign that is plainly somebody else's is none; elsewhere a verb may not tell whose it is."""
    reply = said(text)
    pain = pain_in(reply)
    kind = kind_in(reply)
    completion, clear = completion_in(reply)
    flag = _graver(_own(flag_in(reply), completion) if drops_theirs else flag_in(reply), _by_number(reply, pain))
    morning, request = morning_in(reply), request_in(reply)
    sore, tightness = sore_in(reply), tightness_in(reply)
    number = bare_number(reply)
    denies = any(reply.negated[i] and unit.concept in ("sore", "dull") for i, unit in enumerate(reply.units))
    nothing = (completion, pain.value, flag, morning, request, tightness) == (None,) * 6 and not (sore or denies)
    why = why_in(reply, completion, pain)
    asked = _asked_back(flag, pain, clear=clear, nothing=nothing or (request == "question" and completion is None))
    if asked is None and why is None and flag is None and request is None and hints_at_why(reply, completion):
        asked = "why"
    found = Reply(
        completion=completion,
        pain=pain.value,
        sore=sore,
        red_flag=flag.level if flag else None,
        side=side_in(reply),
        place=place_in(reply),
        kind=kind,
        why=why,
        unsure=asked is not None,
        morning=morning,
        half=half_in(reply) if completion is Completion.PART else None,
        tightness=tightness,
        request=request,
        asked_back=asked,
        number=number,
        error=pain.error,
        sign=flag.sign if flag else None,
        lasts=flag.lasts if flag else None,
        body=body_in(reply),
        area=area_in(reply) if place_in(reply) is Place.ELSEWHERE else None,
    )
    doubted = doubt_in(reply, found.as_json(), found.red_flag) if asked is None else None
    return found if doubted is None else replace(found, unsure=True, asked_back=doubted)


def _own(flag: FlagFound | None, completion: Completion | None) -> FlagFound | None:
    """The sign unless it is plainly somebody else's and why there was no session: "my dad had a stroke, none today"."""
    short = completion in (Completion.PART, Completion.NONE)
    return None if flag is not None and flag.theirs and short else flag


def _asked_back(flag: FlagFound | None, pain: Pain, *, clear: bool, nothing: bool) -> str | None:
    """What is still to be asked, the most important first; None when the reading is clear."""
    if flag is not None and not flag.sure:
        return "lasts" if flag.sign == "nerve" else "pain" if flag.sign == "sharp" else "flag"
    if pain.error is not None or (pain.asked and flag is None):
        return "pain"
    if not clear:
        return "completion"
    return "meaning" if nothing else None


def _by_number(reply: Said, pain: Pain) -> FlagFound | None:
    """The flags that hang on the number: strong pain, and sharp or sudden pain."""
    whole = (0, len(reply.text))
    if pain.worst >= STRONG:
        return FlagFound(Flag.SAME_DAY, "severe", pain.value == pain.worst, reply.text, whole)
    if is_sharp(reply) and (pain.value is None or pain.value >= SHARP or pain.value == 0):
        return FlagFound(Flag.SAME_DAY, "sharp", bool(pain.value), reply.text, whole)
    if pain.value is None and reply.at("severe") and reply.at("pain", "severe", "dull", "sore"):
        return FlagFound(Flag.SAME_DAY, "severe", False, reply.text, whole)
    return None


def _graver(first: FlagFound | None, second: FlagFound | None) -> FlagFound | None:
    order = {level: rank for rank, level in enumerate(Flag)}
    if first is not None and second is not None and first.sign == SUSPECTED:
        return second
    both = [flag for flag in (first, second) if flag is not None]
    return max(both, key=lambda flag: (order[flag.level], flag.sure), default=None)
