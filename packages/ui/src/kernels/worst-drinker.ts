import type { Checked } from "@headfall/hydraulics";
import { isWorse } from "./verdict-marks.js";

/** The drinker in the worst trouble: by verdict, then by the least margin. -1 when there is none. */
export function worstDrinker({ drinkers }: Checked): number {
  let worst = -1;
  drinkers.forEach(({ verdict, margin }, index) => {
    const other = drinkers[worst];
    if (other === undefined || isWorse(verdict, other.verdict)) worst = index;
    else if (verdict === other.verdict && margin < other.margin) worst = index;
  });
  return worst;
}
