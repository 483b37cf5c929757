import { PLAN_VERSION } from "./plan-schema.js";
import { type Problem, writeFound } from "./problem.js";

/** One named step from a version of the file to the next. Pure: a new document, the old one untouched. */
export interface UpgradeStep {
  readonly from: number;
  readonly what: string;
  readonly change: (document: Readonly<Record<string, unknown>>) => Record<string, unknown>;
}

/**
 * Steps from older versions, oldest first. Version 0 is the draft that had one source and plain `temperature`; it
 * is kept readable so that the path is exercised from the first release on.
 */
export const UPGRADE_STEPS: readonly UpgradeStep[] = [
  {
    from: 0,
    what: "`source` became the list `sources`; `temperature` became `water`",
    change: ({ source, temperature, ...rest }) => ({
      ...rest,
      ...(source === undefined ? {} : { sources: [source] }),
      ...(temperature === undefined ? {} : { water: temperature }),
      headfall: 1,
    }),
  },
];

/** Brings a document to the present version, or says why it cannot be. The document itself is not changed. */
export function upgradePlan(
  document: Readonly<Record<string, unknown>>,
):
  | { ok: true; document: Record<string, unknown>; steps: readonly string[] }
  | { ok: false; problem: Problem } {
  const version = document["headfall"];
  if (typeof version !== "number" || !Number.isInteger(version) || version < 0) {
    return { ok: false, problem: versionProblem(version) };
  }
  if (version > PLAN_VERSION) return { ok: false, problem: newerProblem(version) };
  let current: Record<string, unknown> = { ...document };
  const steps: string[] = [];
  for (const step of UPGRADE_STEPS) {
    if (current["headfall"] !== step.from) continue;
    current = step.change(current);
    steps.push(step.what);
  }
  return { ok: true, document: current, steps };
}

function versionProblem(version: unknown): Problem {
  return {
    code: "versionUnknown",
    path: "headfall",
    found: writeFound(version),
    allowed: `A plan says which version of the format it is in: a whole number up to ${PLAN_VERSION}.`,
    mend: `Add "headfall": ${PLAN_VERSION} as its first key.`,
  };
}

function newerProblem(version: number): Problem {
  return {
    code: "versionNewer",
    path: "headfall",
    found: String(version),
    allowed: `This program reads versions up to ${PLAN_VERSION}. The file is unharmed.`,
    mend: "Open it with a newer Headfall.",
  };
}
