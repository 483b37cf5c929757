import { describe, expect, it } from "vitest";
import type { Batch, Flock, Weather } from "../../../packages/hydraulics/src/model/flock.js";
import {
  INTAKE_DOUBT,
  intakeOfBatch,
  intakeOfFlock,
  intakeOfPen,
} from "../../../packages/hydraulics/src/model/flock-intake.js";
import { flockInDays } from "../../../packages/hydraulics/src/model/flock-on.js";
import { birdById } from "../../../packages/hydraulics/src/tables/birds.js";
import { batch as plainBatch } from "../simulate/made-birds.js";

const ML = 1e-6;
const MILD: Weather = { high: 21, low: 21, light: 12 * 3600, dawn: 6 * 3600, hotSpell: undefined };
const birds = (id: string, count: number, ageDays: number, lay = 0.9): Batch => {
  const kind = birdById(id);
  if (kind === undefined) throw new Error(`no bird is called ${id}`);
  return { kind, index: 0, count, ageDays, lay };
};
const flockOf = (...pens: Batch[][]): Flock => ({
  day: 20_638,
  weather: MILD,
  pens: pens.map((batches, index) => ({ id: `pen ${index}`, index, batches, drinkers: [] })),
});

describe("what a batch drinks", () => {
  it("is 270 mL for a hen at 90 % lay (Poultry CRC, Table 1), and the rows are named", () => {
    const { size, sizeFrom, confidence, heat } = intakeOfBatch(birds("hen", 12, 200), MILD);
    expect(size).toBeCloseTo(270 * ML, 12);
    expect(sizeFrom).toEqual([{ source: "poultryhub-water", where: "Table 1", seen: "seen" }]);
    expect(confidence).toBe("high");
    expect(heat).toBe(1);
  });

  it("between two rows names both, each once, and is as sure as the less sure", () => {
    const young = intakeOfBatch(birds("meat-chicken", 1, 5), MILD);
    expect(young.sizeFrom.map(({ source }) => source)).toEqual(["georgia-litter-1997", "poultryhub-water"]);
    expect(young.confidence).toBe("low");
    const grown = intakeOfBatch(birds("meat-chicken", 1, 45), MILD);
    expect(grown.sizeFrom).toHaveLength(1);
  });

  it("may be off by what its rows are sure of: below what is expected, above what is sized on", () => {
    const { size, expect: expected, low, high } = intakeOfBatch(birds("meat-chicken", 1, 42), MILD);
    expect(high).toBeCloseTo(size * (1 + INTAKE_DOUBT.high), 12);
    expect(low).toBeCloseTo(expected * (1 - INTAKE_DOUBT.medium), 12);
  });

  it("doubles at 32 °C (Kentucky, Table 12.1: 13.21 over 6.6 gallons), and is nothing before it has come", () => {
    const hot = { ...MILD, high: 32, low: 32 };
    const bird = birds("meat-chicken", 1, 42);
    expect(intakeOfBatch(bird, hot).size / intakeOfBatch(bird, MILD).size).toBeCloseTo(13.21 / 6.6, 2);
    expect(intakeOfBatch(birds("hen", 5, -1), hot)).toMatchObject({ size: 0, expect: 0, low: 0, high: 0 });
  });
});

describe("what a flock drinks", () => {
  it("is the sum over its birds, by hand: 12 of 270 mL and 30 of 330 mL", () => {
    const flock = flockOf([birds("hen", 12, 200)], [birds("meat-chicken", 30, 42)]);
    expect(intakeOfFlock(flock).size).toBeCloseTo((12 * 270 + 30 * 330) * ML, 12);
    const both = { ...flock.pens[0]!, batches: flock.pens.flatMap(({ batches }) => batches) };
    expect(intakeOfPen(both, MILD).size).toBeCloseTo(intakeOfFlock(flock).size, 15);
  });

  it("goes by week as the birds grow: 180, 245, 290 mL at three, four and five weeks (Poultry CRC, Table 2)", () => {
    const flock = flockOf([birds("meat-chicken", 10, 21)]);
    const weeks = [0, 7, 14].map((days) => intakeOfFlock(flockInDays(flock, days)));
    expect(weeks.map(({ size }) => Math.round(size / ML))).toEqual([1800, 2450, 2900]);
  });

  it("stays level for a made-up bird of 270 mL at any age", () => {
    const flock = flockOf([plainBatch(4)]);
    const weeks = [0, 7, 14, 21].map((days) => intakeOfFlock(flockInDays(flock, days)));
    for (const { size, expect: expected } of weeks) {
      expect(size).toBeCloseTo(4 * 270 * ML, 15);
      expect(expected).toBeCloseTo(4 * 200 * ML, 15);
    }
  });
});

it("birds younger than the first row of their table drink as its first row says, older ones as its last", () => {
  const at = (ageDays: number) => intakeOfBatch(birds("meat-chicken", 1, ageDays), MILD);
  const [first, last] = [at(0), at(1000)];
  expect(first.size).toBeLessThan(last.size);
  expect([first.sizeFrom.length, last.sizeFrom.length]).toEqual([1, 1]);
  // The rows of chicks are less sure than those of grown birds.
  expect([first.sizeFrom, first.confidence]).not.toEqual([last.sizeFrom, last.confidence]);
  expect(at(1).size).toBeGreaterThanOrEqual(first.size);
});
