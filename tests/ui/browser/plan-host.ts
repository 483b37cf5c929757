import { type Checked, checkPlan, type Plan } from "@headfall/hydraulics";
import { HeadfallQuantity } from "../../../packages/ui/src/fields/quantity-field.js";
import type { Selected } from "../../../packages/ui/src/kernels/selected.js";
import type { UnitSystem } from "../../../packages/ui/src/kernels/typed-quantity.js";
import { HeadfallPart } from "../../../packages/ui/src/parts/part-element.js";
import type { EditWantedEvent } from "../../../packages/ui/src/store/edit-wanted-event.js";
import type { PlanChange } from "../../../packages/ui/src/store/plan-change.js";
import { PlanStore } from "../../../packages/ui/src/store/plan-store.js";
import { HeadfallPlanTable } from "../../../packages/ui/src/tables/plan-table-element.js";

const elements = {
  "headfall-quantity": HeadfallQuantity,
  "headfall-part": HeadfallPart,
  "headfall-plan-table": HeadfallPlanTable,
} as const;
for (const [name, element] of Object.entries(elements)) {
  if (customElements.get(name) === undefined) customElements.define(name, element);
}

/** A page around a view, as small as can be: it makes the edits the view wants, and passes the new plan down. */
export class PlanHost<View extends HeadfallPart | HeadfallPlanTable> {
  readonly store: PlanStore;
  /** Edits wanted, newest last, each with its gesture. */
  readonly wanted: { readonly change: PlanChange; readonly gesture: string | undefined }[] = [];
  readonly chosen: (Selected | undefined)[] = [];

  constructor(
    readonly view: View,
    plan: Plan,
    system: UnitSystem = "metric",
  ) {
    this.store = new PlanStore(plan);
    view.system = system;
    view.addEventListener("edit-wanted", (event) => this.#edit(event as EditWantedEvent));
    view.addEventListener("part-chosen", (event) => {
      this.chosen.push(event.part);
      view.selected = event.part;
    });
    this.#show();
  }

  get plan(): Plan {
    return this.store.plan;
  }

  undo(): void {
    this.store.undo();
    this.#show();
  }

  #edit({ change, gesture }: EditWantedEvent): void {
    this.wanted.push({ change, gesture });
    const edited = this.store.edit(change, this.view.system, gesture);
    this.view.refusal = edited.ok ? "" : edited.because;
    if (edited.ok && edited.selected !== undefined) this.view.selected = edited.selected;
    this.#show();
  }

  #show(): void {
    this.view.plan = this.store.plan;
    this.view.checked = checkedOf(this.store.plan) ?? this.view.checked;
  }
}

function checkedOf(plan: Plan): Checked | undefined {
  const checking = checkPlan(plan, { samples: 0 });
  return checking.ok ? checking.checked : undefined;
}

/** Alder Bank, for tests of views: a barrel, a run with drinkers, a tee and a branch. */
export const alderBank: Plan = {
  headfall: 1,
  name: "Alder Bank",
  sources: [{ id: "barrel", vessel: "drum-55gal-plastic", stand: "60 cm" }],
  points: [{ id: "tee", ground: "-10 cm", above: "30 cm" }],
  runs: [
    { id: "feed", to: "tee", length: "4 m", pipe: "pvc-sch40-1/2", fittings: ["ball-valve", "elbow-90 x 2"] },
    {
      id: "hens",
      from: "tee",
      length: "6 m",
      fall: "0 cm",
      pipe: "pvc-sch40-1/2",
      drinkers: { kind: "nipple-side-action", count: 12, every: "30 cm", busiest: 4 },
    },
    { id: "ducks", from: "tee", length: "8 ft", fall: "2 in", pipe: "pvc-sch40-3/4" },
  ],
};

/** A view on the page, drawn. */
export async function placed<View extends HeadfallPart | HeadfallPlanTable>(
  host: PlanHost<View>,
  width = 420,
): Promise<PlanHost<View>> {
  const box = document.createElement("div");
  box.style.width = `${width}px`;
  box.append(host.view);
  document.body.append(box);
  await host.view.updateComplete;
  return host;
}
