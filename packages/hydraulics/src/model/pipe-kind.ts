import { DEFAULTS } from "../document/defaults.js";
import { findFittingByName, findPipeByName, readFittingText } from "../document/find-names.js";
import type { PlanFitting, PlanPipe } from "../document/plan-schema.js";
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

/**
 * A tap half open: a gate valve half closed, turbulent [velocity heads].
 * @source loss-coefficient-table, gate valve 1/2 closed, seen
 */
const HALF_TAP = 2.1;

export function sumFittings(
  run: {
    readonly fittings?: readonly PlanFitting[] | undefined;
    readonly tap?: "open" | "half" | "shut" | undefined;
  },
  bore: number,
  startsAtSource: boolean,
): FittingSum {
  const list = [...(run.fittings ?? []), ...(startsAtSource ? [WAY_IN] : [])];
  let k1 = 0;
  let kInfinity = run.tap === "half" ? HALF_TAP : 0;
  for (const fitting of list) {
    const one =
      typeof fitting === "string"
        ? namedFitting(fitting, bore)
        : { k1: 0, kInfinity: fitting.k, count: fitting.count ?? 1 };
    k1 += one.count * one.k1;
    kInfinity += one.count * one.kInfinity;
  }
  return { k1, kInfinity };
}

function namedFitting(text: string, bore: number): { k1: number; kInfinity: number; count: number } {
  const { name, count } = readFittingText(text);
  const known = findFittingByName(name);
  if (known === undefined)
    throw new TypeError(
      `buildLine: no fitting is called ${JSON.stringify(name)}; only plans from readPlan or checkDocument can be built`,
    );
  const { k1, kInfinity } = fittingAtBore(known, bore);
  return { k1, kInfinity, count };
}
