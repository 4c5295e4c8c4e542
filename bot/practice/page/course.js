// The course behind the client's chat: a cell a date, and the log of what was decided.

import { CAME, SIGNS, aheadOf, cellOf, decisionOf, tableRowOf, whatOf } from "./cells.js";
import { ask, byId, make } from "./tools.js";

const SHOWN = 6; // decisions that are shown before somebody asks for the earlier ones
const WEEK = 7;
const STATES = {
  joining: "the questions before it begins are open",
  waiting: "waits for the coach",
  finished: "finished",
  stopped: "stopped",
};

export class Course {
  constructor() {
    this.section = byId("course");
    this.chat = null;
    this.found = null;
    this.known = ""; // what is on the page, as it came
    this.all = false;
    byId("signs").append(
      ...SIGNS.map(([sign, meaning]) => make("div", {}, make("dt", { textContent: sign }), make("dd", { textContent: meaning }))),
    );
    byId("earlier").addEventListener("click", () => {
      this.all = true;
      this.decisions();
    });
    byId("weeks").addEventListener("click", (event) => this.jump(event));
  }

  /** Brings the section up to what is stored of this person. */
  async refresh(person) {
    if (person === null) return;
    const found = await ask(`course?chat=${person.id}`);
    const text = JSON.stringify([person.name, found]);
    if (text === this.known) return;
    const other = this.chat !== person.id;
    const before = other ? found.rows.length : (this.found?.rows.length ?? 0);
    this.known = text;
    this.chat = person.id;
    this.found = found;
    if (other) this.all = false;
    byId("course-title").textContent = `Course of ${person.name}`;
    byId("course-what").textContent = summary(found);
    this.weeks(before);
    this.decisions();
    byId("dates-table").tBodies[0].replaceChildren(...found.rows.map(tableRowOf));
  }

  weeks(before) {
    const focused = document.activeElement?.closest("#weeks a")?.getAttribute("href");
    const cells = [...this.found.rows.map((row, n, all) => cellOf(row, { fresh: n >= before, newest: n === all.length - 1 })), ...this.found.ahead.map(aheadOf)];
    const made = this.found.rows.length;
    const weeks = [];
    for (let first = 0; first < cells.length; first += WEEK) {
      const list = make("ol", { className: "cells" }, ...cells.slice(first, first + WEEK));
      const week = make("div", { className: "week" }, make("p", { className: "week-name", textContent: `Week ${first / WEEK + 1}` }), list);
      week.setAttribute("role", "group");
      week.setAttribute("aria-label", `Week ${first / WEEK + 1}`);
      if (first >= made) week.setAttribute("aria-hidden", "true"); // the summary says how many days are still to come
      weeks.push(week);
    }
    byId("weeks").replaceChildren(...weeks);
    if (focused) byId("weeks").querySelector(`a[href="${focused}"]`)?.focus({ preventScroll: true });
  }

  decisions() {
    const rows = [...this.found.rows].reverse();
    const shown = this.all ? rows : rows.slice(0, SHOWN);
    byId("decisions").replaceChildren(...shown.map(decisionOf));
    byId("decided-none").hidden = rows.length > 0;
    byId("earlier").hidden = shown.length === rows.length;
    byId("earlier").textContent = `Show the ${rows.length - shown.length} earlier ones`;
  }

  /** A cell leads to what was decided on its date, which may not be shown yet. */
  jump(event) {
    const link = event.target.closest("a");
    if (link === null) return;
    event.preventDefault();
    const id = link.getAttribute("href").slice(1);
    if (!byId(id)) {
      this.all = true;
      this.decisions();
    }
    byId(id).focus({ preventScroll: true });
    byId(id).scrollIntoView({ block: "nearest" });
  }

  /** How many dates there are, to say later what has come since. */
  get dates() {
    return this.found?.rows.length ?? 0;
  }

  /** What came about since there were so many dates, in words; empty when nothing did. */
  since(dates) {
    const rows = this.found?.rows.slice(dates) ?? [];
    if (rows.length === 1) return [whatOf(rows[0]), rows[0].because].filter(Boolean).join(", ");
    const counts = new Map();
    for (const row of rows) counts.set(row.came, (counts.get(row.came) ?? 0) + 1);
    return [...counts].map(([came, count]) => `${count} × ${CAME[came][2]}`).join(", ");
  }
}

function summary(found) {
  if (found.programme === null) return "No course yet: open a coach's invitation in this chat.";
  const last = found.rows.at(-1);
  const day = last?.day ?? (found.ahead[0] ? found.ahead[0].day : found.days);
  const parts = [`${found.programme}: day ${day} of ${found.days}`];
  if (STATES[found.state]) parts.push(STATES[found.state]);
  if (found.paused) parts.push(`paused: ${found.paused}`);
  if (found.ahead.length) parts.push(`${found.ahead.length} days still to come`);
  return `${parts.join(", ")}.`;
}
