"""All words: every message can be said, and the catalogue holds them all."""

from __future__ import annotations

import io
import re
from pathlib import Path

import pytest
from babel.messages.catalog import Message as Entry
from babel.messages.pofile import read_po
from markupsafe import Markup

from bot.words import catalogue, words
from bot.words.facts import facts
from bot.words.message import Button, Message
from plans.checkin import CheckIn, Completion, Kind
from plans.rules import RULES
from plans.screening import LISTS, Step
from tests.reading_grade import grade

FOLDER = Path(catalogue.__file__).with_name("templates")


def test_the_catalogue_is_what_the_code_says() -> None:
    assert catalogue.FILE.read_text(encoding="utf-8") == catalogue.gathered(), "run python -m bot.words.catalogue"


def test_a_message_that_does_not_exist_is_named() -> None:
    with pytest.raises(KeyError, match=r"joining\.j2 has no 'nothing'"):
        words("en").say("joining.nothing")


def test_what_people_type_is_escaped() -> None:
    said = words("en").say("coach.note_from", label="<b>", text="<script> & more")
    assert "&lt;script&gt; &amp; more" in said
    assert "&lt;b&gt;" in said


def test_no_message_shouts_or_blames() -> None:
    text = "".join(file.read_text(encoding="utf-8") for file in FOLDER.glob("*.j2"))
    spoken = re.sub(r"{#.*?#}|{%.*?%}|{{.*?}}", "", text, flags=re.DOTALL).replace("!=", "")
    assert "!" not in spoken
    assert "you missed" not in spoken.lower()
    assert not re.search(r"streak|badge|amazing|great job", spoken, re.IGNORECASE)


TERMS = {"emergency": "help", "physiotherapist": "doctor", "osteoporosis": "bones"}
"""What must be named as people know it; in its place counts a plain word."""
PLACEHOLDERS = {"coach": "Kim", "label": "Kim", "unit": "cm", "when": "Monday"}


def spoken(text: str) -> str:
    """A message of the catalogue as somebody reads it, with a plain word for each thing that stands in it."""
    text = re.sub(r"<[^>]+>", "", text)
    text = re.sub(r"%\((\w+)\)s|{(\w+)}", lambda found: PLACEHOLDERS.get(found[1] or found[2], "three"), text)
    return re.sub("|".join(TERMS), lambda found: TERMS[found[0]], text.replace("%%", "%"))


def test_every_message_is_read_at_once_after_six_years_of_school() -> None:
    """Reading grade by Kincaid et al. 1975; single sentences of few words say too little for a grade."""
    catalogue_file = read_po(io.BytesIO(catalogue.FILE.read_bytes()))
    entries = [spoken(m.id) for m in catalogue_file if isinstance(m.id, str) and len(m.id.split()) >= 10 and _told(m)]
    assert len(entries) > 120
    assert {entry: found for entry in entries if (found := grade(entry)) > 6} == {}
    assert grade("\n\n".join(entries)) < 4


def _told(message: Entry) -> bool:
    """Whether it is one of the bot's own words, and none of the library's."""
    return any(not place.startswith("library/") for place, _line in message.locations)


def test_no_message_promises_or_diagnoses() -> None:
    text = "".join(file.read_text(encoding="utf-8") for file in FOLDER.glob("*.j2")).lower()
    assert not re.search(r"\b(prevents? injur|cures?\b|heals?\b|posture)", text)
    for level in ("emergency", "same-day", "clinician"):
        caution = words("en").say("checkin.caution", level=level, told=True)
        assert "not a diagnosis" in caution
        assert "your local emergency number" in caution


NAMED = {
    Step.CHEST: ("chest",),
    Step.BREATH: ("out of breath",),
    Step.FAINT: ("faint", "heart"),
    Step.DISEASE: ("high blood pressure", "diabetes", "heart", "blood vessels", "kidneys"),
    Step.OPERATION: ("operation", "fracture"),
    Step.JOINT: ("replaced joint",),
    Step.BONES: ("osteoporosis", "steroids"),
    Step.PREGNANCY: ("pregnant", "birth"),
    Step.NERVES: ("numbness", "tingling", "shoots"),
    Step.LOOSE: ("very loose",),
    Step.TREATED: ("hurt or ill", "doctor looks after"),
}


@pytest.mark.parametrize("first", LISTS)
def test_what_a_single_question_asks_is_named_in_the_list_that_opens_it(first: Step) -> None:
    say = words("en").say
    for step in LISTS[first]:
        for name in NAMED[step]:
            assert name in say("health.question", step=step), step
            assert name in say("health.question", step=first), step


@pytest.mark.parametrize(
    "reason", [rule.__name__.replace("_", "-") for rule in RULES] + ["lapse", "climb", "went-on", "stuck"]
)
def test_every_rule_has_its_reason_in_words(reason: str) -> None:
    facts = {"pain": 4, "kind": "sharp", "morning": "worse", "gap": 9, "level": 0, "back": 1, "flag": "same-day"}
    facts |= {"gone": True, "before": 1.5, "now": 3.0, "tries": 3, "over": 3}
    said = words("en").say("reasons.because", reason=reason, f=facts)
    assert said.startswith("because "), reason


def test_what_is_noted_is_said_back_plainly() -> None:
    assert facts(CheckIn(Completion.DONE, pain=0, tightness=4)) == "done, no pain, tightness 4"
    assert facts(CheckIn(Completion.PART, pain=2, kind=Kind.SHARP)) == "part of it, pain 2 (sharp or sudden)"
    assert facts(CheckIn(sore=True)) == "sore"
    assert facts(CheckIn()) == ""
    assert words("en").say("checkin.noted", facts="done") == "Noted: done."
    assert words("en").say("checkin.noted", facts="") == "Noted."


def test_a_button_carries_what_the_platform_lets_it_carry() -> None:
    assert Message(Markup("x"), ((Button("a", "c:1:all"),),)).payload()["reply_markup"] == {
        "inline_keyboard": [[{"text": "a", "callback_data": "c:1:all"}]]
    }
    with pytest.raises(ValueError, match="64 bytes"):
        Button("a", "x" * 65)
