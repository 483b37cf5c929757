import type { UnitSystem } from "../typed-quantity.js";
import { typedLength } from "../typed-quantity.js";
import { figureOf, type SideHandle } from "./side-handle.js";

/** The edit that puts a handle at a height, in the words of the store's list of edits. */
export type SideEdit =
  | {
      readonly kind: "set";
      readonly path: readonly (string | number)[];
      readonly value: string;
      readonly what: string;
    }
  | { readonly kind: "setHeight"; readonly joint: string; readonly height: number }
  | { readonly kind: "moveReading"; readonly run: number; readonly reading: number; readonly fall: number };

/**
 * What dragging a handle to a height does to the plan.
 *
 * @param height  where it is to be [m above datum]
 * @param system  the units that are written into the plan
 */
export function editOf(handle: SideHandle, height: number, system: UnitSystem): SideEdit {
  const { target } = handle;
  switch (target.kind) {
    case "typed":
      return {
        kind: "set",
        path: target.path,
        value: typedLength(figureOf({ ...handle, height }), system),
        what: target.what,
      };
    case "jointHeight":
      return { kind: "setHeight", joint: target.joint, height };
    case "reading":
      return {
        kind: "moveReading",
        run: target.run,
        reading: target.reading,
        fall: handle.from - height,
      };
  }
}
