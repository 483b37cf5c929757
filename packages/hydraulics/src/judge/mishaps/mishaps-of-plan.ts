import type { Plan } from "../../document/plan-schema.js";
import type { Problem } from "../../document/problem.js";
import type { Flock } from "../../model/flock.js";
import type { Line } from "../../model/line.js";
import type { Mishap } from "../../model/mishap.js";
import { mishapsOf } from "../../model/mishaps-of.js";
import { hasWaterers } from "../../model/yard.js";
import { askPlan, MORNING, type WeighedPlan } from "../asked-plan.js";
import { cheapestGuard } from "./cheapest-guard.js";
import { runDown } from "./draw-struck.js";
import type { GuardResult } from "./guard.js";
import { type Bundle, bundlesOf } from "./mishap-bundles.js";
import { endsOf } from "./mishap-ends.js";
import { type Guarding, guardingOf, guardsAgainst } from "./mishap-guards.js";
import type { MishapEnd, MishapResult, MishapRow } from "./mishap-result.js";
import { runMishap, soonestHarm } from "./run-mishap.js";
import { strike } from "./strike.js";
import type { WatererMishapRow } from "./waterers/waterer-mishap-result.js";
import { watererMishapsOfPlan } from "./waterers/waterer-mishaps-of-plan.js";

/** What any one mishap does to a plan. */
export interface Mishaps {
  readonly day: number | undefined;
  /** When every mishap happens, everything full [s after midnight]. */
  readonly begins: number;
  readonly line: Line;
  readonly flock: Flock;
  /** The plan if nothing goes wrong and nobody looks after it. */
  readonly nothing: MishapEnd;
  /** The worst first, see `compareHarm`. */
  readonly rows: readonly MishapRow[];
  /** Of the loose waterers, the worst first, see `compareWaterers`. */
  readonly waterers: readonly WatererMishapRow[];
  /** What is left out, as codes. */
  readonly leavesOut: readonly ("nobodyDrinks" | "headerTank" | "rain")[];
}

/** What each mishap does, or what in the plan contradicts itself. */
export type MishapsAnswer =
  | { readonly ok: true; readonly mishaps: Mishaps }
  | { readonly ok: false; readonly problems: readonly Problem[] };

/** How mishaps are run. */
export interface MishapsOptions {
  /** The day asked about, "2026-07-04"; counts where the plan names none. */
  readonly day?: string | undefined;
  /** For how many rows, from the worst, guards are looked for; 12 unless given, each of a few more runs. */
  readonly guardsFor?: number | undefined;
  /** Told the share done, from 0 to 1. */
  readonly progress?: ((share: number) => void) | undefined;
}

/**
 * Makes every single mishap of a plan happen and runs each through line and time: what pours out follows the height of
 * the water, birds drink meanwhile, nobody comes. Its loose waterers are told apart from its line.
 *
 * @param plan     from `readPlan` or `checkDocument`
 * @param options  the day asked about; progress
 * @returns mishaps with what each does, the worst first, or what in the plan does not fit
 * @example mishapsOfPlan(small).mishaps.rows[0].kinds   // ["jointApart"]
 */
export function mishapsOfPlan(plan: Plan, options: MishapsOptions = {}): MishapsAnswer {
  const asking = askPlan(plan, options.day);
  if (!asking.ok) return asking;
  const { asked } = asking;
  const { line } = asked.judged;
  const loose = hasWaterers(plan) ? watererMishapsOfPlan(plan, asked.judged, options.day) : NO_WATERERS;
  if (!loose.ok) return loose;
  const hasLine = line.sources.length > 0;
  const bundles = hasLine ? bundlesOf(line, mishapsOf(plan, line, asked.flock)) : [];
  const nothing = hasLine ? runNothing(asked) : NO_LINE;
  const { guardsFor = 12 } = options;
  const total = bundles.reduce((sum, { run }) => sum + run.length, 0);
  // A row's guards take about as long as six mishaps.
  const advance = progressOf(options.progress, total + 6 * Math.min(guardsFor, bundles.length));
  const rows = bundles.map((bundle) => runBundle(asked, bundle, advance));
  rows.sort((a, b) => compareHarm(a.worst, b.worst));
  const guarding = guardingOf(asked, options.day, nothing);
  return {
    ok: true,
    mishaps: {
      day: asked.flock.day,
      begins: MORNING,
      line,
      flock: asked.flock,
      nothing,
      rows: rows.map((row, k) => {
        if (k >= guardsFor) return row;
        advance(6);
        return guarded(guarding, row);
      }),
      waterers: loose.rows,
      leavesOut: leftOut(plan, line, asked.flock),
    },
  };
}

/** Runs every mishap of a row, one step of the work each. */
function runBundle(asked: WeighedPlan, bundle: Bundle, advance: (steps: number) => void): MishapRow {
  const results = bundle.run.map((mishap) => {
    const result = runMishap(asked, mishap);
    advance(1);
    return result;
  });
  return rowOf(bundle, results);
}

function leftOut(plan: Plan, line: Line, flock: Flock): Mishaps["leavesOut"] {
  return [
    ...(flock.pens.length === 0 ? (["nobodyDrinks"] as const) : []),
    ...(line.sources.some(({ feed }) => feed !== undefined) ? (["headerTank"] as const) : []),
    ...(plan.sources.some(({ roof }) => roof !== undefined) ? (["rain"] as const) : []),
  ];
}

const NO_WATERERS = { ok: true, rows: [] } as const;
/** Of a plan that has no line, nothing comes of it. */
const NO_LINE: MishapEnd = {
  hasBirds: false,
  firstWithout: undefined,
  firstDry: undefined,
  halfDry: undefined,
  empty: undefined,
};

/** One mishap with its guards, or what in the plan contradicts itself. */
export type GuardsAnswer =
  | {
      readonly ok: true;
      readonly result: MishapResult;
      /** The cheapest kind first. */
      readonly guards: readonly GuardResult[];
      readonly cheapest: GuardResult | undefined;
    }
  | { readonly ok: false; readonly problems: readonly Problem[] };

/**
 * What one mishap does and what guards against it, each run again with it.
 *
 * @param plan     from `readPlan` or `checkDocument`
 * @param mishap   one of `mishapsOf` that plan
 * @param options  the day asked about
 * @returns the mishap's result and its guards, or what in the plan does not fit
 * @example guardsForMishap(small, { kind: "drinkerStuckOpen", drinker: 0 }).result.leakRate   // 0.000001612
 */
export function guardsForMishap(
  plan: Plan,
  mishap: Mishap,
  options: Pick<MishapsOptions, "day"> = {},
): GuardsAnswer {
  const asking = askPlan(plan, options.day);
  if (!asking.ok) return asking;
  const { asked } = asking;
  const result = runMishap(asked, mishap);
  const guards = guardsAgainst(guardingOf(asked, options.day, runNothing(asked)), result);
  return { ok: true, result, guards, cheapest: cheapestGuard(guards) };
}

function progressOf(told: MishapsOptions["progress"], total: number): (steps: number) => void {
  let done = 0;
  return (steps) => {
    done += steps;
    told?.(Math.min(1, done / total));
  };
}

function guarded(guarding: Guarding, row: MishapRow): MishapRow {
  const guards = guardsAgainst(guarding, row.worst);
  return { ...row, guards, cheapest: cheapestGuard(guards) };
}

/**
 * The order of harm: soonest bird without water (in a plan without birds, soonest half of the drinkers dry), then most
 * water lost, then most drinkers that are dry or starve, then most that drip. Equal ones keep the order of the plan.
 */
export function compareHarm(a: MishapResult, b: MishapResult): number {
  return (
    soonestHarm(a) - soonestHarm(b) ||
    b.balance.lost - a.balance.lost ||
    b.dry.length + b.starve.length - (a.dry.length + a.starve.length) ||
    b.drip.length - a.drip.length
  );
}

function runNothing(asked: WeighedPlan): MishapEnd {
  const struck = strike(asked, undefined);
  const run = runDown(struck, { start: asked.fullVolumes, from: MORNING, lasts: struck.lasts });
  return endsOf(struck, run, MORNING);
}

function rowOf({ kinds, count, run }: Bundle, results: readonly MishapResult[]): MishapRow {
  const [worst] = [...results].sort(compareHarm);
  const lost = results.map(({ balance }) => balance.lost);
  return {
    kinds,
    worst,
    count,
    run: run.length,
    lost: { least: Math.min(...lost), most: Math.max(...lost) },
    guards: undefined,
    cheapest: undefined,
  };
}
