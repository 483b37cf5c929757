import type { Plan } from "@headfall/hydraulics";
import { expect } from "vitest";
import { HeadfallCure } from "../../../packages/ui/src/cure/cure-element.js";
import type { KeptPlan } from "../../../packages/ui/src/cure/room.js";
import type { UnitSystem } from "../../../packages/ui/src/kernels/typed-quantity.js";
import { RoomHost, registerOnce } from "./room-host.js";

export { shown } from "./room-host.js";

registerOnce({ "headfall-cure": HeadfallCure });

/** The room on a page as small as can be, which makes its edits. */
export function cureRoom(
  plan: Plan,
  { width = 420, system = "metric" as UnitSystem, kept = [] as readonly KeptPlan[] } = {},
) {
  const view = document.createElement("headfall-cure") as HeadfallCure;
  view.keptPlans = async () => kept;
  return new RoomHost(view, plan, system).place(width);
}

/** A button of the room whose words begin so. */
export const button = (view: HTMLElement, words: string) =>
  [...view.shadowRoot!.querySelectorAll<HTMLElement>("button")].find((each) =>
    each.textContent!.trim().startsWith(words),
  );

/** Presses the button that looks for cures, and waits until they are there. */
export async function looked(view: HTMLElement): Promise<void> {
  (button(view, "What would make it work?") ?? button(view, "Look again"))!.click();
  await expect
    .poll(() => view.shadowRoot!.querySelector("#found") !== null && button(view, "Look again") !== undefined)
    .toBe(true);
}

export const cards = (view: HTMLElement) => [
  ...view.shadowRoot!.querySelectorAll<HTMLElement>("article.cure"),
];

/** The cure of one kind, by its heading. */
export const card = (view: HTMLElement, words: string) =>
  cards(view).find((each) => each.querySelector("h4")!.textContent!.includes(words))!;
