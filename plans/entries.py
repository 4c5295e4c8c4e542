"""Files of entries that are read one by one: a key at the beginning of a line, and the lines that belong to it."""

from __future__ import annotations

import re
from collections.abc import Mapping
from importlib.resources import files

_ENTRY = re.compile(r"^([a-z][a-z0-9-]*):$\n((?:^(?:[ #].*)?$\n?)*)", re.MULTILINE)


def entries(folder: str) -> Mapping[str, str]:
    """The text of each entry in the YAML files of a folder of the library, by its key; nothing is read further."""
    place = files("plans.library").joinpath(folder)
    return {
        entry[1]: entry[0]
        for file in sorted(place.iterdir(), key=lambda file: file.name)
        if file.name.endswith(".yaml")
        for entry in _ENTRY.finditer(file.read_text(encoding="utf-8"))
    }
