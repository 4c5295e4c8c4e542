"""The JSON Schema of programme files, for editors that complete and check while a coach writes."""

from __future__ import annotations

from typing import Any

from plans.written import WrittenProgramme

DIALECT = "https://json-schema.org/draft/2020-12/schema"


def json_schema() -> dict[str, Any]:
    """The schema of a whole file (JSON Schema 2020-12). Whatever the checker accepts, it accepts too."""
    found = WrittenProgramme.model_json_schema(by_alias=True)
    written: dict[str, Any] = _plain(found)
    return {"$schema": DIALECT, "title": "Stretching programme", **written}


def _plain(part: Any) -> Any:
    """Closed mappings, plain alternatives, and no titles that only repeat a field's name."""
    if isinstance(part, list):
        return [_plain(one) for one in part]
    if not isinstance(part, dict):
        return part
    found: dict[str, Any] = {}
    for key, value in part.items():
        if key in ("properties", "$defs"):
            found[key] = {word: _plain(one) for word, one in value.items()}
        elif key == "oneOf":
            found["anyOf"] = _plain(value)
        elif key != "title":
            found[key] = _plain(value)
    if "patternProperties" in found:
        found["additionalProperties"] = False
    return found
