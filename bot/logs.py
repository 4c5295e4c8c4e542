"""Log records: one line each, an action name and ids; nothing that a person wrote or scored, and never the token."""

from __future__ import annotations

import json
import logging
from typing import Any

from bot.transport import quiet_library_logs

ALLOWED = frozenset(
    {"bot", "chat", "count", "error", "kind", "outbox", "pause", "reason", "state", "subject", "tries", "update"}
)
"""The only facts that a record may carry."""


class OneLine(logging.Formatter):
    """A record as one JSON object: time, level, action, allowed facts, and of an error its class and places."""

    def format(self, record: logging.LogRecord) -> str:
        found: dict[str, Any] = {
            "at": self.formatTime(record, "%Y-%m-%dT%H:%M:%S"),
            "level": record.levelname.lower(),
            "action": record.msg if record.name.startswith(("bot", "db")) else record.name,
        }
        found |= {name: value for name, value in vars(record).items() if name in ALLOWED}
        if record.exc_info and record.exc_info[0] is not None:
            found["error"] = record.exc_info[0].__name__
            found["where"] = _places(record.exc_info[2])
        return json.dumps(found, default=str)


def _places(trace: Any) -> list[str]:
    """Files and lines of a traceback, innermost last; never the text of an error, which may quote somebody."""
    places = []
    while trace is not None:
        code = trace.tb_frame.f_code
        places.append(f"{code.co_filename.rpartition('/')[2]}:{trace.tb_lineno} {code.co_name}")
        trace = trace.tb_next
    return places[-12:]


def set_up_logs(level: str) -> None:
    """Sends this program's records to standard error; libraries are heard from warnings on, the chat library never."""
    handler = logging.StreamHandler()
    handler.setFormatter(OneLine())
    logging.basicConfig(level=logging.WARNING, handlers=[handler], force=True)
    logging.getLogger("apscheduler").setLevel(logging.ERROR)  # a tick that waits for another is no news
    for name in ("bot", "db"):
        logging.getLogger(name).setLevel(level.upper())
    quiet_library_logs()
