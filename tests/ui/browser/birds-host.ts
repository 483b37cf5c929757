import { checkPlan, type Plan } from "@headfall/hydraulics";
import { HeadfallBirds } from "../../../packages/ui/src/birds/birds-element.js";
import type { UnitSystem } from "../../../packages/ui/src/kernels/typed-quantity.js";
import { PlanStore } from "../../../packages/ui/src/store/plan-store.js";
import { HeadfallHow } from "../../../packages/ui/src/verdicts/how-element.js";

const elements = { "headfall-birds": HeadfallBirds, "headfall-how": HeadfallHow } as const;
for (const [name, element] of Object.entries(elements)) {
  if (customElements.get(name) === undefined) customElements.define(name, element);
}

export const TODAY = "2026-07-04";

/** The room of the birds with a page around it, as small as can be. */
export class BirdsHost {
  readonly view = document.createElement("headfall-birds") as HeadfallBirds;
  readonly store: PlanStore;

  constructor(plan: Plan, system: UnitSystem = "metric") {
    this.store = new PlanStore(plan);
    this.view.system = system;
    this.view.day = TODAY;
    this.view.addEventListener("edit-wanted", ({ change, gesture }) => {
      const edited = this.store.edit(change, system, gesture);
      this.view.refusal = edited.ok ? "" : edited.because;
      this.show();
    });
    this.show();
  }

  get plan(): Plan {
    return this.store.plan;
  }

  undo(): void {
    this.store.undo();
    this.show();
  }

  show(): void {
    this.view.plan = this.store.plan;
    const checking = checkPlan(this.store.plan, { samples: 0, day: TODAY });
    if (checking.ok) this.view.checked = checking.checked;
  }
}

/** The room on the page, drawn, its weeks judged. */
export async function birdsRoom(plan: Plan, width = 420): Promise<BirdsHost> {
  const host = new BirdsHost(plan);
  const box = document.createElement("div");
  box.style.width = `${width}px`;
  box.append(host.view);
  document.body.append(box);
  await host.view.updateComplete;
  if (plan.pens !== undefined)
    await new Promise<void>((done) => {
      const look = () =>
        host.view.shadowRoot!.querySelector(".drunk") === null ? setTimeout(look, 20) : done();
      look();
    });
  return host;
}
