"""The published schemas of what is exported as JSON; each stands in every file beside its data, and as a file here."""

from __future__ import annotations

from collections.abc import Callable, Mapping
from functools import partial
from typing import Any

from bot.exports.adverse import AdverseEvents
from bot.exports.records import Record, schema_of

SCHEMAS: Mapping[str, Callable[[], dict[str, Any]]] = {
    "record": partial(schema_of, Record),
    "adverse-events": partial(schema_of, AdverseEvents),
}
"""The schema of each kind of document."""
