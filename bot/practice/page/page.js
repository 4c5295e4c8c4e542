// The practice chat's page: two chats of invented people, the calendar, and where a bot's database stands behind the
// server, the course of the client. It speaks the JSON under /practice.

import { Acting } from "./acting.js";
import { Chat } from "./chat.js";
import { Course } from "./course.js";
import { Programmes } from "./programmes.js";
import { DEMO_ZONE, ask, byId, dateOf, make, offered, pause, placeOf, remember, remembered, showZone, shownZone, timeOf } from "./tools.js";
import { Troubles } from "./troubles.js";

const NAMES = ["Robin", "Sam", "Noa", "Alex", "Kim", "Charlie", "Jo", "Toni"];
const CATCH_UP = 120; // milliseconds between two looks at the server while much happens
const BEGIN = "To see a week in seconds tick “all week” below the client's chat and press “sore”.";
const narrow = matchMedia("(max-width: 54rem)");

class Page {
  constructor() {
    this.people = [];
    this.client = new Chat("client", this);
    this.coach = new Chat("coach", this);
    this.chats = [this.client, this.coach];
    this.course = null;
    this.troubles = null;
    this.moving = false;
    this.due = null;
    this.turn = Promise.resolve();
    this.opening = null;
    byId("next-morning").addEventListener("click", () => this.move({ next: "morning" }));
    byId("week-on").addEventListener("click", () => this.move({ days: 7 }));
    byId("joining").addEventListener("close", () => this.joined());
    this.tabs();
    this.zones();
  }

  async start() {
    await this.parts();
    const events = new EventSource("/practice/events");
    events.onmessage = () => this.soon();
    events.onerror = () => this.problem("The connection to the practice server is lost. Trying again.");
    events.onopen = () => this.problem("");
    this.soon();
  }

  /** Builds what this server has routes for. */
  async parts() {
    const has = await offered().catch(() => new Set());
    if (has.has("course")) this.openCourse();
    if (has.has("act")) new Acting(this);
    if (has.has("samples")) await new Programmes(this).start();
    if (has.has("faults")) this.troubles = new Troubles(this);
  }

  openCourse() {
    this.course = new Course();
    this.course.section.hidden = false;
    byId("course-tab").hidden = false;
    document.body.classList.add("with-course");
  }

  problem(text) {
    byId("problem").textContent = text;
  }

  /** Looks at the server a moment from now, however often it is asked to. */
  soon() {
    this.due ??= pause(CATCH_UP).then(async () => {
      this.due = null;
      await this.refresh().catch((error) => this.problem(error.message));
    });
  }

  /** Brings the whole page up to date; one such look at a time, so that an older one never comes in last. */
  refresh() {
    const turn = this.turn.then(() => this.fetched());
    this.turn = turn.catch(() => undefined);
    return turn;
  }

  async fetched() {
    this.people = await ask("chats");
    this.choose();
    await Promise.all([this.clock(), this.course?.refresh(this.client.person), ...this.chats.map((chat) => chat.refresh())]);
    await this.troubles?.refresh(this.client.person, this.course?.found?.letters);
    this.labels();
    if (this.course?.dates === 1 && !byId("moved").textContent) byId("moved").textContent = BEGIN;
  }

  /** Who is shown where: as chosen, else the first two people, the first of them as the coach. */
  choose() {
    const chosen = remembered();
    const known = (id) => this.people.find((person) => person.id === id);
    const [one, two] = this.people;
    this.client.take(known(chosen.client) ?? two ?? one ?? null);
    this.coach.take(known(chosen.coach) ?? (two ? one : null));
  }

  async show(chat, person) {
    remember({ [chat.section.id]: person });
    await this.refresh();
    this.look(chat.section.id);
  }

  // --- the calendar

  async clock() {
    const { now } = await ask("clock");
    byId("now").dateTime = now;
    byId("now").textContent = `${dateOf(now)}, ${timeOf(now)}`;
  }

  move(step) {
    const dates = this.course?.dates ?? 0;
    this.busy("Moving on. What is due on the way is done now.", async () => {
      await ask("clock", step);
      await this.refresh();
      const came = this.course?.since(dates);
      return `It is ${byId("now").textContent.replace(/,? \d{4}, /, ", ")}.${came ? ` ${this.client.person.name}: ${came}.` : ""}`;
    });
  }

  /** Runs one thing that moves people or the calendar, and says in one line that it runs and what came of it. */
  async busy(begins, work) {
    if (this.moving) return;
    this.moves(true);
    this.problem("");
    for (const chat of this.chats) chat.reading = false;
    byId("moved").textContent = begins;
    try {
      byId("moved").textContent = await work();
      await this.refresh();
    } catch (error) {
      byId("moved").textContent = "";
      this.problem(error.message);
    } finally {
      this.moves(false);
    }
  }

  moves(on) {
    this.moving = on;
    for (const button of document.querySelectorAll(".move, [data-as]")) {
      if (on) button.setAttribute("aria-disabled", "true");
      else button.removeAttribute("aria-disabled");
    }
  }

  zones() {
    const own = Intl.DateTimeFormat().resolvedOptions().timeZone;
    const select = byId("zone");
    for (const name of new Set([DEMO_ZONE, own, "UTC", shownZone()])) select.append(new Option(placeOf(name), name));
    select.value = shownZone();
    select.addEventListener("change", () => {
      showZone(select.value);
      for (const chat of this.chats) chat.forget();
      this.soon();
    });
  }

  // --- one at a time on a narrow screen

  tabs() {
    for (const tab of this.allTabs()) {
      tab.addEventListener("click", () => this.look(tab.getAttribute("aria-controls")));
      tab.addEventListener("keydown", (event) => this.turned(event, tab));
    }
    narrow.addEventListener("change", () => this.roles());
    this.roles();
    this.look("client");
  }

  allTabs() {
    return [...document.querySelectorAll("[role=tab]")];
  }

  turned(event, tab) {
    const step = { ArrowLeft: -1, ArrowRight: 1 }[event.key];
    if (!step) return;
    const tabs = this.allTabs().filter((each) => !each.hidden);
    const other = tabs.at((tabs.indexOf(tab) + step) % tabs.length);
    other.focus();
    other.click();
  }

  roles() {
    for (const section of document.querySelectorAll("main > section")) {
      section.setAttribute("role", narrow.matches ? "tabpanel" : "region");
    }
  }

  look(id) {
    document.body.dataset.shown = id;
    for (const tab of this.allTabs()) {
      const on = tab.getAttribute("aria-controls") === id;
      tab.setAttribute("aria-selected", String(on));
      tab.tabIndex = on ? 0 : -1;
    }
    const chat = this.chats.find((each) => each.section.id === id);
    if (chat && narrow.matches && chat.messages.size) chat.seen();
    this.labels();
  }

  labels() {
    for (const chat of this.chats) {
      const text = chat.role + (chat.unseen ? `, ${chat.unseen} new` : "");
      const tab = byId(`${chat.section.id}-tab`);
      if (tab.textContent !== text) tab.textContent = text;
    }
  }

  // --- opening a link, adding a person

  /** Asks who opens the bot's link; without a link, who the new person is. */
  joining(start, chat) {
    this.opening = { start, chat };
    const link = start !== null;
    byId("joining-title").textContent = link ? "Open this link" : "Add a person";
    byId("joining-what").textContent = link
      ? "On a phone the person who was sent it would tap it. Here you choose who that is."
      : "Somebody invented who finds the bot without a link.";
    byId("joining-go").textContent = link ? "Open" : "Add";
    byId("joining-name").value = NAMES.find((name) => !this.people.some((person) => person.name === name)) ?? "Robin";
    const here = chat.person && link ? [chat.person] : [];
    const others = link ? this.people.filter((person) => person.id !== chat.person?.id) : [];
    byId("joining-people").replaceChildren(
      option("new", "A new person", true),
      ...here.map((person) => option(person.id, `${person.name}, in this chat`)),
      ...others.map((person) => option(person.id, person.name)),
    );
    byId("joining").returnValue = "no";
    byId("joining").showModal();
  }

  async joined() {
    if (byId("joining").returnValue !== "go") return;
    const { start, chat } = this.opening;
    const who = document.querySelector("[name=who]:checked").value;
    const fresh = who === "new";
    const id = fresh ? Math.max(3000, ...this.people.map((person) => person.id)) + 1 : Number(who);
    const named = fresh ? { first_name: byId("joining-name").value.trim() || "Robin" } : {};
    await chat.doing(async () => {
      if (start === null) await ask("say", { chat: id, text: "/start", ...named });
      else await ask("open", { chat: id, start, ...named });
      const shown = this.chats.find((each) => each.person?.id === id);
      await this.show(shown ?? (start === null ? chat : this.client), id);
    });
  }
}

function option(value, text, checked = false) {
  return make("label", { className: "option" }, make("input", { type: "radio", name: "who", value, checked }), text);
}

new Page().start();
