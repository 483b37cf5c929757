import type { Plan } from "../../document/plan-schema.js";
import type { Problem } from "../../document/problem.js";
import { writePlan } from "../../document/write-plan.js";
import { digestOf } from "../../numerics/digest.js";
import { type AskedPlan, askPlan } from "../asked-plan.js";
import { type Bench, benchOf } from "./bench.js";
import type { Seen } from "./chances.js";
import { placesByName } from "./check-signs.js";
import { expectTrial } from "./expect-trial.js";
import type { Expectation } from "./expectation.js";

/** What is known beside the signs. */
export interface AskOptions {
  /** The day asked about, "2026-07-04": how old the birds are. Counts where the plan names none. */
  readonly day?: string | undefined;
  /** Where the water stands in each source [m above its inside bottom]; its ordinary level where left out. */
  readonly levels?: readonly (number | undefined)[];
  /** How long ago the sources were last seen with water in them [s]. Default a day. */
  readonly lastSeen?: number;
}

const DAY = 86_400;

/** A plan made ready for signs of trouble. */
export interface Question {
  readonly bench: Bench;
  readonly usual: Expectation;
  readonly seen: Seen;
  readonly digest: string;
}

export type Questioning =
  | { readonly ok: true; readonly question: Question }
  | { readonly ok: false; readonly problems: readonly Problem[] };

/** Builds and solves the plan as it should be. */
export function askAboutTrouble(plan: Plan, options: AskOptions = {}): Questioning {
  const asking = askPlan(plan, options.day);
  if (!asking.ok) return asking;
  const { line } = asking.asked.judged;
  const bench = benchOf(asking.asked, levelsOf(asking.asked, options.levels ?? []));
  const lastSeen = options.lastSeen ?? DAY;
  if (!(lastSeen > 0)) throw new RangeError(`whatIsWrong: lastSeen is ${lastSeen}; it must be above 0`);
  const asIs = { weight: 1, severity: {}, line, isAlike: true };
  const usual = expectTrial(bench, asIs, undefined);
  const seen: Seen = {
    usual: { flow: usual.flow, need: line.drinkers.need, lastSeen },
    places: placesByName(line),
  };
  return { ok: true, question: { bench, usual, seen, digest: digestOf(writePlan(plan)) } };
}

function levelsOf({ judged }: AskedPlan, told: readonly (number | undefined)[]): number[] {
  return judged.line.sources.map(({ id, levels }, i) => {
    const level = told[i] ?? levels.ordinary;
    if (!(level >= 0 && level <= levels.full + 1e-9))
      throw new RangeError(`whatIsWrong: level of ${id} is ${level}; it must be from 0 to ${levels.full}`);
    return level;
  });
}
