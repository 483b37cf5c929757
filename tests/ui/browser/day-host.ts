import type { Plan } from "@headfall/hydraulics";
import { expect } from "vitest";
import { HeadfallDay } from "../../../packages/ui/src/day/day-element.js";
import type { UnitSystem } from "../../../packages/ui/src/kernels/typed-quantity.js";
import { HeadfallProfile } from "../../../packages/ui/src/profile/profile-element.js";
import { HeadfallHow } from "../../../packages/ui/src/verdicts/how-element.js";
import { alderBank } from "./plan-host.js";
import { RoomHost, registerOnce } from "./room-host.js";

export { TODAY } from "./room-host.js";

registerOnce({
  "headfall-day": HeadfallDay,
  "headfall-profile": HeadfallProfile,
  "headfall-how": HeadfallHow,
});

/** Alder Bank with hens, and a hot spell to come. */
export const withHens = (count: number): Plan => ({
  ...alderBank,
  weather: { high: "26 °C", low: "14 °C", hotSpell: { high: "34 °C" } },
  pens: [{ id: "hens", birds: { kind: "hen", count } }],
});

/** The room of the day on the page; where somebody drinks, with its day run. */
export async function dayRoom(plan: Plan, width = 420, system: UnitSystem = "metric"): Promise<HeadfallDay> {
  const view = document.createElement("headfall-day") as HeadfallDay;
  await new RoomHost(view, plan, system).place(width);
  if (plan.pens !== undefined)
    await expect.poll(() => view.shadowRoot!.querySelector("svg.marks")).not.toBeNull();
  return view;
}
