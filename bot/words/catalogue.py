"""The template catalogue: every text that can be translated, gathered from templates and code.

`python -m bot.words.catalogue` writes it anew; a test holds it to the code.
"""

from __future__ import annotations

from io import BytesIO
from pathlib import Path

from babel.messages.catalog import Catalog
from babel.messages.extract import extract_from_dir
from babel.messages.pofile import write_po

FILE = Path(__file__).with_name("messages.pot")

_METHODS = [("words/templates/**.j2", "jinja2"), ("flows/**.py", "python"), ("words/**.py", "python")]
_OPTIONS = {
    "words/templates/**.j2": {"trimmed": "true", "trim_blocks": "true", "lstrip_blocks": "true", "encoding": "utf-8"}
}


def gathered() -> str:
    """The catalogue's text as it must be for the present code."""
    catalog = Catalog(project="Easeward", charset="utf-8")
    found = extract_from_dir(FILE.parents[1], method_map=_METHODS, options_map=_OPTIONS)
    for file, _line, message, _comments, context in sorted(found, key=lambda item: (item[0], item[1])):
        catalog.add(message, locations=[(file, 0)], context=context)
    out = BytesIO()
    write_po(out, catalog, omit_header=True, sort_by_file=True, include_lineno=False, width=110)
    return out.getvalue().decode()


if __name__ == "__main__":
    FILE.write_text(gathered(), encoding="utf-8")
