import type { HowSubject } from "../kernels/how-got/subject.js";

/** Fired by a view when its user wants to know how a number or a mark was got. */
export class HowWantedEvent extends Event {
  static readonly eventName = "how-wanted";

  constructor(readonly subject: HowSubject) {
    super(HowWantedEvent.eventName, { bubbles: true, composed: true });
  }
}

/** Fired by the panel that tells how a number was got, when its user has closed it. */
export class HowClosedEvent extends Event {
  static readonly eventName = "how-closed";

  constructor() {
    super(HowClosedEvent.eventName, { bubbles: true, composed: true });
  }
}

declare global {
  interface HTMLElementEventMap {
    "how-wanted": HowWantedEvent;
    "how-closed": HowClosedEvent;
  }
}
