import { page, userEvent } from "vitest/browser";
import type { Selected } from "../../../packages/ui/src/kernels/selected.js";
import type { UnitSystem } from "../../../packages/ui/src/kernels/typed-quantity.js";
import { HeadfallPart } from "../../../packages/ui/src/parts/part-element.js";
import { alderBank, PlanHost, placed } from "./plan-host.js";

/** What a user does with the panel of a part, and what is seen there. */

export const SOURCE = { kind: "source", source: 0 } as const;
export const FEED = { kind: "run", run: 0 } as const;
export const HENS = { kind: "run", run: 1 } as const;
export const DUCKS = { kind: "run", run: 2 } as const;
export const TEE = { kind: "joint", joint: "tee" } as const;
export const NIPPLES = { kind: "drinkers", run: 1, group: 0 } as const;

/** The panel on the page, with a part chosen. */
export async function shown(selected?: Selected, plan = alderBank, system: UnitSystem = "metric") {
  const part = new HeadfallPart();
  part.selected = selected;
  return placed(new PlanHost(part, plan, system));
}

export const textbox = (name: string) => page.getByRole("textbox", { name, exact: true });
export const button = (name: string) => page.getByRole("button", { name, exact: true });
export const choice = (name: string) => page.getByRole("combobox", { name, exact: true });
export const alert = () => page.getByRole("alert");
export const focused = (view: HeadfallPart) => view.shadowRoot!.activeElement;
export const unfold = (name: string) => userEvent.click(page.getByText(name, { exact: true }));

export async function type(name: string, words: string): Promise<void> {
  await userEvent.fill(textbox(name), words);
  await userEvent.keyboard("{Enter}");
}
