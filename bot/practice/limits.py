"""The platform's published limits as one table; each is checked where a request carries the thing it limits.

Source: the Bot API's reference. Text and captions are counted in UTF-16 units after markup is taken out.
"""

from __future__ import annotations

from collections.abc import Mapping
from dataclasses import dataclass
from types import MappingProxyType

from bot.practice.errors import ApiError


@dataclass(frozen=True, slots=True)
class Limit:
    """From `low` to `high`, both allowed, of a unit; what is outside gets the platform's own error."""

    low: int
    high: int
    unit: str
    too_small: str
    too_large: str

    def check(self, count: int) -> None:
        """Raises the platform's error for a count outside."""
        if count < self.low:
            raise ApiError(400, f"Bad Request: {self.too_small}")
        if count > self.high:
            raise ApiError(400, f"Bad Request: {self.too_large}")


LIMITS: Mapping[str, Limit] = MappingProxyType(
    {
        "text": Limit(1, 4096, "UTF-16 units", "message text is empty", "message is too long"),
        "callback data": Limit(1, 64, "bytes", "BUTTON_DATA_INVALID", "BUTTON_DATA_INVALID"),
        "button label": Limit(1, 10_000, "characters", "inline keyboard button text must be non-empty", "too long"),
        "buttons in a row": Limit(1, 8, "buttons", "row is empty", "too many buttons in a row"),
        "buttons": Limit(0, 100, "buttons", "", "reply markup is too long"),
        "tap answer": Limit(0, 200, "characters", "", "MESSAGE_TOO_LONG"),
        "command name": Limit(1, 32, "characters", "BOT_COMMAND_INVALID", "BOT_COMMAND_INVALID"),
        "command description": Limit(
            1, 256, "characters", "BOT_COMMAND_DESCRIPTION_INVALID", "BOT_COMMAND_DESCRIPTION_INVALID"
        ),
        "commands": Limit(0, 100, "commands", "", "BOT_COMMANDS_TOO_MUCH"),
        "updates at once": Limit(1, 100, "updates", "limit must be at least 1", "limit must be at most 100"),
        "start parameter": Limit(0, 64, "characters", "", "start parameter is too long"),
        "file to fetch": Limit(0, 20 * 2**20, "bytes", "", "file is too big"),
    }
)


def utf16(text: str) -> int:
    """The length of a text as the platform counts it."""
    return len(text.encode("utf-16-le")) // 2
