"""The client's way beside the daily talk: joining, tests, things, being led, settings, photos, own data, erasure."""

from __future__ import annotations

import asyncio
import base64
import json
import re
from datetime import datetime, timedelta
from pathlib import Path

import jsonschema
import pytest

import plans.library
from tests.acceptance.driver import Practice, Said
from tests.acceptance.people import COACH, NEXT, Client, link
from tests.integration.practice.places import png

SAMPLES = Path(plans.library.__file__).parent

pytestmark = pytest.mark.asyncio(loop_scope="module")


# --- joining --------------------------------------------------------------------------------------------------------


async def test_joining_takes_nine_taps_and_one_typed_word(chat: Practice) -> None:
    number = next(NEXT)
    said = (await chat.say(number, f"/start {await link(chat)}", first_name="Taps"))[-1]
    taps, typed = 0, 0
    for answer in ("I agree", "18 to 64", *["None of these"] * 3, "Yes", "0"):
        said, taps = (await chat.tap(number, said, answer))[-1], taps + 1
    said, typed = (await chat.say(number, "Lisbon"))[-1], typed + 1
    assert "07:00" in [label for label, _data in said.buttons]
    said, taps = (await chat.tap(number, said, "07:00"))[-1], taps + 1
    said, taps = (await chat.tap(number, said, "Begin today"))[-1], taps + 1
    assert said.text.startswith("Day 1:")
    assert (taps, typed) == (9, 1)
    assert taps <= 10


async def test_a_shared_location_gives_the_clock_and_is_not_kept(chat: Practice) -> None:
    number = next(NEXT)
    offer = (await chat.say(number, f"/start {await link(chat)}", first_name="Shared"))[-1]
    asked = (await chat.screened(number, offer))[-1]
    assert "share your location" in asked.text
    await chat.post("location", chat=number, latitude=0.0, longitude=-30.0)
    await chat.settled()
    assert "no clock for that place" in (await chat.messages(number))[-1].text
    await chat.post("location", chat=number, latitude=38.72, longitude=-9.14)
    await chat.settled()
    assert "Clock: Europe/Lisbon" in (await chat.messages(number))[-1].text
    assert "38.72" not in await own_data(chat, number)


async def test_joining_can_be_left_and_taken_up_days_later_where_it_was(chat: Practice) -> None:
    number = next(NEXT)
    said = (await chat.say(number, f"/start {await link(chat)}", first_name="Later"))[-1]
    for answer in ("I agree", "65 or over", "None of these"):
        said = (await chat.tap(number, said, answer))[-1]
    await chat.post("clock", days=3)
    again = (await chat.say(number, "hello?"))[-1]
    assert (again.text, again.buttons) == (said.text, said.buttons)
    said = (await chat.say(number, "/start"))[-1]
    for answer in ("None of these", "None of these", "No", "2"):
        said = (await chat.tap(number, said, answer))[-1]
    assert "Which city" in said.text


async def test_a_warning_sign_while_joining_is_heard_and_the_coachs_word_comes_first(chat: Practice) -> None:
    number = next(NEXT)
    offer = (await chat.say(number, f"/start {await link(chat)}", first_name="Grave"))[-1]
    said = await chat.say(number, "before I agree: I get pressure in my chest on the stairs")
    assert "local emergency number" in said[0].text
    assert "has been told" not in said[0].text, "nothing is passed on before the agreement"
    assert not any("Grave" in m.text for m in await chat.from_bot(COACH))
    age = (await chat.tap(number, offer, "I agree"))[-1]
    said = await chat.say(number, "my left calf is swollen and warm since yesterday")
    assert "have a doctor look at it today" in said[0].text
    assert said[-1].text == age.text, "the question that was open comes again"
    assert any("Grave needs a look" in m.text and "calf is swollen" in m.text for m in await chat.from_bot(COACH))
    for answer in ("18 to 64", *["None of these"] * 3, "Yes", "0"):
        age = (await chat.tap(number, age, answer))[-1]
    times = (await chat.say(number, "Lisbon"))[-1]
    begin = (await chat.tap(number, times, "07:00"))[-1]
    waits = (await chat.tap(number, begin, "Begin today"))[-1]
    assert "looks at this first" in waits.text
    assert "Nothing is sent until" in (await chat.say(number, "/today"))[-1].text


async def test_inches_come_from_the_chats_language_and_can_be_changed(chat: Practice) -> None:
    number = next(NEXT)
    await chat.say(number, "hello", first_name="Inch", language="en-US")
    client = Client(chat, number, await Client.follows_a_link(chat, number, "Inch"))
    begun = (await chat.tap(number, client.day, "I am warm: begin the test"))[-1]
    assert begun.text == "Try 1 of 3. Type the number in inches."
    assert (await client.says("5")).text.startswith("Noted: 5 inches.")
    assert (await client.says("10 cm")).text.startswith("Noted: 3.9 inches.")
    said = (await client.says("/settings")).text
    assert "inches and pounds" in said
    menu = (await chat.messages(number))[-1]
    assert "centimetres" in (await chat.tap(number, menu, "Use centimetres"))[-1].text
    assert (await client.hears("11")).text.startswith("fingertip to floor: 10 cm")


# --- tests ----------------------------------------------------------------------------------------------------------


async def hill_walker(chat: Practice, name: str) -> Client:
    """Somebody whose programme tests knee to wall, each side."""
    before = max(m.id for m in await chat.messages(COACH))
    text = (SAMPLES / "hill-walkers.yaml").read_text(encoding="utf-8")
    await chat.post("document", chat=COACH, name="hill-walkers.yaml", text=text)
    await chat.settled()
    report = (await chat.from_bot(COACH, after=before))[-1]
    published = (await chat.tap(COACH, report, "Publish"))[-1]
    invitation = (await chat.tap(COACH, published, "Invite one client"))[-1]
    token = re.search(r"start=([\w-]+)", invitation.text)
    assert token is not None
    number = next(NEXT)
    offer = (await chat.say(number, f"/start {token[1]}", first_name=name))[-1]
    await chat.screened(number, offer)
    times = (await chat.say(number, "Lisbon"))[-1]
    asked = (await chat.tap(number, times, "07:00"))[-1]
    return Client(chat, number, (await chat.tap(number, asked, "Begin today"))[-1])


async def test_a_test_is_guided_side_by_side_and_try_by_try(chat: Practice) -> None:
    client = await hill_walker(chat, "Guided")
    assert "First the test: knee to wall" in client.day.text
    said = (await chat.tap(client.number, client.day, "I am warm: begin the test"))[-1]
    assert said.text == "Left side, try 1 of 3. Type the number in cm."
    assert (await client.says("8")).text == "Noted: 8 cm.\n\nLeft side, try 2 of 3. Type the number in cm."
    assert "cannot be right" in (await client.says("800 cm")).text
    said = await client.says("9")
    assert "try 3 of 3" in said.text
    said = (await chat.tap(client.number, said, "Take the last number back"))[-1]
    assert "try 2 of 3" in said.text
    said = await client.says("8,5, 9")
    assert said.text.endswith("Right side, try 1 of 3. Type the number in cm.")
    said = await client.says("10")
    said = (await chat.tap(client.number, said, "That is enough"))[-1]
    assert said.text == "knee to wall, left side: 8.5 cm (the mean of the tries)\n\nknee to wall, right side: 10 cm"
    assert "First the test" not in (await client.says("/today")).text, "it is recorded"


async def test_a_retest_names_what_was_otherwise_and_is_judged_by_the_error_of_the_test(chat: Practice) -> None:
    client = await Client.joins(chat, "Retest")
    await chat.tap(client.number, client.day, "I am warm: begin the test")
    await client.says("12 12 11")
    await client.day_later()
    now = (await chat.get("clock"))["now"]
    await chat.post("clock", to=_plus(now, hours=5))
    how = await client.says("/measure")
    await chat.tap(client.number, how, "Begin without a warm-up")
    said = await client.says("3")
    said = (await chat.tap(client.number, said, "That is enough"))[0]
    assert "At the start it was 11 cm. Better by more than the error of the test: a real gain." in said.text
    assert "at another time of day" in said.text
    assert "without a warm-up, the first one after one" in said.text
    assert "The first time there were 3 tries." in said.text
    progress = await client.says("/progress")
    assert "fingertip to floor: 11 cm at the start, 3 cm now." in progress.text


def _plus(instant: str, *, hours: int) -> str:
    return (datetime.fromisoformat(instant) + timedelta(hours=hours)).isoformat()


async def test_a_test_left_open_is_closed_with_what_it_has_on_the_next_date(chat: Practice) -> None:
    client = await Client.joins(chat, "Openleft")
    await chat.tap(client.number, client.day, "Begin without a warm-up")
    await client.says("12")
    await client.day_later()
    assert "fingertip to floor: 12 cm at the start." in (await client.says("/progress")).text
    assert "I could not read that" in (await client.says("7 cm")).text


async def test_a_photo_is_kept_only_after_a_yes_of_its_own_and_comes_side_by_side(chat: Practice) -> None:
    client = await Client.joins(chat, "Photo")
    picture = base64.b64encode(png(40, 30)).decode()
    await chat.post("photo", chat=client.number, base64=picture)
    await chat.settled()
    not_kept, offer = (await chat.from_bot(client.number, after=client.day.id))[-2:]
    assert not_kept.text == "This photo was not kept."
    said = (await chat.tap(client.number, offer, "Yes, keep my photo"))[-1]
    assert said.text.startswith("Send the photo here now")
    for _ in range(2):
        await chat.post("photo", chat=client.number, base64=picture)
    await chat.settled()
    shown = (await chat.from_bot(client.number, after=said.id))[-2:]
    assert all(message.photo for message in shown)
    people = (await chat.say(COACH, "/people Photo"))[-1]
    page = (await chat.tap(COACH, people, "Photo"))[-1]
    assert all(m.photo for m in (await chat.tap(COACH, page, "Photos"))[-2:]), "the coach sees them side by side"
    settings = await client.says("/settings")
    gone = (await chat.tap(client.number, settings, "Forget my photos"))[-1]
    assert "forgotten here" in gone.text
    assert '"photos_taken_at": []' in await own_data(chat, client.number)


# --- the session ----------------------------------------------------------------------------------------------------


async def test_a_thing_is_asked_for_the_evening_before_and_left_out_from_then_on(chat: Practice) -> None:
    number = next(NEXT)
    offer = (await chat.say(number, f"/start {await link(chat)}", first_name="Things"))[-1]
    await chat.screened(number, offer)
    times = (await chat.say(number, "Lisbon"))[-1]
    asked = (await chat.tap(number, times, "07:00"))[-1]
    before = (await chat.tap(number, asked, "Begin tomorrow"))[-1]
    evening = (await chat.get("clock"))["now"][:10] + "T19:30:00+00:00"
    await chat.post("clock", to=evening)
    question = (await chat.from_bot(number, after=before.id))[-1]
    assert question.text.startswith("Tomorrow's session uses this: strap.")
    said = (await chat.tap(number, question, "No"))[-1]
    assert "your sessions need no such thing: strap" in said.text
    await chat.post("clock", next="morning")
    day = next(m for m in await chat.from_bot(number, after=said.id) if m.text.startswith("Day 1"))
    assert "Changed so that it needs none of this: strap." in day.text
    assert not any("strap" in label for label, _data in day.buttons)
    settings = (await chat.say(number, "/settings"))[-1]
    things = (await chat.tap(number, settings, "Things at hand"))[-1]
    assert things.text == "Not at hand: strap."
    await chat.tap(number, things, "strap: at hand now")
    assert '"strap": true' in await own_data(chat, number)


async def test_somebody_is_led_step_by_step_and_a_hold_is_timed_in_words(chat: Practice) -> None:
    client = await Client.joins(chat, "Led")
    step = (await chat.tap(client.number, client.day, "Lead me step by step"))[-1]
    assert step.text.startswith("1 of ")
    assert "walking on the spot" in step.text
    seen = [step.text]
    for _ in range(5):
        await chat.tap(client.number, step, "Next")
        step = await chat.again(client.number, step)
        seen.append(step.text)
    assert any("Round 1 of 2." in text for text in seen)
    held = next(label for label, _data in step.buttons if label.startswith("Time the hold"))
    await chat.tap(client.number, step, held)
    timed = await _until(chat, client.number, step, "Hold, still 30 s.")
    assert "Left side" in timed.text
    await chat.tap(client.number, timed, "Back")
    assert "Hold, still" not in (await chat.again(client.number, step)).text, "the timer is dropped"
    last = (await chat.tap(client.number, step, "End here"))[-1]
    assert last.text == "How did it go?"
    await chat.tap(client.number, last, "All done, no pain")
    assert "Noted: done, no pain." in "".join(m.text for m in await chat.messages(client.number))


async def _until(chat: Practice, number: int, under: Said, words: str) -> Said:
    """The message once it has these words; the practice chat's own time is the machine's."""
    for _ in range(200):
        found = await chat.again(number, under)
        if words in found.text:
            return found
        await asyncio.sleep(0.1)
    raise AssertionError(f"never {words!r}")


# --- settings, data, erasure ----------------------------------------------------------------------------------------


async def test_settings_change_name_and_health(chat: Practice) -> None:
    client = await Client.joins(chat, "Oldname")
    menu = await client.says("/settings")
    await chat.tap(client.number, menu, "Another name")
    assert (await client.says("  New   Name ")).text == "Noted: New Name."
    assert "New Name" in (await chat.say(COACH, "/people New Name"))[-1].text
    menu = await client.says("/settings")
    ask = (await chat.tap(client.number, menu, "My health has changed"))[-1]
    said = await chat.tap(client.number, ask, "Yes")
    assert any("None of these" in [label for label, _data in message.buttons] for message in said)
    assert "New Name" in (await chat.messages(COACH))[-1].text


async def own_data(chat: Practice, number: int) -> str:
    """The JSON file that /mine sends."""
    menu = (await chat.say(number, "/mine"))[-1]
    await chat.tap(number, menu, "Send me my data")
    rows = await chat.get_list(f"messages?chat={number}")
    files = [row["document"] for row in rows if row.get("document")]
    assert [file["name"] for file in files[-2:]] == ["easeward-my-data.html", "easeward-my-data.json"]
    return (await chat.file(files[-1]["file"])).decode()


async def test_own_data_comes_as_a_page_and_as_json_that_keeps_its_schema(chat: Practice) -> None:
    client = await Client.joins(chat, "Owner <b>")
    await client.says("12 cm")
    await client.tap("All done, no pain")
    await client.day_later()
    found = json.loads(await own_data(chat, client.number))
    jsonschema.Draft202012Validator.check_schema(found["schema"])
    jsonschema.validate(found["data"], found["schema"])
    course = found["data"]["courses"][0]
    assert [day["said"]["completion"] for day in course["days"] if day["said"]] == ["done"]
    assert course["days"][1]["verdict"] == "advance"
    assert course["tests"][0]["tries"] == [12.0]
    assert {answer["field"] for answer in found["data"]["answers"]} >= {"completion", "pain"}
    rows = await chat.get_list(f"messages?chat={client.number}")
    page = (await chat.file(next(row["document"]["file"] for row in rows if row.get("document")))).decode()
    assert "Owner &lt;b&gt;" in page
    assert not re.search(r"<script|(?:src|href)=|https?://", page)


async def test_everything_is_deleted_after_one_yes_and_nothing_comes_any_more(chat: Practice) -> None:
    client = await Client.joins(chat, "Erased")
    await client.tap("All done, no pain")
    menu = await client.says("/mine")
    ask = (await chat.tap(client.number, menu, "Delete everything"))[-1]
    assert "cannot be taken back" in ask.text
    kept = (await chat.tap(client.number, ask, "No, keep it"))[-1]
    assert "nothing was changed" in kept.text
    ask = (await chat.tap(client.number, await client.says("/mine"), "Delete everything"))[-1]
    last = (await chat.tap(client.number, ask, "Yes, delete everything"))[-1]
    assert last.text.startswith("Everything is deleted.")
    assert any("Erased has left" in m.text for m in await chat.from_bot(COACH))
    assert "None of your people" in (await chat.say(COACH, "/people Erased"))[-1].text
    await chat.post("clock", days=2)
    assert await chat.from_bot(client.number, after=last.id) == []
    stranger = await client.says("hello")
    assert "You need a coach's link" in stranger.text


# --- words ----------------------------------------------------------------------------------------------------------


async def test_no_message_but_a_list_is_long_and_every_picture_has_words(chat: Practice) -> None:
    await hill_walker(chat, "Last one")
    seen = 0
    for person in await chat.get_list("chats"):
        for row in await chat.get_list(f"messages?chat={person['id']}"):
            if row["from"] != "bot":
                continue
            seen += 1
            is_list = "\n1. " in row["text"] or "\n• " in row["text"] or "A pulling feeling is fine." in row["text"]
            assert len(row["text"]) <= 500 or is_list, row["text"]
            assert row["text"] or row.get("photo") is None, "a picture without words"
    assert seen > 150
