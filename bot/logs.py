"""Log records: one JSON object a line, made of closed vocabularies, so that nothing which a person wrote can get in.

What a record may carry is listed here: actions, names of facts, and the values that a fact may have. Everything else is
written as a mark, whoever logs it: a token, a person's words, a library's text with an address in it.
"""

from __future__ import annotations

import json
import logging
import re
import sys
import threading
from collections.abc import Callable, Mapping
from datetime import UTC, datetime
from types import TracebackType
from typing import Any

from bot.transport import quiet_library_logs
from db.delivery import Kind, Reason, State
from db.due import DueKind

ACTIONS = frozenset(
    {
        "claim-again",
        "clock-wrong",
        "crashed",
        "database-away",
        "document-not-fetched",
        "lead-lost",
        "lead-not-renewed",
        "leading",
        "lease-lost",
        "link-opened",
        "link-refused",
        "listener-stopped",
        "listening-again",
        "loops-left",
        "not-allowed",
        "not-drawn",
        "not-well",
        "ping-failed",
        "planned-by-new-zone-data",
        "planning-failed",
        "platform-not-reached",
        "polling-conflict",
        "polling-failed",
        "rehearsal-failed",
        "send-failed",
        "sending-recovered",
        "sent-after-lease",
        "serving",
        "stopped",
        "stopped-hard",
        "telling-failed",
        "tick-failed",
        "tick-put-off",
        "transaction-again",
        "update-failed",
        "update-lease-lost",
        "update-not-stored",
        "updates-stored",
        "way-in-not-set",
        "webhook-refused",
        "well-again",
    }
)
"""All that this program logs, by name."""

TROUBLES = frozenset({"ticks", "due", "alerts-wait", "sending", "backup", "clock", "database"})
"""What `not-well` may name: see bot/wellbeing.py."""

NAMES = frozenset({"all", "updates", "sender", "lease-lost", *TROUBLES, *Kind, *State, *Reason, *DueKind})
"""What a kind, a reason or a state may be."""

MARK = "[left out]"
"""Stands for whatever may not be in a record."""

Fits = Callable[[Any], bool]


def _number(value: Any) -> bool:
    return isinstance(value, int | float)


def _name(value: Any) -> bool:
    return isinstance(value, str) and value in NAMES


def _error(value: Any) -> bool:
    """Whether a value is the name of an exception class of this process."""
    if not isinstance(value, str) or not value.isidentifier():
        return False
    return value in _known_errors or value in _look_for_errors()


_known_errors: set[str] = set()


def _look_for_errors() -> set[str]:
    queue: list[type[BaseException]] = [BaseException]
    _known_errors.clear()
    while queue:
        one = queue.pop()
        _known_errors.add(one.__name__)
        queue += type.__subclasses__(one)
    return _known_errors


_BOT = re.compile(r"[A-Za-z][A-Za-z0-9_]{0,27}bot", re.IGNORECASE)
"""A bot's user name (the platform's rule: letters, digits, underscores, ends in bot)."""

FACTS: Mapping[str, Fits] = {
    "bot": lambda value: isinstance(value, str) and _BOT.fullmatch(value) is not None,
    "chat": _number,
    "count": _number,
    "error": _error,
    "kind": _name,
    "outbox": _number,
    "pause": _number,
    "reason": _name,
    "state": _name,
    "subject": _number,
    "tries": _number,
    "update": _number,
}
"""The only facts that a record may carry, and what each may be."""


class OneLine(logging.Formatter):
    """A record as one JSON object: time (UTC), level, process, action, allowed facts; of an error its class, places."""

    def format(self, record: logging.LogRecord) -> str:
        found: dict[str, Any] = {
            "at": datetime.fromtimestamp(record.created, UTC).isoformat(timespec="milliseconds"),
            "level": logging.getLevelName(record.levelno).lower() if record.levelno in _LEVELS else "other",
            "process": record.process,
            "action": _action(record),
        }
        given = vars(record)
        found |= {name: _allowed(fits, given[name]) for name, fits in FACTS.items() if name in given}
        if isinstance(record.exc_info, tuple) and record.exc_info[0] is not None:
            found["error"] = _allowed(_error, record.exc_info[0].__name__)
            found["where"] = _places(record.exc_info[2])
        return json.dumps(found)


_LEVELS = frozenset({logging.DEBUG, logging.INFO, logging.WARNING, logging.ERROR, logging.CRITICAL})


def _allowed(fits: Fits, value: Any) -> Any:
    return value if value is None or fits(value) else MARK


def _action(record: logging.LogRecord) -> str:
    """Of our own records the action; of a library's only which library it is."""
    package = record.name.partition(".")[0]
    if package in ("bot", "db"):
        return record.msg if isinstance(record.msg, str) and record.msg in ACTIONS else MARK
    return package if package == "py" or package in sys.modules else "other"


_PLACE = re.compile(r"[A-Za-z0-9_.<>-]{1,80}")


def _places(trace: TracebackType | None) -> list[str]:
    """Files and lines of a traceback, innermost last; never the text of an error, which may quote somebody."""
    places = []
    while trace is not None:
        code = trace.tb_frame.f_code
        names = (code.co_filename.rpartition("/")[2], code.co_name)
        file, name = (one if _PLACE.fullmatch(one) else MARK for one in names)
        places.append(f"{file}:{trace.tb_lineno} {name}")
        trace = trace.tb_next
    return places[-12:]


def set_up_logs(level: str) -> None:
    """Sends this program's records to standard error; libraries are heard from warnings on, the chat library never.

    What nobody catches becomes a record too: Python would print an error with its text, which may quote somebody.
    """
    handler = logging.StreamHandler()
    handler.setFormatter(OneLine())
    logging.basicConfig(level=logging.WARNING, handlers=[handler], force=True)
    logging.raiseExceptions = False  # a record that cannot be written is not printed either
    logging.captureWarnings(True)
    logging.getLogger("apscheduler").setLevel(logging.ERROR)  # a tick that waits for another is no news
    for name in ("bot", "db"):
        logging.getLogger(name).setLevel(level.upper())
    quiet_library_logs()
    catch_the_rest()


def catch_the_rest() -> None:
    """From now on an error that nobody catches, in whichever thread, is a record with its class and places."""
    log = logging.getLogger(__name__)

    def crashed(kind: type[BaseException], error: BaseException | None, trace: TracebackType | None) -> None:
        log.critical("crashed", exc_info=(kind, error or kind(), trace))

    sys.excepthook = crashed
    threading.excepthook = lambda args: crashed(args.exc_type, args.exc_value, args.exc_traceback)
    sys.unraisablehook = lambda args: crashed(args.exc_type, args.exc_value, args.exc_traceback)
