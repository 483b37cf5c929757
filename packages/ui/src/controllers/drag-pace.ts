import type { ReactiveController, ReactiveControllerHost } from "lit";
import { afterPaint } from "./after-paint.js";

/** Rest after the last edit of a drag before all that waited follows [ms]. */
const REST_MS = 200;
/** Where steps come slowly, twice the time between two is waited besides, or one that is late would count as rest; up to this far apart [ms]. */
const SLOW_STEP_MS = 150;
/** What waits while a hand drags, since it looks at the drawing in the hand, in the order in which it follows. */
const WAITING = ["drawing", "panel", "below", "tables"] as const;

/** One of the drawings: the other waits while a hand drags on one. */
export type Drawing = "above" | "side";
export type Waiting = Exclude<(typeof WAITING)[number], "drawing"> | Drawing;

/** What of its host waits while a hand drags; after a rest one thing follows another, each in a frame of its own. */
export class DragPace implements ReactiveController {
  /** The drawing that a hand drags on; undefined: what drags is a field, and both follow. */
  held: Drawing | undefined;
  readonly #host: ReactiveControllerHost;
  #followed: number = WAITING.length;
  #timer: ReturnType<typeof setTimeout> | undefined;
  #lastStep = 0;
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
    if (what === "above" || what === "side")
      return this.held !== undefined && what !== this.held && this.#followed === 0;
    return WAITING.indexOf(what) >= this.#followed;
  }

  /** The hand has dragged by a step. */
  note(): void {
    const now = performance.now();
    const between = this.isDragging ? Math.min(now - this.#lastStep, SLOW_STEP_MS) : 0;
    this.#lastStep = now;
    this.#forget();
    this.#followed = 0;
    this.#timer = setTimeout(() => this.#follow(), REST_MS + 2 * between);
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
