// One chat: its log, its lines as they come and change, and what its person does.

import { entryOf } from "./entry.js";
import { ask, byId, dateOf, make, pause } from "./tools.js";

const SCROLLING = new Set(["ArrowUp", "ArrowDown", "PageUp", "PageDown", "Home", "End", " "]);
const ANSWER_WAIT = 10_000; // milliseconds that a tap's answer is looked for
const calm = matchMedia("(prefers-reduced-motion: reduce)");

export class Chat {
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
    this.twice = false; // whether what is tapped or typed comes in two times
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
    await this.sent("say", { chat: this.person.id, text });
  }

  /** Sends what was typed or tapped, and once more when everything shall come in twice. */
  async sent(route, body) {
    const found = await ask(route, body);
    if (this.twice) await ask(route, body);
    return found;
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
    await this.send(file);
    this.find("file").value = "";
  }

  /** Sends a file into the chat: a picture as one, anything else as a document. */
  async send(file) {
    const base64 = await encoded(file);
    if (["image/png", "image/jpeg"].includes(file.type)) await ask("photo", { chat: this.person.id, base64 });
    else await ask("document", { chat: this.person.id, name: file.name, base64 });
  }

  async tap(message, data, button) {
    if (button.getAttribute("aria-disabled") === "true") return;
    button.setAttribute("aria-disabled", "true");
    this.touched = message;
    try {
      const { tap } = await this.sent("tap", { chat: this.person.id, message, button: data });
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
    this.drop(new Set(found.map((message) => message.id)));
    const fresh = found.filter((message) => this.put(message, first));
    this.dates();
    if (!fresh.length) return;
    if (!first) this.hear(fresh.filter((message) => message.from === "bot"));
    if (first) this.bring(this.messages.get(fresh.at(-1).id).entry, "auto");
    else if (this.section.checkVisibility() && !held) this.bring(this.messages.get(fresh[0].id).entry);
    else this.more(fresh.filter((message) => message.from === "bot").length);
  }

  /** Says what has come in one short line: a session is long, and a week of them must not be read out whole. */
  hear(fresh) {
    if (!fresh.length || this.office.moving || !this.section.checkVisibility()) return;
    const line = fresh[0].text.split("\n")[0];
    const text = fresh.length === 1 ? `Easeward to ${this.person.name}: ${line}` : `${fresh.length} new messages for ${this.person.name}`;
    this.tell("heard", text);
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

  /** Scrolls to the words of an entry that has changed, unless they and their buttons are in sight. */
  reveal(entry) {
    const box = this.log.getBoundingClientRect();
    const words = (entry.querySelector(".words") ?? entry).getBoundingClientRect();
    const hidden = words.top < box.top || entry.getBoundingClientRect().bottom > box.bottom;
    if (hidden) this.log.scrollTo({ top: this.log.scrollTop + words.top - box.top - 8, behavior: calm.matches ? "auto" : "smooth" });
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
