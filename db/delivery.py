"""What becomes of a message that did not simply arrive: a pure table, no clock, no database, no chat."""

from __future__ import annotations

import html
import re
from collections.abc import Mapping
from dataclasses import dataclass
from enum import StrEnum
from typing import Any

LONGEST_PAUSE = 300.0
"""Seconds: the longest pause between two tries of one message. Our own choice."""

ENOUGH = 5
"""After so many tries a message holds up no other, is not repeated for lost answers, and an alert that the platform
refuses waits for its next call. Our own choice."""

REPEATED = "Sent again: it is not certain that this reached you before."
"""The line above a repeated alert when its payload brings none of its own."""


class Kind(StrEnum):
    """What a message is for; it decides how an unknown outcome is dealt with."""

    ALERT = "alert"
    ANSWER = "answer"
    EDIT = "edit"
    TAP = "tap"
    SESSION = "session"
    NUDGE = "nudge"
    DIGEST = "digest"
    TIMER = "timer"


LANES: Mapping[Kind, int] = {
    Kind.ALERT: 0,
    Kind.ANSWER: 1,
    Kind.EDIT: 1,
    Kind.TAP: 1,
    Kind.SESSION: 2,
    Kind.NUDGE: 3,
    Kind.DIGEST: 4,
    Kind.TIMER: 5,
}
"""How urgent each kind is; 0 goes first."""


class State(StrEnum):
    """Where a message stands. Sent, refused, unknown and skipped are final."""

    WAITING = "waiting"
    LEASED = "leased"
    SENDING = "sending"
    SENT = "sent"
    REFUSED = "refused"
    UNKNOWN = "unknown"
    SKIPPED = "skipped"


FINAL = frozenset({State.SENT, State.REFUSED, State.UNKNOWN, State.SKIPPED})
"""From then on a message's content is not kept: what it told is in the ledger, in somebody's own words nowhere else."""


class Reason(StrEnum):
    """Why a message did not simply arrive."""

    NEVER_CONNECTED = "never-connected"
    TOO_MANY = "too-many"
    SERVER_ERROR = "server-error"
    ANSWER_LOST = "answer-lost"
    BLOCKED = "blocked"
    NOT_MODIFIED = "not-modified"
    QUERY_TOO_OLD = "query-too-old"
    BAD_REQUEST = "bad-request"
    TOKEN_REFUSED = "token-refused"
    NOT_DRAWN = "not-drawn"
    FILE_FORGOTTEN = "file-forgotten"
    BROKEN = "broken"


@dataclass(frozen=True, slots=True)
class Failure:
    """One failed try. `retry_after` is seconds, given with too-many; `name` is the error's class name."""

    reason: Reason
    name: str
    retry_after: float = 0.0


@dataclass(frozen=True, slots=True)
class Next:
    """What follows from a failed try: the state, its reason, and what changes before another try.

    `pause` is seconds before the next try. `plain` takes the markup away, `repeat` marks it as a repeat, `in_words`
    takes the picture away.
    """

    state: State
    why: str | None = None
    pause: float = 0.0
    plain: bool = False
    repeat: bool = False
    in_words: bool = False
    unreachable: bool = False


def backoff(attempts: int) -> float:
    """Seconds before the next try after `attempts` tries: 1, 2, 4 … up to `LONGEST_PAUSE`.

    >>> [backoff(n) for n in (1, 2, 3, 20)]
    [1.0, 2.0, 4.0, 300.0]
    """
    return min(LONGEST_PAUSE, 2.0 ** min(attempts - 1, 30))


def after_failure(failure: Failure, *, kind: Kind, attempts: int, marked_up: bool, pictured: bool = False) -> Next:
    """What becomes of a message of `kind` after its try number `attempts` failed.

    `marked_up` says that the payload still has a parse mode, so that it can be tried as plain text; `pictured`, that
    it is a picture with a caption, so that its words can go alone.
    """
    match failure.reason:
        case Reason.NOT_DRAWN if pictured and kind is Kind.EDIT and attempts < ENOUGH:
            return Next(State.WAITING, why=failure.name, pause=backoff(attempts))
        case Reason.NOT_DRAWN if pictured:
            return Next(State.WAITING, why=failure.name, in_words=True)
        case Reason.FILE_FORGOTTEN if attempts < ENOUGH:
            return Next(State.WAITING, why=failure.name)
        case Reason.NOT_MODIFIED | Reason.QUERY_TOO_OLD:
            return Next(State.SENT, why=failure.reason)
        case Reason.ANSWER_LOST:
            return _after_lost_answer(kind, attempts, failure.name)
        case Reason.BLOCKED:
            return Next(State.REFUSED, why=failure.name, unreachable=True)
        case Reason.BAD_REQUEST if marked_up:
            return Next(State.WAITING, why=failure.name, plain=True)
        case Reason.BAD_REQUEST if pictured:
            return Next(State.WAITING, why=failure.name, in_words=True)
        case Reason.BAD_REQUEST if kind is Kind.ALERT and attempts < ENOUGH:
            return Next(State.WAITING, why=failure.name, pause=backoff(attempts))
        case Reason.BAD_REQUEST | Reason.BROKEN | Reason.NOT_DRAWN | Reason.FILE_FORGOTTEN:
            return Next(State.REFUSED, why=failure.name)
        case Reason.TOO_MANY:
            return Next(State.WAITING, why=failure.name, pause=failure.retry_after)
        case _:
            return Next(State.WAITING, why=failure.name, pause=backoff(attempts))


def _after_lost_answer(kind: Kind, attempts: int, name: str) -> Next:
    if kind is Kind.ALERT:
        return Next(State.WAITING, why=name, pause=backoff(attempts), repeat=True)
    if kind in (Kind.ANSWER, Kind.EDIT, Kind.TAP) and attempts < ENOUGH:
        return Next(State.WAITING, why=name, pause=backoff(attempts))
    return Next(State.UNKNOWN, why=name)


def changed(payload: Mapping[str, Any], following: Next) -> dict[str, Any]:
    """The payload of the next try: without picture, plain, marked as a repeat, or as it was."""
    result = words_alone(payload) if following.in_words else dict(payload)
    if following.plain:
        result = without_markup(result)
    return as_repeat(result) if following.repeat else result


def without_markup(payload: Mapping[str, Any]) -> dict[str, Any]:
    """The same message as plain text, for when the platform cannot read its markup.

    >>> without_markup({"text": "<b>2 &lt; 3</b>", "parse_mode": "HTML"})
    {'text': '2 < 3'}
    """
    plain = {key: value for key, value in payload.items() if key != "parse_mode"}
    for key in ("text", "caption"):
        if key in plain:
            plain[key] = html.unescape(re.sub(r"</?[a-zA-Z][^<>]*>", "", plain[key]))
    return plain


PICTURED = frozenset(("send_photo", "send_animation", "send_video", "edit_message_media"))
"""What brings a picture with words. Those go alone as a new message: no old picture stays above new words."""

CAPTIONED = frozenset(("send_photo", "send_animation", "send_video", "send_document"))
"""What is sent so has a caption in the place of a text."""


def is_pictured(method: str, payload: Mapping[str, Any]) -> bool:
    """Whether a message is a picture with words."""
    return method in PICTURED and bool(payload.get("caption"))


def words_alone(payload: Mapping[str, Any]) -> dict[str, Any]:
    """A picture's message without the picture.

    >>> words_alone({"photo": {"attachment": "d"}, "caption": "Day 3", "parse_mode": "HTML"})
    {'text': 'Day 3', 'link_preview_options': {'is_disabled': True}, 'parse_mode': 'HTML'}
    """
    others = {key: value for key, value in payload.items() if key not in ("photo", "animation", "video", "caption")}
    return {"text": payload["caption"], "link_preview_options": {"is_disabled": True}, **others}


def as_repeat(payload: Mapping[str, Any]) -> dict[str, Any]:
    """The same message with a line above it that says it may have come before; said once only.

    >>> as_repeat({"text": "Please look.", "again": "Sent again."})["text"]
    'Sent again.\\n\\nPlease look.'
    """
    line = payload.get("again", REPEATED)
    key = "caption" if "caption" in payload else "text"
    text = payload.get(key, "")
    return {**payload, key: text if text.startswith(line) else f"{line}\n\n{text}"}
