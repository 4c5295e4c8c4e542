"""What a request of people's side asks for, field by field; what is wrong with a field is said by its name."""

from __future__ import annotations

import base64
from collections.abc import Mapping
from typing import Any

from aiohttp import web


async def body_of(request: web.Request) -> dict[str, Any]:
    """A request's JSON object. Raises ValueError."""
    try:
        body = await request.json()
    except ValueError as error:
        raise ValueError("the request's body is no JSON: send an object") from error
    if not isinstance(body, dict):
        raise ValueError(f"the request's body is a {type(body).__name__}: send a JSON object")
    return body


def number_of(body: Mapping[str, Any], name: str) -> int:
    """A field that is a whole number. Raises ValueError."""
    value = body.get(name)
    if isinstance(value, bool) or not isinstance(value, int):
        raise ValueError(f"{name} is {value!r}: a whole number is needed")
    return value


def degrees_of(body: Mapping[str, Any], name: str) -> float:
    """A field that is a number of degrees. Raises ValueError."""
    value = body.get(name)
    if isinstance(value, bool) or not isinstance(value, int | float):
        raise ValueError(f"{name} is {value!r}: degrees are needed, such as 38.72")
    return float(value)


def text_of(body: Mapping[str, Any], name: str, default: str | None = None) -> str:
    """A field that is a text of whole characters, not empty without a default. Raises ValueError."""
    value = body.get(name, default)
    if not isinstance(value, str) or (not value and default is None):
        raise ValueError(f"{name} is {value!r}: a text is needed")
    if any("\ud800" <= character <= "\udfff" for character in value):
        raise ValueError(f"{name} holds half a character: a text of whole ones is needed")
    return value


def first_name_of(body: Mapping[str, Any]) -> str | None:
    """The first name that somebody new is given; None for none. Raises ValueError."""
    return text_of(body, "first_name", "").strip()[:64] or None


def bytes_of(body: Mapping[str, Any]) -> bytes:
    """The file in a body. Raises ValueError."""
    try:
        return base64.b64decode(text_of(body, "base64"), validate=True)
    except ValueError as error:
        raise ValueError(f"base64 cannot be read: {error}") from error


def asked_of(request: web.Request, name: str, default: float | None = None) -> float:
    """A number from 0 in the query. Raises ValueError."""
    text = request.query.get(name)
    if text is None and default is not None:
        return default
    try:
        found = float(text or "")
    except ValueError as error:
        raise ValueError(f"{name} is {text!r}: a number is needed") from error
    if not 0 <= found < 2**52:
        raise ValueError(f"{name} is {text!r}: a number from 0 is needed")
    return found
