import type { Plan } from "@headfall/hydraulics";
import { expect } from "vitest";
import { RAIN_EXAMPLES } from "../../../packages/ui/src/app/rain-examples.js";
import type { UnitSystem } from "../../../packages/ui/src/kernels/typed-quantity.js";
import { HeadfallRain } from "../../../packages/ui/src/rain/rain-element.js";
import { HeadfallHow } from "../../../packages/ui/src/verdicts/how-element.js";
import { alderBank } from "./plan-host.js";
import { RoomHost, registerOnce } from "./room-host.js";

export { shown } from "./room-host.js";

registerOnce({ "headfall-rain": HeadfallRain, "headfall-how": HeadfallHow });

/** Alder Bank with hens at it, and no roof. */
export const withHens: Plan = {
  ...alderBank,
  weather: { high: "26 °C", low: "14 °C" },
  pens: [{ id: "hens", birds: { kind: "hen", count: 20 } }],
};
export const underRoof: Plan = {
  ...withHens,
  sources: [{ ...withHens.sources[0]!, roof: { area: "8 m2", kind: "metal" } }],
};

/** The room on a page as small as can be, which makes its edits. */
export function rainRoom(plan: Plan, width = 420, system: UnitSystem = "metric") {
  const view = document.createElement("headfall-rain") as HeadfallRain;
  view.examples = RAIN_EXAMPLES;
  return new RoomHost(view, plan, system).place(width);
}

/** Gives the room a file, as if it had been chosen. */
export function openText(view: HeadfallRain, name: string, content: BlobPart): void {
  const input = view.shadowRoot!.querySelector<HTMLInputElement>("#rain-file")!;
  const files = new DataTransfer();
  files.items.add(new File([content], name));
  input.files = files.files;
  input.dispatchEvent(new Event("change"));
}

export async function answered(view: HeadfallRain): Promise<void> {
  await expect.poll(() => view.shadowRoot!.querySelector("#calendar") !== null).toBe(true);
}

/** So many days from 2023 on, a line each: rain on every seventh, none in summer. */
export const rainLines = (count: number, line: (date: string, rain: number) => string): string[] =>
  Array.from({ length: count }, (_, k) => {
    const date = new Date(Date.UTC(2023, 0, 1 + k)).toISOString().slice(0, 10);
    const isDry = k % 365 > 150 && k % 365 < 240;
    return line(date, k % 7 === 0 && !isDry ? 14 : 0);
  });

/** Two years of them with everything said. */
export const clearTable = ["date,rain mm", ...rainLines(730, (date, rain) => `${date},${rain}`)].join("\n");
