import type { Plan } from "@headfall/hydraulics";
import type { ProfileRequest } from "../profile-request.js";

/** What handles are found from. The check may be a little older than the plan. */
export interface HandlesRequest extends Pick<ProfileRequest, "checked" | "path" | "moment"> {
  readonly plan: Plan;
  /** Lowest and highest metre that handles reach: as far as the drawing does. */
  readonly reach: readonly [number, number];
}
