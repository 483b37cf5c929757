import { feedFarEnd, feedMiddle, splitLine } from "./feed-again.js";
import { holdBack, putHeaderTank } from "./hold-back.js";
import { leaveOff } from "./leave-off.js";
import { letAirOut } from "./let-air-out.js";
import { moveSource } from "./move-source.js";
import { openTaps, openVents } from "./open-what-is-shut.js";
import { changeDrinkers } from "./other-drinkers.js";
import type { Ailing, Remedy } from "./remedy.js";
import { widenOutlets } from "./widen-outlet.js";

/** Every change besides sizes and stands that may help an ailing plan; each by itself. */
export function remediesFor(ailing: Ailing): Remedy[] {
  return [
    openTaps,
    openVents,
    letAirOut,
    widenOutlets,
    changeDrinkers,
    leaveOff,
    holdBack,
    putHeaderTank,
    feedFarEnd,
    feedMiddle,
    splitLine,
    moveSource,
  ].flatMap((make) => make(ailing));
}
