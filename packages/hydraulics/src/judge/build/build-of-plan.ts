import type { Plan } from "../../document/plan-schema.js";
import { buildFlock } from "../../model/build-flock.js";
import { buildYard } from "../../model/build-yard.js";
import type { Flock } from "../../model/flock.js";
import { flockInDays } from "../../model/flock-on.js";
import type { Line } from "../../model/line.js";
import { raisesOf } from "../birds/hung-runs.js";
import type { Checked } from "../check-result.js";
import { lookAtPlan } from "../look-at-plan.js";
import { doubtsOf } from "../sureness/doubts.js";
import { dailyMark } from "../time/daily-mark.js";
import { depthOf } from "../yard/waterer-suits.js";
import type { BuildAnswer, BuildSheet, CoopSheet } from "./build-sheet.js";
import { cutPipes } from "./cut-pipes.js";
import { holesOf } from "./holes-of.js";
import { jugTests } from "./jug-test.js";
import { marksOf } from "./marks-of.js";
import type { Part, PipeToCut } from "./part-list.js";
import { partsOf, strayPrices } from "./parts-of.js";
import { standLoads } from "./stand-loads.js";
import { stepsOf } from "./steps-of.js";

/** What a build sheet is asked with. */
export interface BuildOptions {
  /** The day asked about, "2026-07-04": how old the birds are. Counts where the plan names none. */
  readonly day?: string | undefined;
  /** Width that a cut takes [m]. Default `KERF`. */
  readonly kerf?: number;
  /** Plans tried for the band of the jug test. Default 64. */
  readonly samples?: number;
  readonly seed?: number;
  /** Weeks of heights for the sheet that hangs in the coop, from 0 to 52. Default 8. */
  readonly weeks?: number;
  /** Told how much of all is done, from 0 to 1. */
  readonly progress?: (share: number) => void;
}

/** What a saw takes [m]; common practice, no source. A cutter takes nothing. */
export const KERF = 0.002;
const MOST_KERF = 0.02;

/**
 * All that is needed to build a plan: parts and prices, pipe cut with the least to buy, holes, heights to mark, what
 * to do in which order, what jug and watch should give, how the stands are loaded, and the sheet for the coop.
 *
 * @param plan     from `readPlan` or `checkDocument`
 * @param options  day, width of a cut, samples of the jug test, weeks of heights
 * @returns the sheet, or what in the plan contradicts itself; the same plan and options give the same sheet
 * @throws RangeError when the kerf is not from 0 to 20 mm or weeks not a whole number from 0 to 52
 * @example buildSheetOf(small).sheet.parts.length   // 7
 */
export function buildSheetOf(plan: Plan, options: BuildOptions = {}): BuildAnswer {
  const { day, kerf = KERF, samples = 64, seed = 1, weeks = 8, progress = () => undefined } = options;
  if (!(kerf >= 0 && kerf <= MOST_KERF))
    throw new RangeError(`buildSheetOf: kerf is ${kerf}; it must be from 0 to ${MOST_KERF}`);
  if (!(Number.isInteger(weeks) && weeks >= 0 && weeks <= 52))
    throw new RangeError(`buildSheetOf: weeks is ${weeks}; it must be a whole number from 0 to 52`);
  const checking = lookAtPlan(plan, { day });
  if (!checking.ok) return checking;
  const { checked } = checking;
  const { line, filling } = checked;
  progress(0.1);
  const pipes = cutPipes(plan, line, kerf);
  progress(0.4);
  const jugs = jugTests(line, { ...checked, doubts: doubtsOf(plan, line), samples, seed });
  progress(0.7);
  const flocking = flockOf(plan, line, day);
  if (!flocking.ok) return flocking;
  const parts = partsOf(plan, line, filling, pipes);
  const loads = standLoads(plan, line, checked.sources);
  const coop = coopSheet(plan, { checked, flock: flocking.flock, day, weeks });
  progress(1);
  return {
    ok: true,
    sheet: {
      parts,
      pipes,
      holes: holesOf(line, parts),
      heights: marksOf(line),
      steps: stepsOf({ plan, line, filling, pipes, loads, jugs }),
      jugs,
      loads,
      coop,
      price: priceOf(plan, parts, pipes),
      strayPrices: strayPrices(plan, parts),
      openWater: checked.cautions.flatMap((caution) => (caution.code === "openWater" ? [caution.group] : [])),
      deepWater: deepWaterOf(plan, flocking.flock),
      hasRoof: plan.sources.some(({ roof }) => roof !== undefined),
      kerf,
      day: flocking.flock?.day,
    },
  };
}

type Flocked = { readonly ok: true; readonly flock: Flock | undefined } | Extract<BuildAnswer, { ok: false }>;

function flockOf(plan: Plan, line: Line, day: string | undefined): Flocked {
  if (plan.pens === undefined || plan.pens.length === 0) return { ok: true, flock: undefined };
  return buildFlock(plan, line, day);
}

/** Open water of loose waterers that is too deep for the young birds of their pen. */
function deepWaterOf(plan: Plan, flock: Flock | undefined): BuildSheet["deepWater"] {
  const yarding = buildYard(plan);
  if (flock === undefined || !yarding.ok) return [];
  return yarding.yard.pens.flatMap(({ waterers }, p) => {
    const pen = flock.pens[p];
    return waterers.flatMap((waterer) => {
      const { depth, mayDrown } = depthOf(waterer, pen);
      return mayDrown.map(({ kindName, untilDays }) => ({
        pen: pen.id,
        waterer: waterer.kind.name,
        depth,
        birds: kindName,
        untilDays,
      }));
    });
  });
}

/** Sources whose marks are printed: more do not fit on a sheet. */
const MOST_MARKS = 6;

interface CoopAsked {
  readonly checked: Checked;
  readonly flock: Flock | undefined;
  readonly day: string | undefined;
  readonly weeks: number;
}

function coopSheet(plan: Plan, { checked, flock, day, weeks }: CoopAsked): CoopSheet {
  const contacts = plan.contacts ?? [];
  if (flock === undefined) return { marks: [], heights: [], contacts };
  const marks = plan.sources.slice(0, MOST_MARKS).flatMap((_, source) => {
    const answer = dailyMark(plan, { source, day });
    return answer.ok ? [answer.mark] : [];
  });
  const each = Array.from({ length: weeks + 1 }, (_, week) =>
    raisesOf(plan, checked.line, flock, flockInDays(flock, 7 * week)).map((raise) => ({ ...raise, week })),
  ).flat();
  const runs = [...new Set(each.map(({ run }) => run))];
  return {
    marks,
    contacts,
    heights: runs.map((run) => ({
      run,
      weeks: each
        .filter((one) => one.run === run)
        .map(({ week, height, raise, low, high }) => ({ week, height, raise, low, high })),
    })),
  };
}

function priceOf(plan: Plan, parts: readonly Part[], pipes: readonly PipeToCut[]): BuildSheet["price"] {
  const bought = parts.filter(({ basis }) => basis !== "advised");
  const ofPipes = pipes.filter(({ cutting }) => cutting.bought > 0);
  const sum =
    bought.reduce((total, { price = 0, count }) => total + price * count, 0) +
    ofPipes.reduce((total, { price = 0 }) => total + price, 0);
  const unpriced = [...bought, ...ofPipes].filter(({ price }) => price === undefined).length;
  return { sum, unpriced, money: plan.money };
}
