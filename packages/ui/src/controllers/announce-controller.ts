import type { ReactiveController, ReactiveControllerHost } from "lit";

/** Rest before a change is spoken [ms]: a drag through ten verdicts is one announcement. */
const REST_MS = 700;

/** Keeps the words of a polite live region: the newest ones, once they have stopped changing. */
export class AnnounceController implements ReactiveController {
  /** What the live region says. */
  spoken = "";

  readonly #host: ReactiveControllerHost;
  #next = "";
  #timer: ReturnType<typeof setTimeout> | undefined;

  constructor(host: ReactiveControllerHost) {
    this.#host = host;
    host.addController(this);
  }

  hostDisconnected(): void {
    clearTimeout(this.#timer);
  }

  /** Says this when nothing newer comes for a while; the same words twice are said once. */
  say(words: string): void {
    if (words === this.#next) return;
    this.#next = words;
    clearTimeout(this.#timer);
    this.#timer = setTimeout(() => {
      this.spoken = words;
      this.#host.requestUpdate();
    }, REST_MS);
  }
}
