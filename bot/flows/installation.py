"""What an installation sets for all its coaches."""

from __future__ import annotations

from dataclasses import dataclass
from datetime import timedelta


@dataclass(frozen=True, slots=True)
class Installation:
    """After how long an alert that nobody has seen is called again, and whether coaches may take people under 18."""

    red_flag_again: timedelta = timedelta(minutes=60)
    alert_again: timedelta = timedelta(hours=4)
    under_18: bool = False


DEFAULTS = Installation()
