import type { Checked, Plan } from "@headfall/hydraulics";
import { html, LitElement, type PropertyDeclarations } from "lit";
import type { RoomTold } from "../kernels/how-got/request.js";
import type { HowSubject } from "../kernels/how-got/subject.js";
import type { UnitSystem } from "../kernels/typed-quantity.js";

/** What every room is given by the page around it, and its panel that tells how a number was got. */
export abstract class RoomElement extends LitElement {
  static override properties: PropertyDeclarations = {
    plan: { attribute: false },
    checked: { attribute: false },
    system: {},
    day: {},
    refusal: {},
    how: { state: true },
  };

  /** The plan shown; never changed here. */
  declare plan: Plan | undefined;
  /** What the check found out, perhaps of an older plan. */
  declare checked: Checked | undefined;
  /** Units shown and written. */
  declare system: UnitSystem;
  /** Today, "2026-07-04"; counts where the plan names no day. */
  declare day: string | undefined;
  /** Why the last edit was refused; empty when it was not. */
  declare refusal: string;
  /** The number whose making is told of. */
  declare protected how: HowSubject | undefined;

  constructor() {
    super();
    this.plan = undefined;
    this.checked = undefined;
    this.system = "metric";
    this.day = undefined;
    this.refusal = "";
    this.how = undefined;
    this.addEventListener("how-wanted", ({ subject }) => {
      this.how = subject;
    });
  }

  /**
   * The panel that tells how a number was got.
   *
   * @param told     what the room itself has found out
   * @param checked  the check that its numbers are of
   */
  protected howPanel(told: RoomTold | undefined, checked = this.checked) {
    return html`<headfall-how .plan=${this.plan} .checked=${checked} .room=${told} .system=${this.system} .subject=${this.how} @how-closed=${this.#closeHow}></headfall-how>`;
  }

  readonly #closeHow = (): void => {
    this.how = undefined;
  };
}
