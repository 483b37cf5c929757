import type { Checked, Plan } from "@headfall/hydraulics";
import { html, LitElement, nothing } from "lit";
import type { UnitSystem } from "../kernels/typed-quantity.js";
import { controls } from "../styles/controls.js";
import { tokens } from "../styles/tokens.js";

/**
 * The birds of a plan: its pens and their weather, what they drink, how they get on at their drinkers, and the weeks to come.
 *
 * @element headfall-birds
 * @fires edit-wanted  when the user wants the plan changed
 */
export class HeadfallBirds extends LitElement {
  static override properties = {
    plan: { attribute: false },
    checked: { attribute: false },
    system: {},
    day: {},
    refusal: {},
  };
  static override styles = [tokens, controls];

  declare plan: Plan | undefined;
  /** What the check found out, perhaps of an older plan. */
  declare checked: Checked | undefined;
  /** Units shown and written. */
  declare system: UnitSystem;
  /** Today, "2026-07-04"; counts where the plan names no day. */
  declare day: string | undefined;
  /** Why the last edit was refused; empty when it was not. */
  declare refusal: string;

  constructor() {
    super();
    this.plan = undefined;
    this.checked = undefined;
    this.system = "metric";
    this.day = undefined;
    this.refusal = "";
  }

  override render() {
    return this.plan === undefined ? nothing : html`<h2>Birds</h2>`;
  }
}
