"""An invitation that is put together by buttons and typed lines."""

from __future__ import annotations

from dataclasses import replace
from datetime import date, timedelta

import pytest

from bot.flows import drafts
from bot.flows.drafts import Draft
from bot.flows.rights import NotAllowed
from bot.words import words

TODAY = date(2026, 11, 26)
WHOLE = Draft(12, 30, date(2027, 1, 11), date(2027, 1, 8), "together")


def test_a_draft_comes_back_from_the_data_of_its_buttons() -> None:
    for draft in (Draft(1), WHOLE, replace(WHOLE, pace="own"), replace(WHOLE, version=10**14)):
        for row in drafts.buttons(draft, words("en"), together=False):
            for button in row:
                assert drafts.read(button.data.split(":")[1:])[0] in (draft, replace(draft, pace="together"))
        for field in drafts.FIELDS:
            for row in drafts.choices(draft, field, TODAY, words("en")):
                assert all(drafts.read(button.data.split(":")[1:])[1] == "show" for button in row)


@pytest.mark.parametrize(
    "data",
    ["", "1", "x:1::::make", "1:0::::make", "1:501::::make", "1:1:2027::::make", "1:1:20271341:::make", "1:1:::q:make",
     "1:-1::::make", "²:1::::make"],
)  # fmt: skip
def test_data_that_no_draft_has_is_refused(data: str) -> None:
    with pytest.raises(NotAllowed):
        drafts.read(data.split(":"))


@pytest.mark.parametrize(
    ("field", "text", "wanted"),
    [
        ("places", " 25 ", Draft(1, places=25)),
        ("places", "0", None),
        ("places", "many", None),
        ("places", "501", None),
        ("start", "2026-12-07", Draft(1, starts_on=date(2026, 12, 7))),
        ("start", "2026-11-25", None),
        ("start", "2028-01-01", None),
        ("start", "2026-02-31", None),
        ("last", "by 2026-11-26", Draft(1, last_on=TODAY)),
        ("last", "soon", None),
    ],
)
def test_what_is_typed_is_taken_or_asked_again(field: str, text: str, wanted: Draft | None) -> None:
    assert drafts.typed(Draft(1), field, text, TODAY) == wanted


def test_a_guardians_consent_needs_who_and_a_day_that_is_not_ahead() -> None:
    assert drafts.guardian("2026-11-20 father", TODAY) == ("father", date(2026, 11, 20))
    assert drafts.guardian("father", TODAY) is None
    assert drafts.guardian("2026-11-20", TODAY) is None
    assert drafts.guardian(f"father {TODAY + timedelta(days=1)}", TODAY) is None
