import { DEFAULTS } from "../../document/defaults.js";
import { findRoofByName } from "../../document/find-names.js";
import type { PlanRoof } from "../../document/plan-schema.js";
import type { RainRecord } from "../../document/rain-record.js";
import { readShare } from "../../document/read-share.js";
import { createTypedValues } from "../../model/typed-values.js";
import { findRoot } from "../../numerics/root.js";
import { GRAVITY } from "../../physics/constants.js";
import { DISCHARGE_COEFFICIENT } from "../../physics/orifice.js";
import type { RoofRun } from "../../simulate/rain.js";
import type { RainSupply } from "./rain-answer.js";

/** Share of rain that runs off a roof of which nothing is known, and what wets it on a wet day [m]. */
const ANY_ROOF = { runoff: 0.8, wetting: 0.0005 } as const;

/**
 * A downpour to be ready for [m/s]: 100 mm in an hour; common practice, no source. Local tables of rain decide.
 *
 * @source common-practice, not stated, from memory
 */
export const DOWNPOUR = 0.1 / 3600;

/** The roof as typed, with what is taken where it is silent. */
export function roofOf(typed: PlanRoof): RoofRun {
  const values = createTypedValues();
  const kind = typed.kind === undefined ? undefined : findRoofByName(typed.kind);
  return {
    area: values.si(typed.area, "area"),
    runoff:
      (typed.runoff === undefined ? undefined : readShare(typed.runoff)) ?? kind?.runoff ?? ANY_ROOF.runoff,
    wetting:
      typed.wetting === undefined ? (kind?.wetting ?? ANY_ROOF.wetting) : values.si(typed.wetting, "length"),
    firstFlush: values.si(typed.firstFlush ?? DEFAULTS.firstFlush.typed, "volume"),
  };
}

/**
 * What a round overflow passes with the water level with its top: an opening with half its bore of head over its
 * middle.
 */
const passed = (bore: number): number =>
  DISCHARGE_COEFFICIENT.sharp * (Math.PI / 4) * bore ** 2 * Math.sqrt(GRAVITY * bore);

/** Roof water in a downpour, when the whole roof sheds what falls on it, against what the overflow passes. */
export function downpourOf(typed: PlanRoof) {
  const values = createTypedValues();
  const overflow = values.si(typed.overflow ?? DEFAULTS.overflow.typed, "length");
  const flow = values.si(typed.area, "area") * DOWNPOUR;
  return {
    flow,
    overflow,
    passes: passed(overflow),
    needed: findRoot((bore) => passed(bore) - flow, 0, 2).root,
    isTyped: typed.overflow !== undefined,
  };
}

/** The same held against a record of rain: what the wettest day of it sends through or over. */
export function overflowOf(typed: PlanRoof, roof: RoofRun, record: RainRecord): RainSupply["overflow"] {
  const { flow: downpour, overflow: diameter, passes, needed } = downpourOf(typed);
  const wettest = record.rain.reduce((most, one) => Math.max(most, one), 0);
  return {
    diameter,
    passes,
    downpour,
    isEnough: passes >= downpour,
    needed,
    wettest,
    wettestOver: Math.max(0, roof.runoff * roof.area * Math.max(0, wettest - roof.wetting) - roof.firstFlush),
  };
}
