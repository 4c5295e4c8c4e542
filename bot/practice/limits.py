"""The platform's published limits as one table; each is checked where a request carries the thing it limits.

Source of the numbers: the Bot API's reference (10.1), for buttons in a row and in all the platform's practice, which
it does not write down. Text and captions are counted in UTF-16 units after markup is taken out.
"""

from __future__ import annotations

from collections.abc import Mapping
from dataclasses import dataclass
from types import MappingProxyType

from bot.practice.errors import ApiError, bad

MEBIBYTE = 2**20


@dataclass(frozen=True, slots=True)
class Limit:
    """From `low` to `high`, both allowed, of a unit; what is outside gets the platform's own error.

    `{count}` in an error's words stands for what was found. A limit without words is not refused: the platform
    takes the nearest number that it allows.
    """

    low: int
    high: int
    unit: str
    too_small: str
    too_large: str
    too_large_code: int = 400

    def check(self, count: int) -> None:
        """Raises the platform's error for a count outside."""
        if count < self.low:
            raise bad(self.too_small.format(count=count))
        if count > self.high and self.too_large_code == 400:
            raise bad(self.too_large.format(count=count))
        if count > self.high:
            raise ApiError(self.too_large_code, self.too_large)

    def nearest(self, count: int) -> int:
        """The allowed number that is nearest to a count."""
        return max(self.low, min(self.high, count))


LIMITS: Mapping[str, Limit] = MappingProxyType(
    {
        "text": Limit(1, 4096, "UTF-16 units", "message text is empty", "message is too long"),
        "caption": Limit(0, 1024, "UTF-16 units", "", "message caption is too long"),
        "callback data": Limit(1, 64, "bytes", "BUTTON_DATA_INVALID", "BUTTON_DATA_INVALID"),
        "buttons in a row": Limit(1, 8, "buttons", "row is empty", "too many buttons in a row"),
        "buttons": Limit(0, 100, "buttons", "", "reply markup is too long"),
        "tap answer": Limit(0, 200, "characters", "", "MESSAGE_TOO_LONG"),
        "command name": Limit(1, 32, "characters", "BOT_COMMAND_INVALID", "BOT_COMMAND_INVALID"),
        "command description": Limit(
            1, 256, "characters", "BOT_COMMAND_DESCRIPTION_INVALID", "BOT_COMMAND_DESCRIPTION_INVALID"
        ),
        "commands": Limit(0, 100, "commands", "", "BOT_COMMANDS_TOO_MUCH"),
        "updates at once": Limit(1, 100, "updates", "", ""),
        "long poll": Limit(0, 50, "seconds", "", ""),
        "start parameter": Limit(0, 64, "characters", "", "start parameter is too long"),
        "webhook secret": Limit(0, 256, "characters", "", "secret token is too long"),
        "webhook connections": Limit(1, 100, "connections", "", ""),
        "photo": Limit(
            1,
            10 * MEBIBYTE,
            "bytes",
            "file must be non-empty",
            "file of size {count} bytes is too big for a photo; the maximum size is 10485760 bytes",
        ),
        "photo sides": Limit(2, 10_000, "pixels, width and height together", "", "PHOTO_INVALID_DIMENSIONS"),
        "photo shape": Limit(1, 20, "times as long as wide", "", "PHOTO_INVALID_DIMENSIONS"),
        "album": Limit(2, 10, "photos", "too few files in the album", "too many files in the album"),
        "document": Limit(1, 50 * MEBIBYTE, "bytes", "file must be non-empty", "Request Entity Too Large", 413),
        "file to fetch": Limit(0, 20 * MEBIBYTE, "bytes", "", "file is too big"),
        "hours until deleting": Limit(0, 48, "hours", "", "message can't be deleted for everyone"),
    }
)


def utf16(text: str) -> int:
    """The length of a text as the platform counts it."""
    return len(text.encode("utf-16-le", errors="surrogatepass")) // 2
