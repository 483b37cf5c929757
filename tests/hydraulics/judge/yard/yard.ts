import { checkDocument } from "../../../../packages/hydraulics/src/document/read-plan.js";
import { type CheckOptions, checkPlan } from "../../../../packages/hydraulics/src/judge/check-plan.js";
import type {
  Checked,
  DrinkerVerdict,
  Reason,
} from "../../../../packages/hydraulics/src/judge/check-result.js";

/** The check of a plan given as data; throws where it has problems. */
export function checkOf(document: unknown, options: CheckOptions = { samples: 0 }): Checked {
  const reading = checkDocument(document);
  if (!reading.ok) throw new Error(JSON.stringify(reading.problems, null, 1));
  const checking = checkPlan(reading.plan, options);
  if (!checking.ok) throw new Error(JSON.stringify(checking.problems, null, 1));
  return checking.checked;
}

/** A drinker whose law is plain: 100 mL/min at 1 m, as the square root of the head; it needs 40 mL/min, so 16 cm. */
export const plainDrinker = (more: Record<string, unknown> = {}) => ({
  readings: [
    { head: "25 cm", flow: "50 mL/min" },
    { head: "1 m", flow: "100 mL/min" },
  ],
  holdsUpTo: "5 m",
  need: "40 mL/min",
  ...more,
});

/** k of the plain drinker [m3/s at 1 m], and the head it needs [m]. */
export const PLAIN = { coefficient: 1e-4 / 60, need: 4e-5 / 60, headNeeded: 0.16 } as const;

export interface Yard {
  /** Bottom of the barrel above the ground, where the line lies at height 0. */
  readonly stand?: string;
  readonly full?: string;
  readonly lowest?: string;
  readonly source?: Record<string, unknown>;
  readonly drinker?: Record<string, unknown>;
  readonly runs: readonly unknown[];
  readonly more?: Record<string, unknown>;
}

/** A plan of one upright barrel, 57 cm across and 85 cm high, and plain drinkers called "plain". */
export const yard = ({
  stand = "40 cm",
  full = "70 cm",
  lowest = "10 cm",
  source,
  drinker,
  runs,
  more,
}: Yard) => ({
  headfall: 1,
  water: "20 degC",
  sources: [
    {
      id: "barrel",
      vessel: { shape: "upright", diameter: "57 cm", height: "85 cm" },
      outlet: "5 cm",
      stand,
      level: { full, lowest },
      ...source,
    },
  ],
  runs,
  ownDrinkers: { plain: plainDrinker(drinker) },
  ...more,
});

/** The only judgement of one drinker, or one by its place. */
export function verdictOf(checked: Checked, d = 0): DrinkerVerdict {
  const verdict = checked.drinkers[d];
  if (verdict === undefined) throw new Error(`there are ${checked.drinkers.length} drinkers`);
  return verdict;
}

/** The numbers of a reason that has the code expected; throws for another. */
export function reasonOf<Code extends Reason["code"]>(
  because: Reason,
  code: Code,
): Extract<Reason, { code: Code }> {
  if (because.code !== code) throw new Error(`the reason is ${JSON.stringify(because)}, not ${code}`);
  return because as Extract<Reason, { code: Code }>;
}
