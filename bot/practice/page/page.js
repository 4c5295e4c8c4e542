// The practice chat's page: two chats of invented people, and the calendar. It speaks the JSON under /practice.
"use strict";

const BOT_LINK = /^https?:\/\/t\.me\/easeward_practice_bot\?start=([A-Za-z0-9_-]{1,64})$/;
const LINKS_AND_COMMANDS = /https?:\/\/[^\s<>"]+[^\s<>".,;:!?)]|(?<![\w/:.])\/[a-z0-9_]{1,32}\b/g;
const KEPT_TAGS = new Set(["B", "I", "U", "S", "CODE", "PRE", "BLOCKQUOTE"]);
const DEMO_ZONE = "Europe/Lisbon"; // where the invented people live
const NAMES = ["Robin", "Sam", "Noa", "Alex", "Kim", "Charlie", "Jo", "Toni"];
const SCROLLING = new Set(["ArrowUp", "ArrowDown", "PageUp", "PageDown", "Home", "End", " "]);
const CATCH_UP = 120; // milliseconds between two looks at the server while much happens
const ANSWER_WAIT = 10_000; // milliseconds that a tap's answer is looked for

const byId = (id) => document.getElementById(id);
const narrow = matchMedia("(max-width: 54rem)");
const calm = matchMedia("(prefers-reduced-motion: reduce)");
const pause = (milliseconds) => new Promise((resolve) => setTimeout(resolve, milliseconds));

function make(tag, properties = {}, ...children) {
  const node = Object.assign(document.createElement(tag), properties);
  node.append(...children);
  return node;
}

// --- the server ------------------------------------------------------------------------------------------------------

async function ask(path, body) {
  const options = body && { method: "POST", headers: { "Content-Type": "application/json" }, body: JSON.stringify(body) };
  let answer;
  try {
    answer = await fetch(`/practice/${path}`, options);
  } catch {
    throw new Error("The practice server does not answer. Is it still running?");
  }
  const found = await answer.json().catch(() => ({ error: `the server answered ${answer.status}` }));
  if (!answer.ok) throw new Error(sentence(found.error ?? `the server answered ${answer.status}`));
  return found;
}

const sentence = (text) => text.charAt(0).toUpperCase() + text.slice(1) + (/[.?]$/.test(text) ? "" : ".");

// --- what is remembered between visits ---------------------------------------------------------------------------------

const KEY = "easeward-practice";

function remembered() {
  try {
    return JSON.parse(localStorage.getItem(KEY)) ?? {};
  } catch {
    return {}; // storage is closed or holds something else: begin with the defaults
  }
}

function remember(change) {
  try {
    localStorage.setItem(KEY, JSON.stringify({ ...remembered(), ...change }));
  } catch {
    // storage is closed: the choice lasts as long as this page
  }
}

// --- dates and times -------------------------------------------------------------------------------------------------

let zone = remembered().zone ?? DEMO_ZONE;
const inZone = (options, moment) => new Intl.DateTimeFormat("en-GB", { timeZone: zone, ...options }).format(new Date(moment));
const timeOf = (moment) => inZone({ hour: "2-digit", minute: "2-digit" }, moment);
const dateOf = (moment) =>
  `${inZone({ weekday: "long" }, moment)} ${inZone({ day: "numeric", month: "long", year: "numeric" }, moment)}`;
const placeOf = (name) => name.split("/").at(-1).replaceAll("_", " ");

// --- words of a message ----------------------------------------------------------------------------------------------

/** The words of a message as nodes: only the tags of the list, safe links, links of the bot and commands as buttons. */
function words(html, act) {
  const parsed = new DOMParser().parseFromString(html, "text/html");
  return [...parsed.body.childNodes].flatMap((node) => kept(node, act));
}

function kept(node, act) {
  if (node.nodeType === Node.TEXT_NODE) return act ? linked(node.data, act) : [node.data];
  const inside = () => [...node.childNodes].flatMap((child) => kept(child, act));
  if (node.tagName === "A") return [address(node.href, node.textContent, act)];
  return KEPT_TAGS.has(node.tagName) ? [make(node.tagName, {}, ...inside())] : inside();
}

function linked(text, act) {
  const parts = [];
  let end = 0;
  for (const match of text.matchAll(LINKS_AND_COMMANDS)) {
    parts.push(text.slice(end, match.index));
    parts.push(match[0].startsWith("/") ? command(match[0], act) : address(match[0], match[0], act));
    end = match.index + match[0].length;
  }
  return [...parts, text.slice(end)];
}

function command(text, act) {
  const button = make("button", { type: "button", className: "inline", textContent: text });
  button.addEventListener("click", () => act.say(text));
  return button;
}

function address(href, text, act) {
  const start = BOT_LINK.exec(href)?.[1];
  if (start === undefined || !act) {
    const safe = /^https?:\/\//.test(href);
    return safe ? make("a", { href, target: "_blank", rel: "noopener noreferrer" }, text) : text;
  }
  const button = make("button", { type: "button", className: "inline", textContent: text, title: "Choose who opens it" });
  button.addEventListener("click", () => act.open(start));
  return button;
}

function sizeOf(bytes) {
  if (bytes < 1000) return `${bytes} bytes`;
  return bytes < 1e6 ? `${Math.round(bytes / 1000)} kB` : `${(bytes / 1e6).toFixed(1)} MB`;
}

/** One message as an entry of the page. `act` has say, open and tap. */
function entryOf(message, person, act) {
  const own = message.from === "client";
  const side = make("div", { className: "side" });
  const from = (own ? person : "Easeward") + (message.edited ? ", changed" : "");
  side.append(make("div", { className: "from", textContent: from }));
  if (message.photo) side.append(picture(message));
  if (message.html) side.append(make("div", { className: "words" }, ...words(message.html, own ? null : act)));
  if (message.document) side.append(document_(message.document));
  if (message.buttons.length) side.append(rows(message, act));
  const time = make("time", { dateTime: message.at, textContent: timeOf(message.at) });
  const entry = make("article", { className: own ? "entry own" : "entry", tabIndex: -1, lang: message.lang ?? "en-GB" });
  entry.dataset.message = message.id;
  entry.append(time, side);
  return entry;
}

function picture(message) {
  const { url, width, height } = message.photo;
  const alt = message.text ? "Picture of what the words below say" : "Picture without words";
  return make("img", { className: "picture", src: url, width, height, alt });
}

function document_(file) {
  const link = make("a", { href: file.url, download: file.name, textContent: file.name });
  return make("p", { className: "words" }, "File: ", link, ` (${sizeOf(file.size)})`);
}

function rows(message, act) {
  const all = make("div", { className: "rows" });
  all.setAttribute("role", "group");
  all.setAttribute("aria-label", "Answers to tap");
  for (const row of message.buttons) {
    all.append(make("div", { className: "row" }, ...row.map((button) => tapped(message, button, act))));
  }
  return all;
}

function tapped(message, { label, data, url }, act) {
  if (url) return address(url, label, act);
  const button = make("button", { type: "button", textContent: label });
  button.dataset.data = data;
  button.addEventListener("click", () => act.tap(message.id, data, button));
  return button;
}

// --- one chat --------------------------------------------------------------------------------------------------------

class Chat {
  constructor(id, office) {
    this.office = office;
    this.role = byId(id).dataset.role;
    this.section = byId(id);
    this.section.append(byId("chat").content.cloneNode(true));
    this.find = (name) => this.section.querySelector(`.${name}`);
    this.log = this.find("log");
    this.person = null;
    this.messages = new Map(); // id -> {change, date, entry}
    this.unseen = 0;
    this.reading = false; // somebody has scrolled back: new lines must not pull the page from under their eyes
    this.touched = null; // the message that was tapped last
    this.act = {
      say: (text) => this.doing(() => this.say(text)),
      open: (start) => office.joining(start, this),
      tap: (message, data, button) => this.doing(() => this.tap(message, data, button)),
    };
    this.listen();
  }

  listen() {
    const text = this.find("text");
    this.find("write").addEventListener("submit", (event) => {
      event.preventDefault();
      this.doing(() => this.sendTyped());
    });
    text.addEventListener("input", () => grow(text));
    text.addEventListener("keydown", (event) => {
      if (event.key !== "Enter" || event.shiftKey || event.isComposing) return;
      event.preventDefault();
      this.find("write").requestSubmit();
    });
    for (const kind of ["wheel", "touchmove"]) {
      this.log.addEventListener(kind, () => (this.reading = true), { passive: true });
    }
    this.log.addEventListener("keydown", (event) => (this.reading ||= SCROLLING.has(event.key)));
    this.log.addEventListener("scroll", () => this.atEnd() && this.caughtUp());
    this.find("newer").addEventListener("click", () => this.seen());
    this.find("pick-file").addEventListener("click", () => this.find("file").click());
    this.find("file").addEventListener("change", () => this.doing(() => this.sendFile()));
    this.find("person").addEventListener("change", (event) => this.office.show(this, Number(event.target.value)));
    this.find("add").addEventListener("click", () => this.chosen(() => this.office.joining(null, this)));
    this.find("block").addEventListener("click", () => this.chosen(() => this.doing(() => this.block())));
  }

  /** Runs what somebody asked for and says under the chat what was wrong with it. */
  async doing(work) {
    this.tell("problem", "");
    this.tell("answer", "");
    this.reading = false;
    try {
      await work();
    } catch (error) {
      this.tell("problem", error.message);
    }
  }

  /** Does what was chosen under More and closes it. */
  chosen(work) {
    this.find("more").open = false;
    this.find("more").querySelector("summary").focus();
    work();
  }

  tell(place, text) {
    this.section.querySelector(`:scope > .${place}`).textContent = text;
  }

  // --- what the person does

  async say(text) {
    await ask("say", { chat: this.person.id, text });
  }

  async sendTyped() {
    const text = this.find("text");
    if (!text.value.trim()) return;
    await this.say(text.value);
    text.value = "";
    grow(text);
  }

  async sendFile() {
    const [file] = this.find("file").files;
    if (!file) return;
    const base64 = await encoded(file);
    this.find("file").value = "";
    if (["image/png", "image/jpeg"].includes(file.type)) await ask("photo", { chat: this.person.id, base64 });
    else await ask("document", { chat: this.person.id, name: file.name, base64 });
  }

  async tap(message, data, button) {
    if (button.getAttribute("aria-disabled") === "true") return;
    button.setAttribute("aria-disabled", "true");
    this.touched = message;
    try {
      const { tap } = await ask("tap", { chat: this.person.id, message, button: data });
      this.tell("answer", await answerTo(tap));
    } finally {
      button.removeAttribute("aria-disabled");
    }
  }

  async block() {
    await ask("block", { chat: this.person.id, on: !this.person.blocked });
    await this.office.refresh();
  }

  // --- what the page shows

  /** Shows this person from now on; null is nobody. */
  take(person) {
    const other = person?.id !== this.person?.id;
    this.person = person;
    if (other) this.forget();
    const name = person?.name ?? "nobody yet";
    this.find("who").textContent = `${this.role}: ${name}`;
    this.section.setAttribute("aria-label", `${this.role}: ${name}`);
    this.log.setAttribute("aria-label", `Messages of ${name}, newest last`);
    this.find("text").placeholder = `Write as ${name}`;
    this.find("text").setAttribute("aria-label", `Write as ${name}. Enter sends, Shift and Enter begins a new line.`);
    this.find("pick-file").setAttribute("aria-label", `File to send as ${name}`);
    this.find("block").textContent = person?.blocked ? "Take the block back" : "Block the bot";
    for (const field of this.section.querySelectorAll(".write > *, .block")) field.disabled = person === null;
    this.options();
  }

  options() {
    const select = this.find("person");
    const wanted = this.office.people.map(({ id, name, blocked }) => [String(id), blocked ? `${name}, has blocked the bot` : name]);
    const shown = [...select.options].map((option) => [option.value, option.text]);
    if (JSON.stringify(wanted) !== JSON.stringify(shown)) {
      select.replaceChildren(...wanted.map(([value, text]) => new Option(text, value)));
    }
    select.value = String(this.person?.id ?? "");
    select.setAttribute("aria-label", `Show whose chat as ${this.role.toLowerCase()}`);
    select.disabled = wanted.length === 0;
  }

  forget() {
    this.messages.clear();
    this.caughtUp();
    this.log.replaceChildren();
    this.tell("answer", "");
    this.tell("problem", "");
  }

  /** Brings the log up to what the server has: new entries, changed ones, deleted ones. */
  async refresh() {
    const { person } = this;
    if (person === null) return;
    const found = await ask(`messages?chat=${person.id}`);
    if (person.id !== this.person?.id) return;
    const first = this.messages.size === 0;
    const held = this.reading && !this.atEnd();
    this.log.setAttribute("aria-live", first ? "off" : "polite"); // a whole history is not read out
    this.drop(new Set(found.map((message) => message.id)));
    const fresh = found.filter((message) => this.put(message, first));
    this.dates();
    if (!fresh.length) return;
    if (first) this.bring(this.messages.get(fresh.at(-1).id).entry, "auto");
    else if (this.section.checkVisibility() && !held) this.bring(this.messages.get(fresh[0].id).entry);
    else this.more(fresh.filter((message) => message.from === "bot").length);
  }

  drop(present) {
    for (const [id, { entry }] of this.messages) {
      if (present.has(id)) continue;
      entry.remove();
      this.messages.delete(id);
    }
  }

  /** Puts one message in; true when it was not there before. */
  put(message, first) {
    const old = this.messages.get(message.id);
    if (old?.change === message.change) return false;
    const entry = entryOf(message, this.person.name, this.act);
    this.messages.set(message.id, { change: message.change, date: dateOf(message.at), entry });
    if (!old) {
      if (!first) entry.classList.add("fresh");
      this.log.append(entry);
      return true;
    }
    const focused = old.entry.contains(document.activeElement) ? document.activeElement : null;
    old.entry.replaceWith(entry);
    if (focused) handOver(focused, entry);
    if (message.id === this.touched && !this.reading) this.reveal(entry);
    return false;
  }

  /** Writes the date above the first entry of each day. */
  dates() {
    let last = null;
    for (const { date, entry } of this.messages.values()) {
      const above = entry.previousElementSibling;
      const dated = above?.classList.contains("date") ?? false;
      if (dated && (date === last || above.textContent !== date)) above.remove();
      if (date !== last && !(dated && above.isConnected)) {
        entry.before(make("h3", { className: "date", textContent: date }));
      }
      last = date;
    }
  }

  // --- where the page stands

  atEnd() {
    return this.log.scrollHeight - this.log.scrollTop - this.log.clientHeight < 60;
  }

  /** How far an entry's beginning is below the top of what can be seen, in pixels. */
  below(entry) {
    const dated = entry.previousElementSibling?.classList.contains("date");
    const line = dated ? entry.previousElementSibling : entry;
    return line.getBoundingClientRect().top - this.log.getBoundingClientRect().top;
  }

  /** Scrolls so that an entry can be read from its beginning. */
  bring(entry, behavior = calm.matches ? "auto" : "smooth") {
    this.log.scrollTo({ top: this.log.scrollTop + this.below(entry) - 4, behavior });
  }

  /** The same, unless its beginning is in sight. */
  reveal(entry) {
    if (this.below(entry) < 0) this.bring(entry);
  }

  /** Counts new lines that nobody has seen yet. */
  more(count) {
    this.unseen += count;
    this.find("newer").hidden = this.unseen === 0;
    this.find("newer").textContent = `${this.unseen} new below`;
  }

  caughtUp() {
    this.reading = false;
    if (this.unseen) this.more(-this.unseen);
  }

  /** The chat has just come into sight, or its new lines are asked for. */
  seen() {
    const entries = [...this.messages.values()].slice(-Math.max(1, this.unseen));
    this.caughtUp();
    if (entries.length) this.bring(entries[0].entry);
  }
}

function grow(text) {
  text.style.height = "auto";
  text.style.height = `${text.scrollHeight + 2}px`;
}

/** Keeps the keyboard's place when an entry is replaced: the same button, else the entry itself. */
function handOver(focused, entry) {
  const same = [...entry.querySelectorAll("button")].find(
    (button) => button.dataset.data === focused.dataset.data && button.textContent === focused.textContent,
  );
  (same ?? entry).focus({ preventScroll: true });
}

async function encoded(file) {
  const reader = new FileReader();
  await new Promise((resolve, reject) => {
    reader.onload = resolve;
    reader.onerror = () => reject(new Error(`The file ${file.name} cannot be read.`));
    reader.readAsDataURL(file);
  });
  return reader.result.slice(reader.result.indexOf(",") + 1);
}

/** The bot's answer to a tap, empty when there is none in time. */
async function answerTo(tap) {
  const until = performance.now() + ANSWER_WAIT;
  for (let wait = 50; performance.now() < until; wait = Math.min(1000, wait * 2)) {
    const { text } = await ask(`answer?tap=${tap}`);
    if (text !== null) return text;
    await pause(wait);
  }
  return "";
}

// --- the page --------------------------------------------------------------------------------------------------------

class Page {
  constructor() {
    this.people = [];
    this.client = new Chat("client", this);
    this.coach = new Chat("coach", this);
    this.chats = [this.client, this.coach];
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

  start() {
    const events = new EventSource("/practice/events");
    events.onmessage = () => this.soon();
    events.onerror = () => this.problem("The connection to the practice server is lost. Trying again.");
    events.onopen = () => this.problem("");
    this.soon();
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
    await Promise.all([this.clock(), ...this.chats.map((chat) => chat.refresh())]);
    this.labels();
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

  async move(step) {
    if (this.moving) return;
    this.moves(true);
    this.problem("");
    for (const chat of this.chats) chat.reading = false;
    byId("moved").textContent = "Moving on. What is due on the way is done now.";
    try {
      await ask("clock", step);
      await this.refresh();
      byId("moved").textContent = `It is ${byId("now").textContent}.`;
    } catch (error) {
      byId("moved").textContent = "";
      this.problem(error.message);
    } finally {
      this.moves(false);
    }
  }

  moves(on) {
    this.moving = on;
    for (const button of document.querySelectorAll(".move")) {
      if (on) button.setAttribute("aria-disabled", "true");
      else button.removeAttribute("aria-disabled");
    }
  }

  zones() {
    const own = Intl.DateTimeFormat().resolvedOptions().timeZone;
    const select = byId("zone");
    for (const name of new Set([DEMO_ZONE, own, "UTC", zone])) select.append(new Option(placeOf(name), name));
    select.value = zone;
    select.addEventListener("change", async () => {
      zone = select.value;
      remember({ zone });
      for (const chat of this.chats) chat.forget();
      this.soon();
    });
  }

  // --- one at a time on a narrow screen

  tabs() {
    const tabs = [byId("client-tab"), byId("coach-tab")];
    for (const tab of tabs) {
      tab.addEventListener("click", () => this.look(tab.getAttribute("aria-controls")));
      tab.addEventListener("keydown", (event) => {
        if (!["ArrowLeft", "ArrowRight"].includes(event.key)) return;
        const other = tabs.find((each) => each !== tab);
        other.focus();
        other.click();
      });
    }
    narrow.addEventListener("change", () => this.roles());
    this.roles();
    this.look("client");
  }

  roles() {
    for (const chat of this.chats) chat.section.setAttribute("role", narrow.matches ? "tabpanel" : "region");
  }

  look(id) {
    document.body.dataset.shown = id;
    for (const chat of this.chats) {
      const tab = byId(`${chat.section.id}-tab`);
      const on = chat.section.id === id;
      tab.setAttribute("aria-selected", String(on));
      tab.tabIndex = on ? 0 : -1;
      if (on && narrow.matches && chat.messages.size) chat.seen();
    }
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
