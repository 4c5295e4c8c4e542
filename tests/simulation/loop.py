"""An event loop without time of its own: nothing sleeps, the clock stands until it is moved, no run differs."""

from __future__ import annotations

import asyncio
import selectors
from collections.abc import Callable, Coroutine
from contextvars import Context, ContextVar
from typing import Any, TypeVar

T = TypeVar("T")

Problem = Callable[[BaseException], None]


class Stuck(RuntimeError):
    """Nothing can go on, and nobody waits for quiet."""


class NumberedTask(asyncio.Task[Any]):
    """A task that hashes by its number, so that a set of tasks has the same order in every run."""

    def __init__(self, number: int, coro: Coroutine[Any, Any, Any], **more: Any) -> None:
        self.number = number
        super().__init__(coro, **more)

    def __hash__(self) -> int:
        return self.number


OWNED: ContextVar[set[NumberedTask] | None] = ContextVar("owned", default=None)
"""Where the tasks are kept that begin in this context, so that all of a process can be ended at once."""


class _Still(selectors.SelectSelector):
    """Never waits: that nothing is ready is told instead."""

    def __init__(self, quiet: Callable[[], None]) -> None:
        super().__init__()
        self._quiet = quiet

    def select(self, timeout: float | None = None) -> list[tuple[selectors.SelectorKey, int]]:
        if timeout is None or timeout > 0:
            self._quiet()
        return []


class StillLoop(asyncio.SelectorEventLoop):
    """A loop whose time is moved by `advance`; `quiet()` returns when nothing can go on before that."""

    def __init__(self) -> None:
        self._at = 0.0
        self._count = 0
        self._waiting: asyncio.Future[None] | None = None
        super().__init__(_Still(self._nothing_ready))
        self.set_task_factory(self._numbered)  # type: ignore[arg-type]

    def time(self) -> float:
        return self._at

    def advance(self, seconds: float) -> None:
        """Lets so many seconds pass at once."""
        self._at += max(0.0, seconds)

    def pass_over(self, seconds: float) -> None:
        """Lets so many seconds pass in which everybody would only look and wait again: no timer goes off."""
        for handle in self._scheduled:  # type: ignore[attr-defined]
            handle._when += max(0.0, seconds)
        self.advance(seconds)

    def until_timer(self) -> float | None:
        """Seconds until the next timer goes off; None when there is none."""
        moments = [handle.when() for handle in self._scheduled if not handle.cancelled()]  # type: ignore[attr-defined]
        return max(0.0, min(moments) - self._at) if moments else None

    async def quiet(self) -> None:
        """Returns when nothing is ready any more."""
        self._waiting = self.create_future()
        await self._waiting

    def _nothing_ready(self) -> None:
        waiting, self._waiting = self._waiting, None
        if waiting is None:
            raise Stuck("nothing is ready and nobody moves the clock")
        waiting.set_result(None)

    def _numbered(
        self, _loop: asyncio.AbstractEventLoop, coro: Coroutine[Any, Any, T], context: Context | None = None
    ) -> NumberedTask:
        self._count += 1
        task = NumberedTask(self._count, coro, loop=self, context=context)
        owned = OWNED.get()
        if owned is not None:
            owned.add(task)
            task.add_done_callback(owned.discard)
        return task


def run(main: Callable[[StillLoop], Coroutine[Any, Any, T]], problem: Problem) -> T:
    """Runs `main` on a loop of its own; `problem` hears of errors that nobody waited for."""
    loop = StillLoop()
    loop.set_exception_handler(lambda _loop, context: _heard(context, problem))
    try:
        return loop.run_until_complete(main(loop))
    finally:
        loop.close()


def _heard(context: dict[str, Any], problem: Problem) -> None:
    problem(context.get("exception") or RuntimeError(str(context.get("message"))))
