"""A message as a value: text in the platform's HTML, buttons under it, and a picture still to be drawn."""

from __future__ import annotations

import hashlib
import json
import re
from collections.abc import Mapping
from dataclasses import dataclass, replace
from functools import cached_property
from html import unescape
from importlib.metadata import version
from typing import Any

from markupsafe import Markup

from bot.words.direction import isolated

BY = version("easeward")
"""Which version of this program draws: a later one may draw better."""

CAPTION = 1024
"""Characters of a caption, as the platform counts them: in UTF-16, without the tags (Bot API, sendPhoto)."""

_TAG = re.compile(r"</?[a-z][^>]*>")

ON_PHONE = 40
"""Characters that fit on a button of one row on a narrow phone."""


def shortened(label: str, most: int) -> str:
    """A label of at most so many characters, with an ellipsis for what is beyond.

    >>> shortened("Hips and hamstrings for the boathouse", 20)
    'Hips and hamstrings…'
    """
    return label if len(label) <= most else f"{label[: most - 1].rstrip()}…"


@dataclass(frozen=True, slots=True)
class Button:
    """A label, and what its tap sends back (at most 64 bytes, checked here)."""

    label: str
    data: str

    def __post_init__(self) -> None:
        if not 1 <= len(self.data.encode()) <= 64:
            raise ValueError(f"button data {self.data!r} must have 1 to 64 bytes")


Rows = tuple[tuple[Button, ...], ...]


@dataclass(frozen=True)
class Picture:
    """A picture that is still to be drawn: what kind it is of, and what is on it, in plain values.

    What is on a personal one is kept with its message only, and goes with it.
    """

    kind: str
    of: Mapping[str, Any]
    ending: str = "png"
    personal: bool = False

    @property
    def recipe(self) -> dict[str, Any]:
        """What is drawn, and by which version of this program."""
        return {"kind": self.kind, "of": self.of, "ending": self.ending, "by": BY}

    @property
    def filename(self) -> str:
        """The name of the file."""
        return f"{self.kind}.{self.ending}"

    @property
    def method(self) -> str:
        """How the platform is asked to show it."""
        return "send_photo" if self.ending == "png" else "send_animation"

    @cached_property
    def digest(self) -> str:
        """What stands for all that is on the picture."""
        return hashlib.sha256(json.dumps(self.recipe, sort_keys=True).encode()).hexdigest()


@dataclass(frozen=True, slots=True)
class Message:
    """What leaves: escaped text and buttons. An empty `rows` takes the buttons of an edited message away.

    With a picture the text is its caption; where it is too long for one the message goes without the picture.
    """

    text: Markup
    rows: Rows = ()
    picture: Picture | None = None

    @property
    def picture_digest(self) -> str | None:
        """What stands for the picture that it leaves with."""
        picture = self.fitting().picture
        return picture.digest if picture else None

    @property
    def is_caption(self) -> bool:
        """Whether the text is short enough to stand under a picture."""
        return _units(self.text) <= CAPTION

    def in_words(self) -> Message:
        """The message without its picture."""
        return replace(self, picture=None)

    def fitting(self) -> Message:
        """The message as it can leave: without its picture if the text is no caption."""
        if self.picture is None or self.is_caption:
            return self
        return self.in_words()

    def shows_in(self, picture: str | None) -> bool:
        """Whether a message that carries a picture, or none, can be changed into this one."""
        if picture is None:
            return self.picture_digest is None
        return _units(self.text) <= CAPTION

    def payload(self) -> dict[str, Any]:
        """The arguments of the platform's method, without chat, message and file."""
        found: dict[str, Any] = {"parse_mode": "HTML"}
        if self.picture is not None:
            found |= {"caption": isolated(str(self.text))}
        else:
            found |= {"text": isolated(str(self.text)), "link_preview_options": {"is_disabled": True}}
        if self.rows:
            keyboard = [[{"text": isolated(b.label), "callback_data": b.data} for b in row] for row in self.rows]
            found["reply_markup"] = {"inline_keyboard": keyboard}
        return found


def joined(*parts: Markup | str | None) -> Markup:
    """Paragraphs, one blank line between them; what is empty is left out."""
    return Markup("\n\n").join(part for part in parts if part)


def column(*buttons: Button) -> Rows:
    """Buttons one below the other."""
    return tuple((button,) for button in buttons)


def _units(text: Markup) -> int:
    return len(unescape(_TAG.sub("", text)).encode("utf-16-le")) // 2
