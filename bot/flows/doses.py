"""Dose by week of one client, as a chart for the coach: what came, beside what was done of it."""

from __future__ import annotations

from datetime import timedelta

from pydantic import TypeAdapter

from bot.flows.desk import Desk
from bot.flows.rights import own_course
from bot.words.charts import doses_words
from bot.words.message import Message, Picture
from bot.words.muscles import muscle_words
from db import bodies, courses
from db.schema import Coach, Person
from plans.charts.doses import Doses
from plans.charts.doses import Muscle as Panel
from plans.delivered import Handed, by_week
from plans.ledger import RowKind


async def show(desk: Desk, person: Person, coach: Coach, course_id: int) -> None:
    """Sends the chart. Raises NotAllowed for somebody else's client."""
    course = await own_course(desk, coach, course_id)
    client, words = await desk.session.get_one(Person, course.person_id), desk.words(person)
    programme, pairs = await desk.programme(course), await courses.history(desk.session, course)
    if not pairs:
        await desk.say(person, Message(words.say("day.no_progress")))
        return
    first = pairs[0][0].local_date
    weeks = (pairs[-1][0].local_date - first).days // 7 + 1
    versions = {row.version_id: await desk.programme_of(course, row) for row, _entry in pairs}
    handed = [
        Handed(
            (row.local_date - first).days // 7,
            versions[row.version_id].day(row.day),
            bodies.handed_out(versions[row.version_id], row, bodies.fit_of(course, row, pairs[: number + 1])),
            entry.checkin,
        )
        for number, (row, entry) in enumerate(pairs)
        if row.day is not None and entry.kind is RowKind.SESSION and (entry.delivered or entry.checkin.completion)
    ]
    chart = Doses(
        weeks=tuple(words.short_date(first + timedelta(days=7 * week)) for week in range(weeks)),
        muscles=tuple(
            Panel(muscle_words([muscle], gettext=words.gettext), by_week(handed, muscle, weeks))
            for muscle in programme.muscles
        ),
        words=doses_words(words, client.label),
    )
    picture = Picture("doses", TypeAdapter(Doses).dump_python(chart, mode="json"), personal=True)
    await desk.say(person, Message(words.say("coach.doses", label=client.label), picture=picture))
