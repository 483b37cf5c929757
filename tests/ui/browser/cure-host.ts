import { checkPlan, type Plan } from "@headfall/hydraulics";
import { expect } from "vitest";
import { HeadfallCure } from "../../../packages/ui/src/cure/cure-element.js";
import type { KeptPlan } from "../../../packages/ui/src/cure/room.js";
import type { UnitSystem } from "../../../packages/ui/src/kernels/typed-quantity.js";
import { PlanStore } from "../../../packages/ui/src/store/plan-store.js";

if (customElements.get("headfall-cure") === undefined) customElements.define("headfall-cure", HeadfallCure);

const TODAY = "2026-07-04";

/** The room on a page as small as can be, which makes its edits. */
export async function cureRoom(
  plan: Plan,
  { width = 420, system = "metric" as UnitSystem, kept = [] as readonly KeptPlan[] } = {},
) {
  const store = new PlanStore(plan);
  const view = document.createElement("headfall-cure") as HeadfallCure;
  const show = () => {
    view.plan = store.plan;
    const checking = checkPlan(store.plan, { samples: 0, day: TODAY });
    if (checking.ok) view.checked = checking.checked;
  };
  view.day = TODAY;
  view.system = system;
  view.keptPlans = async () => kept;
  view.addEventListener("edit-wanted", ({ change, gesture }) => {
    const edited = store.edit(change, system, gesture);
    view.refusal = edited.ok ? "" : edited.because;
    show();
  });
  const undo = () => {
    store.undo();
    show();
  };
  show();
  const box = document.createElement("div");
  box.style.width = `${width}px`;
  box.append(view);
  document.body.append(box);
  await view.updateComplete;
  return { view, store, undo, show };
}

export const shown = (view: HTMLElement) => view.shadowRoot!.textContent!.replace(/\s+/g, " ");

/** A button of the room whose words begin so. */
export const button = (view: HTMLElement, words: string) =>
  [...view.shadowRoot!.querySelectorAll<HTMLElement>("button")].find((each) =>
    each.textContent!.trim().startsWith(words),
  );

/** Presses the button that looks for cures, and waits until they are there. */
export async function looked(view: HTMLElement): Promise<void> {
  (button(view, "What would make it work?") ?? button(view, "Look again"))!.click();
  await expect
    .poll(
      () => view.shadowRoot!.querySelector("#found") !== null && button(view, "Look again") !== undefined,
      {
        timeout: 15_000,
      },
    )
    .toBe(true);
}

export const cards = (view: HTMLElement) => [
  ...view.shadowRoot!.querySelectorAll<HTMLElement>("article.cure"),
];

/** The cure of one kind, by its heading. */
export const card = (view: HTMLElement, words: string) =>
  cards(view).find((each) => each.querySelector("h4")!.textContent!.includes(words))!;
