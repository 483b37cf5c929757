import type { UnitSystem } from "../kernels/typed-quantity.js";

/** How the page is lit: as the device says, or by the user's own choice. */
export type Light = "device" | "sun" | "dark";

export interface Preferences {
  readonly units: UnitSystem;
  readonly light: Light;
}

const KEY = "headfall-preferences";
const LAST = "headfall-plan";

/** What the user chose last time; the usual where nothing is remembered or may be. */
export function readPreferences(): Preferences {
  const [units = "", light = ""] = (remembered("localStorage", KEY) ?? "").split(" ");
  return {
    units: units === "us" ? "us" : "metric",
    light: light === "sun" || light === "dark" ? light : "device",
  };
}

export function rememberPreferences({ units, light }: Preferences): void {
  remember("localStorage", KEY, `${units} ${light}`);
}

/** Ids of the plans worked on last: in this tab, then in any. */
export function lastPlans(): string[] {
  const ids = (["sessionStorage", "localStorage"] as const).map((where) => remembered(where, LAST));
  return ids.filter((id) => id !== null);
}

export function rememberPlan(id: string): void {
  remember("sessionStorage", LAST, id);
  remember("localStorage", LAST, id);
}

type Where = "sessionStorage" | "localStorage";

/** Even to ask for storage may be refused; then nothing is remembered, and nothing else comes of it. */
function remembered(where: Where, key: string): string | null {
  try {
    return globalThis[where].getItem(key);
  } catch {
    return null;
  }
}

function remember(where: Where, key: string, text: string): void {
  try {
    globalThis[where].setItem(key, text);
  } catch {
    // Refused or full.
  }
}
