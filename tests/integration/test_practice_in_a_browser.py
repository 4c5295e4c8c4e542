"""The page of `easeward practice` in a real browser, with the whole program behind it: course, answers, trouble."""

from __future__ import annotations

import re
from collections.abc import AsyncIterator
from pathlib import Path
from typing import Literal

import pytest
import pytest_asyncio
from playwright.async_api import Browser, FilePayload, Page, expect

from bot.practising import CLIENT, COACH
from tests.integration.browsers import NARROWEST, ONE_LOOP, PHONE, WIDE, opened, violations
from tests.integration.trials import Trial, trial

pytestmark = [pytest.mark.browser]
CELLS = "#weeks a"


@pytest_asyncio.fixture(loop_scope="module")
async def here(tmp_path: Path, tmp_path_factory: pytest.TempPathFactory) -> AsyncIterator[Trial]:
    async with trial(tmp_path, tmp_path_factory.getbasetemp() / "first-morning") as found:
        yield found


async def at_rest(page: Page) -> None:
    """Waits until nothing moves any more."""
    await expect(page.locator(".move[aria-disabled]")).to_have_count(0, timeout=60_000)


async def answers(page: Page, manner: str, *, all_week: bool = False) -> None:
    await page.get_by_role("checkbox", name="all week").set_checked(all_week)
    await page.get_by_role("button", name=f"Answer as a {manner} client").click()
    await at_rest(page)


# --- the course -------------------------------------------------------------------------------------------------------


@ONE_LOOP
async def test_the_course_fills_as_the_calendar_moves(here: Trial, browser: Browser) -> None:
    async with opened(browser, here.address, WIDE) as page:
        await expect(page.get_by_role("heading", name="Course of Demo client")).to_be_visible()
        await expect(page.locator("#course-what")).to_contain_text("day 1 of 28, 27 days still to come")
        await expect(page.locator(CELLS)).to_have_count(1)
        await page.get_by_role("button", name="Next morning").click()
        await expect(page.locator(CELLS)).to_have_count(2)
        cell = page.locator(CELLS).last
        await expect(cell).to_have_attribute("aria-current", "date")
        await expect(cell).to_have_accessible_name(re.compile(r"day 1, with the test\. again\. no answer yet$"))


@ONE_LOOP
async def test_a_sore_week_is_told_with_every_vote(here: Trial, browser: Browser) -> None:
    async with opened(browser, here.address, WIDE) as page:
        await answers(page, "sore", all_week=True)
        await expect(page.locator("#moved")).to_contain_text("7 mornings of Demo client")
        await expect(page.locator(CELLS)).to_have_count(8)
        off = page.locator(".decision", has_text="A day off")
        await expect(off.get_by_role("listitem")).to_have_text(
            [re.compile(r"^a day off because pain of 6 is too much to work into; the coach is told at once")]
        )
        await expect(off).to_contain_text("The answer: done, pain 6.")
        await expect(page.locator("#coach .log")).to_contain_text("pain 6 of 10")


@ONE_LOOP
async def test_a_cell_leads_by_keyboard_to_what_was_decided_even_long_ago(here: Trial, browser: Browser) -> None:
    await here.lives("tidy", 8)
    async with opened(browser, here.address, WIDE) as page:
        await expect(page.locator(".decision")).to_have_count(6)
        await page.locator(CELLS).first.focus()
        await page.keyboard.press("Enter")
        await expect(page.locator(".decision").last).to_be_focused()
        await expect(page.locator(".decision").last).to_contain_text("The first day")
        await expect(page.locator(".decision")).to_have_count(9)


@ONE_LOOP
async def test_the_course_stands_as_a_table_too(here: Trial, browser: Browser) -> None:
    await here.lives("tidy", 2)
    async with opened(browser, here.address, WIDE) as page:
        await page.get_by_text("The same as a table").click()
        rows = page.get_by_role("table", name="Every date of the course so far").get_by_role("row")
        await expect(rows).to_have_count(4)
        await expect(rows.nth(2)).to_contain_text("day 2")
        await expect(rows.nth(2)).to_contain_text("Because it went well.")
        await expect(rows.nth(2)).to_contain_text("done, no pain")


@ONE_LOOP
async def test_the_course_is_that_of_whoever_is_shown_as_client(here: Trial, browser: Browser) -> None:
    await here.post("say", chat=3001, text="/start", first_name="Noa (invented)")
    async with opened(browser, here.address, WIDE) as page:
        await page.get_by_role("combobox", name="Show whose chat as client").select_option("Noa (invented)")
        await expect(page.get_by_role("heading", name="Course of Noa (invented)")).to_be_visible()
        await expect(page.locator("#course-what")).to_contain_text("No course yet")
        await expect(page.locator(CELLS)).to_have_count(0)


# --- what an invented client and coach do -----------------------------------------------------------------------------


@ONE_LOOP
async def test_one_answer_taps_the_real_buttons_and_says_so(here: Trial, browser: Browser) -> None:
    async with opened(browser, here.address, WIDE) as page:
        await answers(page, "sore")
        await expect(page.locator("#moved")).to_have_text(
            "Demo client typed 14, 14, 14, tapped Done, some pain and tapped 4."
        )
        await expect(page.locator("#client .log")).to_contain_text("Noted: done, pain 4.")
        await answers(page, "tidy")
        await answers(page, "tidy")
        await expect(page.locator("#moved")).to_contain_text(
            "Demo client has nothing to answer: go on to the next morning."
        )


@ONE_LOOP
async def test_a_week_can_be_stopped(here: Trial, browser: Browser) -> None:
    async with opened(browser, here.address, WIDE) as page:
        await page.get_by_role("checkbox", name="all week").check()
        await page.get_by_role("button", name="Answer as a tidy client").click()
        await page.get_by_role("button", name="Stop here").click()
        await at_rest(page)
        found = re.match(r"(\d) mornings? of Demo client", await page.locator("#moved").inner_text())
        assert found is not None
        assert int(found[1]) < 7
        await expect(page.locator(CELLS)).to_have_count(int(found[1]) + 1)
        await expect(page.locator("#halt")).to_be_hidden()


@ONE_LOOP
async def test_a_sample_comes_into_the_coachs_chat_and_a_new_client_joins(here: Trial, browser: Browser) -> None:
    async with opened(browser, here.address, WIDE) as page:
        coach = page.locator("#coach")
        await coach.get_by_text("Try another programme").click()
        await coach.get_by_role("combobox", name="Sample").select_option("Ankles for the hills")
        await coach.get_by_role("button", name="Send it in").click()
        await expect(coach.locator(".own").last).to_contain_text("hill-walkers.yaml")
        for label in ("Publish", "Invite one client", "start="):
            await expect(coach.locator("article").last).to_contain_text("Ankles for the hills")
            await coach.locator("article").last.get_by_role("button", name=label).click()
        await page.get_by_role("dialog").get_by_role("button", name="Open").click()
        await expect(page.get_by_role("heading", name="Client: Robin")).to_be_visible()
        await expect(page.get_by_role("button", name="I agree")).to_be_visible()
        await answers(page, "tidy")
        await expect(page.locator("#course-what")).to_contain_text("Ankles for the hills: day 1 of")
        await expect(page.locator(CELLS)).to_have_count(1)


@ONE_LOOP
async def test_a_programme_file_of_ones_own_is_judged_in_the_coachs_chat(here: Trial, browser: Browser) -> None:
    async with opened(browser, here.address, WIDE) as page:
        await page.locator("#coach").get_by_text("Try another programme").click()
        file = FilePayload(name="mine.yaml", mimeType="text/yaml", buffer=b"title: Mine\ngoal: [\n")
        async with page.expect_file_chooser() as chooser:
            await page.get_by_role("button", name="Load my programme file").click()
        await (await chooser.value).set_files(file)
        await expect(page.locator("#coach .own").last).to_contain_text("mine.yaml")
        await expect(page.locator("#coach article").last).to_contain_text("mine.yaml:")


# --- trouble ----------------------------------------------------------------------------------------------------------


@ONE_LOOP
async def test_a_lost_answer_brings_no_session_twice(here: Trial, browser: Browser) -> None:
    async with opened(browser, here.address, WIDE) as page:
        await page.locator("#troubles summary").click()
        await page.get_by_role("button", name="Lose the answer").click()
        await expect(page.locator(".outcome")).to_contain_text("Still to go wrong: 1 request.")
        await page.get_by_role("button", name="Next morning").click()
        await expect(page.locator(CELLS)).to_have_count(2)
        await expect(page.locator(".outcome")).to_contain_text("1 of unknown fate, not sent again")
    sent = [m for m in await here.get(f"messages?chat={CLIENT}") if m["text"].startswith("Day 1")]
    assert len(sent) == 2


@ONE_LOOP
async def test_what_comes_in_twice_counts_once(here: Trial, browser: Browser) -> None:
    async with opened(browser, here.address, WIDE) as page:
        await page.locator("#troubles summary").click()
        twice = page.get_by_role("button", name="Send twice")
        await twice.click()
        await expect(twice).to_have_attribute("aria-pressed", "true")
        await page.locator("#client").get_by_role("button", name="All done, no pain").click()
        await expect(page.locator("#client .log")).to_contain_text("Noted: done, no pain")
        box = page.get_by_role("textbox", name="Write as Demo client")
        await box.fill("thank you")
        await box.press("Enter")
        await expect(page.locator("#client .own", has_text="thank you")).to_have_count(2)
        await page.get_by_role("button", name="Next morning").click()
        await expect(page.locator(CELLS)).to_have_count(2)
        await expect(page.locator(CELLS).first).to_have_accessible_name(re.compile("done, no pain"))


@ONE_LOOP
async def test_a_client_who_blocks_is_said_to_the_coach_and_comes_back(here: Trial, browser: Browser) -> None:
    async with opened(browser, here.address, WIDE) as page:
        await page.locator("#troubles summary").click()
        block = page.get_by_role("button", name="Block the bot", exact=True)
        await block.click()
        await expect(block).to_have_attribute("aria-pressed", "true")
        await page.get_by_role("button", name="Next morning").click()
        await at_rest(page)
        await block.click()
        await expect(block).to_have_attribute("aria-pressed", "false")
    told = [m["text"] for m in await here.get(f"messages?chat={COACH}")]
    assert any("has blocked the bot" in text for text in told)


# --- for everybody ----------------------------------------------------------------------------------------------------


async def open_everything(page: Page) -> None:
    for summary in await page.locator("summary:visible").all():
        if await summary.inner_text() != "More":
            await summary.click()


@ONE_LOOP
@pytest.mark.parametrize("colours", ["light", "dark"])
async def test_axe_finds_nothing_wrong(here: Trial, browser: Browser, colours: Literal["light", "dark"]) -> None:
    """axe-core, its rules for WCAG 2.2 and good practice, on screens of three sizes and with everything open."""
    await here.lives("sore", 5)
    for size in (WIDE, PHONE, NARROWEST):
        async with opened(browser, here.address, size, colours=colours) as page:
            await expect(page.locator(CELLS)).to_have_count(6)
            assert await violations(page) == [], size
            for part in ("client", "coach", "course"):
                tab = page.locator(f"#{part}-tab")
                if await tab.is_visible():
                    await tab.click()
                await open_everything(page)
                assert await violations(page) == [], (size, part)
            await page.locator("#client-tab").evaluate("(tab) => tab.click()")
            await page.locator("#client .more summary").click()
            await page.locator("#client").get_by_role("button", name="Add a person").click()
            assert await violations(page) == [], (size, "dialog")


@ONE_LOOP
async def test_no_part_runs_off_the_narrowest_screen(here: Trial, browser: Browser) -> None:
    """WCAG 2.2, 1.4.10: no sideways scrolling at 320 CSS pixels."""
    await here.lives("sore", 2)
    async with opened(browser, here.address, NARROWEST) as page:
        for part in ("client", "coach", "course"):
            await page.locator(f"#{part}-tab").click()
            await open_everything(page)
            await expect(page.locator(f"#{part}")).to_be_visible()
            for where in ("html", f"#{part}"):
                assert not await page.locator(where).evaluate("(node) => node.scrollWidth > node.clientWidth"), where


@ONE_LOOP
async def test_the_course_is_a_third_tab_on_a_phone(here: Trial, browser: Browser) -> None:
    async with opened(browser, here.address, PHONE) as page:
        await page.get_by_role("tab", name="Client").focus()
        await page.keyboard.press("ArrowLeft")
        await expect(page.get_by_role("tab", name="Course")).to_be_focused()
        await expect(page.get_by_role("tabpanel", name="Course of Demo client")).to_be_visible()
        await expect(page.locator("#client")).to_be_hidden()
        await page.keyboard.press("ArrowRight")
        await expect(page.get_by_role("tabpanel", name="Client: Demo client")).to_be_visible()


@ONE_LOOP
async def test_the_keyboard_reaches_everything_and_shows_where_it_is(here: Trial, browser: Browser) -> None:
    """WCAG 2.2, 2.1.1 and 2.4.7."""
    async with opened(browser, here.address, WIDE) as page:
        await expect(page.locator(CELLS)).to_have_count(1)
        missing = set(
            await page.locator(
                "button:visible, select:visible, summary:visible, textarea:visible, #weeks a"
            ).evaluate_all("(all) => all.map((node, n) => (node.dataset.n = n, String(n)))")
        )
        for _press in range(2 * len(missing) + 20):
            await page.keyboard.press("Tab")
            focused = page.locator(":focus")
            if await focused.count() == 0:
                break
            assert await focused.evaluate("(node) => parseFloat(getComputedStyle(node).outlineWidth)") >= 2
            missing.discard(await focused.evaluate("(node) => node.dataset.n ?? ''"))
        assert missing == set()


@ONE_LOOP
async def test_what_comes_is_said_in_one_short_line(here: Trial, browser: Browser) -> None:
    """A session is long, and a week of them must not be read out."""
    async with opened(browser, here.address, WIDE) as page:
        for name in ("Demo client", "Demo coach"):
            log = page.get_by_role("log", name=f"Messages of {name}")
            await expect(log).to_have_attribute("aria-live", "off")
        box = page.get_by_role("textbox", name="Write as Demo client")
        await box.fill("/today")
        await box.press("Enter")
        heard = page.locator("#client .heard")
        await expect(heard).to_have_text("Easeward to Demo client: Day 1: Test, then an easy start, about 14 minutes")
        await page.get_by_role("button", name="A week on").click()
        await at_rest(page)
        await expect(page.locator("#moved")).to_have_text(
            re.compile(r"^It is \w+ \d+ \w+, \d\d:00\. Demo client: \d × the day again\.$")
        )
        await expect(heard).to_have_text(re.compile("^Easeward to Demo client: Day 1"))
