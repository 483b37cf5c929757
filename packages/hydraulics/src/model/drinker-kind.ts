import { findDrinkerByName } from "../document/find-names.js";
import type { OwnDrinker, Plan } from "../document/plan-schema.js";
import { fitDrinkerLaw } from "../physics/measured-drinker.js";
import { type DrinkerLaw, drinkerLawThrough } from "../physics/orifice.js";
import type { TypedValues } from "./typed-values.js";

/** What a kind of drinker means to the line, from the tables or from the user's own readings. */
export interface DrinkerBehaviour {
  readonly kindId: string;
  readonly kindName: string;
  readonly workedBy: "trigger" | "float";
  readonly law: DrinkerLaw;
  readonly sealsFrom: number;
  readonly holdsUpTo: number;
  readonly need: number;
  /** Least and greatest flow to expect of one of these, as factors on the law. */
  readonly flowLow: number;
  readonly flowHigh: number;
  /** Whether birds drink from water that stands open (a chick may drown in a trough). */
  readonly isOpenWater: boolean;
}

/** The behaviour of the kind a group names. An own drinker goes before one of the tables with the same name. */
export function behaviourOf(plan: Plan, kind: string, values: TypedValues): DrinkerBehaviour {
  const own =
    plan.ownDrinkers !== undefined && Object.hasOwn(plan.ownDrinkers, kind)
      ? plan.ownDrinkers[kind]
      : undefined;
  if (own !== undefined) return measuredBehaviour(kind, own, values);
  const known = findDrinkerByName(kind);
  if (known === undefined)
    throw new TypeError(
      `buildLine: no drinker is called ${JSON.stringify(kind)}; only plans from readPlan or checkDocument can be built`,
    );
  const { head, flow, exponent, openingHead } = known;
  return {
    kindId: known.id,
    kindName: known.name,
    workedBy: known.workedBy,
    law: drinkerLawThrough({ head, flow, exponent, openingHead }),
    sealsFrom: known.sealsFrom,
    holdsUpTo: known.holdsUpTo,
    need: known.need,
    flowLow: known.flowLow / flow,
    flowHigh: known.flowHigh / flow,
    isOpenWater: known.kind === "bell" || known.kind === "trough",
  };
}

function measuredBehaviour(name: string, own: OwnDrinker, values: TypedValues): DrinkerBehaviour {
  const readings = own.readings.map((reading) => ({
    head: values.si(reading.head, "head"),
    flow: values.si(reading.flow, "flow"),
  }));
  const fit = fitDrinkerLaw(readings, {
    openingHead: own.opensAt === undefined ? 0 : values.si(own.opensAt, "head"),
  });
  return {
    kindId: name,
    kindName: name,
    workedBy: own.workedBy ?? "trigger",
    law: fit.law,
    sealsFrom: own.sealsFrom === undefined ? 0 : values.si(own.sealsFrom, "head"),
    holdsUpTo: values.si(own.holdsUpTo, "head"),
    need: values.si(own.need, "flow"),
    // Two standard deviations either way, as a factor so that it stays positive.
    flowLow: 1 / (1 + 2 * fit.relativeDoubt),
    flowHigh: 1 + 2 * fit.relativeDoubt,
    isOpenWater: false,
  };
}
