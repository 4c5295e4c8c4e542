// Trouble on demand: messages that are cut off, answers that are lost, a client who blocks or taps twice.

import { ask, byId } from "./tools.js";

export class Troubles {
  constructor(page) {
    this.page = page;
    const details = byId("troubles");
    details.append(byId("trouble").content.cloneNode(true));
    details.hidden = false;
    this.outcome = details.querySelector(".outcome");
    this.block = details.querySelector(".trouble-block");
    this.twice = details.querySelector(".trouble-twice");
    for (const button of details.querySelectorAll("[data-what]")) {
      button.addEventListener("click", () => this.plan(button.dataset));
    }
    this.block.addEventListener("click", () => page.client.doing(() => page.client.block()));
    this.twice.addEventListener("click", () => {
      page.client.twice = !page.client.twice;
      this.twice.setAttribute("aria-pressed", String(page.client.twice));
    });
  }

  async plan({ what, times }) {
    this.page.problem("");
    try {
      await ask("fault", { method: "messages", what, times: Number(times ?? 1) });
      await this.page.refresh();
    } catch (error) {
      this.page.problem(error.message);
    }
  }

  async refresh(person, letters) {
    this.block.setAttribute("aria-pressed", String(person?.blocked ?? false));
    const left = Object.values(await ask("faults")).reduce((sum, times) => sum + times, 0);
    const coming = left ? `Still to go wrong: ${left} ${left === 1 ? "request" : "requests"}. ` : "";
    const text = coming + (person && letters ? `Messages to ${person.name}: ${inWords(letters)}.` : "");
    if (this.outcome.textContent !== text) this.outcome.textContent = text;
  }
}

const FATES = {
  sent: (n) => `${n} arrived`,
  unknown: (n) => `${n} of unknown fate, not sent again`,
  refused: (n) => `${n} refused`,
  skipped: (n) => `${n} left out as too late`,
  waiting: (n) => `${n} on the way`,
};

function inWords(letters) {
  const known = Object.entries(letters).filter(([state]) => FATES[state]);
  return known.map(([state, count]) => FATES[state](count)).join(", ") || "none yet";
}
