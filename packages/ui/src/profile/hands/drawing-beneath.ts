import type { ReactiveController, ReactiveControllerHost } from "lit";
import type { AlongWindow } from "../../kernels/side/along-window.js";
import type { HeadfallProfile } from "../profile-element.js";
import type { DrawnLine } from "./hands-host.js";

/** The drawing that the hands lie over: the `<headfall-profile>` right before their element. */
export class DrawingBeneath implements ReactiveController {
  readonly #host: ReactiveControllerHost & Element;
  readonly #onDrawn: () => void;
  #profile: HeadfallProfile | null = null;
  #pathKey = "";

  /** @param onDrawn  is told each time the drawing has been made anew */
  constructor(host: ReactiveControllerHost & Element, onDrawn: () => void) {
    this.#host = host;
    this.#onDrawn = onDrawn;
    host.addController(this);
  }

  get drawn(): DrawnLine | undefined {
    const { layout, request, system } = this.#profile ?? {};
    return layout && request && system ? { layout, request, system } : undefined;
  }

  /** The stretch last asked for: two steps that come between two drawings are both taken. */
  get stretch(): AlongWindow {
    return this.#profile?.window;
  }

  hostConnected(): void {
    // It may still be waiting for its class; then it draws later, and says so.
    this.#profile = this.#host.previousElementSibling as HeadfallProfile | null;
    this.#profile?.addEventListener("profile-drawn", this.#onDrawn);
    this.#host.requestUpdate();
  }

  hostDisconnected(): void {
    this.#profile?.removeEventListener("profile-drawn", this.#onDrawn);
    this.#profile = null;
  }

  /** What the drawing is asked for after it has become another one; not while it is at it. */
  hostUpdated(): void {
    const { drawn } = this;
    if (drawn === undefined) return;
    const { request, layout } = drawn;
    // A scale that has gone on by a step stays there while the hand is down.
    const held = this.#profile?.heldHeights;
    if (held?.some((height, i) => height !== layout.heights[i])) this.holdScale(true);
    const { path, checked } = request;
    const key = `${path.source} ${checked.line.points.id[path.points.at(-1) ?? 0]}`;
    if (key !== this.#pathKey && request.window !== undefined) this.look(undefined);
    this.#pathKey = key;
  }

  holdScale(isHeld: boolean): void {
    if (this.#profile !== null) this.#profile.heldHeights = isHeld ? this.drawn?.layout.heights : undefined;
  }

  look(window: AlongWindow): void {
    if (this.#profile !== null) this.#profile.window = window;
  }
}
