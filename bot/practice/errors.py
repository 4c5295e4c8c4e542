"""The platform's errors, as it answers them."""

from __future__ import annotations

from typing import Any


class ApiError(Exception):
    """An error answer: its code, its words, and for 429 the seconds to wait."""

    def __init__(self, code: int, description: str, *, retry_after: int | None = None) -> None:
        super().__init__(description)
        self.code = code
        self.description = description
        self.retry_after = retry_after

    def as_json(self) -> dict[str, Any]:
        """The answer's body."""
        body: dict[str, Any] = {"ok": False, "error_code": self.code, "description": self.description}
        if self.retry_after is not None:
            body["parameters"] = {"retry_after": self.retry_after}
        return body


def bad(what: str) -> ApiError:
    """A request that cannot be done as it was asked: code 400 and what is wrong with it."""
    return ApiError(400, f"Bad Request: {what}")


def too_many(seconds: int) -> ApiError:
    """More requests than are let through: code 429 and the seconds to wait."""
    return ApiError(429, f"Too Many Requests: retry after {seconds}", retry_after=seconds)
