"""Who may do what: every command, every button and everything else that can be sent, beside the roles that may.

The scene (`scene`) is one coach's practice: a client with a running course (1) and one that is over (2), a programme
(11) and its next version (12), one alert, invitation, recording, message to many, word and offer of a hand-over;
assistants with one right each; and another coach with a client (course 3) and a programme (13). What is tapped is
always the first coach's, or the tapper's own. No two kinds of things share a number: one taken for another is refused.
"""

from __future__ import annotations

from collections.abc import Mapping
from datetime import date, datetime, time, timedelta
from enum import IntEnum

from sqlalchemy.ext.asyncio import AsyncSession

from db import due, schema
from db.erasure import erase
from plans.reading import read_programme
from tests.texts import HEAD, TEST, session

NOW = datetime.fromisoformat("2026-05-12T08:00:00+00:00")
TODAY = NOW.date()


class Role(IntEnum):
    """Somebody of the scene; the value is the number of the person and of their chat."""

    COACH = 1
    CLIENT = 2
    OTHER_COACH = 3
    OTHER_CLIENT = 4
    SEES = 5
    RULES = 6
    PUBLISHES = 7
    HEARS = 8
    NO_RIGHT = 9
    STANDS_IN = 10
    STRANGER = 11
    REMOVED_ASSISTANT = 12
    REMOVED_COACH = 13


SOURCE = (
    HEAD.replace("days:\n", "training-days: 3\ndays:\n").replace("kind: dynamic}", "kind: dynamic, equipment: [strap]}")
    + TEST
    + 5 * session()
)
HELPERS = (Role.SEES, Role.RULES, Role.PUBLISHES, Role.HEARS, Role.NO_RIGHT, Role.STANDS_IN)

Who = frozenset[Role]
EVERYBODY: Who = frozenset(Role)
"""About nothing but themselves."""
CLIENT: Who = frozenset({Role.CLIENT})
ANY_CLIENT: Who = frozenset({Role.CLIENT, Role.OTHER_CLIENT})
"""Of their own course."""
COACH: Who = frozenset({Role.COACH})
ANY_COACH: Who = frozenset({Role.COACH, Role.OTHER_COACH})
"""Of their own people and things."""
SEE: Who = frozenset({Role.COACH, Role.SEES, Role.STANDS_IN})
RULE: Who = frozenset({Role.COACH, Role.RULES, Role.STANDS_IN})
PUBLISH: Who = frozenset({Role.COACH, Role.PUBLISHES})
HEAR: Who = frozenset({Role.COACH, Role.HEARS, Role.STANDS_IN})
OTHER = frozenset({Role.OTHER_COACH})

COMMANDS: Mapping[str, Who] = {
    **dict.fromkeys(("start", "help", "settings", "mine", "privacy", "stop", "how"), EVERYBODY),
    **dict.fromkeys(("today", "progress", "shorter", "lighter", "measure", "away"), EVERYBODY),
    "people": SEE | OTHER,
    "programmes": PUBLISH | OTHER,
    "invite": PUBLISH | OTHER,
    "digest": SEE | OTHER,
}

TAPS: Mapping[str, Who] = {
    # a client's own day
    "c:41:all": CLIENT,
    "c:41:some": CLIENT,
    "c:41:part": CLIENT,
    "c:41:none": CLIENT,
    "c:41:odd": CLIENT,
    "c:41:fix": CLIENT,
    "c:41:pain:2": CLIENT,
    "c:41:pain:0": CLIENT,
    "c:41:tight:3": CLIENT,
    "c:41:half:yes": CLIENT,
    "c:41:half:no": CLIENT,
    "c:41:why:time": CLIENT,
    "c:41:kind:dull-both": CLIENT,
    "c:41:place:here-both": CLIENT,
    "c:41:place:here-left": CLIENT,
    "c:41:place:here-right": CLIENT,
    "c:41:place:elsewhere": CLIENT,
    "c:41:area:knee": CLIENT,
    "c:41:flag:no": CLIENT,
    "c:41:flag:yes": CLIENT,
    "c:41:bar:0": CLIENT,
    "c:41:lacks:0": CLIENT,
    "n:41:all": CLIENT,
    "m:41:settled": CLIENT,
    "m:41:same": CLIENT,
    "m:41:worse": CLIENT,
    "lead:41:begin": CLIENT,
    "lead:41:next": CLIENT,
    "lead:41:back": CLIENT,
    "lead:41:hold": CLIENT,
    "lead:41:end": CLIENT,
    "short:41:5": CLIENT,
    "today:1": CLIENT,
    # a client's own course
    "join:1:agree:0:52": CLIENT,
    "join:1:no": CLIENT,
    "screen:1:age:adult": CLIENT,
    "begin:1:today": CLIENT,
    "begin:1:tomorrow": CLIENT,
    "begin:1:then": CLIENT,
    "well:1": CLIENT,
    "pause:1": CLIENT,
    "away:1:3": CLIENT,
    "have:1:yes:strap": CLIENT,
    "about:1": CLIENT,
    "reply:1": CLIENT,
    "hand:56:0:yes": CLIENT,
    "hand:56:0:no": CLIENT,
    "liked:2:-": CLIENT,
    "liked:2:reach": CLIENT,
    "upkeep:2:again": CLIENT,
    "settings:days": ANY_CLIENT,
    "settings:days:0": ANY_CLIENT,
    "settings:health": ANY_CLIENT,
    "settings:health:yes": ANY_CLIENT,
    "settings:health:no": ANY_CLIENT,
    "settings:things": ANY_CLIENT,
    "settings:calendar": ANY_CLIENT,
    # about oneself
    "settings:zone": EVERYBODY,
    "settings:morning": EVERYBODY,
    "settings:name": EVERYBODY,
    "settings:units": EVERYBODY,
    "settings:language": EVERYBODY,
    "settings:language:de": EVERYBODY,
    "zone:Europe/Lisbon": EVERYBODY,
    "time:0700": EVERYBODY,
    "measure:fingertip-to-floor:how": EVERYBODY,
    "measure:fingertip-to-floor:warm": EVERYBODY,
    "measure:fingertip-to-floor:cold": EVERYBODY,
    "measure:fingertip-to-floor:back": EVERYBODY,
    "measure:fingertip-to-floor:enough": EVERYBODY,
    "stop:ask": EVERYBODY,
    "stop:no": EVERYBODY,
    "stop:yes:1": CLIENT,
    "how:wall-calf-stretch": EVERYBODY,
    "photo:yes": EVERYBODY,
    "photo:no": EVERYBODY,
    "photo:forget": EVERYBODY,
    "mine:show": EVERYBODY,
    "mine:send": EVERYBODY,
    "mine:tables": EVERYBODY,
    "mine:fhir": EVERYBODY,
    "mine:delete": EVERYBODY,
    "mine:no": EVERYBODY,
    "mine:yes": EVERYBODY,
    # an assistant's own
    "helping:stop:31": frozenset({Role.SEES}),
    "helping:people:31": frozenset({Role.SEES}),
    # people
    "people:1:all:0:21": SEE,
    "client:1": SEE,
    "doses:1": SEE,
    "reasons:1": SEE,
    "photos:1": SEE,
    "export:1:menu": SEE,
    "export:1:tables": SEE,
    "exports:menu:21": SEE,
    "exports:events:21": SEE,
    "exports:all:21": SEE,
    "rule:1:ease": RULE,
    "rule:1:move": RULE,
    "rule:1:ease:0:0": RULE,
    "undo:55": RULE,
    "bar:1:list": RULE,
    "bar:1:0": RULE,
    "go:1": RULE,
    "found:1:seen:1": RULE,
    "found:1:spoke:1": RULE,
    "steer:1:message": RULE,
    "steer:1:note": RULE,
    "steer:1:time": RULE,
    "steer:1:time:0700": RULE,
    "steer:1:pause": RULE,
    "steer:1:pause:3": RULE,
    "steer:1:resume": RULE,
    "steer:1:forget:57": RULE,
    "seen:51": HEAR,
    "listed:21:51": HEAR,
    # programmes and links
    "publish:11": PUBLISH,
    "invite:11:0": PUBLISH,
    "invite:11:1": PUBLISH,
    "invite:11:10": PUBLISH,
    "draft:11:1::::show": PUBLISH,
    "draft:11:1::::places": PUBLISH,
    "draft:11:1::::start": PUBLISH,
    "draft:11:1::::last": PUBLISH,
    "draft:11:1::::make": PUBLISH,
    "invites:21": PUBLISH,
    "revoke:52": PUBLISH,
    "guardian:52": PUBLISH,
    "programme:11": COACH,
    "preview:11:button": ANY_COACH,
    "preview:11:changed": COACH,
    "preview:11:day:1": COACH,
    "preview:11:page:1": COACH,
    "preview:11:rehearse": COACH,
    "over:12:all:0": COACH,
    "over:12:none:0": COACH,
    "over:12:one:1": COACH,
    "over:12:page:1": COACH,
    "report:11": COACH,
    # only the coach
    "handover:1": COACH,
    "upkeep:2:look": COACH,
    "upkeep:2:run": COACH,
    "group:54:send": COACH,
    "group:54:anew": COACH,
    "group:54:leave": COACH,
    "group:21:new:all:0": COACH,
    "film:53:page:1": COACH,
    "film:53:is:reach": COACH,
    "film:53:forget": COACH,
    "film:0:list": ANY_COACH,
    "digest:people": ANY_COACH,
    "digest:page": ANY_COACH,
    "digest:page:0": ANY_COACH,
    "digest:page:11": COACH,
    "digest:table": ANY_COACH,
    "digest:when": ANY_COACH,
    "digest:when:0": ANY_COACH,
    "coach:page": ANY_COACH,
    "coach:name": ANY_COACH,
    "coach:training": ANY_COACH,
    "coach:terms": ANY_COACH,
    "coach:hours": ANY_COACH,
    "coach:hours:any": ANY_COACH,
    "coach:assistants": ANY_COACH,
    "coach:add": ANY_COACH,
    "coach:assistant:31": COACH,
    "coach:right:31:rules": COACH,
    "coach:remove:31": COACH,
    "coach:away": ANY_COACH,
    "coach:away:2026-06-01:2026-06-03": ANY_COACH,
    "coach:back": ANY_COACH,
    "coach:leave:2026-06-01:2026-06-03:0": ANY_COACH,
    "coach:leave:2026-06-01:2026-06-03:31": COACH,
}
"""What a button sends, as the scene has it, and who may."""

SENT: Mapping[str, tuple[Who, frozenset[str]]] = {
    "document": (PUBLISH | OTHER, frozenset({"programme_version"})),
    "film": (ANY_COACH, frozenset({"recording"})),
    "photo": (ANY_COACH, frozenset({"recording"})),
    "membership": (COACH, frozenset({"alert", "alert_call"})),
    **dict.fromkeys(("location", "text", "anything_else", "not_private"), (frozenset(), frozenset())),
}
"""Everything else that reaches the bot, by the name of its handler: who changes something by it that is not only their
own, and in which tables. A coach who blocks the bot is passed over by alerts: those go to others."""


async def scene(session: AsyncSession) -> None:
    """Puts the practice into an empty database."""
    made = {"created_at": NOW}
    session.add_all(
        schema.Person(id=r, chat=r, label=r.name.title(), zone="UTC", morning=time(7), **made) for r in Role
    )
    await session.flush()
    coaches = ((21, Role.COACH), (22, Role.OTHER_COACH), (23, Role.REMOVED_COACH))
    session.add_all(schema.Coach(id=n, person_id=role, **made) for n, role in coaches)
    await session.flush()
    session.add_all(
        schema.Helper(
            id=n,
            coach_id=21,
            person_id=role,
            added_at=NOW,
            **{right: role.name.lower() == right for right in ("sees", "rules", "publishes", "hears")},
        )
        for n, role in enumerate((*HELPERS, Role.REMOVED_ASSISTANT), start=31)
    )
    away = {"first_on": TODAY, "last_on": TODAY + timedelta(days=1), "stand_in_id": Role.STANDS_IN}
    session.add(schema.Absence(id=58, coach_id=21, **away))
    await _programmes(session)
    await _courses(session)
    await _things(session)
    for gone in (Role.REMOVED_COACH, Role.REMOVED_ASSISTANT):
        await erase(session, await session.get_one(schema.Person, gone), NOW)
        session.add(schema.Person(id=gone, chat=gone, label=gone.name.title(), zone="UTC", **made))
        await session.flush()


async def _programmes(session: AsyncSession) -> None:
    source = SOURCE
    programme = read_programme(source)
    for number, coach, text in ((11, 21, source), (12, 21, f"{source}\n"), (13, 22, source)):
        version = schema.ProgrammeVersion(id=number, coach_id=coach, digest=f"{number}", title=programme.title)
        version.source, version.stored_at, version.published_at = text, NOW, NOW
        session.add(version)
    await session.flush()


async def _courses(session: AsyncSession) -> None:
    people = (
        (1, Role.CLIENT, 21, 11, "active"),
        (2, Role.CLIENT, 21, 11, "finished"),
        (3, Role.OTHER_CLIENT, 22, 13, "active"),
    )
    for number, person, coach, version, state in people:
        course = schema.Course(id=number, person_id=person, coach_id=coach, version_id=version, state=state, day=2)
        course.level, course.starts_on, course.created_at = 0, TODAY - timedelta(days=1), NOW
        course.paused = None
        session.add(course)
    await session.flush()
    session.add_all((_row(41, 1, Role.CLIENT), _row(43, 3, Role.OTHER_CLIENT)))
    await session.flush()


def _row(number: int, course: int, person: Role, on: date = TODAY) -> schema.LedgerRow:
    row = schema.LedgerRow(id=number, course_id=course, person_id=person, local_date=on, zone="UTC", kind="session")
    row.day, row.level, row.made_at, row.lacks = 2, 0, NOW, None
    return row


async def _things(session: AsyncSession) -> None:
    """One of everything that a button can name."""
    far = NOW + timedelta(days=30)
    session.add_all(
        (
            schema.Alert(
                id=51,
                course_id=1,
                cause="excessive",
                at_once=True,
                facts={"pain": 6},
                opened_at=NOW,
                told_at=NOW,
                rung=1,
            ),
            schema.Invite(
                id=52, coach_id=21, version_id=11, token_hash="h", places=1, made_at=NOW, expires_at=far, guardian=None
            ),
            schema.Recording(id=53, coach_id=21, movement=None, kind="video", file_id="F", at=NOW),
            schema.GroupMessage(id=54, coach_id=21, state="all", programme=0, text="Hello", made_at=NOW),
            schema.Overrule(id=55, course_id=1, what="ease", at=NOW),
            schema.HandOver(id=56, course_id=1, from_coach_id=21, to_coach_id=22, asked_at=NOW),
            schema.CoachNote(id=57, course_id=1, text="noted", at=NOW),
        )
    )
    await due.plan(session, due.DueKind.CALL, 51, far)
    await session.flush()


async def ready(session: AsyncSession, data: str) -> None:
    """What must have happened before a button stands in a chat."""
    course, row = await session.get_one(schema.Course, 1), await session.get_one(schema.LedgerRow, 41)
    verb, *words = data.split(":")
    if verb == "m":
        row.kind = "asking"
    elif verb == "well":
        course.paused = "ill"
    elif verb == "lead":
        message = schema.Outbox(key="step", chat=2, lane=2, kind="answer", method="send_message", payload={})
        message.state, message.made_at = "sent", NOW
        session.add(message)
        await session.flush()
        row.step, row.step_outbox_id = 2 if words[1] == "hold" else 0, message.id
    elif verb == "c" and words[1] == "flag":
        said = schema.CheckInRow(ledger_id=row.id, sore=False, odd=True, updated_at=NOW)
        said.flag, said.flag_state = "clinician", "unsure"
        session.add(said)
    elif verb == "measure" and words[1] in ("back", "enough"):
        for number in (1, 2, 3):
            test = schema.MeasureRow(course_id=number, measure=words[0], tries=[12.0], wanted=3, begun_at=NOW, at=NOW)
            session.add(test)
    elif verb in ("liked", "upkeep"):
        over = await session.get_one(schema.Course, 2)
        done = _row(49, 2, Role.CLIENT, TODAY - timedelta(days=20))
        session.add(done)
        await session.flush()
        session.add(schema.CheckInRow(ledger_id=49, completion="done", pain=0, sore=False, odd=False, updated_at=NOW))
        if data.endswith(":again"):
            over.after_id = 1
    await session.flush()
