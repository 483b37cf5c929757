import type { Checked, Problem } from "@headfall/hydraulics";

/** Fired after the plan has been checked: with what was found out, or with what is wrong with the plan. */
export class LineCheckedEvent extends Event {
  static readonly eventName = "line-checked";

  constructor(
    readonly checked: Checked | undefined,
    readonly problems: readonly Problem[],
  ) {
    super(LineCheckedEvent.eventName, { bubbles: true, composed: true });
  }
}

declare global {
  interface HTMLElementEventMap {
    "line-checked": LineCheckedEvent;
  }
}
