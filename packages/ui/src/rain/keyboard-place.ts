import type { LitElement, ReactiveController } from "lit";

/**
 * Keeps the keyboard near where it was when what it was on has gone, and brings it to a question once, when it is
 * asked.
 */
export class KeyboardPlace implements ReactiveController {
  readonly #host: LitElement;
  readonly #question: string;
  /** Where the keyboard was before the update, and the question that was there. */
  #focused: ParentNode | undefined;
  #asked: HTMLElement | null = null;

  /** @param question  selector of the words of a question */
  constructor(host: LitElement, question: string) {
    this.#host = host;
    this.#question = question;
    host.addController(this);
  }

  hostUpdate(): void {
    const focused = this.#host.shadowRoot?.activeElement;
    this.#focused = focused == null ? undefined : (focused.closest("fieldset") ?? this.#host.renderRoot);
  }

  hostUpdated(): void {
    const { renderRoot, shadowRoot } = this.#host;
    const asked = renderRoot.querySelector<HTMLElement>(this.#question);
    if (asked !== null && asked !== this.#asked) asked.focus();
    else if (this.#focused !== undefined && shadowRoot?.activeElement == null) {
      const home = this.#focused.isConnected ? this.#focused : renderRoot;
      home.querySelector<HTMLElement>("legend, h2")?.focus({ preventScroll: true });
    }
    this.#asked = asked;
  }
}
