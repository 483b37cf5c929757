import { type Plan, readQuantity } from "@headfall/hydraulics";
import type { ProfileRequest } from "../profile-request.js";

/** What handles are found from. The check may be a little older than the plan. */
export interface HandlesRequest extends Pick<ProfileRequest, "checked" | "path" | "moment"> {
  readonly plan: Plan;
  /** Lowest and highest metre that handles reach: as far as the drawing does. */
  readonly reach: readonly [number, number];
}

/** A typed length in metres; NaN for one that cannot be read, which is then equal to nothing. */
export function metresOf(typed: string): number {
  const read = readQuantity(typed, "length");
  return read.ok ? read.quantity.si : Number.NaN;
}
