"""What the program logs as an error, and nobody has simulated, is a finding."""

from __future__ import annotations

import logging
from collections.abc import Callable, Iterator
from contextlib import contextmanager
from pathlib import Path

from db.writer import WriterClosed
from tests.simulation.lives import HandlerBroke


class _Errors(logging.Handler):
    """Hears of every error that the program logs; one that was not simulated is a finding."""

    def __init__(self, broken: Callable[[str, str], None]) -> None:
        super().__init__(logging.ERROR)
        self._broken = broken

    def emit(self, record: logging.LogRecord) -> None:
        error = record.exc_info[1] if record.exc_info else None
        if record.getMessage() == "not-drawn" or isinstance(error, HandlerBroke | WriterClosed):
            return
        self._broken("nothing fails", f"{record.getMessage()}: {str(error)[:300]!r} {where(error)}")


_LIBRARY = ("asyncio.py", "concurrency.py", "base.py", "default.py", "session.py", "engine.py", "_application.py")


def where(error: BaseException | None) -> str:
    places = []
    trace = error.__traceback__ if error else None
    while trace is not None:
        code = trace.tb_frame.f_code
        places.append(f"{Path(code.co_filename).name}:{trace.tb_lineno}")
        trace = trace.tb_next
    return " < ".join(reversed([place for place in places if not place.startswith(_LIBRARY)][-8:]))


@contextmanager
def errors_heard(broken: Callable[[str, str], None]) -> Iterator[None]:
    loggers = [logging.getLogger(name) for name in ("bot", "db")]
    handler, before = _Errors(broken), [one.propagate for one in loggers]
    for one in loggers:
        one.addHandler(handler)
        one.propagate = False
    try:
        yield
    finally:
        for one, was in zip(loggers, before, strict=True):
            one.removeHandler(handler)
            one.propagate = was
