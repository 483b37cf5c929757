import type { SpilledShare } from "./row-types.js";
import { spilledShares } from "./spilled-share.generated.js";

export type { SpilledShare } from "./row-types.js";

/**
 * What is spilled at a kind of drinker, over what is drunk there; of one that is not in the table, as at a cup.
 *
 * @example spilledShareOf("nipple").spilled   // 0.05
 */
export function spilledShareOf(device: string): SpilledShare {
  const found = spilledShares.find((row) => row.device === device);
  return found ?? (spilledShares.find((row) => row.device === "cup") as SpilledShare);
}
