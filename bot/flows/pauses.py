"""A client's pause: its beginning, and its end by the client's own word."""

from __future__ import annotations

from datetime import date

from bot.flows import day, telling, times
from bot.flows.desk import Desk
from bot.words.message import Message
from db import outbox
from db.courses import CourseState
from db.schema import Course, Person
from plans import localtime


async def pause(desk: Desk, person: Person, course: Course, back_on: date | None = None) -> None:
    """A pause that the client asks for, until they go on or that date; the dates count like any others missed."""
    course.paused = course.paused or "away"
    if course.paused != day.PAUSED_BY_COACH:
        course.back_on = back_on if course.paused == "away" else None
    await outbox.withdraw(desk.session, person.chat, "paused")
    await telling.tell_of(desk, course, cause="pause", at_once=False)
    await desk.say(person, day.pause_message(desk, person, course))


async def well_again(desk: Desk, person: Person, course: Course) -> None:
    """Ends a pause; the next date's row is made again, gently after a longer one. What the coach paused stays so."""
    if course.paused == day.PAUSED_BY_COACH:
        await telling.tell_of(desk, course, cause="asks-to-go-on", at_once=False)
        await desk.say(person, day.pause_message(desk, person, course))
        return
    course.paused = course.back_on = None
    when = times.next_morning(person, desk.now)
    await day.plan_next(desk, person, course)
    words = desk.words(person)
    if course.state == CourseState.WAITING:
        coach = await telling.coach_person(desk, course)
        await desk.say(person, Message(words.say("day.waiting", coach=coach.label)))
        return
    at = localtime.local(when, times.zone_of(person))
    await desk.say(person, Message(words.say("day.well_again", when=words.weekday_and_time(at))))
