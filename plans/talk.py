"""The daily talk as a record: what is asked next is the first thing that is missing, so nothing is ever lost."""

from __future__ import annotations

from dataclasses import replace
from enum import StrEnum

from plans.checkin import Area, CheckIn, Completion, Flag, FlagState, Kind, Place, Side, Why
from plans.redflags import FlagFound
from plans.replies import Reply

HURTS = 3
"""Pain (0-10) that holds a day back: one in doubt stands until it is answered, as more is done for it than for none."""
NERVE_SIGN = "nerve"
"""The key of the red flag that is asked back by whether it lasts."""


class Ask(StrEnum):
    """A question about one day."""

    FLAG = "flag"
    HALF = "half"
    WHY = "why"
    KIND = "kind"
    PLACE = "place"
    AREA = "area"
    PAIN = "pain"


def next_ask(said: CheckIn) -> Ask | None:
    """The first thing that is missing of a check-in that was begun, or None when it is whole.

    >>> next_ask(CheckIn(completion=Completion.DONE))
    <Ask.PAIN: 'pain'>
    """
    if said.flag is not None and said.flag_state is FlagState.UNSURE:
        return Ask.FLAG
    if said.completion is Completion.PART and said.half is None:
        return Ask.HALF
    if said.completion in (Completion.PART, Completion.NONE) and said.why is None:
        return Ask.WHY
    if said.odd and said.kind is None:
        return Ask.KIND
    if said.odd and said.place is None:
        return Ask.PLACE
    if said.odd and said.place is Place.ELSEWHERE and said.area is None:
        return Ask.AREA
    begun = said.odd or said.completion in (Completion.DONE, Completion.PART)
    return Ask.PAIN if begun and said.pain is None else None


def is_begun(said: CheckIn) -> bool:
    """Whether anything about the session or the body was said at all."""
    return said != CheckIn(tightness=said.tightness)


def answered(said: CheckIn, ask: Ask, value: str) -> CheckIn:
    """The check-in with one button's answer in it. Raises ValueError for a value that the question does not have."""
    if ask is Ask.PAIN:
        return replace(said, pain=scale(value))
    if ask is Ask.KIND:
        return _with_kind(said, Kind(value))
    if ask is Ask.HALF:
        if value not in ("yes", "no"):
            raise ValueError(f"{value!r} is neither yes nor no")
        return replace(said, half=value == "yes")
    if ask is Ask.WHY:
        why = Why(value)
        return replace(said, why=why, odd=said.odd or why is Why.PAIN)
    if ask is Ask.PLACE:
        place, _, side = value.partition("-")
        return replace(said, place=Place(place), side=Side(side) if side else None, area=None)
    if ask is Ask.AREA:
        return replace(said, area=Area(value))
    state = FlagState.CONFIRMED if value == "yes" else FlagState.DENIED
    return replace(said, flag_state=state)


def _with_kind(said: CheckIn, kind: Kind) -> CheckIn:
    """Nerve signs are asked back: "is it still there?" A graver flag stays what it is."""
    if kind is not Kind.NERVE or said.flag_state is FlagState.CONFIRMED:
        return replace(said, kind=kind)
    level = said.flag if said.flag in (Flag.SAME_DAY, Flag.EMERGENCY) else Flag.CLINICIAN
    return replace(said, kind=kind, flag=level, flag_state=FlagState.UNSURE)


def scale(value: str) -> int:
    """A number from 0 to 10. Raises ValueError for anything else; a number is never clamped."""
    number = int(value)
    if not 0 <= number <= 10:
        raise ValueError(f"{number} is not on the scale from 0 to 10")
    return number


def _open_and_graver(said: CheckIn, level: Flag | None) -> Flag | None:
    """The flag that is still asked about and weighs more than a new one, which does not take its question away."""
    if said.flag is None or said.flag_state is not FlagState.UNSURE or level is None:
        return None
    order = list(Flag)
    return said.flag if order.index(said.flag) > order.index(level) else None


def merged(said: CheckIn, reply: Reply, flag: FlagFound | None) -> CheckIn:
    """The check-in with a typed reply in it: what it says replaces, what it leaves out or leaves in doubt stays.

    A pain in doubt is taken all the same from `HURTS` on.

    `flag` is a sign in the same words. Words that sound grave without a sign or number ("unbearable") are an unsure
    flag. A confirmed flag stays confirmed whatever comes after; a number after it may only rise.
    """
    new = {
        name: value
        for name in ("completion", "pain", "kind", "place", "area", "side", "why", "half", "tightness")
        if (value := getattr(reply, name)) is not None
        and (name != reply.asked_back or (name == "pain" and value >= HURTS))
    }
    changed = replace(said, **new, sore=said.sore or reply.sore)
    if reply.why is Why.PAIN or (reply.kind is not None and reply.pain is None):
        changed = replace(changed, odd=True)
    if said.flag is not None and said.flag_state is FlagState.CONFIRMED:
        worst = max((pain for pain in (said.pain, changed.pain) if pain is not None), default=None)
        return replace(changed, pain=worst)
    graver = _open_and_graver(said, flag.level if flag is not None else reply.red_flag)
    if graver is not None:
        sure = flag is not None and flag.sure
        return replace(changed, flag=graver, flag_state=FlagState.CONFIRMED if sure else FlagState.UNSURE)
    if flag is not None and flag.sign == NERVE_SIGN and not flag.sure and not flag.doubted:
        state = FlagState.DENIED if flag.lasts is False else FlagState.UNSURE
        return replace(changed, kind=Kind.NERVE, odd=True, flag=flag.level, flag_state=state)
    if flag is not None and flag.sure:
        return replace(changed, flag=flag.level, flag_state=FlagState.CONFIRMED)
    if flag is not None:  # what kind it is stays open with it
        return replace(changed, kind=said.kind, odd=said.odd, flag=flag.level, flag_state=FlagState.UNSURE)
    if reply.red_flag is not None and reply.unsure and reply.pain is None:
        return replace(changed, flag=reply.red_flag, flag_state=FlagState.UNSURE)
    return changed
