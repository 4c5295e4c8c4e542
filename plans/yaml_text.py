"""Plain data as the YAML text of a programme file."""

from __future__ import annotations

from io import StringIO
from typing import Any

from ruamel.yaml import YAML


def yaml_text(data: dict[str, Any]) -> str:
    """The text, one entry a line in the order of the data, no value shared between two places."""
    yaml = YAML(typ="safe", pure=True)
    yaml.default_flow_style = False
    yaml.sort_base_mapping_type_on_output = False  # type: ignore[assignment]
    yaml.width = 10_000
    yaml.allow_unicode = True
    yaml.representer.ignore_aliases = lambda *_data: True
    out = StringIO()
    yaml.dump(data, out)
    return out.getvalue()
