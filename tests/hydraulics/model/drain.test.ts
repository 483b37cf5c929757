import { describe, expect, it, test } from "vitest";
import { readPlan } from "../../../packages/hydraulics/src/document/read-plan.js";
import { buildLine } from "../../../packages/hydraulics/src/model/build-line.js";
import { type Drain, drainOf } from "../../../packages/hydraulics/src/model/drain.js";
import type { Line } from "../../../packages/hydraulics/src/model/line.js";

const BORE = 0.02;
const PER_METRE = (Math.PI / 4) * BORE ** 2;

function lineOf(runs: readonly Record<string, unknown>[], outlet = "10 cm"): Line {
  const reading = readPlan(
    JSON.stringify({
      headfall: 1,
      sources: [{ vessel: "drum-55gal-plastic", stand: "1 m", outlet }],
      runs: runs.map((run) => ({ pipe: { bore: "20 mm" }, ...run })),
    }),
  );
  if (!reading.ok) throw new Error(JSON.stringify(reading.problems));
  const built = buildLine(reading.plan);
  if (!built.ok) throw new Error(JSON.stringify(built.problems));
  return built.line;
}

const metresLeft = ({ sags }: Drain) => sags.map(({ volume }) => volume / PER_METRE);

test("a run that falls all the way empties at its end", () => {
  const drain = drainOf(lineOf([{ length: "10 m", fall: "0 cm" }]));
  expect(drain.volume).toBeCloseTo(10 * PER_METRE, 12);
  expect(drain.sags).toEqual([]);
  expect(drain.ends).toHaveLength(1);
  expect(drain.ends[0]!.volume).toBeCloseTo(drain.volume, 12);
  expect(drain.ends[0]!.isSource).toBe(false);
});

describe("a sag between the start and a higher end", () => {
  // From 1.1 m down to 0.2 m at 4 m, up to 0.7 m at 8 m, down to 0 m at 10 m.
  const survey = [
    { along: "4 m", fall: "-20 cm" },
    { along: "8 m", fall: "-70 cm" },
  ];
  const drain = drainOf(lineOf([{ length: "10 m", fall: "0 cm", survey }]));

  it("stays full up to its lower crest, on both sides", () => {
    // On the way in the pipe climbs 0.9 m in 4 m: 0.5 m of it is 20/9 m; on the way out it is all 4 m.
    expect(metresLeft(drain)[0]).toBeCloseTo(4 + (0.5 / 0.9) * 4, 6);
    expect(drain.sags[0]).toMatchObject({ along: 4, run: 0 });
    expect(drain.sags[0]!.depth).toBeCloseTo(0.5, 9);
  });

  it("takes what is left from what comes out", () => {
    const out = drain.ends.reduce((sum, { volume }) => sum + volume, 0);
    expect(out + drain.sags[0]!.volume).toBeCloseTo(drain.volume, 12);
  });
});

test("a line that rises from its source drains back at the outlet", () => {
  const drain = drainOf(lineOf([{ length: "5 m", fall: "-3 m" }]));
  expect(drain.sags).toEqual([]);
  expect(drain.ends).toMatchObject([{ isSource: true }]);
});

test("two branches that fall drain at both ends, each its own; a shut tap has to be opened", () => {
  const line = lineOf([
    { length: "2 m", fall: "50 cm", to: "tee" },
    { length: "6 m", fall: "30 cm", from: "tee" },
    { length: "4 m", fall: "40 cm", from: "tee", tap: "shut" },
  ]);
  const drain = drainOf(line);
  expect(drain.ends).toHaveLength(2);
  expect(drain.ends.reduce((sum, { volume }) => sum + volume, 0)).toBeCloseTo(12 * PER_METRE, 12);
  expect(drain.devices).toHaveLength(1);
});

test("a U with both ends up and nothing below it keeps nothing back: its lowest point is opened", () => {
  const line = lineOf([{ length: "4 m", fall: "-2 m", survey: [{ along: "2 m", fall: "50 cm" }] }]);
  const { ends, sags } = drainOf(line);
  expect(ends).toHaveLength(1);
  expect(line.points.height[ends[0]!.point]).toBeCloseTo(-0.5, 9);
  expect(sags).toEqual([]);
});

test("a shut tap, a one-way valve and a regulator keep water back, and pipe does not", () => {
  const line = lineOf([
    { id: "a", to: "p", length: "5 m", fall: "10 cm", oneWay: true },
    { id: "b", from: "p", to: "q", length: "5 m", fall: "10 cm", tap: "shut" },
    { id: "c", from: "q", to: "r", length: "5 m", fall: "10 cm", regulator: { sets: "30 cm" } },
    { id: "d", from: "r", length: "5 m", fall: "10 cm" },
  ]);
  const runs = drainOf(line).devices.map((s) => line.runs[line.segments.run[s]!]!.id);
  expect([...new Set(runs)]).toEqual(["a", "b", "c"]);
});
