import type { PlacedHandle } from "../../kernels/side/place-handles.js";
import { stepHeight } from "../../kernels/side/snap-height.js";
import type { UnitSystem } from "../../kernels/typed-quantity.js";
import type { Holding } from "./holding.js";

/** Steps of the keys that go far: 10 cm, or 4 in. */
const FAR: Readonly<Record<UnitSystem, number>> = { metric: 10, us: 8 };

const keysWords = (step: string, shifted: string, page: string): string =>
  `Up and down move by ${step}, with Shift by ${shifted}, Page Up and Page Down by ${page}, Home and End to the limits. Left and right go to the next one. Insert surveys another height, Delete takes one out. Plus and minus draw closer and wider, 0 the whole line.`;

/** What keys do, for those who hear the drawing. */
export const KEYS_WORDS: Readonly<Record<UnitSystem, string>> = {
  metric: keysWords("1 cm", "10 cm", "10 cm"),
  us: keysWords("half an inch", "5 in", "4 in"),
};

/**
 * Moves a handle by a key: arrows by a step (ten with Shift), Page keys by 10 cm or 4 in, Home and End to its limits.
 *
 * @returns whether the key was one of these
 */
export function moveByKey(
  holding: Holding,
  { handle }: PlacedHandle,
  event: Pick<KeyboardEvent, "key" | "shiftKey">,
  system: UnitSystem,
): boolean {
  const steps = stepsOf(event, system);
  const end = event.key === "Home" ? handle.low : event.key === "End" ? handle.high : undefined;
  if (steps === undefined && end === undefined) return false;
  holding.take(handle, "keys");
  const from = holding.drag?.height ?? handle.height;
  holding.put(end ?? stepHeight(handle, from, steps ?? 0, system), system);
  return true;
}

function stepsOf(
  { key, shiftKey }: Pick<KeyboardEvent, "key" | "shiftKey">,
  system: UnitSystem,
): number | undefined {
  const few = shiftKey ? 10 : 1;
  switch (key) {
    case "ArrowUp":
      return few;
    case "ArrowDown":
      return -few;
    case "PageUp":
      return FAR[system];
    case "PageDown":
      return -FAR[system];
    default:
      return undefined;
  }
}
