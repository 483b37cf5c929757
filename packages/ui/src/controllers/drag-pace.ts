import type { ReactiveController, ReactiveControllerHost } from "lit";

/** Rest after the last edit of a drag before all that waited follows [ms]. */
const REST_MS = 200;
/** While a hand drags, what follows now and then does so no more often than this [ms]. */
const EVERY_MS = 150;

/**
 * What of its host follows a dragging hand, and how soon: it looks at the drawing. Each token stays the same while what
 * is made from it can wait.
 */
export class DragPace implements ReactiveController {
  readonly #host: ReactiveControllerHost;
  #timer: ReturnType<typeof setTimeout> | undefined;
  #resting: object = {};
  #following: object = {};
  #followed = 0;

  constructor(host: ReactiveControllerHost) {
    this.#host = host;
    host.addController(this);
  }

  hostDisconnected(): void {
    clearTimeout(this.#timer);
    this.#timer = undefined;
  }

  /** Whether a hand drags, or did a moment ago. */
  get isDragging(): boolean {
    return this.#timer !== undefined;
  }

  /** Becomes another one at once, but for a drag and a moment after. */
  get resting(): object {
    if (!this.isDragging) this.#resting = {};
    return this.#resting;
  }

  /** Becomes another one at once; in a drag now and then. */
  get following(): object {
    const now = performance.now();
    if (!this.isDragging || now - this.#followed > EVERY_MS) {
      this.#following = {};
      this.#followed = now;
    }
    return this.#following;
  }

  /** The hand has dragged by a step. */
  note(): void {
    clearTimeout(this.#timer);
    this.#timer = setTimeout(() => {
      this.#timer = undefined;
      this.#host.requestUpdate();
    }, REST_MS);
  }
}
