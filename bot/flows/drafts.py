"""An invitation that is still being put together: all of it stands in the data of its buttons."""

from __future__ import annotations

import re
from collections.abc import Sequence
from dataclasses import dataclass, replace
from datetime import date, timedelta

from bot.flows.rights import NotAllowed
from bot.words import Words
from bot.words.message import Button, Rows

MOST_PLACES = 500
AHEAD = timedelta(days=366)
"""Nobody is invited to begin later, or to join for longer."""
FIELDS = ("places", "start", "last")
PACES = {"o": "own", "t": "together"}
DATE = re.compile(r"\b(\d{4})-(\d{1,2})-(\d{1,2})\b")


@dataclass(frozen=True, slots=True)
class Draft:
    """What the invitation will say; `pace` None is the programme's own, `last_on` None is sixty days."""

    version: int
    places: int = 1
    starts_on: date | None = None
    last_on: date | None = None
    pace: str | None = None

    @property
    def data(self) -> str:
        """The draft in the data of a button.

        >>> Draft(3, 10, date(2027, 1, 11), pace="together").data
        '3:10:20270111::t'
        """
        dates = [f"{on:%Y%m%d}" if on else "" for on in (self.starts_on, self.last_on)]
        return ":".join([str(self.version), str(self.places), *dates, (self.pace or "")[:1]])


def read(words: Sequence[str]) -> tuple[Draft, str]:
    """A draft and what its button does. Raises NotAllowed for data that no button of ours has.

    >>> read("3:10:20270111::t:make".split(":"))[1]
    'make'
    """
    try:
        version, places, starts, last, pace, what = words
        draft = Draft(_number(version), _number(places), _day(starts), _day(last), PACES[pace] if pace else None)
    except (ValueError, KeyError) as error:
        raise NotAllowed("checkin.not_yours") from error
    if not 1 <= draft.places <= MOST_PLACES:
        raise NotAllowed("checkin.not_yours")
    return draft, what


def _number(text: str) -> int:
    if not re.fullmatch(r"\d{1,15}", text, re.ASCII):
        raise ValueError(f"{text!r} is no number of ours")
    return int(text)


def _day(text: str) -> date | None:
    return date(int(text[:4]), int(text[4:6]), int(text[6:])) if text else None


def buttons(draft: Draft, words: Words, *, together: bool) -> Rows:
    """What can be changed, and the way to the link."""
    _ = words.gettext
    other = replace(draft, pace="own" if together else "together")
    pace = _("Each at their own pace") if together else _("All on the same day")
    return (
        (Button(_("Places"), f"draft:{draft.data}:places"), Button(_("First day"), f"draft:{draft.data}:start")),
        (Button(_("Last day to join"), f"draft:{draft.data}:last"),),
        (Button(pace, f"draft:{other.data}:show"),),
        (Button(_("Make the link"), f"draft:{draft.data}:make"),),
    )


def choices(draft: Draft, field: str, today: date, words: Words) -> Rows:
    """Likely answers to one question; anything else is typed."""
    if field == "places":
        found = [(str(n), replace(draft, places=n)) for n in (1, 5, 10, 15, 20, 30)]
    elif field == "start":
        monday = today + timedelta(days=7 - today.weekday())
        days = [monday + timedelta(days=7 * n) for n in range(4)]
        found = [(day(words, on), replace(draft, starts_on=on)) for on in days]
        found.append((words.gettext("When they like"), replace(draft, starts_on=None)))
    else:
        weeks = [today + timedelta(days=7 * n) for n in (1, 2, 4, 8)]
        found = [(day(words, on), replace(draft, last_on=on)) for on in weeks]
    made = [Button(label, f"draft:{one.data}:show") for label, one in found]
    return tuple(tuple(made[n : n + 2]) for n in range(0, len(made), 2))


def typed(draft: Draft, field: str, text: str, today: date) -> Draft | None:
    """The draft with a typed answer in it; None for one that cannot be meant."""
    if field == "places":
        found = re.fullmatch(r"\s*(\d{1,3})\s*", text, re.ASCII)
        number = int(found[1]) if found else 0
        return replace(draft, places=number) if 1 <= number <= MOST_PLACES else None
    on = date_in(text)
    if on is None or not today <= on <= today + AHEAD:
        return None
    return replace(draft, starts_on=on) if field == "start" else replace(draft, last_on=on)


def without_past(draft: Draft, today: date) -> Draft:
    """The draft without what has passed meanwhile.

    >>> without_past(Draft(3, starts_on=date(2027, 1, 11), last_on=date(2027, 1, 9)), date(2027, 1, 10)).data
    '3:1:20270111::'
    """
    starts, last = (on if on is not None and on >= today else None for on in (draft.starts_on, draft.last_on))
    return replace(draft, starts_on=starts, last_on=last)


def date_in(text: str) -> date | None:
    """The first date in a text, written year first; None where there is none.

    >>> date_in("from 2027-1-11 on")
    datetime.date(2027, 1, 11)
    """
    found = DATE.search(text)
    try:
        return date(*(int(part) for part in found.groups())) if found else None
    except ValueError:
        return None


def guardian(text: str, today: date) -> tuple[str, date] | None:
    """Who has agreed for somebody under 18, and when; None unless both are said.

    >>> guardian("mother, Ana, 2026-11-20", date(2026, 11, 26))
    ('mother, Ana', datetime.date(2026, 11, 20))
    """
    on = date_in(text)
    who = " ".join(DATE.sub(" ", text).split()).strip(" ,;.")[:120]
    return (who, on) if on is not None and on <= today and any(letter.isalpha() for letter in who) else None


def day(words: Words, on: date) -> str:
    """A date with its weekday."""
    return words.weekday_and_date(on)
