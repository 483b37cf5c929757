import { type Checked, drinkerGroupsOf, type MomentName, type Plan } from "@headfall/hydraulics";
import { html, LitElement, nothing, type PropertyValues } from "lit";
import { fieldStyles } from "../fields/fields.styles.js";
import { TypingController } from "../fields/typing-controller.js";
import { isSamePart, type Selected } from "../kernels/selected.js";
import type { UnitSystem } from "../kernels/typed-quantity.js";
import { PartChosenEvent } from "../store/part-chosen-event.js";
import { controls } from "../styles/controls.js";
import { tokens } from "../styles/tokens.js";
import { nameOfGroup } from "./drinkers-entries.js";
import { drinkersPanel } from "./drinkers-panel.js";
import { jointPanel } from "./joint-panel.js";
import type { PanelRequest } from "./panel-request.js";
import { partStyles } from "./part.styles.js";
import { jointNames, runNames, sourceNames } from "./plan-context.js";
import { planPanel } from "./plan-panel.js";
import { runPanel } from "./run-panel.js";
import { sourcePanel } from "./source-panel.js";

/**
 * The chosen part of a plan, with all that can be set of it and done with it; the plan as a whole while none is chosen.
 *
 * @element headfall-part
 * @fires edit-wanted  when the user wants the plan changed; all edits of one slide carry the same gesture
 * @fires part-chosen  when the user goes to another part, or to the whole plan
 * @csspart title  the name of the part
 */
export class HeadfallPart extends LitElement {
  static override properties = {
    plan: { attribute: false },
    checked: { attribute: false },
    selected: { attribute: false },
    system: {},
    moment: {},
    refusal: {},
  };
  static override styles = [tokens, controls, fieldStyles, partStyles];

  /** The plan the part belongs to. */
  declare plan: Plan | undefined;
  /** What the check found out, perhaps of an older plan. */
  declare checked: Checked | undefined;
  /** The part shown; undefined for the whole plan. */
  declare selected: Selected | undefined;
  /** Units shown and written. */
  declare system: UnitSystem;
  /** The moment shown elsewhere. */
  declare moment: MomentName;
  /** Why the last edit was refused; empty when it was not. */
  declare refusal: string;

  readonly #typing = new TypingController(this);
  /** Where the keyboard goes on from when what it was on is drawn no more. */
  #focusHome: HTMLElement | undefined;

  constructor() {
    super();
    this.plan = undefined;
    this.checked = undefined;
    this.selected = undefined;
    this.system = "metric";
    this.moment = "fullBusiest";
    this.refusal = "";
  }

  override willUpdate(changed: PropertyValues<this>): void {
    if (changed.has("plan")) this.#planChanged(changed.get("plan"));
    const isOther = changed.has("selected") && !isSamePart(changed.get("selected"), this.selected);
    this.#focusHome = this.#homeOf(this.shadowRoot?.activeElement, isOther);
  }

  override updated(): void {
    if (this.#focusHome === undefined || this.shadowRoot?.activeElement != null) return;
    const home = this.#focusHome.isConnected
      ? this.#focusHome
      : this.renderRoot.querySelector<HTMLElement>("h2");
    home?.focus({ preventScroll: true });
  }

  /** The name of a new part; else what the element with the focus is folded under. */
  #homeOf(focused: Element | null | undefined, isOther: boolean): HTMLElement | undefined {
    if (focused == null) return undefined;
    const summary = isOther ? null : focused.closest("details")?.querySelector("summary");
    return summary ?? this.renderRoot.querySelector<HTMLElement>("h2") ?? undefined;
  }

  override render() {
    const { plan } = this;
    if (plan === undefined) return nothing;
    const part = isInPlan(plan, this.selected) ? this.selected : undefined;
    return html`<section aria-labelledby="title">
      <div class="head">
        <h2 id="title" part="title" tabindex="-1">${titleOf(plan, part)}</h2>
        ${part === undefined ? nothing : html`<button type="button" @click=${() => this.#choose(undefined)}>All parts</button>`}
      </div>
      ${this.#typing.strayRefusal === "" ? nothing : html`<p class="problem" role="alert">${this.#typing.strayRefusal}</p>`}
      ${panelOf(this.#request(plan), part)}
    </section>`;
  }

  #request(plan: Plan): PanelRequest {
    const { checked, system, moment } = this;
    return { plan, checked, system, moment, typing: this.#typing, choose: (part) => this.#choose(part) };
  }

  #choose(part: Selected | undefined): void {
    this.dispatchEvent(new PartChosenEvent(part));
  }

  /** Parts without a name of their own are counted through: with one fewer, what was typed may mean another part. */
  #planChanged(before: Plan | undefined): void {
    if (before !== undefined && this.plan !== undefined && sizeOf(this.plan) < sizeOf(before))
      this.#typing.forgetAll();
    this.#typing.planChanged();
  }
}

const sizeOf = ({ sources, points, runs }: Plan) => sources.length + (points?.length ?? 0) + runs.length;

/** Whether the plan has the part; it may have been taken out since it was chosen. */
function isInPlan(plan: Plan, part: Selected | undefined): boolean {
  switch (part?.kind) {
    case "source":
      return part.source < plan.sources.length;
    case "run":
      return part.run < plan.runs.length;
    case "drinkers":
      return part.run < plan.runs.length && part.group < drinkerGroupsOf(plan.runs[part.run]!).length;
    case "joint":
      return jointNames(plan).includes(part.joint);
    default:
      return false;
  }
}

function titleOf(plan: Plan, part: Selected | undefined): string {
  switch (part?.kind) {
    case "source":
      return `Source: ${sourceNames(plan)[part.source]}`;
    case "run":
      return `Run: ${runNames(plan)[part.run]}`;
    case "drinkers":
      return `Drinkers: ${nameOfGroup(plan, part.run, part.group)}`;
    case "joint":
      return `Joint: ${part.joint}`;
    default:
      return "The whole plan";
  }
}

function panelOf(request: PanelRequest, part: Selected | undefined) {
  switch (part?.kind) {
    case "source":
      return sourcePanel(request, part.source);
    case "run":
      return runPanel(request, part.run);
    case "drinkers":
      return drinkersPanel(request, part.run, part.group);
    case "joint":
      return jointPanel(request, part.joint);
    default:
      return planPanel(request);
  }
}
