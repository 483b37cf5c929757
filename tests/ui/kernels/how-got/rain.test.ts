import { readFileSync } from "node:fs";
import {
  checkPlan,
  type Plan,
  type RainSupply,
  rainSupply,
  readPlan,
  readRainRecord,
} from "@headfall/hydraulics";
import { describe, expect, test } from "vitest";
import { howGotOf } from "../../../../packages/ui/src/kernels/how-got/how-got-of.js";
import type { RainFigure } from "../../../../packages/ui/src/kernels/how-got/subject.js";

const reading = readPlan(readFileSync("docs/examples/alder-bank-rain-on-the-coop.json", "utf8"));
if (!reading.ok) throw new Error(JSON.stringify(reading.problems));
const { plan } = reading;

/** Two years: rain each fifth day, none in summer. */
const record = (() => {
  const lines = Array.from({ length: 730 }, (_, k) => {
    const date = new Date(Date.UTC(2024, 0, 1 + k)).toISOString().slice(0, 10);
    const isDry = k % 365 > 150 && k % 365 < 240;
    return `${date},${k % 5 === 0 && !isDry ? 12 : 0}`;
  });
  const read = readRainRecord(["date,rain mm", ...lines].join("\n"));
  if (!read.ok) throw new Error(JSON.stringify(read));
  return read.record;
})();

function supplyOf(of: Plan): RainSupply {
  const answer = rainSupply(of, record, { day: "2026-07-04" });
  if (!answer.ok) throw new Error(JSON.stringify(answer.problems));
  return answer.supply;
}

const withFlush: Plan = {
  ...plan,
  sources: plan.sources.map((source) => ({ ...source, roof: { ...source.roof!, firstFlush: "5 L" } })),
};
const supply = supplyOf(withFlush);
const checking = checkPlan(withFlush, { samples: 0, day: "2026-07-04" });
if (!checking.ok) throw new Error(JSON.stringify(checking.problems));
const { checked } = checking;

const how = (what: RainFigure, way = 0, of: RainSupply | undefined = supply) =>
  howGotOf({ of: "rain", what, way }, checked, withFlush, "metric", { rain: of })!;

/** What the first formula of each should come to, from the library's own answer. */
const FIGURES: Readonly<Record<RainFigure, number | undefined>> = {
  shortDays: undefined,
  inTime: supply.runs[0]!.inTime,
  inVolume: supply.runs[0]!.inVolume,
  cameIn: undefined,
  balance: 0,
  drunk: supply.demandMean,
  neverFails: supply.neverFails!,
  neverFailsDrawnFirst: undefined,
  roofNeeded: undefined,
  downpour: supply.overflow.downpour,
  passes: supply.overflow.passes,
  overflowNeeded: supply.overflow.downpour,
  wettestOver: supply.overflow.wettestOver,
};

describe("howGotOf(rain)", () => {
  for (const [what, figure] of Object.entries(FIGURES) as [RainFigure, number | undefined][]) {
    test(`${what}: its first formula comes to the library's figure, and nothing in it is a hole`, () => {
      const got = how(what);
      if (figure !== undefined) {
        expect(got.steps.length).toBeGreaterThan(0);
        expect(Math.abs(got.steps[0]!.value - figure)).toBeLessThan(1e-9 + 1e-6 * figure);
      }
      expect(JSON.stringify(got)).not.toMatch(/NaN|undefined|Infinity|null/);
      expect(got.result).not.toBe("");
      expect(got.sources.length).toBeGreaterThan(0);
    });
  }

  test("days short are told of their own way of reckoning, and name the rule", () => {
    expect(how("shortDays", 0).title).toBe("Days short, drawn before the day's rain, begun full");
    expect(how("shortDays", 3).title).toBe("Days short, rain of the day counted, begun empty");
    expect(how("shortDays", 0).result).toBe(`${supply.runs[0]!.balance.shortDays} of 730 days`);
    expect(how("shortDays", 3).notes[0]).toContain("min(D, V + Q)");
  });

  test("the size that never fails names the dry stretch it comes from", () => {
    expect(how("neverFails").notes[0]).toMatch(
      /^The hardest stretch: \d+ days from 2024-05-\d\d to 2024-08-\d\d\.$/,
    );
  });

  test("what comes in tells what the diverter keeps", () => {
    expect(how("cameIn").notes[1]).toContain("the diverter keeps the first 5 L");
  });

  test("where more is drunk than comes in, no size lasts, and no formula pretends to one", () => {
    const dry = supplyOf({
      ...plan,
      sources: plan.sources.map((source) => ({ ...source, roof: { area: "0.2 m2" } })),
    });
    expect(how("neverFails", 0, dry).result).toBe("no size lasts");
    expect(how("neverFails", 0, dry).steps).toEqual([]);
    expect(how("neverFailsDrawnFirst", 0, dry).result).toBe("no size lasts");
  });

  test("without a record it says so", () => {
    expect(howGotOf({ of: "rain", what: "inTime" }, checked, plan, "metric")!.result).toBe("not known");
  });
});
