"""The languages: nothing is left out, and every fact, tag and command comes through."""

from __future__ import annotations

import re
from functools import cache
from typing import NamedTuple

import pytest
from babel.messages.pofile import read_po
from hypothesis import given
from hypothesis import strategies as st
from markupsafe import Markup

from bot.flows.showing import preview
from bot.words import LOCALES, OWN_NAMES, catalogue, language_of, words
from bot.words.catalogue import FILE
from bot.words.direction import END, ISOLATE, isolated
from bot.words.message import Button, Message, column
from plans.fitting import stands
from plans.heavier import Heaviness
from plans.measures import MEASURES
from plans.movements import library
from plans.programme import Block, Day, Dose, Item, Session
from plans.replies import LANGUAGES
from plans.translated import in_language, own_texts, untranslated
from tests.samples import SAMPLES, sample

OTHERS = [language for language in LOCALES if language != "en"]
PLACES = re.compile(r"%\(\w+\)[sd]|%%|\{\w*\}")
TAGS = re.compile(r"</?\w+[^>]*>")
COMMANDS = re.compile(r"(?<![\w<])/[a-z]+\b")


class Pair(NamedTuple):
    """A text and its translation."""

    text: str
    said: str


@cache
def pairs(language: str) -> tuple[Pair, ...]:
    """Each text of the catalogue with what it is in a language; a plural counts as two."""
    file = FILE.parent / "languages" / f"{language}.po"
    with FILE.open("rb") as source, file.open("rb") as translated:
        wanted = read_po(source)
        known = read_po(translated, locale=LOCALES[language])
    found = []
    for one in wanted:
        if one.id:
            there = known.get(one.id if isinstance(one.id, str) else one.id[0], one.context)
            texts = [one.id] if isinstance(one.id, str) else list(one.id)
            string = (there.string if there is not None else None) or ""
            said = [string] * len(texts) if isinstance(string, str) else list(string)
            found += [Pair(text, word) for text, word in zip(texts, said, strict=True)]
    return tuple(found)


@pytest.mark.parametrize("language", OTHERS)
def test_every_text_is_there(language: str) -> None:
    assert [text for text, said in pairs(language) if not said.strip()] == []


@pytest.mark.parametrize("language", OTHERS)
@pytest.mark.parametrize("kept", [PLACES, TAGS, COMMANDS], ids=["facts", "tags", "commands"])
def test_what_must_come_through_comes_through(language: str, kept: re.Pattern[str]) -> None:
    strange = {text: said for text, said in pairs(language) if set(kept.findall(text)) != set(kept.findall(said))}
    assert strange == {}


@pytest.mark.parametrize("language", OTHERS)
def test_no_message_cries_out(language: str) -> None:
    assert [said for text, said in pairs(language) if re.search("[!¡]", said)] == []


@pytest.mark.parametrize("language", LOCALES)
def test_a_caution_says_stop_whom_to_see_and_where_to_call(language: str) -> None:
    number = {"en": "your local emergency number", "es": "de emergencias", "de": "Notrufnummer"}[language]
    diagnosis = {"en": "not a diagnosis", "es": "no es un diagnóstico", "de": "keine Diagnose"}[language]
    for level in ("emergency", "same-day", "clinician"):
        caution = str(words(language).say("checkin.caution", level=level, told=True))
        assert number in caution
        assert diagnosis.lower() in caution.lower()


def test_each_language_is_read_and_has_a_name() -> None:
    assert set(LANGUAGES) == set(LOCALES) == set(OWN_NAMES)


@given(st.text(max_size=12))
def test_any_tag_leads_to_a_language(tag: str) -> None:
    assert language_of(tag) in LOCALES


@pytest.mark.parametrize("language", OTHERS)
@pytest.mark.parametrize("name", SAMPLES)
def test_a_sample_is_whole_in_every_language(name: str, language: str) -> None:
    written = sample(name)
    assert untranslated(written, language) == ()
    said = in_language(written, language, words(language).gettext)
    assert not set(own_texts(said)) & {text for text in own_texts(written) if len(text.split()) > 3}


@pytest.mark.parametrize("language", OTHERS)
@pytest.mark.parametrize("name", SAMPLES)
def test_what_follows_from_a_programme_is_the_same_in_every_language(name: str, language: str) -> None:
    written = sample(name)
    said = in_language(written, language, words(language).gettext)
    ours, theirs = Heaviness(written), Heaviness(said)
    for number in range(1, len(written.days)):
        before = tuple(range(1, number + 1))
        assert ours.next_is_heavier(number, before[-3:], frozenset(before)) == theirs.next_is_heavier(
            number, before[-3:], frozenset(before)
        )
        assert stands(written.day(number)) == stands(said.day(number))


@pytest.mark.parametrize("language", OTHERS)
def test_a_movement_on_ones_feet_is_one_in_every_language(language: str) -> None:
    say = words(language).gettext
    differ = [key for key, movement in library().items() if _stands(movement) != _stands(movement.said_by(say))]
    assert differ == []


def _stands(movement: object) -> bool:
    item = Item(movement=movement, dose=Dose())  # type: ignore[arg-type]
    return stands(Day(1, session=Session((Block((item,)),))))


@pytest.mark.parametrize("language", LOCALES)
def test_tests_have_names_and_units(language: str) -> None:
    say = words(language)
    for measure in MEASURES.values():
        assert say.gettext(measure.name)
        assert (say.gettext(measure.how) != measure.how) == (language != "en")
        assert say.unit(measure.unit)


def test_the_catalogue_is_found_by_its_module() -> None:
    assert catalogue.FILE.exists()


@pytest.mark.parametrize("name", ["דנה", "نور الدين", "Ann"])
def test_a_name_from_right_to_left_keeps_to_itself(name: str) -> None:
    sent = Message(Markup(f"<b>{name}</b> needs a look: day 3"), column(Button(f"{name}, day 3", "x"))).payload()
    label = sent["reply_markup"]["inline_keyboard"][0][0]["text"]
    kept = name if name == "Ann" else f"{ISOLATE}{name}{END}"
    assert sent["text"] == f"<b>{kept}</b> needs a look: day 3"
    assert label == f"{kept}, day 3"


def test_words_that_are_all_from_right_to_left_stay_as_they_are() -> None:
    assert isolated("דנה: 3") == "דנה: 3"


@pytest.mark.parametrize("language", LOCALES)
@pytest.mark.parametrize("name", SAMPLES)
def test_each_day_of_a_sample_fits_under_its_picture(name: str, language: str) -> None:
    say = words(language)
    said = in_language(sample(name), language, say.gettext)
    assert [day.number for day in said.days if not preview(say, said, day.number).is_caption] == []
