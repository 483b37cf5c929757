import { DEFAULTS } from "../document/defaults.js";
import { findFittingByName, findPipeByName, readFittingText } from "../document/find-names.js";
import type { PlanFitting, PlanPipe } from "../document/plan-schema.js";
import { lossCoefficientOfWidening } from "../physics/fittings.js";
import { fittingAtBore } from "../tables/fittings.js";
import type { TypedValues } from "./typed-values.js";

/** A run's pipe in SI. */
export interface PipeBehaviour {
  readonly pipeId: string;
  readonly pipeName: string;
  readonly bore: number;
  readonly boreLow: number;
  readonly boreHigh: number;
  readonly hazenWilliams: number;
  readonly roughness: number;
}

/**
 * C of a pipe of which only the bore is known: the least printed for smooth plastic.
 * @source hazen-williams-table, coefficient table, seen
 */
const PLAIN_C = 140;
/**
 * Roughness of that pipe: plastic [m].
 * @source hydraulic-institute-edb, table 3.A.1 (0.00006 in), seen
 */
const PLAIN_ROUGHNESS = 1.52e-6;

export function pipeOf(pipe: PlanPipe | undefined, path: string, values: TypedValues): PipeBehaviour {
  if (pipe === undefined) values.note("pipe", path);
  const chosen = pipe ?? DEFAULTS.pipe.typed;
  if (typeof chosen !== "string") {
    const bore = values.si(chosen.bore, "length");
    return {
      pipeId: "own",
      pipeName: chosen.name ?? `own pipe, ${chosen.bore} inside`,
      bore,
      boreLow: bore,
      boreHigh: bore,
      hazenWilliams: chosen.hazenWilliams ?? PLAIN_C,
      roughness: chosen.roughness === undefined ? PLAIN_ROUGHNESS : values.si(chosen.roughness, "length"),
    };
  }
  const known = findPipeByName(chosen);
  if (known === undefined)
    throw new TypeError(
      `buildLine: no pipe is called ${JSON.stringify(chosen)}; only plans from readPlan or checkDocument can be built`,
    );
  const { id, name, bore, boreLow, boreHigh, hazenWilliams, roughness } = known;
  return { pipeId: id, pipeName: name, bore, boreLow, boreHigh, hazenWilliams, roughness };
}

/** Fittings of a run summed up: K = k1/Re + kInfinity on the velocity head in this bore. */
export interface FittingSum {
  readonly k1: number;
  readonly kInfinity: number;
}

/** Way in from a vessel through a square-edged outlet; counted for every run that starts at a source. */
const WAY_IN = "entry-sharp";

/** The outlet a run starts at: as wide as the run where nothing narrower is told [m]. */
export interface WayIn {
  readonly bore: number | undefined;
}

/**
 * A tap half open: a gate valve half closed, turbulent [velocity heads].
 * @source loss-coefficient-table, gate valve 1/2 closed, seen
 */
const HALF_TAP = 2.1;
const HALF_TAP_SOURCE = "loss-coefficient-table";

/** The part of a run that decides what its water passes besides pipe. */
export interface FittedRun {
  readonly fittings?: readonly PlanFitting[] | undefined;
  readonly tap?: "open" | "half" | "shut" | undefined;
}

/** One entry of what the water of a run passes besides pipe, at the run's bore; `count` of them, each with these K. */
export interface CountedFitting {
  readonly name: string;
  readonly count: number;
  readonly k1: number;
  readonly kInfinity: number;
  /** Least and greatest K to expect, as factors; undefined where no table says. */
  readonly scatter: { readonly low: number; readonly high: number } | undefined;
  /** Key of the source; undefined for a figure of the user's own. */
  readonly source: string | undefined;
}

/**
 * Everything that counts as a fitting of a run: a tap half open, the plan's fittings, the way in from a vessel.
 *
 * @param wayIn  the outlet of the source the run starts at; undefined where it starts at none
 * @example listFittings({ tap: "half" }, 0.0158, undefined)[0].name   // "tap, half open"
 */
export function listFittings(
  run: FittedRun,
  bore: number,
  wayIn: WayIn | undefined,
): readonly CountedFitting[] {
  const { fittings = [], tap } = run;
  return [
    ...(tap === "half"
      ? [{ ...OWN, name: "tap, half open", kInfinity: HALF_TAP, source: HALF_TAP_SOURCE }]
      : []),
    ...fittings.map((fitting) =>
      typeof fitting === "string"
        ? namedFitting(fitting, bore)
        : { ...OWN, name: fitting.name, kInfinity: fitting.k, count: fitting.count ?? 1 },
    ),
    ...(wayIn === undefined ? [] : waysIn(bore, wayIn.bore ?? bore)),
  ];
}

/**
 * The way in at the narrowest of the outlet, and from there a sudden widening to the pipe; both upon the velocity in
 * the pipe. With b the ratio of bores, K∞ rises with 1/b⁴ and, as Re is that of the outlet, K₁ with 1/b³.
 */
function waysIn(bore: number, outlet: number): CountedFitting[] {
  const wayIn = namedFitting(WAY_IN, Math.min(bore, outlet));
  if (outlet >= bore) return [wayIn];
  const ratio = outlet / bore;
  return [
    { ...wayIn, k1: wayIn.k1 / ratio ** 3, kInfinity: wayIn.kInfinity / ratio ** 4 },
    {
      ...OWN,
      name: "widening from the outlet",
      kInfinity: lossCoefficientOfWidening(ratio),
      source: WIDENING_SOURCE,
    },
  ];
}

const WIDENING_SOURCE = "hydraulic-institute-edb";

const OWN = { count: 1, k1: 0, scatter: undefined, source: undefined };

export function sumFittings(run: FittedRun, bore: number, wayIn: WayIn | undefined): FittingSum {
  let k1 = 0;
  let kInfinity = 0;
  for (const one of listFittings(run, bore, wayIn)) {
    k1 += one.count * one.k1;
    kInfinity += one.count * one.kInfinity;
  }
  return { k1, kInfinity };
}

function namedFitting(text: string, bore: number): CountedFitting {
  const { name, count } = readFittingText(text);
  const known = findFittingByName(name);
  if (known === undefined)
    throw new TypeError(
      `buildLine: no fitting is called ${JSON.stringify(name)}; only plans from readPlan or checkDocument can be built`,
    );
  const { k1, kInfinity } = fittingAtBore(known, bore);
  const { low, high, citation } = known;
  return { name: known.name, count, k1, kInfinity, scatter: { low, high }, source: citation.source };
}
