"""The list of adverse events: what was told of which session, what was done about it, and what came of it."""

from __future__ import annotations

from collections.abc import Iterator, Sequence
from dataclasses import replace
from datetime import date, datetime

from pydantic import Field

from bot.exports.naming import name_of
from bot.exports.records import CAUTION, Plain
from bot.words.csv_file import csv_file
from bot.words.programmes import programme_in
from db import bodies
from db.courses import CourseState
from db.own_data import CoachWord
from db.record import Kept
from db.schema import Alert
from plans import adverse
from plans.dose import movement_names
from plans.ledger import RowKind
from plans.localtime import local
from plans.programme import Programme

OUTSIDE = "red-flag"
"""An alert of this cause without a row: words said before the first date or after the last."""


class AdverseEvent(Plain):
    """One adverse event."""

    id: str = Field(description="a UUID, the same in every export")
    client: str
    client_number: int
    course: int
    programme: str
    version: str
    told_on: date = Field(description="local date of the answer")
    session_on: date | None = Field(description="local date of the newest session up to then")
    day: int | None = Field(description="the programme day of that session, from 1")
    level: int | None = Field(description="0 as written, 1 lighter, 2 lightest")
    movement: str | None = Field(description="the movement in which it was felt, where the client named one")
    movements: list[str] = Field(description="all movements of that session")
    what: list[str] = Field(description="the rules that saw it, such as strain-like, severe, excessive, morning-after")
    flag: str | None = Field(description="a warning sign: clinician, same-day or emergency")
    flag_state: str | None = Field(description="unsure, confirmed or denied by the client")
    pain: int | None = Field(description="0 to 10")
    kind: str | None
    place: str | None
    area: str | None
    side: str | None
    own_words: list[str]
    verdict: str | None = Field(description="what followed by the rules: advance, repeat, ease, rest, refer")
    coach_told_at: datetime | None
    coach_saw_at: datetime | None
    coach_decided: list[CoachWord] = Field(description="until the next session")
    next_morning: str | None = Field(description="the last answer before the next session: settled, same, worse")
    resumed_on: date | None = Field(description="local date of the next session")
    outcome: str = Field(description="waiting (for the coach); else the next morning's answer; else not known")


class AdverseEvents(Plain):
    """All adverse events of the courses that were asked for, each answer counted once."""

    holds: str = CAUTION
    made_at: datetime
    courses: int = Field(description="so many courses were looked through")
    dates: int = Field(description="so many dates of them")
    events: list[AdverseEvent]


def adverse_events(kept: Sequence[Kept], made_at: datetime) -> AdverseEvents:
    """The events of these courses, by course and date."""
    found = [event for one in kept for event in events_of(one)]
    return AdverseEvents(made_at=made_at, courses=len(kept), dates=sum(len(one.rows) for one in kept), events=found)


def events_of(kept: Kept) -> list[AdverseEvent]:
    """The events of one course, oldest first; words outside its dates come last."""
    settings, usual = programme_in(kept.version).settings, bodies.usual_of(kept.course)
    history = [entry for _row, entry, _at in kept.rows]
    inside = [_inside(kept, event) for event in adverse.events(history, settings, usual)]
    return [*inside, *_outside(kept)]


def _whose(kept: Kept) -> dict[str, object]:
    version = kept.version
    return {
        "client": kept.person.label,
        "client_number": kept.person.id,
        "course": kept.course.id,
        "programme": version.title,
        "version": version.digest,
    }


def _inside(kept: Kept, event: adverse.Event) -> AdverseEvent:
    row, entry, _at = kept.rows[event.told]
    session = kept.rows[event.session][0] if event.session is not None else None
    resumed = kept.rows[event.resumed][0].local_date if event.resumed is not None else None
    told = _told(kept, event.what, row.local_date, resumed)
    said, words = entry.checkin, [one for one in kept.words if one.ledger_id == row.id]
    movements = _movements(kept, event.session)
    barred = [one.value for one in words if one.field == "barred"]
    return AdverseEvent(
        **_whose(kept),
        id=name_of(kept.person, "adverse", row.id),
        told_on=row.local_date,
        session_on=session.local_date if session else None,
        day=session.day if session else None,
        level=session.level if session else None,
        movement=movements.get(barred[-1], barred[-1]) if barred else None,
        movements=list(movements.values()),
        what=list(event.what),
        flag=said.flag,
        flag_state=said.flag_state,
        pain=said.pain,
        kind=said.kind,
        place=said.place,
        area=said.area,
        side=said.side,
        own_words=[one.value for one in words if one.field == "words"],
        verdict=_verdict(kept, event),
        coach_told_at=min((one.told_at for one in told if one.told_at), default=None),
        coach_saw_at=max((one.seen_at for one in told if one.seen_at), default=None),
        coach_decided=list(_decided(kept, row.local_date, resumed)),
        next_morning=event.morning,
        resumed_on=resumed,
        outcome=_outcome(kept, event),
    )


def _outside(kept: Kept) -> Iterator[AdverseEvent]:
    """Warning signs that were told when there was no row to tell them of."""
    for alert in kept.alerts:
        if alert.cause != OUTSIDE or alert.ledger_id is not None:
            continue
        on = _date(kept, alert.opened_at)
        nothing = dict.fromkeys(("session_on", "day", "level", "movement", "pain", "kind", "place", "area", "side"))
        yield AdverseEvent(
            **_whose(kept),
            **nothing,
            id=name_of(kept.person, "alert", alert.id),
            told_on=on,
            movements=[],
            what=[alert.cause],
            flag=str(alert.facts.get("flag")),
            flag_state="confirmed",
            own_words=list((alert.report or {}).get("words", ())),
            verdict="refer",
            coach_told_at=alert.told_at,
            coach_saw_at=alert.seen_at,
            coach_decided=list(_decided(kept, on, None)),
            next_morning=None,
            resumed_on=next((row.local_date for row, entry, _at in kept.rows if _is_session_after(entry, on)), None),
            outcome="not known" if alert.closed_at else "waiting",
        )


def _is_session_after(entry: object, on: date) -> bool:
    return getattr(entry, "kind", None) is RowKind.SESSION and getattr(entry, "on", on) > on


def _date(kept: Kept, moment: datetime) -> date:
    return local(moment, kept.person.zone or "UTC").date()


def _told(kept: Kept, what: Sequence[str], since: date, until: date | None) -> list[Alert]:
    """The alerts of these causes that were open between two dates."""
    return [
        alert
        for alert in kept.alerts
        if alert.cause in what
        and (until is None or _date(kept, alert.opened_at) <= until)
        and (alert.closed_at is None or _date(kept, alert.closed_at) >= since)
    ]


def _decided(kept: Kept, since: date, until: date | None) -> Iterator[CoachWord]:
    for one in kept.overrules:
        on = _date(kept, one.at)
        if one.withdrawn_at is None and since <= on and (until is None or on <= until):
            yield CoachWord(what=one.what, day=one.day, note=one.note, at=one.at)


def _movements(kept: Kept, place: int | None) -> dict[str, str]:
    """The movements of a session by their keys; what has been left out since then is among them."""
    if place is None:
        return {}
    pairs = [(row, entry) for row, entry, _at in kept.rows[: place + 1]]
    row = pairs[-1][0]
    programme = _programme(kept, row.version_id)
    if row.day is None or row.day > len(programme.days):
        return {}
    day = bodies.handed_out(programme, row, replace(bodies.fit_of(kept.course, row, pairs), barred=()))
    return movement_names(day)


def _programme(kept: Kept, version_id: int | None) -> Programme:
    return programme_in(kept.versions.get(version_id or 0, kept.version))


_AT_ONCE = {RowKind.WAITING: "refer", RowKind.REST: "rest"}


def _verdict(kept: Kept, event: adverse.Event) -> str | None:
    """What the rules made of it: on the same date where it was told before the session, else on the next one."""
    row, entry, _at = kept.rows[event.told]
    if entry.kind is RowKind.WAITING or (entry.kind is RowKind.REST and entry.prescribed and row.day is not None):
        return _AT_ONCE[entry.kind]
    for later, _entry, _answered in kept.rows[event.told + 1 :]:
        if later.kind == RowKind.WAITING:
            return "refer"
        verdict = (later.decision or {}).get("verdict")
        if verdict is not None:
            return str(verdict)
    return "refer" if kept.course.state == CourseState.WAITING else None


def _outcome(kept: Kept, event: adverse.Event) -> str:
    """Who still waits for the coach has no outcome yet, whatever they said in the morning."""
    if kept.course.state == CourseState.WAITING and event.resumed is None:
        return "waiting"
    return str(event.morning) if event.morning is not None else "not known"


COLUMNS = tuple(AdverseEvent.model_fields)


def table(found: AdverseEvents) -> bytes:
    """The same as a CSV file, one row for each event."""
    return csv_file(COLUMNS, [[_cell(getattr(event, name)) for name in COLUMNS] for event in found.events])


def _cell(value: object) -> str | int | None:
    if isinstance(value, list):
        return "; ".join(_said(one) for one in value)
    if isinstance(value, datetime | date):
        return value.isoformat()
    return value if isinstance(value, int) or value is None else str(value)


def _said(one: object) -> str:
    if isinstance(one, CoachWord):
        return " ".join(filter(None, (one.what, str(one.day) if one.day else "", f"({one.note})" if one.note else "")))
    return str(one)
