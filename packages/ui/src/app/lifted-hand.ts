const LIFTS = ["pointerup", "pointercancel"] as const;

/** Knows whether a hand is down on the page, and keeps what would move the page until it is lifted. */
export class LiftedHand {
  #isDown = false;
  #waiting: (() => void)[] = [];

  constructor() {
    // Before anything else hears of it, since some keep such events to themselves.
    addEventListener("pointerdown", () => this.#put(), { capture: true });
    for (const lift of LIFTS) addEventListener(lift, () => this.#lift(), { capture: true });
  }

  /** Does it at once, or as soon as the hand is lifted. */
  when(act: () => void): void {
    if (this.#isDown) this.#waiting.push(act);
    else act();
  }

  #put(): void {
    this.#isDown = true;
  }

  #lift(): void {
    this.#isDown = false;
    for (const act of this.#waiting.splice(0)) act();
  }
}
