import { checkDocument } from "../../../../packages/hydraulics/src/document/read-plan.js";
import type {
  BirdFinding,
  FlockReport,
} from "../../../../packages/hydraulics/src/judge/birds/flock-report.js";
import { judgeWeeks, type WeeksOptions } from "../../../../packages/hydraulics/src/judge/birds/weeks.js";
import { checkOf } from "../yard/yard.js";

export interface PenPlan {
  readonly birds?: unknown;
  readonly drinkers?: Record<string, unknown>;
  /** Height of the line above the ground, at its far end too. */
  readonly above?: string;
  readonly run?: Record<string, unknown>;
  readonly more?: Record<string, unknown>;
}

/** A barrel 1 m up, a feed that climbs from the ground, and a level line of eight nipples for one pen of hens. */
export const penPlan = ({
  birds = { kind: "hen", count: 24 },
  drinkers = {},
  above = "30 cm",
  run = {},
  more = {},
}: PenPlan = {}) => ({
  headfall: 1,
  water: "20 degC",
  sources: [
    {
      id: "barrel",
      vessel: { shape: "upright", diameter: "57 cm", height: "85 cm" },
      stand: "60 cm",
      level: { full: "40 cm", lowest: "10 cm" },
    },
  ],
  points: [
    { id: "riser", ground: "0 cm", above },
    { id: "end", ground: "0 cm", above },
  ],
  runs: [
    { id: "feed", to: "riser", length: "4 m" },
    {
      id: "hen line",
      to: "end",
      length: "3 m",
      drinkers: { kind: "nipple-side-action", count: 8, every: "30 cm", ...drinkers },
      ...run,
    },
  ],
  weather: { high: "21 degC" },
  pens: [{ id: "hens", birds }],
  ...more,
});

/** What a check says of the birds of a plan given as data. */
export function flockOfPlan(document: unknown, day?: string): FlockReport {
  const { flock } = checkOf(document, { samples: 0, ...(day === undefined ? {} : { day }) });
  if (flock === undefined) throw new Error("the check says nothing of birds");
  return flock;
}

export const codesOf = ({ findings }: { readonly findings: readonly BirdFinding[] }) =>
  findings.map(({ code }) => code);

/** The only finding with a code; throws where there is none or more than one. */
export function findingOf<Code extends BirdFinding["code"]>(
  { findings }: { readonly findings: readonly BirdFinding[] },
  code: Code,
): Extract<BirdFinding, { code: Code }> {
  const found = findings.filter((one) => one.code === code);
  if (found.length !== 1) throw new Error(`${found.length} of ${code} among ${JSON.stringify(findings)}`);
  return found[0] as Extract<BirdFinding, { code: Code }>;
}

/** The weeks of a plan given as data; throws where it has problems. */
export function weeksOf(document: unknown, options: WeeksOptions = {}) {
  const reading = checkDocument(document);
  if (!reading.ok) throw new Error(JSON.stringify(reading.problems, null, 1));
  const judged = judgeWeeks(reading.plan, options);
  if (!judged.ok) throw new Error(JSON.stringify(judged.problems, null, 1));
  return judged;
}
