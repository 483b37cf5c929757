import { html, render, type TemplateResult } from "lit";
import { dialogStyles } from "./dialog.styles.js";

/** One dialog at a time over the page: its heading, its way out, and what it shows. Gone once it is closed. */
export class PageDialog {
  readonly #element = document.createElement("dialog");
  readonly #title: string;
  readonly #view: () => TemplateResult;

  /** @param view  what stands under the heading; asked anew at each `update` */
  constructor(title: string, view: () => TemplateResult) {
    this.#title = title;
    this.#view = view;
    this.#element.setAttribute("aria-labelledby", "dialog-title");
    this.#element.addEventListener("close", () => this.#element.remove());
    this.#element.addEventListener("click", (event) => {
      if (event.target === this.#element) this.close(); // beside it
    });
  }

  get isOpen(): boolean {
    return this.#element.open;
  }

  show(): void {
    adoptStyles();
    this.update();
    document.body.append(this.#element);
    this.#element.showModal();
  }

  close(): void {
    this.#element.close();
  }

  update(): void {
    render(
      html`<div class="inside">
        <header>
          <h2 id="dialog-title">${this.#title}</h2>
          <button @click=${() => this.close()}>Close</button>
        </header>
        ${this.#view()}
      </div>`,
      this.#element,
    );
  }

  /** Puts the keyboard on a part of it. */
  focus(selector: string): void {
    this.#element.querySelector<HTMLElement>(selector)?.focus();
  }
}

function adoptStyles(): void {
  const sheet = dialogStyles.styleSheet!;
  if (!document.adoptedStyleSheets.includes(sheet)) document.adoptedStyleSheets.push(sheet);
}
