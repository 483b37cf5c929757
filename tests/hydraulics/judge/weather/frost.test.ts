import { describe, expect, it, test } from "vitest";
import type { Plan } from "../../../../packages/hydraulics/src/document/plan-schema.js";
import { readPlan } from "../../../../packages/hydraulics/src/document/read-plan.js";
import { frostOfPlan } from "../../../../packages/hydraulics/src/judge/weather/frost.js";
import { refillsInFrost } from "../../../../packages/hydraulics/src/judge/weather/frost-refills.js";
import type { Frost } from "../../../../packages/hydraulics/src/judge/weather/frost-result.js";
import type { FrostAsked } from "../../../../packages/hydraulics/src/model/extremes.js";

const HOUR = 3600;

function planOf(more: Record<string, unknown> = {}): Plan {
  const reading = readPlan(
    JSON.stringify({
      headfall: 1,
      sources: [{ id: "barrel", vessel: "drum-55gal-plastic", stand: "1 m" }],
      runs: [
        {
          id: "hen line",
          length: "6 m",
          pipe: "pvc-sch40-3/4",
          drinkers: [
            { id: "nipples", kind: "nipple-side-action", count: 8 },
            { id: "cups", kind: "cup-float", count: 2 },
          ],
        },
      ],
      ...more,
    }),
  );
  if (!reading.ok) throw new Error(JSON.stringify(reading.problems));
  return reading.plan;
}

function frostOf(plan: Plan, asked: FrostAsked = { low: -10, hours: 12 * HOUR, wind: 0 }): Frost {
  const answer = frostOfPlan(plan, asked);
  if (!answer.ok) throw new Error(JSON.stringify(answer.problems));
  return answer.frost;
}

const part = ({ parts }: Frost, id: string) => parts.find((one) => one.id === id)!;

test("frostOfPlan meets the hours worked by hand for three-quarter inch PVC in still air at -10 °C", () => {
  const pipe = part(frostOf(planOf()), "hen line");
  expect(pipe.cold.soonest / HOUR).toBeCloseTo(0.33, 2);
  expect(pipe.solid.soonest / HOUR).toBeGreaterThan(4.1);
  expect(pipe.solid.soonest / HOUR).toBeLessThan(4.4);
  expect(pipe.material?.id).toBe("pvc");
});

test("the pin stops first, the cup next, the pipe after both; the full barrel lasts the night", () => {
  const frost = frostOf(planOf());
  const [pins, cups, pipe] = ["nipples", "cups", "hen line"].map((id) => part(frost, id).blocked!.soonest);
  expect(frost.parts[frost.first!]?.id).toBe("nipples");
  expect(pins).toBeLessThan(cups!);
  expect(cups).toBeLessThan(pipe!);
  expect(part(frost, "barrel")).toMatchObject({ lasts: "yes", blocked: undefined });
});

// Heat lost through a film is film times wall times the difference to the air; the water is held at 2 degC.
test("what holds open water goes with how much colder than 2 degC the air is", () => {
  const watts = (low: number) => part(frostOf(planOf(), { low, hours: 12 * HOUR, wind: 0 }), "cups").watts;
  const [mild, hard, harder] = [watts(-4), watts(-10), watts(-16)] as const;
  expect(hard - mild).toBeCloseTo(harder - hard, 9);
  expect(mild / (hard - mild)).toBeCloseTo((2 + 4) / 6, 9);
  expect(mild).toBeGreaterThan(0);
});

test("a pin at -2 °C is frozen in one to two hours, as keepers report", () => {
  const { blocked } = part(frostOf(planOf(), { low: -2, hours: 12 * HOUR, wind: 0 }), "nipples");
  expect(blocked!.soonest / HOUR).toBeGreaterThan(1);
  expect(blocked!.soonest / HOUR).toBeLessThan(2.1);
});

test("lagging delays, wind hastens; burial keeps the frost out for days", () => {
  const [run] = planOf().runs;
  const solid = (more: Record<string, unknown>, asked?: FrostAsked) =>
    part(frostOf(planOf({ runs: [{ ...run, ...more }] }), asked), "hen line").solid.soonest;
  expect(solid({ lagging: "13 mm" })).toBeGreaterThan(2 * solid({}));
  expect(solid({}, { low: -10, hours: HOUR, wind: 8 })).toBeLessThan(0.5 * solid({}));
  expect(solid({ buried: "60 cm" })).toBeGreaterThan(24 * HOUR);
});

test("the night is the plan's own, and what it leaves out is told", () => {
  const weather = {
    high: "20 degC",
    frost: { low: "-7 degC", high: "3 degC", hours: "14 h", wind: "2 m/s" },
  };
  const typed = frostOf(planOf({ weather, water: "8 degC" }), {});
  expect(typed.night).toEqual({ low: -7, high: 3, hours: 14 * HOUR, wind: 2 });
  expect(typed.defaults).toEqual([]);
  expect(typed.thaw.from).toBeGreaterThan(6 * HOUR);
  expect(typed.thaw.melts).toBeGreaterThan(0);
  const silent = frostOf(planOf(), {});
  expect(silent.night.low).toBe(-5);
  expect(silent.defaults.map(({ path }) => path)).toEqual([
    "weather.frost.low",
    "weather.frost.hours",
    "weather.frost.wind",
    "water",
  ]);
  expect(silent.thaw).toEqual({ from: undefined, to: undefined, melts: 0 });
});

test("a vessel fuller than nine tenths is told how much to let out", () => {
  const frost = frostOf(planOf());
  const { takeOut, empty } = frost.headSpace[0]!;
  expect(empty).toBeCloseTo(0.05, 6);
  expect(takeOut * 1000).toBeCloseTo(0.05 * 218, -0.5);
  expect(
    frostOf(planOf({ sources: [{ vessel: "drum-55gal-plastic", level: { full: "70 cm" } }] })).headSpace,
  ).toEqual([]);
});

test("air at 0 °C stops nothing", () => {
  const frost = frostOf(planOf(), { low: 0, hours: 12 * HOUR, wind: 5 });
  expect(frost.first).toBeUndefined();
  for (const { cold, lasts } of frost.parts) {
    expect(cold.soonest).toBe(Number.POSITIVE_INFINITY);
    expect(lasts).toBe("yes");
  }
});

describe("loose waterers", () => {
  const yard = (...waterers: unknown[]) =>
    planOf({ pens: [{ id: "coop", birds: { kind: "hen", count: 6 }, drinkers: ["hen line"], waterers }] });

  it("pan, fount, bell and nipple bucket each stop by what a beak meets", () => {
    const kinds = ["rubber-pan-3gal", "fount-1gal", "bell-bucket-5gal", "nipple-bucket-5gal", "trough-90cm"];
    const frost = frostOf(yard(...kinds.map((kind) => ({ id: kind, kind }))));
    const of = (id: string) => part(frost, id);
    expect(kinds.map((id) => of(id).kind)).toEqual(["pan", "fount", "fount", "bucket", "pan"]);
    expect(of("nipple-bucket-5gal").blocked).toEqual(part(frost, "nipples").blocked);
    expect(of("fount-1gal").blocked!.soonest).toBeLessThan(of("rubber-pan-3gal").blocked!.soonest);
    expect(of("fount-1gal").solid.soonest).toBeGreaterThan(of("fount-1gal").blocked!.soonest);
    expect(frost.refills.map(({ id }) => id)).toEqual(kinds.filter((id) => id !== "nipple-bucket-5gal"));
  });

  it("a plan of loose waterers alone has its night too", () => {
    const reading = readPlan(
      JSON.stringify({
        headfall: 1,
        sources: [],
        runs: [],
        pens: [{ birds: { kind: "hen", count: 3 }, drinkers: [], waterers: [{ kind: "fount-1gal" }] }],
      }),
    );
    if (!reading.ok) throw new Error(JSON.stringify(reading.problems));
    const frost = frostOf(reading.plan);
    expect(frost.parts).toHaveLength(1);
    expect(frost.drain).toEqual({ volume: 0, ends: [], sags: [], devices: [], untapped: [] });
  });
});

test("refillsInFrost: none at 0 °C, more the colder, fewer of deeper water; a thaw opens it again", () => {
  const open = { volume: 0.008, wall: 0.2, film: 10, water: 10 };
  const light = { from: 7 * HOUR, to: 17 * HOUR };
  const at = (air: number) => refillsInFrost(open, () => air, light);
  expect(at(0)).toBe(0);
  const counts = [-2, -5, -10, -20].map(at);
  expect(counts).toEqual([...counts].sort((a, b) => a - b));
  expect(counts.at(-1)).toBeGreaterThan(2);
  expect(refillsInFrost({ ...open, volume: 0.03 }, () => -10, light)).toBeLessThan(at(-10));
  expect(refillsInFrost(open, (time) => (time < 9 * HOUR ? -5 : 6), light)).toBe(0);
});

test("what holds water back when a line is drained is told by what it is: tap, one-way valve or regulator", () => {
  const reading = readPlan(
    JSON.stringify({
      headfall: 1,
      sources: [{ id: "barrel", vessel: "drum-55gal-plastic", stand: "1 m" }],
      points: ["a", "b", "c"].map((id) => ({ id, ground: "0 cm", above: "20 cm" })),
      runs: [
        { id: "first", to: "a", length: "2 m", oneWay: true },
        { id: "second", from: "a", to: "b", length: "2 m", regulator: { sets: "20 cm" } },
        { id: "third", from: "b", to: "c", length: "2 m", tap: "shut" },
      ],
    }),
  );
  if (!reading.ok) throw new Error(JSON.stringify(reading.problems));
  const answer = frostOfPlan(reading.plan, { low: -10, hours: 43_200, wind: 0 });
  if (!answer.ok) throw new Error(JSON.stringify(answer.problems));
  const found = answer.frost.drain.devices.map(({ run, kind }) => [run, kind]);
  expect(found).toContainEqual(["first", "oneWay"]);
  for (const [run, kind] of found)
    expect([run, kind]).toEqual([run, { first: "oneWay", second: "regulator", third: "tap" }[run!]]);
  expect(found.length).toBeGreaterThan(1);
});
