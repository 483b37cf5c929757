import type { ReactiveController, ReactiveControllerHost } from "lit";
import { DAY_SECONDS } from "../kernels/day/day-index.js";

/** Seconds of the day that pass in one of the watcher's. */
export const SPEEDS = [
  { rate: 60, words: "1 minute a second" },
  { rate: 300, words: "5 minutes a second" },
  { rate: 1800, words: "half an hour a second" },
] as const;

/** A picture that comes later than this was held up; the day does not jump on for it [ms]. */
const MOST_BETWEEN = 250;
/** How often a picture moves where its watcher wants little motion [ms]. */
const STILL_FOR = 1000;

/** Plays a day for its host: only ever after somebody has pressed play, and picture by picture slowly where less motion is wanted. */
export class Player implements ReactiveController {
  time = 0;
  rate: number = SPEEDS[1].rate;

  readonly #host: ReactiveControllerHost & HTMLElement;
  readonly #lessMotion = matchMedia("(prefers-reduced-motion: reduce)");
  #frame: number | undefined;
  #last: number | undefined;
  /** Time of the watcher that has not been shown yet [ms]. */
  #owed = 0;

  constructor(host: ReactiveControllerHost & HTMLElement) {
    this.#host = host;
    host.addController(this);
  }

  get isPlaying(): boolean {
    return this.#frame !== undefined;
  }

  hostDisconnected(): void {
    this.pause();
  }

  play(): void {
    if (this.isPlaying) return;
    if (this.time >= DAY_SECONDS) this.time = 0;
    this.#last = undefined;
    this.#owed = 0;
    this.#next();
    this.#host.requestUpdate();
  }

  pause(): void {
    if (this.#frame !== undefined) cancelAnimationFrame(this.#frame);
    this.#frame = undefined;
    this.#host.requestUpdate();
  }

  seek(time: number): void {
    this.time = Math.min(DAY_SECONDS, Math.max(0, time));
    this.#host.requestUpdate();
  }

  #next(): void {
    this.#frame = requestAnimationFrame((now) => this.#show(now));
  }

  #show(now: number): void {
    // Its watcher has gone to another room.
    if (!this.#host.checkVisibility()) {
      this.pause();
      return;
    }
    this.#owed += Math.min(MOST_BETWEEN, now - (this.#last ?? now));
    this.#last = now;
    if (this.#owed >= (this.#lessMotion.matches ? STILL_FOR : 1)) {
      this.seek(this.time + (this.#owed / 1000) * this.rate);
      this.#owed = 0;
    }
    if (this.time >= DAY_SECONDS) this.pause();
    else this.#next();
  }
}
