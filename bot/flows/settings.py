"""/settings: city, time, language, units, name, training days, health, calendar, photos, data, and the way out."""

from __future__ import annotations

from collections.abc import Iterator
from datetime import date

from babel.dates import get_day_names

from bot.flows import assistants, deciding, evening, exporting, health, joining, photos, times
from bot.flows.asking import Asked, close, open_for
from bot.flows.desk import Desk
from bot.flows.rights import NotAllowed
from bot.words import OWN_NAMES, Words
from bot.words.message import ON_PHONE, Button, Message, Rows, column
from db import courses, people
from db.courses import CourseState
from db.schema import Course, Person
from plans.programme import Programme, Training
from plans.units import Units

LONGEST_NAME = 64
RUNNING = (CourseState.ACTIVE, CourseState.WAITING)


async def show(desk: Desk, person: Person) -> None:
    """What is set, and a button for each thing that can be changed."""
    words = desk.words(person)
    course = await courses.open_course(desk.session, person)
    programme = await desk.programme(course) if course is not None else None
    at = (person.morning or times.MORNING).strftime("%H:%M")
    text = words.say(
        "client.settings",
        zone=times.zone_of(person),
        time=at,
        name=person.label,
        inches=person.units == Units.INCH,
        lists=course is None and await people.coach_of(desk.session, person) is not None,
        days=_days_in_words(words, programme, course) if programme and course else "",
    )
    await desk.say(person, Message(text, await _buttons(desk, person, course, programme)))


async def _buttons(desk: Desk, person: Person, course: Course | None, programme: Programme | None) -> Rows:
    _ = desk.words(person).gettext
    other_units = _("Use centimetres") if person.units == Units.INCH else _("Use inches and pounds")
    found = [
        Button(_("Another city"), "settings:zone"),
        Button(_("Another time"), "settings:morning"),
        Button(other_units, "settings:units"),
        Button(_("Another name"), "settings:name"),
        Button(_("Language"), "settings:language"),
    ]
    if course is not None and course.state in RUNNING:
        if programme is not None and can_choose_days(programme):
            found.append(Button(_("Training days"), "settings:days"))
        found.append(Button(_("My health has changed"), "settings:health"))
        found.append(Button(_("Calendar file"), "settings:calendar"))
        if course.at_hand:
            found.append(Button(_("Things at hand"), "settings:things"))
        found.append(Button(_("About my coach"), f"about:{course.id}"))
    if course is not None and await photos.taken(desk, course):
        found.append(Button(_("Forget my photos"), "photo:forget"))
    found.append(Button(_("My data"), "mine:show"))
    if await people.coach_of(desk.session, person) is not None:
        found.append(Button(_("My page as coach"), "coach:page"))
    found += await assistants.buttons_for(desk, person)
    rows: Rows = tuple(tuple(found[n : n + 2]) for n in range(0, len(found), 2))
    return (*rows, (Button(_("Stop the course"), "stop:ask"),)) if course is not None else rows


async def tapped(desk: Desk, person: Person, what: str, value: str) -> None:
    """One button of the settings. Raises NotAllowed for another one, and where there is no course for it."""
    words = desk.words(person)
    if what == "zone":
        open_for(person, Asked.ZONE)
        await desk.say(person, Message(words.say("joining.zone")))
    elif what == "morning":
        open_for(person, Asked.MORNING)
        await desk.say(person, joining.morning_question(desk, person))
    elif what == "name":
        open_for(person, Asked.NAME)
        await desk.say(person, Message(words.say("client.which_name", name=person.label)))
    elif what == "units":
        person.units = Units.METRIC if person.units == Units.INCH else Units.INCH
        await desk.say(person, Message(words.say("client.units", inches=person.units == Units.INCH)))
    elif what == "language":
        await _language(desk, person, value)
    elif what in ("days", "health", "things", "calendar"):
        course = await courses.open_course(desk.session, person)
        if course is None or course.state not in RUNNING:
            raise NotAllowed("checkin.not_yours")
        if what == "health":
            await _health(desk, person, course, value)
        elif what == "things":
            await _things(desk, person, course)
        elif what == "calendar":
            await exporting.own_plan(desk, person, course)
        else:
            await _choose_day(desk, person, course, value)
    else:
        raise NotAllowed("checkin.not_yours")


async def _language(desk: Desk, person: Person, value: str) -> None:
    """The languages by their own names, or the one that is chosen. Raises NotAllowed for one that there is not."""
    if not value:
        names = (Button(name, f"settings:language:{language}") for language, name in OWN_NAMES.items())
        await desk.say(person, Message(desk.words(person).say("client.which_language"), column(*names)))
        return
    if value not in OWN_NAMES:
        raise NotAllowed("checkin.not_yours")
    person.language = value
    await desk.say(person, Message(desk.words(person).say("client.language", name=OWN_NAMES[value])))
    course = await courses.open_course(desk.session, person)
    if course is not None and course.state == CourseState.JOINING:
        await joining.ask_next(desk, person, course)


async def type_name(desk: Desk, person: Person, text: str) -> None:
    """Takes a typed first name; it is what the coach sees."""
    name = " ".join(text.split())[:LONGEST_NAME]
    if not name or name.startswith("/"):
        await desk.say(person, Message(desk.words(person).say("client.which_name", name=person.label)))
        return
    person.label = name
    close(person, Asked.NAME)
    await desk.say(person, Message(desk.words(person).say("client.named", name=name)))


async def _health(desk: Desk, person: Person, course: Course, value: str) -> None:
    """Asks once, since it stops the course until the coach has looked."""
    if value == "yes":
        await health.has_changed(desk, person, course, None)
    elif value == "no":
        await desk.say(person, Message(desk.words(person).say("client.goes_on")))
    else:
        _ = desk.words(person).gettext
        rows = ((Button(_("Yes"), "settings:health:yes"), Button(_("No"), "settings:health:no")),)
        await desk.say(person, Message(desk.words(person).say("client.health_ask"), rows))


async def _things(desk: Desk, person: Person, course: Course) -> None:
    """What was said to be at hand or not, each to be turned round by a tap; the settings where nothing was."""
    _ = desk.words(person).gettext
    say = (await desk.programme(course)).say
    known = {name: has for name, has in (course.at_hand or {}).items() if has is not None}
    if not known:
        await show(desk, person)
        return
    has, lacks = _("{thing}: not at hand any more"), _("{thing}: at hand now")
    buttons = [
        Button(
            (has if at_hand else lacks).format(thing=say(name))[:ON_PHONE], evening.data(course.id, not at_hand, name)
        )
        for name, at_hand in known.items()
    ]
    here, gone = ([say(name) for name, at_hand in known.items() if at_hand is word] for word in (True, False))
    text = desk.words(person).say("client.things", here=here, gone=gone)
    await desk.say(person, Message(text, column(*buttons)))


# --- training days --------------------------------------------------------------------------------------------------


def can_choose_days(programme: Programme) -> bool:
    """Whether a programme trains on some days a week that each client chooses."""
    return _chosen_by_client(programme) is not None


def _chosen_by_client(programme: Programme) -> Training | None:
    training = programme.training
    return training if training is not None and not training.weekdays and training.count < 7 else None


def _days_in_words(words: Words, programme: Programme, course: Course) -> str:
    if not can_choose_days(programme):
        return ""
    return ", ".join(_names(words)[n] for n in days_of(programme, course))


def days_of(programme: Programme, course: Course) -> tuple[int, ...]:
    """The weekdays on which a course trains; Monday is 0."""
    pace = deciding.pace_on(programme, course, date.min)
    return tuple(n for n in range(7) if pace.trains(n))


def _names(words: Words) -> dict[int, str]:
    return {n: str(name) for n, name in get_day_names("abbreviated", locale=words.locale).items()}


async def _choose_day(desk: Desk, person: Person, course: Course, value: str) -> None:
    """Adds a weekday to the choice; with the last one it holds from the next date that has no row."""
    training = _chosen_by_client(await desk.programme(course))
    if training is None or (value and value not in "0123456"):
        raise NotAllowed("checkin.not_yours")
    words = desk.words(person)
    if value:
        before = course.weekdays or []
        before = [] if len(before) >= training.count else before
        course.weekdays = sorted({*before, int(value)})
    chosen = course.weekdays if value else []
    names = [_names(words)[n] for n in chosen or []]
    text = words.say("client.days", count=training.count, chosen=names, whole=len(names) == training.count)
    rows = () if len(names) == training.count else _day_buttons(words, set(chosen or []))
    await desk.say(person, Message(text, rows))


def _day_buttons(words: Words, chosen: set[int]) -> Rows:
    buttons = list(_days(words, chosen))
    return tuple(tuple(buttons[n : n + 4]) for n in range(0, len(buttons), 4))


def _days(words: Words, chosen: set[int]) -> Iterator[Button]:
    for n, name in _names(words).items():
        if n not in chosen:
            yield Button(name, f"settings:days:{n}")
