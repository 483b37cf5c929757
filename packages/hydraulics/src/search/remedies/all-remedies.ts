import type { CureKind } from "../cure-kinds.js";
import { feedFarEnd, feedMiddle, splitLine } from "./feed-again.js";
import { holdBack, putHeaderTank } from "./hold-back.js";
import { leaveOff } from "./leave-off.js";
import { letAirOut } from "./let-air-out.js";
import { moveSource } from "./move-source.js";
import { openTaps, openVents } from "./open-what-is-shut.js";
import { changeDrinkers } from "./other-drinkers.js";
import type { Ailing, Remedy } from "./remedy.js";
import { widenOutlets } from "./widen-outlet.js";

const MAKERS: readonly (readonly [CureKind, (ailing: Ailing) => Remedy[]])[] = [
  ["tap", openTaps],
  ["vent", openVents],
  ["bleed", letAirOut],
  ["outlet", widenOutlets],
  ["drinkers", changeDrinkers],
  ["fewerDrinkers", leaveOff],
  ["regulator", holdBack],
  ["headerTank", putHeaderTank],
  ["secondFeed", feedFarEnd],
  ["feedMiddle", feedMiddle],
  ["split", splitLine],
  ["moveSource", moveSource],
];

/** Every change besides sizes and stands that may help an ailing plan, of the kinds that are wanted; each by itself. */
export const remediesFor = (ailing: Ailing, isWanted: (kind: CureKind) => boolean): Remedy[] =>
  MAKERS.flatMap(([kind, make]) => (isWanted(kind) ? make(ailing) : []));
