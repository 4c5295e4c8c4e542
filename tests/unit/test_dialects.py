"""English of many places is read as the English that is written; what is written already stays."""

from __future__ import annotations

import pytest

from plans.dialects_en import SPELLED, in_written_english
from plans.replies import read_reply
from plans.rewrites_en import REWRITES

pytestmark = pytest.mark.usefixtures("grammar_alone")


@pytest.mark.parametrize(
    ("spoken", "written"),
    [
        ("didnae manage it, ma heid is sair", "did not manage it, my head is sore"),
        ("nae pain the day", "no pain today"),
        ("me knee's giving me gyp", "my knee's hurting me"),
        ("i'm after doing it", "i did it"),
        ("can ye send it at 7 insteid", "can you send it at 7 instead"),
        ("my knee don swell, i no fit stand on am", "my knee is swollen, i can not stand on it"),
        ("e remain small", "nearly finished"),
        ("i never do am", "i have not do it"),
        ("kindly prepone to 6 am", "kindly change the time to 6 am"),
        ("haan ji ho gaya, dard 2", "yes done, pain 2"),
        ("do already liao", "do already already"),
        ("cannot tahan", "can not bear it"),
        ("feeling crook", "feeling ill"),
        ("mi foot a tingle mi", "my foot a tingle me"),
    ],
)
def test_spoken_words_become_written_ones(spoken: str, written: str) -> None:
    assert in_written_english(spoken) == written


@pytest.mark.parametrize(
    "text",
    [
        "give me a minute",
        "send me the session at 7",
        "it was the best part of the day, done",
        "no problem, done",
        "i never do this one right",
        "a grand total of 6",
        "i feel fit",
        "half the night, awake",
        "it gave me back pain",
        "that man is a crook",
    ],
)
def test_what_is_written_english_stays(text: str) -> None:
    assert in_written_english(text) == text


@pytest.mark.parametrize(
    ("spoken", "written"),
    [
        ("Ma shooders are sair, baith o them. Did it but.", "My shoulders are sore, both of them. Did it but."),
        ("I wet maself twice the day", "I wet myself twice today"),
        ("My knee don swell, I no fit stand on am", "My knee is swollen, I can not stand on it"),
        ("dem stretches done, nuttin hurts", "the stretches done, nothing hurts"),
        ("finna do it later", "going to do it later"),
    ],
)
def test_a_reply_in_dialect_reads_as_the_written_one(spoken: str, written: str) -> None:
    assert read_reply(spoken).as_json() == read_reply(written).as_json()


def test_no_spoken_word_is_also_its_written_one_and_every_pattern_has_its_word() -> None:
    assert not {word for word, written in SPELLED.items() if word == written}
    assert all(word.isalnum() and patterns for word, patterns in REWRITES.items())
