/** Fired when the user points at a drinker: its index in the checked line. */
export class DrinkerChosenEvent extends Event {
  static readonly eventName = "drinker-chosen";

  constructor(readonly drinker: number) {
    super(DrinkerChosenEvent.eventName, { bubbles: true, composed: true });
  }
}

declare global {
  interface HTMLElementEventMap {
    "drinker-chosen": DrinkerChosenEvent;
  }
}
