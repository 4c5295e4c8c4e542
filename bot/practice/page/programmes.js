// Another programme for the coach: a sample, or a file of one's own. Either goes into the chat as a document.

import { ask, byId } from "./tools.js";

export class Programmes {
  constructor(page) {
    this.page = page;
    const strip = byId("programmes").content.cloneNode(true);
    this.select = strip.querySelector("select");
    this.file = strip.querySelector("[type=file]");
    strip.querySelector(".give").addEventListener("click", () => page.coach.doing(() => this.give()));
    strip.querySelector(".load").addEventListener("click", () => this.file.click());
    this.file.addEventListener("change", () => page.coach.doing(() => this.load()));
    page.coach.find("write").before(strip);
  }

  async start() {
    this.samples = await ask("samples");
    this.select.replaceChildren(...this.samples.map(({ name, title }) => new Option(title, name)));
  }

  async give() {
    const { name, text } = this.samples.find((sample) => sample.name === this.select.value);
    await ask("document", { chat: this.page.coach.person.id, name, text });
  }

  async load() {
    const [file] = this.file.files;
    if (!file) return;
    await this.page.coach.send(file);
    this.file.value = "";
  }
}
