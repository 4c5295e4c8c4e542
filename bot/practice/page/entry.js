// A message of the documented JSON as an entry of the page.

import { make, timeOf } from "./tools.js";

const BOT_LINK = /^https?:\/\/t\.me\/easeward_practice_bot\?start=([A-Za-z0-9_-]{1,64})$/;
const LINKS_AND_COMMANDS = /https?:\/\/[^\s<>"]+[^\s<>".,;:!?)]|(?<![\w/:.])\/[a-z0-9_]{1,32}\b/g;
const KEPT_TAGS = new Set(["B", "I", "U", "S", "CODE", "PRE", "BLOCKQUOTE"]);

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
export function entryOf(message, person, act) {
  const own = message.from === "client";
  const side = make("div", { className: "side" });
  const from = (own ? person : "Easeward") + (message.edited ? ", changed" : "");
  side.append(make("div", { className: "from", textContent: from }));
  if (message.photo) side.append(picture(message));
  if (message.film) side.append(film(message.film));
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
  const shown = make("img", { className: "picture", src: url, width, height, alt });
  if (height <= width) return shown;
  const link = make("a", { className: "larger", href: url, target: "_blank", title: "Opens larger" }, shown);
  link.setAttribute("aria-label", `${alt}, opens larger`);
  return link;
}

const QUIET = matchMedia("(prefers-reduced-motion: reduce)");

/** A movement from start to end; it moves by itself unless the reader wants less motion. */
function film({ kind, url, width, height }) {
  const alt = "The movement that the words below describe";
  const sides = width ? { width, height } : {};
  if (kind !== "video/mp4") return make("img", { className: "picture", src: url, ...sides, alt });
  const shown = make("video", { className: "picture", src: url, ...sides, loop: true, muted: true, controls: true });
  shown.autoplay = !QUIET.matches;
  shown.playsInline = true;
  shown.setAttribute("aria-label", alt);
  return shown;
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
