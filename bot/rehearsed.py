"""One rehearsal in a process of its own: a programme file's text comes in, what came of it goes out as JSON."""

from __future__ import annotations

import base64
import json
import sys
from typing import Any

from bot.rehearsing import rehearse
from plans.charts.rehearsal import picture
from plans.figures.raster import png
from plans.reading import read_programme

CLIENTS, SEED = 200, 1
"""As `easeward rehearse` has them when nothing is said."""
DAYS = 5
"""Days to look at that are named."""


def rehearsed(source: str) -> dict[str, Any]:
    """Lets invented clients go through a programme, with the rules and as it was published.

    `median` and `ninetieth` are dates until half and nine of ten are through, None if so many never are; `days` are
    the days to look at with how often a client was held up and hurt there; `png` is the picture in base64.
    """
    found = rehearse(source, CLIENTS, SEED)
    plain = rehearse(source, CLIENTS, SEED, adapted=False)
    drawn = png(picture(read_programme(source).title, found, plain))
    return {
        "clients": CLIENTS,
        "median": found.median,
        "ninetieth": found.ninetieth,
        "days": [{"day": day.day, "held": day.held_up, "hurt": day.pained} for day in found.trouble[:DAYS]],
        "png": base64.b64encode(drawn).decode(),
    }


if __name__ == "__main__":
    json.dump(rehearsed(sys.stdin.buffer.read().decode()), sys.stdout)
