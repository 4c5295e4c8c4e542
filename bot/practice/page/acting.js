// An invented client answers by themselves, once or for a week of mornings.

import { ask, byId } from "./tools.js";

const MORNINGS = 7;
const WHY = {
  waiting: "the course waits, look into the coach's chat",
  finished: "the course is finished",
  stopped: "the course is stopped",
};

export class Acting {
  constructor(page) {
    this.page = page;
    this.halted = false;
    const strip = byId("acting").content.cloneNode(true);
    this.buttons = [...strip.querySelectorAll("[data-as]")];
    this.week = strip.querySelector(".for-a-week");
    for (const button of this.buttons) button.addEventListener("click", () => this.act(button.dataset.as));
    byId("halt").addEventListener("click", () => (this.halted = true));
    page.client.find("write").before(strip);
  }

  act(manner) {
    const { page } = this;
    const { person } = page.client;
    if (person === null) return;
    const mornings = this.week.checked ? MORNINGS : 0;
    const dates = page.course.dates;
    this.halted = false;
    page.busy(`${person.name} answers.`, async () => {
      byId("halt").hidden = mornings === 0;
      try {
        return mornings ? await this.live(person, manner, mornings, dates) : await this.once(person, manner);
      } finally {
        byId("halt").hidden = true;
      }
    });
  }

  async once(person, manner) {
    const { did } = await ask("act", { chat: person.id, as: manner });
    if (did.length) return `${person.name} ${inWords(did)}.`;
    return `${person.name} has nothing to answer: ${WHY[this.page.course.found?.state] ?? "go on to the next morning"}.`;
  }

  async live(person, manner, mornings, dates) {
    let lived = 0;
    while (lived < mornings && !this.halted) {
      await ask("act", { chat: person.id, as: manner });
      await ask("clock", { next: "morning" });
      await this.page.refresh();
      lived += 1;
    }
    return `${lived} ${lived === 1 ? "morning" : "mornings"} of ${person.name}: ${this.page.course.since(dates)}.`;
  }
}

const FEW = 4;

/** What was tapped and typed, all of it when it is little. */
function inWords(did) {
  if (did.length > FEW) return `answered ${did.length} times, at last: ${did.at(-1)}`;
  return did.length === 1 ? did[0] : `${did.slice(0, -1).join(", ")} and ${did.at(-1)}`;
}
