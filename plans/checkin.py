"""What a client has said about one day. Completion and feeling are two facts; neither hides the other."""

from __future__ import annotations

from collections.abc import Mapping
from dataclasses import dataclass
from enum import StrEnum
from typing import Any


class Completion(StrEnum):
    """How much of the session was done."""

    DONE = "done"
    PART = "part"
    NONE = "none"


class Kind(StrEnum):
    """What a pain feels like, ordered from the mildest meaning to the gravest."""

    DULL_BOTH = "dull-both"
    DULL_ONE = "dull-one"
    OTHER = "other"
    SHARP = "sharp"
    NERVE = "nerve"
    POP = "pop"


class Why(StrEnum):
    """Why a session was cut short or left out."""

    TIME = "time"
    TOO_HARD = "too-hard"
    PAIN = "pain"
    ILL = "ill"
    OTHER = "other"


class Place(StrEnum):
    """Whether the pain is where the programme works, or somewhere else."""

    HERE = "here"
    ELSEWHERE = "elsewhere"


class Area(StrEnum):
    """A part of the body that hurts, apart from where the programme works."""

    NECK = "neck"
    SHOULDER = "shoulder"
    ARM = "arm"
    UPPER_BACK = "upper-back"
    LOWER_BACK = "lower-back"
    HIP = "hip"
    THIGH = "thigh"
    KNEE = "knee"
    CALF_OR_FOOT = "calf-or-foot"
    OTHER = "other"


class Side(StrEnum):
    """Which side of the body."""

    LEFT = "left"
    RIGHT = "right"
    BOTH = "both"


class Flag(StrEnum):
    """A red flag's level: whom to see, and how soon. Later members are graver."""

    CLINICIAN = "clinician"
    SAME_DAY = "same-day"
    EMERGENCY = "emergency"


class FlagState(StrEnum):
    """Whether a red flag is confirmed. `UNSURE` waits for the person's own yes or no."""

    UNSURE = "unsure"
    CONFIRMED = "confirmed"
    DENIED = "denied"


class Morning(StrEnum):
    """The answer to "how is it now?", the morning after pain or soreness."""

    SETTLED = "settled"
    SAME = "same"
    WORSE = "worse"


@dataclass(frozen=True, slots=True)
class CheckIn:
    """Everything that a client has said about one day; a field that is None was not said.

    `pain` is 0-10, the worst since the last session began, apart from the stretch feeling. `tightness` is 0-10.
    `area` names where a pain is that is elsewhere. `half` says of a part whether it was half or more. `sore` are
    soreness words that are no pain number. `odd` says that the client reported something to be asked about in full:
    kind, place and number.
    """

    completion: Completion | None = None
    pain: int | None = None
    kind: Kind | None = None
    place: Place | None = None
    area: Area | None = None
    side: Side | None = None
    why: Why | None = None
    half: bool | None = None
    sore: bool = False
    odd: bool = False
    tightness: int | None = None
    flag: Flag | None = None
    flag_state: FlagState | None = None


_WORDS: Mapping[str, type[StrEnum]] = {
    "completion": Completion,
    "kind": Kind,
    "place": Place,
    "area": Area,
    "side": Side,
    "why": Why,
    "flag": Flag,
    "flag_state": FlagState,
}
"""The fields of a check-in that are kept as words, and of which words."""


def as_kept(values: Mapping[str, Any]) -> CheckIn:
    """The check-in of these fields as they are kept. Raises ValueError for a word that this version does not know."""
    read: dict[str, Any] = {
        name: _WORDS[name](value) if name in _WORDS and value is not None else value for name, value in values.items()
    }
    return CheckIn(**read)
