"""All words that people read: templates and catalogues. English is the source language."""

from __future__ import annotations

import re
from datetime import date, datetime
from functools import cache, cached_property
from gettext import GNUTranslations, NullTranslations
from io import BytesIO
from pathlib import Path
from typing import TYPE_CHECKING

from markupsafe import Markup

from bot.words.direction import isolated
from plans.cautions import Caution, caution_words
from plans.units import Units, unit_in

if TYPE_CHECKING:
    from jinja2 import Environment

_GAP = re.compile(r"\n{3,}")
"""What templates leave where a part is not said; paragraphs are one blank line apart."""


class Words:
    """The words of one language, for somebody who measures in these units."""

    def __init__(self, language: str, units: Units, catalogue: NullTranslations) -> None:
        self.language = language
        self.locale = LOCALES[language]
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
        found.filters["number"] = self.number
        found.filters["caution"] = self.caution
        found.policies["ext.i18n.trimmed"] = True
        found.install_gettext_translations(self._catalogue, newstyle=True)  # type: ignore[attr-defined]
        return found

    def language_name(self, language: str) -> str:
        """What a language is called in this one: Spanish, Englisch."""
        from babel import Locale

        return str(Locale.parse(self.locale).languages.get(language, language))

    def short_date(self, day: date) -> str:
        """Day and month as they stand under a chart: "2 Mar", in the language's own order."""
        return self._dated("MMMd", day)

    def weekday_and_date(self, day: date) -> str:
        """Weekday, day and month, short: "Mon, 2 Mar"."""
        return self._dated("MMMEd", day)

    def long_date(self, day: date) -> str:
        """Weekday, day and month: "Monday, 2 Mar"."""
        return self._dated("MMMEd", day).replace(self.short_weekday(day), self.weekday(day))

    def weekday(self, day: date) -> str:
        """The name of a day of the week."""
        return self._named("EEEE", day)

    def short_weekday(self, day: date) -> str:
        """The name of a day of the week, short."""
        return self._named("EEE", day)

    def _dated(self, skeleton: str, day: date) -> str:
        """A date by a skeleton of CLDR; it is loaded with the first one."""
        from babel.dates import format_skeleton

        return format_skeleton(skeleton, day, locale=self.locale)

    def _named(self, pattern: str, day: date) -> str:
        from babel.dates import format_date

        return format_date(day, pattern, locale=self.locale)

    def moment(self, at: datetime) -> str:
        """A date with its time of day on the clock that it is given in."""
        return f"{self.weekday_and_date(at)}, {at:%H:%M}"

    def weekday_and_time(self, at: datetime) -> str:
        """A day of the week with the time of day."""
        return f"{self.weekday(at)} {at:%H:%M}"

    def unit(self, unit: str) -> str:
        """What a measure's unit is called for somebody who measures in these units."""
        return self.gettext(unit_in(unit, self.units))

    def caution(self, caution: str) -> str:
        """What somebody has for whom a caution holds, in a few words: "kneeling hurts, or a knee operation"."""
        return self.gettext(caution_words()[Caution(caution)].short)

    def number(self, value: float, decimals: int | None = None) -> str:
        """A number with the language's own mark: with so many decimals, or up to two and none where they are zero."""
        from babel.numbers import format_decimal

        return format_decimal(value, format="0.##" if decimals is None else f"0.{'0' * decimals}", locale=self.locale)

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
        return isolated(self._templates.get_template(file).render(language=self.language, **facts))


LOCALES = {"en": "en_GB", "es": "es", "de": "de"}
"""The languages that there are words for, the source language first, and whose way of writing dates and numbers."""
OWN_NAMES = {"en": "English", "es": "Español", "de": "Deutsch"}
"""What each language calls itself."""


def language_of(tag: str) -> str:
    """The language of ours that is nearest to a chat's language tag; English where there is none.

    >>> language_of("es-MX"), language_of("fi")
    ('es', 'en')
    """
    wanted = tag.replace("_", "-").partition("-")[0].lower()
    return wanted if wanted in LOCALES else "en"


@cache
def words(language: str, units: Units = Units.METRIC) -> Words:
    """The words of a language, or of English where there are none."""
    known = language_of(language)
    return Words(known, units, translations(known))


@cache
def translations(language: str) -> NullTranslations:
    """What texts are in a language; English, the source, needs none."""
    if language == "en":
        return NullTranslations()
    from babel.messages.mofile import write_mo
    from babel.messages.pofile import read_po

    compiled = BytesIO()
    with (Path(__file__).parent / "languages" / f"{language}.po").open("rb") as file:
        write_mo(compiled, read_po(file, locale=LOCALES[language]))
    compiled.seek(0)
    return GNUTranslations(compiled)
