"""All words that people read: templates and catalogues. English is the source language."""

from __future__ import annotations

import re
from datetime import date
from functools import cache, cached_property
from gettext import NullTranslations
from typing import TYPE_CHECKING

from markupsafe import Markup

from plans.units import Units

if TYPE_CHECKING:
    from jinja2 import Environment

_GAP = re.compile(r"\n{3,}")
"""What templates leave where a part is not said; paragraphs are one blank line apart."""


class Words:
    """The words of one language, for somebody who measures in these units."""

    def __init__(self, language: str, units: Units, catalogue: NullTranslations) -> None:
        self.language = language
        self.units = units
        self.gettext = catalogue.gettext
        self._catalogue = catalogue

    @cached_property
    def _templates(self) -> Environment:
        """What messages are made of; loaded with the first one, for whoever only measures texts says none."""
        from jinja2 import Environment, PackageLoader, StrictUndefined

        found = Environment(
            loader=PackageLoader("bot.words", "templates"),
            autoescape=True,
            undefined=StrictUndefined,
            extensions=["jinja2.ext.i18n"],
            trim_blocks=True,
            lstrip_blocks=True,
        )
        found.policies["ext.i18n.trimmed"] = True
        found.install_gettext_translations(self._catalogue, newstyle=True)  # type: ignore[attr-defined]
        return found

    def short_date(self, day: date) -> str:
        """A date as it is written under a chart: "2 Mar", with the language's own order and names."""
        from babel.dates import format_date

        return format_date(day, "d MMM", locale=self.language)

    def say(self, name: str, /, **facts: object) -> Markup:
        """The message `file.part` with these facts in it, escaped for the platform's HTML.

        Raises KeyError when there is no such message.
        """
        file, _, part = name.partition(".")
        macro = getattr(self._templates.get_template(f"{file}.j2").module, part, None)
        if macro is None:
            raise KeyError(f"no words for {name!r}: bot/words/templates/{file}.j2 has no {part!r}")
        return Markup(_GAP.sub("\n\n", str(macro(**facts)).strip()))

    def page(self, file: str, /, **facts: object) -> str:
        """A whole page of these facts, escaped for HTML."""
        return self._templates.get_template(file).render(language=self.language, **facts)


LANGUAGES = ("en",)
"""The languages that there are words for, the source language first."""


def language_of(tag: str) -> str:
    """The language of ours that is nearest to a chat's language tag; English where there is none.

    >>> language_of("en-GB"), language_of("fi")
    ('en', 'en')
    """
    wanted = tag.replace("_", "-").partition("-")[0].lower()
    return wanted if wanted in LANGUAGES else LANGUAGES[0]


@cache
def words(language: str, units: Units = Units.METRIC) -> Words:
    """The words of a language; English, the source, needs no catalogue."""
    return Words(language, units, NullTranslations())
