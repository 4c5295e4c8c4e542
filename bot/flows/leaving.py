"""Stopping: one tap away at any time."""

from __future__ import annotations

from bot.flows import photos, telling
from bot.flows.asking import Asked, close
from bot.flows.desk import Desk
from bot.words.message import Button, Message, column
from db import courses, due, outbox, people
from db.courses import CourseState
from db.schema import Course, Person


async def ask(desk: Desk, person: Person) -> None:
    """Asks once before a course is stopped."""
    words, course = desk.words(person), await courses.open_course(desk.session, person)
    if course is None:
        await desk.say(person, Message(words.say("day.no_course")))
        return
    _ = words.gettext
    rows = column(Button(_("Yes, stop"), f"stop:yes:{course.id}"), Button(_("No, go on"), "stop:no"))
    await desk.say(person, Message(words.say("client.stop_ask"), rows))


async def stop(desk: Desk, person: Person, course: Course) -> None:
    """Ends the person's course and agreement; nothing more is sent, and the coach is told."""
    words = desk.words(person)
    if course.state not in courses.OPEN:
        await desk.say(person, Message(words.say("day.no_course")))
        return
    began = course.state != CourseState.JOINING
    course.state, course.paused, course.back_on = CourseState.STOPPED, None, None
    course.ended_at = desk.now
    close(person, Asked.REPLY)
    await photos.forget(desk, person)
    await people.withdraw(desk.session, person, desk.now)
    await due.cancel(desk.session, due.DueKind.MORNING, person.id)
    await outbox.withdraw(desk.session, person.chat, "stopped")
    await desk.say(person, Message(words.say("client.stopped")))
    if began:
        coach = await telling.coach_person(desk, course)
        await desk.say(coach, Message(desk.words(coach).say("coach.stopped", label=person.label)))
