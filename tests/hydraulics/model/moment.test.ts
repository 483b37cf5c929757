import { expect, test } from "vitest";
import type { Line } from "../../../packages/hydraulics/src/model/line.js";
import {
  buildMoments,
  givenBeforeStall,
  sourceHeads,
  stallsWithinUse,
} from "../../../packages/hydraulics/src/model/moment.js";
import { lineOf } from "./built.js";

/** A barrel on the datum, 80 cm high, full at 70 cm, lowest at 10 cm, with one drinker below it. */
function barrel(vent: unknown, more: Record<string, unknown> = {}): Line {
  const source = {
    vessel: { shape: "upright", diameter: "57.1 cm", height: "80 cm" },
    stand: "40 cm",
    level: { full: "70 cm", lowest: "10 cm", ordinary: "45 cm" },
    vent,
    ...more,
  };
  return lineOf([{ length: "3 m", fall: "20 cm", drinkers: { kind: "cup-float" } }], { sources: [source] });
}

const heads = (line: Line) =>
  (["fullIdle", "ordinary", "lowestBusiest"] as const).map((name) =>
    Number((sourceHeads(line, name)[0] ?? Number.NaN).toFixed(9)),
  );

test("sourceHeads(open vessel) are its water levels", () => {
  expect(heads(barrel("open"))).toEqual([1.1, 0.85, 0.5]);
});

test("sourceHeads(air tube) stay at the tube's foot until the level passes it, then follow the level", () => {
  expect(heads(barrel({ airTube: "30 cm" }))).toEqual([0.7, 0.7, 0.5]);
  expect(heads(barrel({ airTube: "5 cm" }))).toEqual([0.45, 0.45, 0.45]);
});

test("sourceHeads(sealed, and stalling before its lowest level) are those of the drinkers from then on", () => {
  const line = barrel("sealed");
  expect(stallsWithinUse(line, line.sources[0]!)).toBe(true);
  // Full it gives its head; lower, nothing is left over the drinker, which is 20 cm below the ground the barrel stands on.
  expect(heads(line)).toEqual([1.1, -0.2, -0.2]);
});

test("stallsWithinUse(sealed, and refilled when a centimetre is gone) is not: the air above has hardly stretched", () => {
  const line = barrel("sealed", { level: { full: "70 cm", lowest: "69 cm", ordinary: "69.5 cm" } });
  expect(stallsWithinUse(line, line.sources[0]!)).toBe(false);
});

test("givenBeforeStall(208 L barrel, 10 L of air, 1 m of head) is about 1.1 L", () => {
  // Closed form: V (p/(p - rho g h) - 1) = 10 L (101325/(101325 - 9806) - 1) = 1.07 L.
  const area = (Math.PI / 4) * 0.571 ** 2;
  const height = 0.208 / area;
  const full = 0.198 / area;
  const sources = [
    {
      vessel: { shape: "upright", diameter: "571 mm", height: `${height.toFixed(6)} m` },
      level: { full: `${full.toFixed(6)} m` },
      vent: "sealed",
    },
  ];
  // The outlet is 5 cm up; the drinker hangs 1 m below the full level.
  const drinkers = { kind: "cup-float", drop: `${(1 - full + 0.05).toFixed(6)} m` };
  const line = lineOf([{ length: "3 m", drinkers }], { sources });
  expect((givenBeforeStall(line, line.sources[0]!) ?? 0) * 1000).toBeCloseTo(1.1, 1);
});

test("givenBeforeStall(vessel that takes in air) does not arise", () => {
  const line = barrel("open");
  expect(givenBeforeStall(line, line.sources[0]!)).toBeUndefined();
});

test("buildMoments puts the farthest of a group to work at the busiest, spread ones in an ordinary hour, none when idle", () => {
  const line = lineOf([
    { length: "3 m", drinkers: { kind: "cup-float", count: 6, every: "50 cm", busiest: 2, ordinary: 2 } },
  ]);
  const { named, idle } = buildMoments(line);
  expect([...named.fullBusiest.atWork]).toEqual([0, 0, 0, 0, 1, 1]);
  expect([...named.lowestBusiest.atWork]).toEqual([0, 0, 0, 0, 1, 1]);
  expect([...named.ordinary.atWork]).toEqual([0, 1, 0, 0, 1, 0]);
  expect([...named.fullIdle.atWork]).toEqual([0, 0, 0, 0, 0, 0]);
  expect([...idle.lowestBusiest.atWork]).toEqual([0, 0, 0, 0, 0, 0]);
});

test("buildMoments chooses the farthest by pipe, not by place in the plan", () => {
  const line = lineOf([
    { length: "1 m", to: "tee" },
    { length: "9 m", from: "barrel", to: "tee" },
    { from: "tee", length: "2 m", drinkers: { kind: "cup-float", count: 2, busiest: 1 } },
  ]);
  expect([...buildMoments(line).named.fullBusiest.atWork]).toEqual([0, 1]);
});
