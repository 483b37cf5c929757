import type { ReactiveController, ReactiveControllerHost } from "lit";
import { afterPaint } from "./after-paint.js";

/** Rest after the last edit of a drag before all that waited follows [ms]. */
const REST_MS = 200;
/** What waits while a hand drags, since it looks at the drawing, in the order in which it follows. */
const WAITING = ["panel", "below", "tables"] as const;

export type Waiting = (typeof WAITING)[number];

/** What of its host waits while a hand drags; after a rest one thing follows another, each in a frame of its own. */
export class DragPace implements ReactiveController {
  readonly #host: ReactiveControllerHost;
  #followed: number = WAITING.length;
  #timer: ReturnType<typeof setTimeout> | undefined;
  #takeBack: (() => void) | undefined;

  constructor(host: ReactiveControllerHost) {
    this.#host = host;
    host.addController(this);
  }

  hostDisconnected(): void {
    this.#forget();
    this.#followed = WAITING.length;
  }

  /** Whether a hand drags, or did a moment ago. */
  get isDragging(): boolean {
    return this.#followed < WAITING.length;
  }

  /** Whether this part of the host is left as it is for now. */
  isWaiting(what: Waiting): boolean {
    return WAITING.indexOf(what) >= this.#followed;
  }

  /** The hand has dragged by a step. */
  note(): void {
    this.#forget();
    this.#followed = 0;
    this.#timer = setTimeout(() => this.#follow(), REST_MS);
  }

  #follow(): void {
    this.#followed += 1;
    this.#host.requestUpdate();
    if (this.isDragging) this.#takeBack = afterPaint(() => this.#follow());
  }

  #forget(): void {
    clearTimeout(this.#timer);
    this.#takeBack?.();
    this.#takeBack = undefined;
  }
}
