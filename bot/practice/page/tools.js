// What every part of the page uses: nodes, the server, what is remembered, dates.

export const DEMO_ZONE = "Europe/Lisbon"; // where the invented people live

export const byId = (id) => document.getElementById(id);
export const pause = (milliseconds) => new Promise((resolve) => setTimeout(resolve, milliseconds));

export function make(tag, properties = {}, ...children) {
  const node = Object.assign(document.createElement(tag), properties);
  node.append(...children);
  return node;
}

// --- the server ------------------------------------------------------------------------------------------------------

export async function ask(path, body) {
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

/** The names of the routes that this server has. */
export async function offered() {
  const listed = await (await fetch("/practice")).json();
  return new Set(listed.map(({ path }) => path.split("/").at(-1)));
}

const sentence = (text) => text.charAt(0).toUpperCase() + text.slice(1) + (/[.?]$/.test(text) ? "" : ".");

// --- what is remembered between visits ---------------------------------------------------------------------------------

const KEY = "easeward-practice";

const choices = stored();
export const remembered = () => choices;

function stored() {
  try {
    return { ...JSON.parse(localStorage.getItem(KEY)) };
  } catch {
    return {}; // storage is closed or holds something else: begin with the defaults
  }
}

export function remember(change) {
  Object.assign(choices, change);
  try {
    localStorage.setItem(KEY, JSON.stringify(choices));
  } catch {
    // storage is closed: the choice lasts as long as this page
  }
}

// --- dates and times -------------------------------------------------------------------------------------------------

let zone = remembered().zone ?? DEMO_ZONE;
export const shownZone = () => zone;

/** From now on dates and times are shown as in this zone, also after the next visit. */
export function showZone(name) {
  zone = name;
  remember({ zone });
}

const inZone = (options, moment) => new Intl.DateTimeFormat("en-GB", { timeZone: zone, ...options }).format(new Date(moment));
export const timeOf = (moment) => inZone({ hour: "2-digit", minute: "2-digit" }, moment);
export const dateOf = (moment) =>
  `${inZone({ weekday: "long" }, moment)} ${inZone({ day: "numeric", month: "long", year: "numeric" }, moment)}`;
export const placeOf = (name) => name.split("/").at(-1).replaceAll("_", " ");
