import type { ReactiveController, ReactiveControllerHost } from "lit";

/** Tells its host whether a media query holds, and when that changes. */
export class WidthController implements ReactiveController {
  readonly #host: ReactiveControllerHost;
  readonly #query: MediaQueryList;
  readonly #changed = () => this.#host.requestUpdate();

  constructor(host: ReactiveControllerHost, query: string) {
    this.#host = host;
    this.#query = matchMedia(query);
    host.addController(this);
  }

  get matches(): boolean {
    return this.#query.matches;
  }

  hostConnected(): void {
    this.#query.addEventListener("change", this.#changed);
  }

  hostDisconnected(): void {
    this.#query.removeEventListener("change", this.#changed);
  }
}
