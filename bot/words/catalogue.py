"""The template catalogue: every text that can be translated, gathered from templates and code.

`python -m bot.words.catalogue` writes it anew; a test holds it to the code.
"""

from __future__ import annotations

from collections.abc import Iterator
from io import BytesIO
from pathlib import Path

from babel.messages.catalog import Catalog
from babel.messages.extract import extract_from_dir
from babel.messages.pofile import write_po

from plans.cautions import caution_words
from plans.measures import MEASURES
from plans.movements import library
from plans.translated import Noted
from plans.units import INCHES
from plans.upkeep import WARM_UP

FILE = Path(__file__).with_name("messages.pot")

_METHODS = [
    ("words/templates/**.j2", "jinja2"),
    ("words/templates/**.html", "jinja2"),
    ("commands.py", "python"),
    ("flows/**.py", "python"),
    ("words/**.py", "python"),
]
_TEMPLATE = {
    "trimmed": "true",
    "trim_blocks": "true",
    "lstrip_blocks": "true",
    "encoding": "utf-8",
    "newstyle_gettext": "true",
}
_OPTIONS = {"words/templates/**.j2": _TEMPLATE, "words/templates/**.html": _TEMPLATE}


def _of_plans() -> Iterator[tuple[str, str]]:
    """What the craft brings along, each text with its place: its library, its tests, an upkeep's warm-up."""
    for movement in library().values():
        noted = Noted()
        movement.said_by(noted)
        names = (name for thing in movement.equipment for name in (thing.name, *thing.instead))
        yield from (("library/movements", text) for text in (*noted.texts, *names))
    for caution in caution_words().values():
        yield from (("library/cautions", text) for text in (caution.text, caution.question, caution.short))
    for measure in MEASURES.values():
        yield from (("plans/measures.py", text) for text in (measure.name, measure.how, measure.unit))
    yield from (("plans/units.py", INCHES), ("plans/upkeep.py", WARM_UP))


def gathered() -> str:
    """The catalogue's text as it must be for the present code."""
    catalog = Catalog(project="Easeward", charset="utf-8")
    found = extract_from_dir(FILE.parents[1], method_map=_METHODS, options_map=_OPTIONS)
    for file, _line, message, _comments, context in sorted(found, key=lambda item: (item[0], item[1])):
        catalog.add(message, locations=[(file, 0)], context=context)
    for place, text in _of_plans():
        if text not in catalog:
            catalog.add(text, locations=[(place, 0)])
    out = BytesIO()
    write_po(out, catalog, omit_header=True, sort_by_file=True, include_lineno=False, width=110)
    return out.getvalue().decode()


if __name__ == "__main__":
    FILE.write_text(gathered(), encoding="utf-8")
