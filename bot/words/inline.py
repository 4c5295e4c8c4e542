"""A chart inside a page."""

from __future__ import annotations

import re

from markupsafe import Markup, escape

_NAMESPACE = re.compile(r' xmlns="[^"]*"')
_SIZE = re.compile(r' width="\d+" height="\d+"', flags=re.ASCII)


def inline(svg: str, label: str) -> Markup:
    """An SVG file of ours as a part of an HTML page: as wide as there is room, with a label for who does not see it."""
    head, _, rest = svg.partition(">")
    head = _SIZE.sub("", _NAMESPACE.sub("", head))
    return Markup(f'{head} role="img" aria-label="{escape(label)}">{rest}')
