import { type Checked, checkPlan, type Plan } from "@headfall/hydraulics";
import type { UnitSystem } from "../../../packages/ui/src/kernels/typed-quantity.js";
import type { EditWantedEvent } from "../../../packages/ui/src/store/edit-wanted-event.js";
import { PlanStore } from "../../../packages/ui/src/store/plan-store.js";

/** The day that rooms are asked about. */
export const TODAY = "2026-07-04";

/** What all rooms are given. */
export interface RoomView extends HTMLElement {
  plan: Plan | undefined;
  checked: Checked | undefined;
  day: string | undefined;
  system: UnitSystem;
  refusal: string;
  readonly updateComplete: Promise<boolean>;
}

/** Registers elements that another test may have registered already. */
export function registerOnce(elements: Readonly<Record<string, CustomElementConstructor>>): void {
  for (const [name, element] of Object.entries(elements))
    if (customElements.get(name) === undefined) customElements.define(name, element);
}

/** A room with a page around it, as small as can be: it makes the edits that the room wants, and passes the new plan down. */
export class RoomHost<View extends RoomView> {
  readonly store: PlanStore;

  constructor(
    readonly view: View,
    plan: Plan,
    system: UnitSystem = "metric",
    readonly day = TODAY,
  ) {
    this.store = new PlanStore(plan);
    view.day = day;
    view.system = system;
    view.addEventListener("edit-wanted", (event) => {
      const { change, gesture } = event as EditWantedEvent;
      const edited = this.store.edit(change, system, gesture);
      view.refusal = edited.ok ? "" : edited.because;
      this.show();
    });
    this.show();
  }

  get plan(): Plan {
    return this.store.plan;
  }

  readonly undo = (): void => {
    this.store.undo();
    this.show();
  };

  readonly show = (): void => {
    this.view.plan = this.store.plan;
    const checking = checkPlan(this.store.plan, { samples: 0, day: this.day });
    if (checking.ok) this.view.checked = checking.checked;
  };

  /** Puts the room on the page, so wide [px]. */
  async place(width = 420): Promise<this> {
    const box = document.createElement("div");
    box.style.width = `${width}px`;
    box.append(this.view);
    document.body.append(box);
    await this.view.updateComplete;
    return this;
  }
}

/** All that a room says, its white space folded. */
export const shown = (view: HTMLElement) => view.shadowRoot!.textContent!.replace(/\s+/g, " ");

/** Opens all that is folded away. */
export const unfold = (view: HTMLElement) => {
  for (const details of view.shadowRoot!.querySelectorAll("details")) details.open = true;
};
