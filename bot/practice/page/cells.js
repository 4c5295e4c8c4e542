// The dates of a course as words and signs: plain functions of one row of GET /practice/course.

import { make } from "./tools.js";

/** How a date came about: the word in its cell, in a sentence, and when it is counted. */
export const CAME = {
  first: ["first", "the first day", "the first day"],
  on: ["on", "the course goes on", "the next day"],
  again: ["again", "the same day again", "the day again"],
  lighter: ["light", "the same day again, one level lighter", "lighter"],
  off: ["off", "a day off", "a day off"],
  waits: ["waits", "nothing is sent until the coach lets go on", "waiting for the coach"],
  asks: ["asks", "it asks first, before a session is handed out", "a question first"],
  away: ["away", "away", "away"],
};

const LEVELS = ["as written", "lighter", "lightest"];
const REASONS = {
  start: "It is where the programme begins.",
  "rest-over": "The rest day is over.",
  measured: "The test is noted.",
  group: "The group goes on together.",
  off: "There is no training on this weekday.",
  "ask-morning": "The last answer told of pain or soreness: first it asks how it is now.",
  "ask-pain": "The pain number of the last session is missing.",
  "ask-flag": "Something in the last answer may be a warning sign.",
};
const VERDICTS = { advance: "go on", repeat: "the day again", ease: "lighter", rest: "a day off", refer: "wait for the coach" };
const TOLD = { now: "the coach is told at once", list: "on the coach's list" };

const plainDate = (options, date) => new Intl.DateTimeFormat("en-GB", { timeZone: "UTC", ...options }).format(new Date(date));
const longDate = (date) => plainDate({ weekday: "short", day: "numeric", month: "long" }, date).replace(",", "");
const shortDate = (date) => plainDate({ weekday: "short", day: "numeric" }, date).replace(",", "");

/** What a date is, in words: "day 2, lighter". */
export function whatOf(row) {
  if (row.kind === "asking") return "a question first";
  if (row.kind === "waiting") return "nothing is sent";
  if (row.kind === "away") return "away";
  if (row.kind === "off") return "no training";
  if (row.kind === "rest" && row.came === "off") return "day off";
  if (row.kind === "rest") return `day ${row.day}, rest day`;
  const level = row.level && row.kind === "session" ? `, ${LEVELS[row.level]}` : "";
  const test = row.test ? (row.kind === "measure" ? ", the test" : ", with the test") : "";
  return `day ${row.day}${test}${level}`;
}

const whyOf = (row) => (row.because ? `${capital(row.because)}.` : REASONS[row.reason] ?? "");

/** How a date came about, as the beginning of a sentence. */
function sentenceOf(row) {
  const [, sentence] = CAME[row.came];
  if (row.changed) return row.kind === "session" ? "Made lighter on the day itself" : "Changed on the day itself";
  const floor = row.came === "lighter" && row.level === LEVELS.length - 1;
  return capital(floor ? "the same day again, in its lightest version" : sentence);
}

const capital = (text) => text.charAt(0).toUpperCase() + text.slice(1);

/** What the client said of a date, in words. */
function answerOf(row) {
  const said = [row.said, ...row.tests].filter(Boolean).join("; ");
  if (said) return said;
  if (row.withheld) return "nothing sent, quiet for long";
  return ["session", "measure", "asking"].includes(row.kind) ? "no answer yet" : "";
}

/** The letter and number in a cell. */
function mark(row) {
  const letters = { asking: "?", waiting: "!", away: "A", off: "–" };
  if (letters[row.kind]) return letters[row.kind];
  if (row.kind === "rest") return row.came === "off" ? "–" : `R${row.day}`;
  return row.test ? `T${row.day}` : String(row.day);
}

/** One date of the course so far, as a link to what was decided on it. */
export function cellOf(row, { fresh, newest }) {
  const [word] = CAME[row.came];
  const link = make("a", { className: fresh ? "cell new" : "cell", href: `#on-${row.date}` });
  if (newest) link.setAttribute("aria-current", "date");
  const name = `${longDate(row.date)}: ${whatOf(row)}. ${word}. ${answerOf(row)}`.trim();
  link.setAttribute("aria-label", name);
  link.title = name;
  link.dataset.kind = row.kind === "rest" && row.came === "off" ? "day-off" : row.kind;
  link.dataset.came = row.came;
  link.append(
    make("span", { className: "cell-date", textContent: shortDate(row.date) }),
    make("span", { className: "cell-mark", textContent: mark(row) }),
    dose(row),
    make("span", { className: "cell-came", textContent: word }),
    pain(row),
  );
  return make("li", {}, link);
}

/** Three strokes: how much of the dose is left at this ease level. */
function dose(row) {
  const strokes = row.kind === "session" ? 3 - row.level : 0;
  return make("span", { className: "dose" }, ...[1, 2, 3].map((n) => make("i", { className: n <= strokes ? "full" : "" })));
}

/** The pain of a date as a number over a hatched column. */
function pain(row) {
  const told = { done: "done", part: "part", none: "not" }[row.completion] ?? row.tests[0]?.match(/\S+ \S+$/)?.[0] ?? "";
  const column = make("span", { className: "pain", textContent: row.pain ?? told });
  column.style.setProperty("--pain", row.pain ?? 0);
  return column;
}

/** A programme day that is still to come, as it is written. */
export function aheadOf(day) {
  const text = day.kind === "rest" ? `R${day.day}` : day.test ? `T${day.day}` : String(day.day);
  const cell = make("span", { className: "cell ahead" }, make("span", { className: "cell-mark", textContent: text }));
  cell.dataset.kind = day.kind;
  const item = make("li", {}, cell);
  item.setAttribute("aria-hidden", "true"); // the summary above says how many days are still to come
  return item;
}

/** What the signs in a cell mean, as pairs of sign and meaning. */
export const SIGNS = [
  ["3, square", "a session: the number of its programme day"],
  ["T1", "a day with a test"],
  ["R7, round", "a rest day of the programme"],
  ["– , round", "a day off that the rules gave, or no training"],
  ["?", "it asks how it is before a session is handed out"],
  ["!", "it waits for the coach"],
  ["three, two, one stroke", "the dose as written, lighter, lightest"],
  ["on, again, light, off …", "how the date came about"],
  ["a number over a column", "pain from 0 to 10; without one the answer in a word, or the test's value"],
  ["dashed, empty", "a programme day still to come"],
];

/** One row of the table. */
export function tableRowOf(row) {
  const head = make("th", { scope: "row", textContent: longDate(row.date) });
  const rest = [whatOf(row), whyOf(row), answerOf(row)].map((textContent) => make("td", { textContent }));
  return make("tr", {}, head, ...rest);
}

/** What was decided on a date: the sentence, what was looked at, every vote. */
export function decisionOf(row) {
  const sentence = sentenceOf(row);
  const entry = make("li", { className: "decision", id: `on-${row.date}`, tabIndex: -1 });
  entry.append(
    make("h3", {}, make("time", { dateTime: row.date, textContent: longDate(row.date) }), `: ${whatOf(row)}`),
    make("p", { className: "outcome-of" }, make("b", { textContent: sentence }), whyOf(row) ? `. ${whyOf(row)}` : "."),
  );
  if (row.seen.length) entry.append(make("p", { className: "seen", textContent: `Looked at. ${row.seen.join(" ")}` }));
  if (row.votes.length) entry.append(votesOf(row));
  const answer = answerOf(row);
  if (answer) entry.append(make("p", { className: "said" }, "That day's answer: ", make("b", { textContent: answer })));
  return entry;
}

function votesOf(row) {
  const list = make("ul", { className: "votes" });
  list.setAttribute("aria-label", "Votes");
  for (const vote of row.votes) {
    const told = TOLD[vote.tell];
    list.append(
      make(
        "li",
        { className: vote.decided ? "vote decided" : "vote" },
        make("b", { textContent: VERDICTS[vote.verdict] ?? "no say in the day" }),
        ` ${vote.words}${told ? `; ${told}` : ""} `,
        make("span", { className: "rule", textContent: vote.decided ? `${vote.rule}, decides` : vote.rule }),
      ),
    );
  }
  return list;
}
