"""What somebody sees on their telephone: the messages of one chat as they stand, and what can be done with them."""

from __future__ import annotations

from collections.abc import Iterator, Mapping
from dataclasses import dataclass
from typing import Any

from bot.practice.platform import NoSuch, Platform
from bot.practice.shapes import buttons

KEPT = 30
"""Messages that somebody scrolls back over."""


@dataclass(frozen=True, slots=True)
class Seen:
    """A message on the telephone."""

    id: int
    text: str
    buttons: tuple[tuple[str, str], ...]
    """(label, data) of each."""

    def offers(self, *beginning: str) -> list[str]:
        """The data of the buttons that begin with one of these."""
        return [data for _label, data in self.buttons if data.startswith(beginning)]


class Phone:
    """One chat."""

    def __init__(self, platform: Platform, chat: int, name: str) -> None:
        self._platform = platform
        self.chat = chat
        self.name = name
        self.messages: dict[int, Seen] = {}
        self.blocked = False

    def shows(self, body: Mapping[str, Any]) -> Seen:
        """A message that came or was changed."""
        rows = [(b["text"], b["callback_data"]) for row in buttons(body) for b in row if "callback_data" in b]
        seen = Seen(body["message_id"], str(body.get("text") or body.get("caption") or ""), tuple(rows))
        self.messages[seen.id] = seen
        while len(self.messages) > KEPT:
            del self.messages[min(self.messages)]
        return seen

    def newest(self) -> Iterator[Seen]:
        """The messages, the newest first."""
        return iter([self.messages[n] for n in sorted(self.messages, reverse=True)])

    def says(self, text: str) -> None:
        """Types something."""
        if not self.blocked:
            self._platform.say(self.chat, text, first_name=self.name)

    def sends(self, name: str, body: bytes) -> None:
        """Sends a file."""
        if self.blocked:
            return
        self._platform.send_document(self.chat, name, body)

    def taps(self, message: Seen, data: str) -> None:
        """Taps a button that is, or was, under a message."""
        if self.blocked:
            return
        try:
            self._platform.tap(self.chat, message.id, data)
        except NoSuch:
            self._platform.forge_tap(self.chat, message.id, data)

    def blocks(self, on: bool) -> None:
        """Blocks the bot, or takes it back."""
        self.blocked = on
        self._platform.block(self.chat, on)
