"""What leaves as files: it agrees with the rows, holds to the standards, and is only on one's own clients."""

from __future__ import annotations

import base64
import csv
import json
from collections.abc import Awaitable, Callable
from datetime import UTC, date, datetime
from io import BytesIO, StringIO
from pathlib import Path
from typing import Any
from zipfile import ZipFile

import pytest
from fhir.resources.R4B.bundle import Bundle
from icalendar import Calendar
from jsonschema import Draft202012Validator
from sqlalchemy import func, select, update
from sqlalchemy.ext.asyncio import AsyncSession

from bot.cli import exporting as command
from bot.coach_taps import OF_COACHES
from bot.exports import files, schemas
from bot.flows import mine, settings
from bot.flows.desk import Desk
from bot.flows.rights import NotAllowed
from bot.taps import tap
from db import erasure
from db.engine import Database
from db.schema import Alert, Answer, CheckInRow, Course, Helper, LedgerRow, MeasureRow, Outbox, Overrule, Person
from plans.localtime import instant
from tests.fhir_rules import complaints
from tests.grouped import START, Life, coach_with, live
from tests.integration.test_digests import CAUSES, ROWING, SHORT, ledger

pytestmark = pytest.mark.usefixtures("store")

NOW = datetime(2026, 3, 16, 16, tzinfo=UTC)
COACH, OTHER, HELPER = 1, 2, 50
ADA, BEA, EVA, GUS, STRANGE = 100, 101, 102, 103, 104
"""Clients of the first coach: all goes well, little is said, one hurt herself, one has stopped, an unpleasant name."""
LIVES = (Life("Ada"), Life("Bea", misses=0.4), Life("Eva", sharp_on=9), Life("Gus", stops=6), Life('=HYPERLINK("x")'))
DATES = 15
IVO = 200
"""A client of the other coach."""
OF_A_CLIENT = ("tables", "record", "events", "fhir", "plan")


@pytest.fixture
async def practices(database: Database) -> Database:
    """Two coaches with clients who lived for two weeks; an assistant of the first one."""

    async def job(session: AsyncSession) -> None:
        await live(session, await coach_with(session, ROWING, COACH), LIVES, dates=DATES)
        await live(session, await coach_with(session, SHORT, OTHER), (Life("Ivo", sharp_on=3),), dates=9, first=IVO)
        session.add(Person(id=HELPER, chat=HELPER, label="Help", created_at=NOW))
        await session.flush()
        session.add(Helper(coach_id=COACH, person_id=HELPER, sees=True, added_at=NOW))

    await database.write(job)
    return database


async def does(database: Database, person: int, act: Callable[[Desk, Person], Awaitable[Any]]) -> list[dict[str, Any]]:
    """An act of somebody's, committed; what it said, oldest first."""

    async def job(session: AsyncSession) -> str:
        cause = f"out:{next(CAUSES)}"
        desk = Desk(session=session, now=NOW, cause=cause, bot_username="b")
        await act(desk, await session.get_one(Person, person))
        return cause

    cause = await database.write(job)
    async with database.reading() as session:
        mine_ = select(Outbox.payload).where(Outbox.key.contains(cause)).order_by(Outbox.id)
        return list(await session.scalars(mine_))


async def taps(database: Database, person: int, data: str) -> list[dict[str, Any]]:
    return await does(database, person, lambda desk, who: tap(desk, who, data))


async def course_of(database: Database, person: int) -> int:
    async with database.reading() as session:
        return await session.scalar(select(Course.id).where(Course.person_id == person)) or 0


def body_of(payload: dict[str, Any]) -> bytes:
    return base64.b64decode(payload["document"]["base64"])


def named(said: list[dict[str, Any]]) -> dict[str, bytes]:
    return {one["document"]["filename"]: body_of(one) for one in said}


def rows_of(body: bytes) -> list[dict[str, str]]:
    return list(csv.DictReader(StringIO(body.decode("utf-8-sig"), newline="")))


async def everything(database: Database, coach: int = COACH) -> dict[str, bytes]:
    (payload,) = await taps(database, coach, f"exports:all:{coach}")
    with ZipFile(BytesIO(body_of(payload))) as archive:
        return {name: archive.read(name) for name in archive.namelist()}


# --- tables and JSON --------------------------------------------------------------------------------------------------


async def test_the_days_table_agrees_with_the_ledger_to_the_row(practices: Database) -> None:
    found = rows_of((await everything(practices))["days.csv"])
    wanted = [row for row in await ledger(practices) if row["label"] != "Ivo"]
    names = ("row", "day", "ease_level", "next_morning", "done", "pain", "tightness")
    theirs = ("kind", "day", "level", "morning", "completion", "pain", "tightness")
    shown = sorted((line["client"].removeprefix("'"), line["date"], *(line[name] for name in names)) for line in found)
    kept = sorted(
        (row["label"], str(row["local_date"]), *("" if row[name] is None else str(row[name]) for name in theirs))
        for row in wanted
    )
    assert shown == kept
    assert len(shown) > 50


async def test_the_other_tables_have_a_row_for_each_that_is_kept(practices: Database) -> None:
    found = await everything(practices)
    async with practices.reading() as session:
        own = select(Course.id).where(Course.coach_id == COACH)
        for name, column in (
            ("courses.csv", Course.id),
            ("tests.csv", MeasureRow.course_id),
            ("alerts.csv", Alert.course_id),
        ):
            count = await session.scalar(select(func.count(column)).where(column.in_(own)))
            assert len(rows_of(found[name])) == count
            assert count


async def test_no_cell_is_taken_for_a_formula(practices: Database) -> None:
    for name, body in (await everything(practices)).items():
        if name.endswith(".csv"):
            cells = [cell for line in csv.reader(StringIO(body.decode("utf-8-sig"), newline="")) for cell in line]
            assert not [cell for cell in cells if cell.lstrip().startswith(("=", "+", "@"))], name
    lines = rows_of((await everything(practices))["courses.csv"])
    assert '\'=HYPERLINK("x")' in [line["client"] for line in lines]


@pytest.mark.parametrize("name", ["record", "adverse-events"])
async def test_json_holds_to_the_schema_beside_it_which_is_the_published_one(practices: Database, name: str) -> None:
    document = json.loads((await everything(practices))[f"{name}.json"])
    Draft202012Validator.check_schema(document["schema"])
    validator = Draft202012Validator(document["schema"], format_checker=Draft202012Validator.FORMAT_CHECKER)
    assert [error.message for error in validator.iter_errors(document["data"])] == []
    published = Path(schemas.__file__).with_name(f"{name}.schema.json")
    assert document["schema"] == json.loads(published.read_text(encoding="utf-8"))


async def test_the_record_has_every_date_with_its_votes(practices: Database) -> None:
    data = json.loads((await everything(practices))["record.json"])["data"]
    async with practices.reading() as session:
        rows = {(row.course_id, str(row.local_date)): row.decision for row in await session.scalars(select(LedgerRow))}
        own = set(await session.scalars(select(Course.id).where(Course.coach_id == COACH)))
    found = {(course["course"], day["date"]): day for course in data["courses"] for day in course["days"]}
    assert set(found) == {key for key in rows if key[0] in own}
    for key, day in found.items():
        decision = rows[key] or {}
        assert (day["verdict"], len(day["votes"])) == (decision.get("verdict"), len(decision.get("votes", ())))
    (stopped,) = (course for course in data["courses"] if course["client"] == "Gus")
    assert stopped["state"] == "stopped"
    assert "Health data" in data["holds"]


# --- adverse events ---------------------------------------------------------------------------------------------------


async def test_an_event_says_what_happened_in_which_session_and_what_was_done(practices: Database) -> None:
    course = await course_of(practices, EVA)

    async def job(session: AsyncSession) -> None:
        row = await session.scalar(
            select(LedgerRow)
            .join(CheckInRow, CheckInRow.ledger_id == LedgerRow.id)
            .where(LedgerRow.course_id == course, CheckInRow.kind == "sharp")
        )
        assert row is not None
        session.add(Answer(update_id=1, n=0, person_id=EVA, ledger_id=row.id, field="words", value="a stab", at=NOW))
        session.add(Overrule(course_id=course, what="go-on", note="seen by a physio", at=NOW, applied_on=None))

    await practices.write(job)
    found = named(await taps(practices, COACH, f"export:{course}:events"))
    event = json.loads(found["adverse-events.json"])["data"]["events"][-1]
    assert (event["client"], event["told_on"], event["session_on"]) == ("Eva", "2026-03-11", "2026-03-11")
    assert event["what"][:2] == ["strain-like", "excessive"]
    assert (event["pain"], event["kind"], event["verdict"], event["outcome"]) == (6, "sharp", "refer", "waiting")
    assert event["own_words"] == ["a stab"]
    assert len(event["movements"]) > 3
    assert event["coach_decided"][0]["note"] == "seen by a physio"
    line = rows_of(found["adverse-events.csv"])[-1]
    assert (line["id"], line["what"], line["own_words"]) == (event["id"], "; ".join(event["what"]), "a stab")
    assert line["coach_decided"] == "go-on (seen by a physio)"


async def test_the_events_of_everybody_are_those_that_the_ledger_has(practices: Database) -> None:
    found = named(await taps(practices, COACH, "exports:events:1"))
    data = json.loads(found["adverse-events.json"])["data"]
    hard = [row for row in await ledger(practices) if (row["pain"] or 0) >= 6 and row["label"] != "Ivo"]
    shown = {(event["client"], event["told_on"]) for event in data["events"]}
    assert {(row["label"], str(row["local_date"])) for row in hard} <= shown
    assert (data["courses"], data["dates"]) == (5, len([r for r in await ledger(practices) if r["label"] != "Ivo"]))
    assert len({event["id"] for event in data["events"]}) == len(data["events"])


async def test_a_warning_sign_outside_all_dates_is_in_the_list(practices: Database) -> None:
    course = await course_of(practices, GUS)

    async def job(session: AsyncSession) -> None:
        session.add(
            Alert(course_id=course, cause="red-flag", at_once=True, red=True, facts={"flag": "emergency"},
                  report={"words": ["my chest hurts"]}, opened_at=NOW, told_at=NOW)
        )  # fmt: skip

    await practices.write(job)
    found = named(await taps(practices, COACH, f"export:{course}:events"))
    event = json.loads(found["adverse-events.json"])["data"]["events"][-1]
    assert (event["flag"], event["session_on"], event["own_words"]) == ("emergency", None, ["my chest hurts"])
    assert event["told_on"] == "2026-03-16"


# --- FHIR -------------------------------------------------------------------------------------------------------------


@pytest.fixture
async def bundles(practices: Database) -> list[dict[str, Any]]:
    found = await everything(practices)
    return [json.loads(body) for name, body in found.items() if name.startswith("fhir/")]


async def test_every_bundle_holds_to_the_standard(bundles: list[dict[str, Any]]) -> None:
    """Shapes by fhir.resources (R4B); code lists, cardinalities and references by our own reading of HL7's pages."""
    assert len(bundles) == len(LIVES)
    for bundle in bundles:
        read = Bundle.model_validate(bundle)
        assert len(read.entry or ()) == len(bundle["entry"])
        assert complaints(bundle) == []


async def test_our_own_check_sees_what_is_wrong(bundles: list[dict[str, Any]]) -> None:
    for kind, element, wrong in (
        ("CarePlan", "status", "finished"),
        ("Observation", "status", "done"),
        ("AdverseEvent", "outcome", {"coding": [{"system": "urn:x", "code": "fine"}]}),
        ("Observation", "subject", {"reference": "urn:uuid:nowhere"}),
        ("CarePlan", "subject", None),
    ):
        whole = next(b for b in bundles if any(e["resource"]["resourceType"] == kind for e in b["entry"]))
        broken = json.loads(json.dumps(whole))
        part = next(e["resource"] for e in broken["entry"] if e["resource"]["resourceType"] == kind)
        part.pop(element)
        if wrong is not None:
            part[element] = wrong
        assert complaints(broken), (kind, element)


async def test_pain_is_a_score_of_the_standard_code_on_its_own_date(
    practices: Database, bundles: list[dict[str, Any]]
) -> None:
    """LOINC 72514-3, a quantity in UCUM {score}; one for each number that was given."""
    pains = [
        (
            bundle["entry"][0]["resource"]["name"][0]["given"][0],
            part["effectiveDateTime"],
            part["valueQuantity"]["value"],
        )
        for bundle in bundles
        for part in observations(bundle)
        if part["code"]["coding"][0]
        == {
            "system": "http://loinc.org",
            "code": "72514-3",
            "display": "Pain severity - 0-10 verbal numeric rating [Score] - Reported",
        }
    ]
    kept = [
        (row["label"], str(row["local_date"]), row["pain"])
        for row in await ledger(practices)
        if row["pain"] is not None and row["label"] != "Ivo"
    ]
    assert sorted(pains) == sorted(kept)
    for bundle in bundles:
        for part in observations(bundle):
            if part["code"]["coding"][0]["system"] == "http://loinc.org":
                assert part["valueQuantity"]["code"] == "{score}"


def observations(bundle: dict[str, Any]) -> list[dict[str, Any]]:
    return [e["resource"] for e in bundle["entry"] if e["resource"]["resourceType"] == "Observation"]


async def test_tests_have_their_units_and_completion_both_its_bounds(
    practices: Database, bundles: list[dict[str, Any]]
) -> None:
    taken = [part for b in bundles for part in observations(b) if part["category"][0]["coding"][0]["code"] == "exam"]
    async with practices.reading() as session:
        own = select(Course.id).where(Course.coach_id == COACH)
        kept = [
            value or 0.0
            for value in await session.scalars(select(MeasureRow.value).where(MeasureRow.course_id.in_(own)))
        ]
    assert sorted(part["valueQuantity"]["value"] for part in taken) == sorted(kept)
    assert {part["valueQuantity"]["code"] for part in taken} == {"cm"}
    ranges = [part["valueRange"] for b in bundles for part in observations(b) if "valueRange" in part]
    assert len(ranges) == len(LIVES)
    assert any(found["low"]["value"] < found["high"]["value"] for found in ranges)


async def test_a_bundle_has_no_surname_chat_number_or_coach(practices: Database) -> None:
    async def job(session: AsyncSession) -> None:
        await session.execute(update(Person).where(Person.id == ADA).values(chat=987654321012))

    await practices.write(job)
    found = await everything(practices)
    body = found[f"fhir/{ADA}.json"].decode()
    patient = json.loads(body)["entry"][0]["resource"]
    assert patient["name"] == [{"use": "usual", "given": ["Ada"]}]
    assert "987654321012" not in "".join(one.decode("utf-8", "replace") for one in found.values())
    assert "Coach 1" not in body


async def test_names_of_resources_stay_the_same(practices: Database, bundles: list[dict[str, Any]]) -> None:
    again = await everything(practices)
    ids = [entry["fullUrl"] for bundle in bundles for entry in bundle["entry"]]
    later = [entry["fullUrl"] for name, body in again.items() if name.startswith("fhir/")
             for entry in json.loads(body)["entry"]]  # fmt: skip
    assert ids == later
    assert len(set(ids)) == len(ids)


# --- the dates ahead --------------------------------------------------------------------------------------------------


async def test_the_dates_ahead_come_at_the_clients_own_mornings_and_name_nobody(practices: Database) -> None:
    course = await course_of(practices, IVO)

    async def job(session: AsyncSession) -> None:
        found = await session.get_one(Course, course)
        found.state, found.day = "active", 9
        await session.execute(update(Person).where(Person.id == IVO).values(zone="America/New_York"))

    await practices.write(job)
    (payload,) = await does(practices, IVO, lambda desk, who: settings.tapped(desk, who, "calendar", ""))
    (other,) = await taps(practices, OTHER, f"export:{course}:plan")
    assert body_of(payload) == body_of(other)
    body = body_of(payload).decode()
    assert "Ivo" not in body
    assert "Coach" not in body
    events = Calendar.from_ical(body).walk("VEVENT")
    timed = [one.decoded("dtstart") for one in events if isinstance(one.decoded("dtstart"), datetime)]
    assert len(timed) >= 10
    for start in timed:
        assert start.astimezone(UTC) == instant(start.date(), start.time(), "America/New_York")
        assert start.hour == 7
    assert min(timed).date() == date(2026, 3, 16)


async def test_a_course_that_waits_or_is_over_has_no_dates(practices: Database) -> None:
    for person in (EVA, GUS):
        (payload,) = await taps(practices, COACH, f"export:{await course_of(practices, person)}:plan")
        assert payload["text"].startswith("There are no dates to give")


async def test_a_course_that_has_begun_keeps_the_name_of_each_date(practices: Database) -> None:
    course = await course_of(practices, ADA)

    async def names() -> dict[str, str]:
        (payload,) = await taps(practices, COACH, f"export:{course}:plan")
        events = Calendar.from_ical(body_of(payload)).walk("VEVENT")
        return {str(one.decoded("dtstart"))[:10]: str(one["uid"]) for one in events}

    before = await names()

    async def job(session: AsyncSession) -> None:
        (await session.get_one(Course, course)).level = 2

    await practices.write(job)
    after = await names()
    assert before
    assert {on: name for on, name in after.items() if on in before} == {on: before[on] for on in after if on in before}


# --- who may ----------------------------------------------------------------------------------------------------------


@pytest.mark.parametrize("what", ["menu", *OF_A_CLIENT])
async def test_nobody_gets_files_of_another_coachs_client(practices: Database, what: str) -> None:
    hers, his = await course_of(practices, ADA), await course_of(practices, IVO)
    for person, course in ((OTHER, hers), (COACH, his), (HELPER, his), (ADA, hers), (EVA, hers), (IVO, his)):
        with pytest.raises(NotAllowed):
            await taps(practices, person, f"export:{course}:{what}")


@pytest.mark.parametrize("what", ["menu", "events", "all"])
async def test_files_of_everybody_are_a_coachs_only_and_of_their_own(practices: Database, what: str) -> None:
    for person in (ADA, IVO):
        with pytest.raises(NotAllowed):
            await taps(practices, person, f"exports:{what}:1")
    for person in (COACH, HELPER):
        said = await taps(practices, person, f"exports:{what}:1")
        bodies = b"".join(body_of(one) for one in said if "document" in one)
        assert said
        assert b"Ivo" not in bodies


async def test_an_assistant_gets_files_only_with_the_right_to_see(practices: Database) -> None:
    course = await course_of(practices, ADA)
    assert await taps(practices, HELPER, f"export:{course}:record")

    async def job(session: AsyncSession) -> None:
        await session.execute(update(Helper).values(sees=False, publishes=True, hears=True, rules=True))

    await practices.write(job)
    for data in (f"export:{course}:record", "exports:all:1"):
        with pytest.raises(NotAllowed):
            await taps(practices, HELPER, data)


async def test_a_client_who_went_to_another_coach_is_only_in_that_ones_files(practices: Database) -> None:
    course = await course_of(practices, ADA)

    async def job(session: AsyncSession) -> None:
        await session.execute(update(Course).where(Course.id == course).values(coach_id=OTHER))

    await practices.write(job)
    with pytest.raises(NotAllowed):
        await taps(practices, COACH, f"export:{course}:record")
    assert f"fhir/{ADA}.json" not in await everything(practices, COACH)
    assert f"fhir/{ADA}.json" in await everything(practices, OTHER)


async def test_clients_get_their_own_record_and_nobody_elses(practices: Database) -> None:
    (payload,) = await does(practices, ADA, lambda desk, who: mine.tapped(desk, who, "fhir"))
    bundle = json.loads(body_of(payload))
    Bundle.model_validate(bundle)
    assert complaints(bundle) == []
    assert [e["resource"]["name"] for e in bundle["entry"] if e["resource"]["resourceType"] == "Patient"] == [
        [{"use": "usual", "given": ["Ada"]}]
    ]
    found = named(await does(practices, ADA, lambda desk, who: mine.tapped(desk, who, "tables")))
    assert set(found) == {"courses.csv", "days.csv", "tests.csv", "alerts.csv"}
    assert {line["client"] for body in found.values() for line in rows_of(body)} == {"Ada"}


async def test_buttons_that_are_none_of_ours_are_refused(practices: Database) -> None:
    course = await course_of(practices, ADA)
    for data in (f"export:{course}:other", f"export:{course}", "exports:other:1", "export:x:tables"):
        with pytest.raises(NotAllowed):
            await taps(practices, COACH, data)
    assert {"export", "exports"} <= set(OF_COACHES)


# --- who is erased ----------------------------------------------------------------------------------------------------


async def test_who_was_erased_is_in_no_file(practices: Database) -> None:
    await taps(practices, COACH, "exports:all:1")

    async def job(session: AsyncSession) -> None:
        await erasure.erase(session, await session.get_one(Person, EVA), NOW)

    await practices.write(job)
    async with practices.reading() as session:
        waiting = select(func.count()).select_from(Outbox).where(Outbox.method == "send_document", Outbox.chat == COACH)
        assert await session.scalar(waiting) == 0
    found = await everything(practices)
    assert f"fhir/{EVA}.json" not in found
    assert not [name for name, body in found.items() if b"Eva" in body]
    assert f"fhir/{ADA}.json" in found


async def test_somebody_who_comes_back_after_an_erasure_has_other_names(practices: Database) -> None:
    before = json.loads((await everything(practices))[f"fhir/{ADA}.json"])["id"]

    async def job(session: AsyncSession) -> None:
        await session.execute(update(Person).where(Person.id == ADA).values(created_at=NOW))

    await practices.write(job)
    assert json.loads((await everything(practices))[f"fhir/{ADA}.json"])["id"] != before


# --- the command line -------------------------------------------------------------------------------------------------


async def test_the_command_writes_the_same_files_for_nobody_else_to_read(practices: Database, tmp_path: Path) -> None:
    folder, said = tmp_path / "out" / "here", list[str]()
    await command.export(practices, "Coach 1", folder, None, (), said.append)
    written = {str(file.relative_to(folder)): file for file in folder.rglob("*") if file.is_file()}
    assert {name for name in written if not name.startswith("calendar/")} == {
        name for name in await everything(practices) if not name.startswith("calendar/")
    }
    assert {file.stat().st_mode & 0o777 for file in written.values()} == {0o600}
    assert folder.stat().st_mode & 0o777 == 0o700
    assert written["README.txt"].read_text(encoding="utf-8") == files.ABOUT
    assert "Health data" in said[-1]
    with pytest.raises(command.NotEmpty):
        await command.export(practices, "Coach 1", folder, None, (), said.append)


async def test_the_command_writes_one_client_and_one_kind(practices: Database, tmp_path: Path) -> None:
    await command.export(practices, "1", tmp_path / "a", "Ada", ["fhir"], list[str]().append)
    assert sorted(file.name for file in (tmp_path / "a").rglob("*.*")) == [f"{ADA}.json", "README.txt"]
    for coach, client in (("2", "Ada"), ("1", "Ivo"), ("Ada", None), ("nobody", None), (str(HELPER), None)):
        with pytest.raises(LookupError):
            await command.export(practices, coach, tmp_path / "b", client, (), list[str]().append)
    assert not (tmp_path / "b").exists()


async def test_starting_is_the_first_date_of_the_record(practices: Database) -> None:
    data = json.loads((await everything(practices))["record.json"])["data"]
    assert {course["days"][0]["date"] for course in data["courses"]} == {str(START)}
