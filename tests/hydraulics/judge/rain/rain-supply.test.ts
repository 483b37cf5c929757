import {
  balanceRain,
  type Plan,
  type RainSupply,
  rainSupply,
  readPlan,
  readRainRecord,
  runOff,
  writeRainAnswer,
} from "@headfall/hydraulics";
import { describe, expect, it } from "vitest";

/** A drum under a roof feeds ten hens. */
const planWith = (roof: object | undefined): Plan => {
  const reading = readPlan(
    JSON.stringify({
      headfall: 1,
      sources: [{ id: "drum", vessel: "drum-55gal-steel", stand: "60 cm", ...(roof && { roof }) }],
      runs: [
        {
          id: "line",
          from: "drum",
          length: "5 m",
          fall: "0 cm",
          pipe: "hose-1/2",
          drinkers: { id: "cups", kind: "cup-trigger", count: 3, first: "2 m", every: "1 m" },
        },
      ],
      pens: [{ birds: { kind: "layer", count: 10 }, drinkers: ["cups"] }],
    }),
  );
  if (!reading.ok) throw new Error(JSON.stringify(reading.problems));
  return reading.plan;
};

/** A year with rain each tenth day, and none in summer. */
const record = (() => {
  const lines = Array.from({ length: 365 }, (_, k) => {
    const date = new Date(Date.UTC(2025, 0, 1 + k)).toISOString().slice(0, 10);
    return `${date},${k % 10 === 0 && (k < 150 || k > 240) ? 12 : 0}`;
  });
  const reading = readRainRecord(["date,rain mm", ...lines].join("\n"));
  if (!reading.ok) throw new Error(JSON.stringify(reading));
  return reading.record;
})();

const supplyOf = (plan: Plan): RainSupply => {
  const answer = rainSupply(plan, record, { day: "2026-05-01" });
  if (!answer.ok) throw new Error(JSON.stringify(answer.problems));
  return answer.supply;
};

describe("whether a rain barrel will do", () => {
  const supply = supplyOf(planWith({ area: "6 m2", kind: "metal" }));

  it("is short in summer, and in September until it rains on the 8th", () => {
    const [run] = supply.runs;
    expect(run.balance.shortDays).toBeGreaterThan(0);
    expect(run.seasons.map(({ shortDays }) => shortDays > 0)).toEqual([false, false, true, true]);
    expect(run.seasons[3].shortDays).toBe(8);
    expect(run.seasons.reduce((sum, { shortDays }) => sum + shortDays, 0)).toBe(run.balance.shortDays);
    expect(run.years.reduce((sum, { shortDays }) => sum + shortDays, 0)).toBe(run.balance.shortDays);
  });

  it("names a size that has no short day, and a little less has one", () => {
    const size = supply.neverFailsDrawnFirst!;
    const short = (capacity: number) =>
      balanceRain({ ...supply, capacity, start: capacity }, "drawnFirst").shortDays;
    expect(short(size)).toBe(0);
    expect(short(size - 1e-4)).toBeGreaterThan(0);
  });

  it("needs no less when it is drawn before the rain of the day", () => {
    expect(supply.neverFailsDrawnFirst!).toBeGreaterThanOrEqual(supply.neverFails! - 1e-5);
  });

  it("says that no roof helps where the dry spell outlasts the vessel", () => {
    expect(supply.roofNeeded).toBeUndefined();
  });

  it("names no size where less runs off in all than is drunk", () => {
    const { neverFails, neverFailsDrawnFirst } = supplyOf(planWith({ area: "0.1 m2", kind: "metal" }));
    expect([neverFails, neverFailsDrawnFirst]).toEqual([undefined, undefined]);
  });

  it("lets in what the roof sheds", () => {
    expect(supply.inflow).toEqual(runOff(supply.roof, record.rain));
    expect(supply.roof.runoff).toBe(0.92);
  });

  it("holds what the overflow passes against a downpour on the whole roof", () => {
    const { overflow } = supply;
    // 6 m² in 100 mm an hour shed 10 L a minute.
    expect(overflow.downpour * 60_000).toBeCloseTo(10, 9);
    const opening = 0.61 * (Math.PI / 4) * overflow.diameter ** 2 * Math.sqrt(9.80665 * overflow.diameter);
    expect(Math.abs(overflow.passes / opening - 1)).toBeLessThan(0.03);
    expect(overflow.isEnough).toBe(overflow.passes >= overflow.downpour);
  });

  it("asks for a roof where there is none", () => {
    const answer = rainSupply(planWith(undefined), record);
    expect(!answer.ok && answer.problems.map(({ code, path }) => [code, path])).toEqual([
      ["missing", "sources[0].roof"],
    ]);
  });

  it("does not say that a vessel will do from which nobody drinks", () => {
    const plan = planWith({ area: "6 m2" });
    const alone = { ...plan, pens: [{ birds: { kind: "layer", count: 10 }, drinkers: ["others"] }] };
    const spare = {
      ...alone,
      sources: [...plan.sources, { id: "other", vessel: "drum-55gal-steel" }],
      runs: [
        ...plan.runs,
        {
          id: "second",
          from: "other",
          length: "5 m",
          drinkers: { id: "others", kind: "cup-trigger", count: 2 },
        },
      ],
    } as unknown as Plan;
    expect(writeRainAnswer(supplyOf(spare), "metric")).toBe(
      "No pen drinks from drum: nothing can come short, whatever it rains.",
    );
  });

  it("does not know a roof that is not in the table", () => {
    expect(() => planWith({ area: "6 m2", kind: "metall" })).toThrow(/metal/);
  });
});
