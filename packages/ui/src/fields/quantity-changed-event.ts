/** Fired by a quantity field, also while its slider is being dragged: the text to keep, and what it means in SI. */
export class QuantityChangedEvent extends Event {
  static readonly eventName = "quantity-changed";

  constructor(
    readonly typed: string,
    readonly value: number,
    /** the same text during one slide of the slider; undefined after typing */
    readonly gesture?: string,
  ) {
    super(QuantityChangedEvent.eventName, { bubbles: true, composed: true });
  }
}

declare global {
  interface HTMLElementEventMap {
    "quantity-changed": QuantityChangedEvent;
  }
}
