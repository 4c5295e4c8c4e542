"""A message as a value: text in the platform's HTML, and rows of buttons under it."""

from __future__ import annotations

from dataclasses import dataclass
from typing import Any

from markupsafe import Markup

ON_PHONE = 40
"""Characters that fit on a button of one row on a narrow phone."""


@dataclass(frozen=True, slots=True)
class Button:
    """A label, and what its tap sends back (at most 64 bytes, checked here)."""

    label: str
    data: str

    def __post_init__(self) -> None:
        if not 1 <= len(self.data.encode()) <= 64:
            raise ValueError(f"button data {self.data!r} must have 1 to 64 bytes")


Rows = tuple[tuple[Button, ...], ...]


@dataclass(frozen=True, slots=True)
class Message:
    """What leaves: escaped text and buttons. An empty `rows` takes the buttons of an edited message away."""

    text: Markup
    rows: Rows = ()

    def payload(self) -> dict[str, Any]:
        """The arguments of the platform's method, without chat and message."""
        found: dict[str, Any] = {
            "text": str(self.text),
            "parse_mode": "HTML",
            "link_preview_options": {"is_disabled": True},
        }
        if self.rows:
            keyboard = [[{"text": b.label, "callback_data": b.data} for b in row] for row in self.rows]
            found["reply_markup"] = {"inline_keyboard": keyboard}
        return found


def joined(*parts: Markup | str | None) -> Markup:
    """Paragraphs, one blank line between them; what is empty is left out."""
    return Markup("\n\n").join(part for part in parts if part)


def column(*buttons: Button) -> Rows:
    """Buttons one below the other."""
    return tuple((button,) for button in buttons)
