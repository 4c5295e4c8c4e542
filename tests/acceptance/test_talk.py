"""The daily talk, played through the practice chat: each way to say how it went, and what follows."""

from __future__ import annotations

import re
from datetime import datetime, timedelta

import pytest

from tests.acceptance.driver import Practice, Said
from tests.acceptance.people import COACH, NEXT, Client, link

pytestmark = pytest.mark.asyncio(loop_scope="module")


async def test_one_tap_says_done_and_shows_what_comes_next_and_why(chat: Practice) -> None:
    client = await Client.joins(chat, "Onetap")
    said = await client.tap("All done, no pain")
    assert said.text.startswith("Noted: done, no pain.\n\nTomorrow is day 2, because it went well.")
    assert "how tight" in said.text
    said = await client.tap("7")
    assert "tightness 7" in said.text
    assert "how tight" not in said.text
    assert [label for label, _ in said.buttons] == ["Change this answer"]


async def test_an_answer_can_be_changed_until_the_next_day_is_made(chat: Practice) -> None:
    client = await Client.joins(chat, "Fixer")
    await client.tap("All done, no pain")
    said = await client.tap("Change this answer")
    assert said.text.startswith("Day 1:")
    said = await client.tap("Not today")
    said = await client.tap("No time")
    assert "Tomorrow is day 1 again, because this day is still open." in said.text
    yesterday = client.day
    await client.next_morning()
    tap = (await chat.post("tap", chat=client.number, message=yesterday.id, button="Change this answer"))["tap"]
    await chat.settled()
    assert "made already" in (await chat.get(f"answer?tap={tap}"))["text"]


async def test_pain_before_the_session_brings_the_lighter_version_in_the_same_message(chat: Practice) -> None:
    client = await Client.joins(chat, "Before")
    await client.tap("Sore, pain or something odd")
    await client.tap("Dull, on one side")
    await client.tap("Where we stretch, left")
    said = await client.tap("4")
    assert said.text.startswith("Noted: pain 4 (dull, one side).")
    assert "take this lighter version today" in said.text
    assert "· lighter" in said.text
    said = await client.tap("All done, no pain")
    assert said.text.startswith("Noted: done, pain 4"), "neither fact hides the other"


async def test_pain_of_six_before_the_session_makes_a_day_off_and_tells_the_coach(chat: Practice) -> None:
    client = await Client.joins(chat, "Offday")
    for label in ("Sore, pain or something odd", "Something else", "Somewhere else", "knee", "6"):
        said = await client.tap(label)
    assert "no session today" in said.text
    assert any("Offday needs a look" in m.text and "pain 6" in m.text for m in await chat.from_bot(COACH))
    assert "How is it now?" in (await client.next_morning()).text
    lighter = (await chat.tap(client.number, client.day, "Settled"))[-1]
    assert lighter.text.startswith("Day 1:")
    assert "· lighter" in lighter.text.splitlines()[0]


async def test_sharp_pain_waits_for_the_coach_who_lets_go_on(chat: Practice) -> None:
    client = await Client.joins(chat, "Sharp")
    for label in ("Sore, pain or something odd", "Sharp or sudden", "Where we stretch, right", "3"):
        said = await client.tap(label)
    told = await chat.from_bot(client.number, after=client.day.id)
    assert "have a doctor look at it today" in told[-1].text
    assert "Nothing more is sent until your coach has looked at this" in said.text
    assert "Nothing is sent until" in (await client.says("/today")).text
    alert = next(m for m in await chat.from_bot(COACH) if "Sharp needs a look" in m.text)
    assert "strain-like: sharp or sudden, pain 3" in alert.text
    asked = (await chat.tap(COACH, alert, "Let go on"))[-1]
    assert (await chat.tap(COACH, asked, "Seen by a doctor or physio, who agrees"))[-1].text.startswith("Sharp goes on")
    assert "· lighter" in (await client.next_morning()).text.splitlines()[0]


async def test_part_of_it_asks_how_much_and_why(chat: Practice) -> None:
    client = await Client.joins(chat, "Part")
    said = await client.tap("Part of it")
    assert "How much of it?" in said.text
    said = await client.tap("Half or more")
    assert "What was in the way?" in said.text
    await client.tap("Too hard")
    said = await client.tap("No pain after all")
    assert "Tomorrow is day 1 again, one level lighter, because it was too hard." in said.text


async def test_a_missing_pain_number_is_asked_first_and_then_in_the_repeated_day(chat: Practice) -> None:
    client = await Client.joins(chat, "Silent")
    await client.tap("Done, some pain")
    asked = await client.next_morning()
    assert "One thing is missing" in asked.text
    again = await client.next_morning()
    assert again.text.startswith("Day 1:")
    assert "Still missing" in again.text
    changed = (await chat.tap(client.number, again, "0"))[-1]
    assert changed.text.startswith("Day 2:"), "the number changes the day that was only repeated for want of it"


async def test_a_report_left_half_way_is_asked_about_before_anything_is_sent(chat: Practice) -> None:
    client = await Client.joins(chat, "Halfway")
    await client.tap("Sore, pain or something odd")
    asked = await client.next_morning()
    assert "You began to tell me" in asked.text
    where = (await chat.tap(client.number, asked, "Dull, on both sides"))[-1]
    number = (await chat.tap(client.number, where, "Where we stretch, both sides"))[-1]
    day = (await chat.tap(client.number, number, "2"))[-1]
    assert "How is it now?" in day.text
    day = (await chat.tap(client.number, day, "Settled"))[-1]
    assert day.text.startswith("Day 1:")


async def test_words_that_may_be_a_warning_sign_are_asked_back(chat: Practice) -> None:
    client = await Client.joins(chat, "Maybe")
    said = await client.says("last year I had some numbness in my foot")
    assert "warning sign" in said.text
    assert {label for label, _ in said.buttons} == {"Yes, that is so", "No"}
    alerts = [m.text for m in await chat.from_bot(COACH)]
    assert not any("Maybe needs a look" in text for text in alerts)
    await chat.tap(client.number, said, "No")
    await client.next_morning()
    listed = [m.text for m in await chat.from_bot(COACH) if "morning's list" in m.text]
    assert any("Maybe: wrote words that may be a red flag" in text for text in listed), listed


async def test_a_nerve_sign_that_is_gone_eases_the_day_and_its_movement_is_left_out(chat: Practice) -> None:
    client = await Client.joins(chat, "Tingle")
    await client.tap("Sore, pain or something odd")
    asked = await client.tap("Numb, tingling or shooting")
    assert "a nerve speaking" in asked.text
    where = await client.tap("No")
    assert "Where is it?" in where.text
    await client.tap("Where we stretch, left")
    await client.tap("1")
    done = await client.tap("All done, no pain")
    assert "one level lighter, because a nerve may have spoken" in done.text
    assert "In which movement was it?" in done.text
    left = await client.tap(next(label for label, _data in done.buttons if "strap" in label))
    assert "Left out from now on: Lying hamstring stretch with a strap" in left.text
    morning = await client.next_morning()
    if "How is it now?" in morning.text:
        morning = (await chat.tap(client.number, morning, "Settled"))[-1]
    assert morning.text.startswith("Day 1:")
    assert "hamstring stretch with a strap" not in morning.text
    listed = [m.text for m in await chat.from_bot(COACH) if "morning's list" in m.text]
    assert any("Tingle: nerve signs, gone" in text for text in listed), listed
    client.day = morning
    await client.tap("Sore, pain or something odd")
    await client.tap("Numb, tingling or shooting")
    await client.tap("No")
    await client.tap("Where we stretch, left")
    await client.tap("1")
    caution = (await chat.from_bot(client.number))[-1]
    assert caution.text.startswith("Stop stretching"), "a second time is no longer harmless"
    alerts = [m.text for m in await chat.from_bot(COACH)]
    assert any("Tingle" in text and "nerve signs" in text and "until you let" in text for text in alerts[-3:]), alerts


async def test_a_coach_can_ease_and_the_client_is_told_why(chat: Practice) -> None:
    client = await Client.joins(chat, "Eased")
    await client.tap("All done, no pain")
    people = (await chat.say(COACH, "/people Eased"))[-1]
    page = (await chat.tap(COACH, people, "Eased"))[-1]
    assert page.text.startswith("Eased: day 1")
    before = (await chat.tap(COACH, page, "Ease the day"))[-1]
    assert re.search(r"As it stands, Eased gets: .* day 2\.\nWith your word: .* day 1, lighter\.", before.text)
    assert "day 1, lighter" in (await chat.tap(COACH, before, "Yes, do this"))[-1].text
    morning = await client.next_morning()
    assert "because your coach decided so" in morning.text
    assert "· lighter" in morning.text.splitlines()[0]


async def test_the_digest_counts_done_and_unanswered_with_bounds(chat: Practice) -> None:
    first, together = await chat.say(COACH, "/digest")
    assert first.text.startswith("Week of")
    assert together.photo is not None
    assert "Done: " in together.text
    assert "One week proves little" in together.text
    when = (await chat.tap(COACH, together, "When it comes"))[-1]
    assert "on Monday at 17:00" in when.text
    assert "on Friday at 17:00" in (await chat.tap(COACH, when, "Fri"))[-1].text
    assert "one row for each client and date" in (await chat.tap(COACH, together, "As a table"))[-1].text
    assert "to read or print" in (await chat.tap(COACH, together, "As a page"))[-1].text
    assert (await chat.tap(COACH, together, "All people"))[-1].text.startswith("Your people")


async def test_a_programmes_report_comes_with_its_curve_page_and_table(chat: Practice) -> None:
    client = await Client.joins(chat, "Counted")
    await client.tap("All done, no pain")
    listed = (await chat.say(COACH, "/programmes"))[-1]
    label = next(label for label, _data in listed.buttons if label.startswith("Look at Hips"))
    looked = (await chat.tap(COACH, listed, label))[0]
    report, page, table = await chat.tap(COACH, looked, "Report")
    assert report.photo is not None
    assert " began: " in report.text
    assert "to read or print" in page.text
    assert "as a table" in table.text


async def test_the_coach_sees_two_weeks_and_the_dose_by_week(chat: Practice) -> None:
    client = await Client.joins(chat, "Dosed")
    await client.tap("All done, no pain")
    list_ = (await chat.say(COACH, "/people Dosed"))[-1]
    label = next(label for label, _ in list_.buttons if label == "Dosed")
    weeks, page = await chat.tap(COACH, list_, label)
    assert weeks.photo is not None
    assert "Dosed, the last two weeks" in weeks.text
    dose = (await chat.tap(COACH, page, "Dose by week"))[-1]
    assert dose.photo is not None
    assert "minutes of holding by week" in dose.text


async def test_being_ill_pauses_until_well_again(chat: Practice) -> None:
    client = await Client.joins(chat, "Ill")
    await client.tap("Not today")
    said = await client.tap("Ill")
    assert said.text.startswith("Noted: you are ill.")
    before = max(m.id for m in await chat.messages(client.number))
    await chat.post("clock", next="morning")
    await chat.post("clock", next="morning")
    assert await chat.from_bot(client.number, after=before) == []
    well = await client.says("well again!")
    assert "Your next session comes on" in well.text
    morning = await client.next_morning()
    assert morning.text.startswith("Day 1:")
    assert "after the pause" in morning.text


async def test_settings_change_city_and_time_and_stopping_is_told(chat: Practice) -> None:
    client = await Client.joins(chat, "Leaver")
    menu = await client.says("/settings")
    asked = (await chat.tap(client.number, menu, "Another time"))[-1]
    assert "When should your session come?" in asked.text
    assert "Noted: Europe/Lisbon, 06:15." in (await client.says("6:15")).text
    await chat.tap(client.number, await client.says("/settings"), "Another time")
    await client.says("I have numbness between my legs")
    warned = [m.text for m in await chat.from_bot(client.number)]
    assert any("call your local emergency number now" in text for text in warned), "a sign wins over an open question"
    await client.says("7:00")
    sure = await client.says("stop")
    assert "Stop the course?" in sure.text
    assert "Nothing more is sent" in (await chat.tap(client.number, sure, "Yes, stop"))[-1].text
    assert any("Leaver has stopped" in m.text for m in await chat.from_bot(COACH))
    again = await Client.follows_a_link(chat, client.number, "Leaver")
    assert "first session comes tomorrow" in again.text, "one date has one session, also across two courses"
    sure = await client.says("stop")
    await chat.tap(client.number, sure, "Yes, stop")
    before = max(m.id for m in await chat.messages(client.number))
    await chat.post("clock", next="morning")
    assert await chat.from_bot(client.number, after=before) == []


async def test_something_on_the_health_list_waits_for_the_coach(chat: Practice) -> None:
    number = next(NEXT)
    offer = (await chat.say(number, f"/start {await link(chat)}", first_name="Careful"))[-1]
    said = [offer]
    for label in ("I agree", "65 or over", "None of these", "Something", "No", "Yes", *["No"] * 5, "None of these"):
        said = await chat.tap(number, said[-1], label)
    for label in ("Yes", "0"):
        said = await chat.tap(number, said[-1], label)
    times = (await chat.say(number, "New York"))[-1]
    begin = (await chat.tap(number, times, "08:00"))[-1]
    waits = (await chat.tap(number, begin, "Begin today"))[-1]
    assert "looks at this first" in waits.text
    alert = next(m for m in await chat.from_bot(COACH) if "Careful needs a look" in m.text)
    assert "the health questions: replaced joint" in alert.text
    asked = (await chat.tap(COACH, alert, "Let go on"))[-1]
    await chat.tap(COACH, asked, "Spoke with them, fine to go on")
    await chat.post("clock", days=1)
    first = next(message for message in await chat.from_bot(number) if message.text.startswith("Day 1:"))
    assert "· lighter" not in first.text


# --- a client's own body and home -----------------------------------------------------------------------------------


async def test_a_pain_elsewhere_spares_its_place_and_leaves_the_day_as_it_is(chat: Practice) -> None:
    client = await Client.joins(chat, "Knee")
    assert "kneel" in client.day.text.lower()
    for label in ("Sore, pain or something odd", "Something else", "Somewhere else", "knee", "4"):
        said = await client.tap(label)
    assert "Changed so that it spares this place: knee." in said.text
    assert "lighter" not in said.text
    said = await client.tap("All done, no pain")
    assert "Tomorrow is day 2" in said.text


async def test_the_morning_brings_a_picture_that_stays_with_its_words_and_changes_with_the_day(chat: Practice) -> None:
    client = await Client.joins(chat, "Picture")
    shown = (await chat.again(client.number, client.day)).photo
    assert shown is not None
    for label in ("Sore, pain or something odd", "Something else", "Somewhere else", "knee"):
        assert (await client.tap(label)).photo == shown
    said = await client.tap("4")
    assert said.photo not in (None, shown), "the session has changed, and with it its picture"
    assert "Changed so that it spares this place: knee." in said.text
    assert (await client.tap("All done, no pain")).photo == said.photo
    other = await Client.joins(chat, "Same day")
    assert other.day.photo == shown, "what has been uploaded once is not uploaded again"


async def test_how_shows_a_movement_in_words_and_as_a_film(chat: Practice) -> None:
    client = await Client.joins(chat, "Asker")
    menu = (await chat.say(client.number, "/how"))[-1]
    labels = [label for label, _data in menu.buttons]
    assert "Leg swings" in labels
    assert all(label in client.day.text for label in labels)
    said = (await chat.tap(client.number, menu, "Leg swings"))[-1]
    assert said.text.startswith("Leg swings\n")
    assert "Stop at sharp pain" in said.text
    rows = await chat.get_list(f"messages?chat={client.number}&after={said.id - 1}")
    assert rows[0]["film"]["kind"] == "video/mp4"
    assert max(rows[0]["film"]["width"], rows[0]["film"]["height"]) == 540
    assert (await chat.say(client.number, "/how cat cow"))[-1].text.startswith("Cat and cow\n")
    assert "Which of these?" in (await chat.say(client.number, "/how hamstring"))[-1].text
    hard = (await chat.say(client.number, "/how step calf stretch"))[-1]
    easier = next(label for label, _data in hard.buttons if label.startswith("Easier: "))
    shown = (await chat.tap(client.number, hard, easier))[-1]
    assert shown.text.startswith(easier.removeprefix("Easier: ")[:20])
    assert "I know no movement" in (await chat.say(client.number, "/how rumpelstiltskin"))[-1].text


async def test_without_a_thing_the_session_changes_for_today(chat: Practice) -> None:
    client = await Client.joins(chat, "Unequipped")
    while not any(label.startswith("No ") for label, _data in client.day.buttons):
        await client.tap("All done, no pain")
        await client.next_morning()
    label = next(label for label, _data in client.day.buttons if label.startswith("No "))
    thing = label.removeprefix("No ").removesuffix(" here today")
    said = await client.tap(label)
    assert f"Changed so that it needs none of this: {thing}." in said.text
    assert label not in [text for text, _data in said.buttons]


async def test_words_about_a_missing_thing_do_the_same(chat: Practice) -> None:
    client = await Client.joins(chat, "Typist")
    while not any(label.startswith("No ") for label, _data in client.day.buttons):
        await client.tap("All done, no pain")
        await client.next_morning()
    label = next(label for label, _data in client.day.buttons if label.startswith("No "))
    thing = label.removeprefix("No ").removesuffix(" here today")
    assert f"needs none of this: {thing}." in (await client.says(f"I don't have a {thing} with me")).text


async def test_a_changed_health_waits_and_asks_the_health_questions_again(chat: Practice) -> None:
    client = await Client.joins(chat, "Pregnant")
    asked = await client.says("I just found out that I am pregnant")
    assert "is any of this true for you" in asked.text
    assert any("Pregnant needs a look" in m.text and "health has changed" in m.text for m in await chat.from_bot(COACH))
    said = [asked]
    for label in ("None of these", "Something", "No", "No", "No", "Yes", *["No"] * 3, "None of these"):
        said = await chat.tap(client.number, said[-1], label)
    assert "looks at this first" in said[-1].text
    assert any("pregnant or recently so" in m.text for m in await chat.from_bot(COACH))
    before = max(m.id for m in await chat.messages(client.number))
    await chat.post("clock", next="morning")
    assert await chat.from_bot(client.number, after=before) == []


async def test_a_usual_pain_is_no_reason_to_stay_and_is_not_asked_about_in_the_morning(chat: Practice) -> None:
    number = next(NEXT)
    day = await Client.follows_a_link(chat, number, "Usually", usual=2)
    client = Client(chat, number, day)
    await client.tap("Done, some pain")
    said = await client.tap("3")
    assert "Tomorrow is day 2, because it went well." in said.text
    assert "In the morning I first ask" not in said.text
    assert (await client.next_morning()).text.startswith("Day 2:")


async def test_a_usual_pain_of_four_waits_for_the_coachs_word(chat: Practice) -> None:
    number = next(NEXT)
    waits = await Client.follows_a_link(chat, number, "Aching", usual=4)
    assert "looks at this first" in waits.text
    assert any("Aching needs a look" in m.text and "usual pain 4 of 10" in m.text for m in await chat.from_bot(COACH))


async def test_at_65_and_over_standing_work_names_a_support(chat: Practice) -> None:
    number = next(NEXT)
    day = await Client.follows_a_link(chat, number, "Older", age="65 or over")
    client = Client(chat, number, day)
    for _date in range(7):
        if "keep a hand on a wall or a chair" in client.day.text:
            break
        await client.tap("All done, no pain")
        await client.next_morning()
    assert "keep a hand on a wall or a chair" in client.day.text


async def test_under_18_nobody_joins_by_themselves(chat: Practice) -> None:
    number = next(NEXT)
    menu = (await chat.say(COACH, "/invite"))[-1]
    link = (await chat.tap(COACH, menu, "Invite one client"))[-1]
    token = re.search(r"start=([\w-]+)", link.text)
    assert token is not None
    offer = (await chat.say(number, f"/start {token[1]}", first_name="Young"))[-1]
    age = (await chat.tap(number, offer, "I agree"))[-1]
    said = (await chat.tap(number, age, "Under 18"))[-1]
    assert "guardian" in said.text
    assert "no course" in (await chat.say(number, "/today"))[-1].text


async def test_a_coach_leaves_a_movement_out_and_brings_it_back(chat: Practice) -> None:
    client = await Client.joins(chat, "Barred")
    people = (await chat.say(COACH, "/people Barred"))[-1]
    page = (await chat.tap(COACH, people, "Barred"))[-1]
    shown = (await chat.tap(COACH, page, "Leave a movement out"))[-1]
    label = next(text for text, _data in shown.buttons if text.startswith("Leave out: "))
    name = label.removeprefix("Leave out: ")
    assert name in client.day.text
    again = (await chat.tap(COACH, shown, label))[-1]
    assert f"Left out for Barred: {name}" in again.text
    told = (await chat.from_bot(client.number))[-1]
    assert f"Left out from now on: {name}" in told.text
    assert name not in (await client.says("/today")).text
    await chat.tap(COACH, again, f"Bring back: {name}")
    assert name in (await client.says("/today")).text


async def test_a_pause_sends_nothing_until_the_client_goes_on(chat: Practice) -> None:
    client = await Client.joins(chat, "Holiday")
    said = await client.says("I am going on holiday, please pause")
    assert "a pause" in said.text
    before = max(m.id for m in await chat.messages(client.number))
    await chat.post("clock", days=2)
    assert await chat.from_bot(client.number, after=before) == []
    again = (await chat.tap(client.number, said, "Go on"))[-1]
    assert "Your next session comes" in again.text
    await chat.post("clock", days=1)
    assert (await chat.from_bot(client.number))[-1].text.startswith("Day 1:")


async def test_being_done_with_the_programme_is_no_completion_and_asks_whether_to_stop(chat: Practice) -> None:
    client = await Client.joins(chat, "Leaving")
    said = await client.says("I'm done with this programme")
    assert "Stop the course?" in said.text
    await chat.tap(client.number, said, "No, go on")
    assert (await client.now()).text.startswith("Day 1:"), "nothing was noted"


@pytest.mark.parametrize(
    "text",
    [
        "thanks. chest pain now",
        "help my chest hurts",
        "I can't go on, chest pain",
        "I am pregnant and have chest pain",
        "please stop the messages, I have chest pain",
    ],
)
async def test_a_red_flag_wins_over_every_request_beside_it(chat: Practice, text: str) -> None:
    client = await Client.joins(chat, "Flagged")
    said = [m.text for m in await chat.say(client.number, text)]
    assert any("local emergency number" in words for words in said), said
    assert "Nothing is sent until" in (await client.says("/today")).text


# --- silence --------------------------------------------------------------------------------------------------------


async def test_mornings_grow_quiet_for_a_silent_client_and_are_whole_again_after_a_word(chat: Practice) -> None:
    client = await Client.joins(chat, "Silent")
    await client.tap("All done, no pain")
    before = (await chat.messages(client.number))[-1].id
    heard: list[tuple[int, Said]] = []
    for day in range(1, 33):
        await chat.post("clock", days=1)
        heard += [(day, said) for said in await chat.from_bot(client.number, after=before)]
        before = max([before, *(said.id for _day, said in heard)])
    whole = [day for day, said in heard if said.text.startswith(("Day ", "Good morning. How", "Rest"))]
    lines = [day for day, said in heard if "waits for you whenever you like" in said.text]
    offers = [(day, said) for day, said in heard if "It has been quiet for a while" in said.text]
    assert len(whole) >= 3
    assert max(whole) < min(lines) < offers[0][0]
    assert len(lines) == 4
    assert len(offers) == 3
    assert len(heard) <= 14, "a month of silence brings two weeks' worth of messages at most, nudges among them"
    assert [label for label, _data in offers[0][1].buttons] == ["Show today's", "Take the test again", "Pause"]
    list_ = await chat.from_bot(COACH)
    assert any("Silent: has not answered for a week" in said.text for said in list_)

    said = await chat.say(client.number, "Hello there, nice evening")
    assert any("Good to hear from you. /today" in message.text for message in said)
    today = (await chat.say(client.number, "/today"))[-1]
    assert "days have passed" in today.text, "the lapse counts the mornings that were kept quiet too"
    assert today.photo is not None


async def test_the_one_line_shows_its_day_and_the_offer_pauses(chat: Practice) -> None:
    client = await Client.joins(chat, "Quiet")
    await client.tap("All done, no pain")
    line = await _wait_for(chat, client.number, "waits for you whenever")
    shown = (await chat.tap(client.number, line, "Show today's"))[-1]
    assert "Stop at sharp pain" in shown.text
    assert shown.buttons[0][0] == "All done, no pain"
    offer = await _wait_for(chat, client.number, "quiet for a while")
    assert (await chat.tap(client.number, offer, "Pause"))[-1].text.startswith("Noted: a pause.")


async def _wait_for(chat: Practice, number: int, words: str) -> Said:
    """The first message with these words, a day at a time, forty days at most."""
    for _ in range(40):
        before = max(m.id for m in await chat.messages(number))
        await chat.post("clock", days=1)
        for said in await chat.from_bot(number, after=before):
            if words in said.text:
                return said
    raise AssertionError(f"nobody said {words!r} in forty days")


# --- less time ------------------------------------------------------------------------------------------------------


async def test_five_minutes_are_enough_for_what_matters_and_are_noted_as_such(chat: Practice) -> None:
    client = await Client.joins(chat, "Hurried")
    whole = client.day
    offer = await client.says("/shorter")
    assert "How many do you have?" in offer.text
    assert [label for label, _ in offer.buttons] == ["5 minutes", "10 minutes"]
    short = client.day = (await chat.tap(client.number, offer, "5 minutes"))[-1]
    assert "Cut to what matters most: " in short.text
    assert len(short.text) < len(whole.text)
    assert short.photo not in (None, whole.photo)
    said = await client.tap("All done, no pain")
    assert said.text.startswith("Noted: part of it")
    assert "Tomorrow is day 1 again, because less than half of it was done." in said.text
    assert "There is no session to change" in (await client.says("/shorter 5")).text


async def test_minutes_can_be_written_and_nonsense_is_asked_back(chat: Practice) -> None:
    client = await Client.joins(chat, "Writer")
    assert "How many minutes?" in (await client.says("/shorter soon")).text
    short = await client.says("/shorter 10")
    assert "Cut to what matters most: " in short.text
    assert "Cut to" not in (await client.says("/shorter 60")).text
    assert "All done, no pain" in [label for label, _data in short.buttons]


# --- progress -------------------------------------------------------------------------------------------------------


async def test_progress_says_in_words_and_in_a_chart_how_it_has_gone(chat: Practice) -> None:
    client = await Client.joins(chat, "Progress")
    assert "Day 1 of 28." in (await client.says("/progress")).text
    await client.says("14 cm")
    await client.tap("All done, no pain")
    await client.tap("6")
    await client.day_later()
    await client.says("done, pain 2")
    await client.day_later()
    await client.says("did half, no time")
    said = await client.says("/progress")
    assert said.photo is not None
    assert "Sessions done: 2 of 3 that came. In part: 1." in said.text
    assert "Pain in the last two weeks: 0, 2." in said.text
    assert "fingertip to floor: 14 cm at the start." in said.text
    stranger = next(NEXT)
    assert "nothing to show yet" in (await chat.say(stranger, "/progress"))[-1].text


# --- away -----------------------------------------------------------------------------------------------------------


async def test_somebody_who_is_away_hears_nothing_until_the_date_that_was_said(chat: Practice) -> None:
    client = await Client.joins(chat, "Traveller")
    await client.tap("All done, no pain")
    asked = await client.says("/away")
    assert [label for label, _ in asked.buttons] == ["3 days", "A week", "Two weeks", "Until I come back"]
    said = (await chat.tap(client.number, asked, "3 days"))[-1]
    assert said.text.startswith("Noted: away. Nothing is sent until ")
    before = said.id
    for _ in range(2):
        await chat.post("clock", days=1)
        assert await chat.from_bot(client.number, after=before) == []
    await chat.post("clock", days=1)
    (back,) = await chat.from_bot(client.number, after=before)
    assert back.text.startswith("Day 1:")
    assert "The same day again, after the pause." in back.text


async def test_days_away_can_be_written_changed_and_ended(chat: Practice) -> None:
    client = await Client.joins(chat, "Planner")
    await client.tap("All done, no pain")
    assert "For how many days?" in (await client.says("/away soon")).text
    for words in ("400", "until 15 August", "1 month"):
        assert "For how many days?" in (await client.says(f"/away {words}")).text
    said = await client.says("/away 10")
    assert "Nothing is sent until" in said.text
    assert "Nothing is sent until" in (await client.says("/away 5 days")).text
    await chat.tap(client.number, said, "Go on")
    assert (await client.day_later()).text.startswith("Day 2:")
    assert "no course to pause" in (await chat.say(next(NEXT), "/away"))[-1].text


async def test_nobody_is_nudged_on_the_day_they_go_away(chat: Practice) -> None:
    client = await Client.joins(chat, "Unnudged")
    for _ in range(4):
        await client.tap("All done, no pain")
        await client.day_later()
    before = (await client.says("/away 3")).id
    await chat.post("clock", to=(await hours_later(chat, 14)))
    assert await chat.from_bot(client.number, after=before) == []
    await chat.post("clock", to=(await hours_later(chat, 10)))


async def test_somebody_who_falls_ill_while_away_is_left_in_peace_until_well_again(chat: Practice) -> None:
    client = await Client.joins(chat, "Ill away")
    await client.says("/away 2")
    await client.tap("Not today")
    assert "you are ill" in (await client.tap("Ill")).text
    before = max(m.id for m in await chat.messages(client.number))
    for _ in range(4):
        await chat.post("clock", days=1)
    assert await chat.from_bot(client.number, after=before) == []


async def test_a_red_flag_beside_a_command_or_under_a_picture_is_heard(chat: Practice) -> None:
    client = await Client.joins(chat, "Flagged")
    said = await chat.say(client.number, "/away 3 I have numbness between my legs")
    assert any("emergency" in message.text for message in said)
    assert not any("Nothing is sent until" in message.text for message in said)
    other = await Client.joins(chat, "Captioned")
    before = max(m.id for m in await chat.messages(other.number))
    pixel = "iVBORw0KGgoAAAANSUhEUgAAAAEAAAABCAYAAAAfFcSJAAAADUlEQVR42mNkYPhfDwAChwGA60e6kgAAAABJRU5ErkJggg=="
    await chat.post("photo", chat=other.number, base64=pixel, caption="crushing chest pain since the session")
    await chat.settled()
    assert any("emergency" in message.text for message in await chat.from_bot(other.number, after=before))


# --- a test at any time ---------------------------------------------------------------------------------------------


async def test_a_test_can_be_taken_at_any_time_and_is_compared_with_the_first(chat: Practice) -> None:
    client = await Client.joins(chat, "Tester")
    await client.says("14 cm, 15, 15")
    await client.tap("All done, no pain")
    await client.day_later()
    shown = await client.says("/measure")
    assert shown.text.startswith("The test: fingertip to floor, 3 tries.\n\nBarefoot")
    assert shown.photo is not None
    assert "cannot be right" in (await client.says("400")).text
    assert "inside what repeating the test alone can give" in (await client.hears("11 12 12")).text
    await client.says("/measure")
    said = await client.hears("5.5 cm, 6, 6")
    assert "a real gain" in said.text
    assert "another time of day" not in said.text
    await chat.post("clock", to=(await hours_later(chat, 8)))
    await client.says("/measure")
    assert "another time of day" in (await client.hears("9 9 9")).text
    assert "14 cm at the start, 9 cm now" in (await client.says("/progress")).text


async def test_an_open_pain_question_keeps_its_number_and_a_test_day_takes_its_test(chat: Practice) -> None:
    client = await Client.joins(chat, "Both open")
    await client.says("/measure")
    await client.tap("Done, some pain")
    assert "pain 6" in (await client.says("6")).text, "the number that was asked for last is pain, not centimetres"
    other = await Client.joins(chat, "Test day")
    await other.says("/measure")
    await other.says("12 12 12")
    shown = await other.says("/today")
    assert "First the test" not in shown.text, "the day's own test is noted"


async def test_a_rest_takes_the_place_of_a_session_and_its_picture(chat: Practice) -> None:
    client = await Client.joins(chat, "Sixes")
    await client.tap("All done, no pain")
    shown = (await client.day_later()).photo
    await client.tap("Sore, pain or something odd")
    await client.tap("Something else")
    await client.tap("Where we stretch, both sides")
    said = await client.tap("6")
    assert "pain 6" in said.text
    assert said.photo not in (None, shown), "the picture of a session does not stay above a day off"


async def test_other_words_are_no_number_of_a_test(chat: Practice) -> None:
    client = await Client.joins(chat, "Other words")
    await client.says("/measure")
    said = await chat.say(client.number, "I have numbness between my legs")
    assert any("emergency" in message.text for message in said)
    assert "no test to take" in (await chat.say(next(NEXT), "/measure"))[-1].text


async def test_a_message_that_is_edited_answers_for_the_day_on_which_it_was_sent(chat: Practice) -> None:
    client = await Client.joins(chat, "Editor")
    await client.says("done, pain 2")
    typed = [m for m in await chat.messages(client.number) if m.text == "done, pain 2"][-1]
    await chat.post("edit", chat=client.number, message=typed.id, text="done, pain 1")
    await chat.settled()
    assert "Noted: done, pain 1." in (await chat.messages(client.number))[-1].text
    await client.day_later()
    assert client.day.text.startswith("Day 2:")
    await chat.post("edit", chat=client.number, message=typed.id, text="done, pain 7")
    await chat.settled()
    assert any("Editor needs a look" in m.text and "pain 7" in m.text for m in await chat.from_bot(COACH))
    assert "day off" in (await chat.messages(client.number))[-1].text.lower(), "today became a date off"


async def test_not_today_while_a_number_is_missing_changes_nothing_of_yesterday(chat: Practice) -> None:
    client = await Client.joins(chat, "Missing")
    for label in ("Part of it", "Half or more", "Too hard"):
        await client.tap(label)
    await client.day_later()
    said = await client.says("cant today, travelling till friday")
    assert said.text.startswith("Then not today.")
    assert "how much did it hurt" in said.text
    assert (await client.says("it was a 2")).text.startswith("Day 1:")
    progress = await client.says("/progress")
    assert "In part: 1." in progress.text
    assert "Pain in the last two weeks: 2." in progress.text


async def test_what_is_tapped_under_a_nudge_or_after_the_last_step_is_answered_there(chat: Practice) -> None:
    client = await Client.joins(chat, "Nudged")
    await chat.tap(client.number, client.day, "Lead me step by step")
    step = (await chat.messages(client.number))[-1]
    asked = (await chat.tap(client.number, step, "End here"))[-1]
    await chat.tap(client.number, asked, "All done, no pain")
    assert (await chat.again(client.number, asked)).text.startswith("Noted: done, no pain.")
    for _ in range(3):
        await client.day_later()
    while "How did today's session go?" not in (said := (await chat.messages(client.number))[-1]).text:
        await chat.post("clock", to=await hours_later(chat, 1))
    await chat.tap(client.number, said, "Not today")
    assert "What was in the way?" in (await chat.again(client.number, said)).text


async def hours_later(chat: Practice, hours: int) -> str:
    now = datetime.fromisoformat((await chat.get("clock"))["now"])
    return (now + timedelta(hours=hours)).isoformat()


async def test_the_lighter_version_comes_for_the_asking_and_the_course_climbs_again(chat: Practice) -> None:
    client = await Client.joins(chat, "Light")
    whole = client.day.text
    client.day = await client.says("/lighter")
    assert "· lighter" in client.day.text.splitlines()[0]
    assert client.day.text != whole
    client.day = await client.says("/lighter")
    assert "· lightest" in client.day.text.splitlines()[0]
    assert "the lightest version already" in (await client.says("/lighter")).text
    said = await client.tap("All done, no pain")
    assert "Tomorrow is day 2" in said.text
    assert "· lighter" in (await client.day_later()).text.splitlines()[0]
