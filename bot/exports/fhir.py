"""One client's record as a FHIR R4B bundle (HL7, 4.3.0): for a clinic's software, as plain values.

Pain is LOINC 72514-3 as a quantity, units are UCUM, and statuses, categories and outcomes come from FHIR's own lists.
What has no standard code that we are sure of (the tests, tightness, a session done, the rules' words) has a code of our
own, in systems that begin with `urn:easeward:`; those are names, not addresses.
"""

from __future__ import annotations

from collections.abc import Iterator, Sequence
from datetime import UTC, datetime
from typing import Any

from pydantic_core import to_json

from bot.exports.adverse import AdverseEvent, events_of
from bot.exports.naming import name_of
from db.courses import CourseState
from db.record import Kept
from db.schema import MeasureRow, Person
from plans.adherence import week_of
from plans.ledger import Entry, RowKind
from plans.measures import MEASURES

UCUM, LOINC = "http://unitsofmeasure.org", "http://loinc.org"
HL7 = "http://terminology.hl7.org/CodeSystem"
OURS = "urn:easeward"
PAIN = {"system": LOINC, "code": "72514-3", "display": "Pain severity - 0-10 verbal numeric rating [Score] - Reported"}
UNITS = {"cm": ("cm", "cm"), "degrees": ("deg", "deg")}
"""Of a measure's unit: how it is shown, and its UCUM code."""

_PLAN = {
    CourseState.ACTIVE: ("active", "in-progress"),
    CourseState.WAITING: ("on-hold", "on-hold"),
    CourseState.FINISHED: ("completed", "completed"),
    CourseState.STOPPED: ("revoked", "stopped"),
}
"""Of a course's state: the plan's status, and that of the activity in it."""
_OUTCOMES = {"settled": "recovering", "same": "ongoing", "worse": "ongoing", "waiting": "ongoing"}
"""Of an event's outcome; settled and gone on since is resolved. The client's own word: nobody has examined them."""

Resource = dict[str, Any]


def bundle(person: Person, kept: Sequence[Kept], made_at: datetime) -> Resource:
    """A collection of one person's resources; every reference in it leads to another of its entries."""
    resources = [_patient(person), *(resource for one in kept for resource in _of_course(one))]
    return {
        "resourceType": "Bundle",
        "id": name_of(person, "bundle"),
        "type": "collection",
        "timestamp": _instant(made_at),
        "entry": [{"fullUrl": f"urn:uuid:{one['id']}", "resource": one} for one in resources],
    }


def as_json(found: Resource) -> bytes:
    """The bundle as a file (application/fhir+json)."""
    return to_json(found, indent=1)


def _patient(person: Person) -> Resource:
    """The first name and our own number: there is no surname, sex, birth date or address to give."""
    name = name_of(person, "patient")
    return {
        "resourceType": "Patient",
        "id": name,
        "identifier": [{"use": "secondary", "system": f"{OURS}:client", "value": name}],
        "name": [{"use": "usual", "given": [person.label]}],
    }


def _of_course(kept: Kept) -> Iterator[Resource]:
    yield _plan(kept)
    entries = [entry for _row, entry, _at in kept.rows]
    for row, entry, at in kept.rows:
        yield from _said(kept, row.id, entry, at)
    for test in kept.tests:
        yield _test(kept, test)
    if any(entry.kind is RowKind.SESSION for entry in entries):
        yield _completion(kept, entries)
    for event in events_of(kept):
        yield _event(kept, event)


def _plan(kept: Kept) -> Resource:
    course, version = kept.course, kept.version
    held = course.state == CourseState.ACTIVE and course.paused is not None
    status, activity = _PLAN[CourseState.WAITING if held else CourseState(course.state)]
    first = kept.rows[0][1].on if kept.rows else course.starts_on
    last = kept.rows[-1][1].on if kept.rows and course.ended_at is not None else None
    period = {name: on.isoformat() for name, on in (("start", first), ("end", last)) if on is not None}
    detail: Resource = {"status": activity, "description": f"Stretching by the programme, day {course.day} in hand"}
    return {
        "resourceType": "CarePlan",
        "id": name_of(kept.person, "plan", course.id),
        "instantiatesUri": [f"{OURS}:programme:sha256:{version.digest}"],
        "status": status,
        "intent": "plan",
        "title": version.title,
        "subject": _patient_of(kept),
        **({"period": period} if period else {}),
        "activity": [{"detail": detail}],
    }


def _said(kept: Kept, row: int, entry: Entry, at: datetime | None) -> Iterator[Resource]:
    """What the client said of one date."""
    said, on = entry.checkin, entry.on.isoformat()
    if said.pain is not None:
        place = [_concept("place", str(said.place), f"pain {said.place}")] if said.place is not None else []
        parts = {"component": [{"code": _concept("pain-place"), "valueCodeableConcept": place[0]}]} if place else {}
        yield _survey(kept, ("pain", row), {"coding": [PAIN]}, on, at, valueQuantity=_score(said.pain), **parts)
    if said.tightness is not None:
        code = _concept("tightness", text="Tightness, 0 loose to 10 very tight, as the client says")
        yield _survey(kept, ("tightness", row), code, on, at, valueQuantity=_score(said.tightness))
    if said.completion is not None and entry.kind is RowKind.SESSION:
        code = _concept("session", text="Stretching session of the day: done, part of it, or none")
        value = {"coding": [{"system": f"{OURS}:completion", "code": str(said.completion)}]}
        yield _survey(kept, ("session", row), code, on, at, valueCodeableConcept=value)


def _completion(kept: Kept, entries: Sequence[Entry]) -> Resource:
    """The share of delivered sessions that were done, with both bounds: the silent ones as left out, and as done."""
    week = week_of(entries)
    bounds = [_quantity(round(100 * share, 1), "%", "%") for share in week.completion]
    counts = {"sessions-due": week.due, "sessions-done": week.done, "sessions-silent": week.silent}
    value = {"valueRange": {"low": bounds[0], "high": bounds[1]}} if week.due else _UNKNOWN
    found = _observation(
        kept,
        ("completion", kept.course.id),
        "survey",
        _concept("completion", text="Sessions done of those that were due; both bounds, as some were not answered"),
        effectivePeriod={"start": entries[0].on.isoformat(), "end": entries[-1].on.isoformat()},
        **value,
    )
    parts = [{"code": _concept(code), "valueInteger": count} for code, count in counts.items()]
    return {**found, "component": parts}


_UNKNOWN: Resource = {"dataAbsentReason": {"coding": [{"system": f"{HL7}/data-absent-reason", "code": "unknown"}]}}


def _test(kept: Kept, test: MeasureRow) -> Resource:
    """A test of flexibility, taken by the client alone."""
    measure = MEASURES[test.measure]
    warm = {True: "After a warm-up.", False: "Without a warm-up.", None: ""}[test.warm]
    tries = ", ".join(f"{value:g}" for value in test.tries)
    side = {"bodySite": _concept("side", test.side, test.side)} if test.side else {}
    return _observation(
        kept,
        ("test", test.id),
        "exam",
        {
            "coding": [{"system": f"{OURS}:measure", "code": measure.key, "display": measure.name}],
            "text": measure.name,
        },
        effectiveDateTime=_instant(test.at),
        valueQuantity=_quantity(test.value or 0.0, *UNITS[measure.unit]),
        note=[{"text": f"Measured by the client alone, {measure.counts} of: {tries}. {warm}".strip()}],
        **side,
    )


def _event(kept: Kept, event: AdverseEvent) -> Resource:
    """An adverse event; what was done about it stands in extensions, as the resource has no element for it."""
    seen = [{"system": f"{OURS}:rule", "code": rule} for rule in event.what]
    over = event.outcome == "settled" and event.resumed_on is not None
    outcome = "resolved" if over else _OUTCOMES.get(event.outcome, "unknown")
    where = f", day {event.day} of {event.programme}" if event.day is not None else ""
    parts = (*event.what, f"pain {event.pain} of 10" if event.pain is not None else "", event.movement or "")
    text = ", ".join(part for part in parts if part)
    done = [event.verdict, *(word.what for word in event.coach_decided)]
    plan = {"reference": _reference("plan", kept, kept.course.id)}
    extensions = [
        {"url": f"{OURS}:plan", "valueReference": plan},
        *({"url": f"{OURS}:action", "valueCode": action} for action in done if action is not None),
        *({"url": f"{OURS}:note", "valueString": word.note} for word in event.coach_decided if word.note),
    ]
    return {
        "resourceType": "AdverseEvent",
        "id": event.id,
        "extension": extensions,
        "identifier": {"system": f"{OURS}:adverse-event", "value": event.id},
        "actuality": "actual",
        "event": {"coding": seen, "text": text + where},
        "subject": _patient_of(kept),
        "date": (event.session_on or event.told_on).isoformat(),
        "detected": event.told_on.isoformat(),
        "outcome": {"coding": [{"system": f"{HL7}/adverse-event-outcome", "code": outcome}], "text": event.outcome},
        "recorder": _patient_of(kept),
    }


# --- parts ------------------------------------------------------------------------------------------------------------


def _survey(
    kept: Kept, name: tuple[object, ...], code: Resource, on: str, at: datetime | None, **value: object
) -> Resource:
    """What the client said of a date, and when they said it."""
    issued = {"issued": _instant(at)} if at is not None else {}
    return _observation(kept, name, "survey", code, effectiveDateTime=on, **issued, **value)


def _observation(
    kept: Kept, name: tuple[object, ...], category: str, code: Resource, **value: object
) -> dict[str, object]:
    """An observation by the client of themselves."""
    return {
        "resourceType": "Observation",
        "id": name_of(kept.person, *name),
        "basedOn": [{"reference": _reference("plan", kept, kept.course.id)}],
        "status": "final",
        "category": [{"coding": [{"system": f"{HL7}/observation-category", "code": category}]}],
        "code": code,
        "subject": _patient_of(kept),
        "performer": [_patient_of(kept)],
        **value,
    }


def _concept(system: str, code: str | None = None, text: str | None = None) -> Resource:
    """A code of our own: of a list of its own, or one of what we observe."""
    coding = {"system": f"{OURS}:{system}", "code": code} if code else {"system": f"{OURS}:observation", "code": system}
    return {"coding": [coding], **({"text": text} if text else {})}


def _quantity(value: float, unit: str, code: str) -> Resource:
    return {"value": value, "unit": unit, "system": UCUM, "code": code}


def _score(value: int) -> Resource:
    return _quantity(value, "{score}", "{score}")


def _patient_of(kept: Kept) -> Resource:
    return {"reference": _reference("patient", kept)}


def _reference(kind: str, kept: Kept, *number: object) -> str:
    return f"urn:uuid:{name_of(kept.person, kind, *number)}"


def _instant(moment: datetime) -> str:
    return moment.astimezone(UTC).isoformat(timespec="seconds").replace("+00:00", "Z")
