import { expect, test } from "vitest";
import { checkDocument } from "../../../packages/hydraulics/src/document/read-plan.js";
import { buildLine } from "../../../packages/hydraulics/src/model/build-line.js";
import { SEGMENT_KIND } from "../../../packages/hydraulics/src/model/line.js";
import { GRAVITY } from "../../../packages/hydraulics/src/physics/constants.js";
import { velocityInBore } from "../../../packages/hydraulics/src/physics/darcy-weisbach.js";
import { headLossFitting } from "../../../packages/hydraulics/src/physics/fittings.js";
import { findFitting } from "../../../packages/hydraulics/src/tables/by-name.js";
import { fittingAtBore } from "../../../packages/hydraulics/src/tables/fittings.js";
import { builtFrom, faultsOf, lineOf } from "./built.js";

const nipples = (more: Record<string, unknown>) => ({ kind: "nipple-side-action", ...more });
const runOf = (drinkers: unknown, more: Record<string, unknown> = {}) =>
  lineOf([{ length: "3 m", drinkers, ...more }]);

test("buildLine lists every default it used back with its path, its value and why", () => {
  const { defaults } = builtFrom({
    headfall: 1,
    sources: [{ vessel: { shape: "upright", diameter: "50 cm", height: "80 cm" } }],
    runs: [{ length: "3 m", oneWay: true, drinkers: nipples({}) }],
  });
  expect(Object.fromEntries(defaults.map(({ path, value }) => [path, value]))).toEqual({
    water: "10 °C",
    "sources[0].ground": "0 cm",
    "sources[0].stand": "0 cm",
    "sources[0].outlet": "5 cm",
    "sources[0].level.full": "95 %",
    "sources[0].level.lowest": "2 cm",
    "sources[0].vent": "open",
    "runs[0].fall": "0 cm",
    "runs[0].pipe": "pvc-sch40-1/2",
    "runs[0].oneWay": "2 cm",
    "runs[0].drinkers.drop": "0 cm",
    "runs[0].drinkers.busiest": "50 %",
    "runs[0].drinkers.ordinary": "10 %",
  });
  for (const { because } of defaults) expect(because).not.toBe("");
});

test("buildLine uses no default where the plan speaks", () => {
  const { defaults } = builtFrom({
    headfall: 1,
    water: "12 degC",
    sources: [
      {
        vessel: "drum-55gal-plastic",
        ground: "0 m",
        stand: "0 m",
        outlet: "5 cm",
        level: { full: "70 cm", lowest: "10 cm", ordinary: "40 cm" },
        vent: "open",
      },
    ],
    runs: [{ length: "3 m", fall: "0 m", pipe: "pvc-sch40-3/4" }],
  });
  expect(defaults).toEqual([]);
});

test("buildLine makes a regular group one drinker after another, named by its place", () => {
  const { drinkers } = runOf(nipples({ count: 3, every: "30 cm", drop: "10 cm" }));
  expect(drinkers.id).toEqual(["run 1 1", "run 1 2", "run 1 3"]);
  expect([...drinkers.along]).toEqual([0.3, 0.6, 0.9].map((x) => expect.closeTo(x, 12)));
  expect([...drinkers.height]).toEqual([-0.055, -0.06, -0.065].map((x) => expect.closeTo(x, 12)));
});

test("buildLine hangs drinkers at the very ends of a run on its joints", () => {
  const line = runOf(nipples({ count: 2, first: "0 m", every: "3 m" }));
  expect([...line.drinkers.point].map((p) => line.points.id[p])).toEqual(["barrel", "run 1 end"]);
  expect(line.segments.count).toBe(1);
});

test("buildLine names the groups of one run apart", () => {
  const { drinkers } = runOf([nipples({ count: 2 }), { kind: "cup-float" }, nipples({ id: "chicks" })]);
  expect(drinkers.id).toEqual(["run 1 group 1 1", "run 1 group 1 2", "run 1 group 2", "chicks"]);
  expect(drinkers.groups.map(({ kindId }) => kindId)).toEqual([
    "nipple-side-action",
    "cup-float",
    "nipple-side-action",
  ]);
});

test.each([
  [undefined, 7, 4],
  ["50 %", 7, 4],
  ["0 %", 7, 0],
  ["1 %", 7, 1],
  ["100 %", 7, 7],
  ["10 %", 10, 1],
  ["30 %", 10, 3],
  [5, 7, 5],
  [0, 7, 0],
])("buildLine(busiest %s of %d) puts %d at work: shares are rounded up", (busiest, count, atWork) => {
  const line = runOf(nipples({ count, ...(busiest === undefined ? {} : { busiest }) }));
  expect(line.drinkers.groups[0]?.busiest).toBe(atWork);
});

test("buildLine puts a one-way valve and a regulator before the pipe of their run, in that order", () => {
  const line = lineOf([{ length: "3 m", oneWay: { opensAt: "3 cm" }, regulator: { sets: "25 cm", k: 4 } }]);
  const { segments, points } = line;
  expect([...segments.kind]).toEqual([SEGMENT_KIND.oneWay, SEGMENT_KIND.regulator, SEGMENT_KIND.pipe]);
  expect([...segments.setting]).toEqual([0.03, 0.25, 0].map((x) => expect.closeTo(x, 12)));
  expect([...segments.from].map((p) => points.id[p])).toEqual([
    "barrel",
    "run 1 after the one-way valve",
    "run 1 after the regulator",
  ]);
  expect(points.id[segments.to[2] as number]).toBe("run 1 end");
  expect(segments.kInfinity[1]).toBe(4);
});

test("buildLine counts the way in from a source once, and each fitting as often as the plan says", () => {
  const bore = lineOf([{ length: "3 m" }]).runs[0]?.bore ?? 0;
  const found = findFitting("elbow-90");
  const elbow = found.outcome === "found" ? found.kind : undefined;
  const kOf = (fittings: unknown[]) => lineOf([{ length: "3 m", fittings }]).segments.kInfinity[0] ?? 0;
  const one = (elbow?.kInfinity ?? Number.NaN) * (1 + (elbow?.sizeCorrection ?? 0) / bore);
  expect(kOf(["elbow-90 x 4"]) - kOf([])).toBeCloseTo(4 * one, 12);
  expect(kOf([{ name: "old valve", k: 2.5, count: 3 }]) - kOf([])).toBeCloseTo(7.5, 12);
  const second = lineOf([{ length: "3 m" }, { length: "1 m" }]);
  expect(second.segments.kInfinity[0]).toBeGreaterThan(0);
  expect(second.segments.kInfinity[1]).toBe(0);
});

test("buildLine loses in a narrow outlet its way in and the jet behind it, as at the outlet's own velocity", () => {
  const segmentsWith = (outletBore?: string) => {
    const source = { vessel: "drum-55gal-plastic", stand: "1 m", ...(outletBore ? { outletBore } : {}) };
    return lineOf([{ length: "3 m" }], { sources: [source] }).segments;
  };
  const [bore, outlet, viscosity, flow] = [segmentsWith().bore[0] ?? 0, 0.006, 1.3e-6, 2e-5];
  const { k1, kInfinity } = segmentsWith("6 mm");
  const lost = headLossFitting({ k1: k1[0] ?? 0, kInfinity: kInfinity[0] ?? 0, bore, viscosity }, flow);
  const found = findFitting("entry-sharp");
  const entry = found.outcome === "found" ? found.kind : undefined;
  const atOutlet = fittingAtBore(entry!, outlet);
  const [fast, slow] = [velocityInBore(outlet, flow), velocityInBore(bore, flow)];
  // Two-K in the outlet, and Borda and Carnot from there.
  const expected =
    headLossFitting({ ...atOutlet, bore: outlet, viscosity }, flow) + (fast - slow) ** 2 / (2 * GRAVITY);
  expect(Math.abs(lost / expected - 1)).toBeLessThan(1e-12);
  expect(segmentsWith("5 cm").kInfinity[0]).toBe(segmentsWith().kInfinity[0]);
});

test("buildLine shuts the first piece of a run whose tap is shut", () => {
  expect([...lineOf([{ length: "3 m", tap: "shut" }, { length: "1 m" }]).segments.shut]).toEqual([1, 0]);
});

test("buildLine fills a header tank up to its full level, from its point of the line", () => {
  const line = lineOf(
    [
      { length: "3 m", to: "tee" },
      { from: "tank", length: "1 m" },
    ],
    {
      sources: [
        { vessel: "drum-55gal-plastic", stand: "1 m" },
        {
          id: "tank",
          vessel: { shape: "box", length: "30 cm", width: "20 cm", height: "20 cm" },
          stand: "40 cm",
          outlet: "2 cm",
          level: { full: "15 cm" },
          feed: { from: "tee", opening: "6 mm" },
        },
      ],
    },
  );
  const feed = line.sources[1]?.feed;
  expect(line.points.id[feed?.point ?? -1]).toBe("tee");
  expect(feed?.height).toBeCloseTo(0.55, 12);
  // A jet through 6 mm at 1 m: 0.6 x area x sqrt(2 g x 1 m), closed form.
  expect(feed?.coefficient).toBeCloseTo(0.6 * (Math.PI / 4) * 0.006 ** 2 * Math.sqrt(2 * 9.80665), 9);
  // A header tank is topped up once its float has fallen 3 cm.
  expect(line.sources[1]?.levels.lowest).toBeCloseTo(0.12, 12);
});

test("buildLine takes an own drinker before one of the tables, and fits its law through the readings", () => {
  const own = {
    readings: [
      { head: "25 cm", flow: "60 mL/min" },
      { head: "1 m", flow: "120 mL/min" },
    ],
    holdsUpTo: "2 m",
    need: "50 mL/min",
  };
  const line = lineOf([{ length: "3 m", drinkers: { kind: "cup-float" } }], {
    ownDrinkers: { "cup-float": own },
  });
  expect(line.drinkers.coefficient[0]).toBeCloseTo(2e-6, 15);
  expect(line.drinkers.exponent[0]).toBeCloseTo(0.5, 12);
  expect(line.drinkers.groups[0]).toMatchObject({ kindId: "cup-float", holdsUpTo: 2, sealsFrom: 0 });
});

test.each([
  [{ level: { full: "90 cm" } }, "sources[0].level.full: doesNotFit"],
  [{ outlet: "20 cm", level: { lowest: "10 cm" } }, "sources[0].level.lowest: doesNotFit"],
  [{ outlet: "84 cm" }, "sources[0].level.lowest: doesNotFit"],
  [{ level: { ordinary: "82 cm" } }, "sources[0].level.ordinary: doesNotFit"],
])("buildLine(a drum 85 cm high with %o) is told %s", (more, fault) => {
  const sources = [{ vessel: "drum-55gal-plastic", ...more }];
  expect(faultsOf({ headfall: 1, sources, runs: [{ length: "3 m" }] })).toEqual([fault]);
});

test("buildLine refuses more drinkers than a plan may have", () => {
  const runs = [{ length: "9 km", drinkers: [nipples({ count: 200_000 }), nipples({ count: 1 })] }];
  expect(faultsOf({ headfall: 1, sources: [{ vessel: "drum-55gal-plastic" }], runs })).toEqual([
    "runs: tooMany",
  ]);
});

test("buildLine works out a very long line in work that grows as its drinkers", () => {
  const line = lineOf([{ length: "9 km", drinkers: nipples({ count: 60_000 }) }]);
  expect(line.drinkers.count).toBe(60_000);
  expect(line.segments.count).toBe(60_000);
});

test("buildLine calls a plan nothing that has no name, and bleeds no point that is not bled", () => {
  expect(lineOf([{ length: "3 m" }]).name).toBe("");
  const survey = [
    { along: "1 m", fall: "0 cm" },
    { along: "2 m", fall: "-20 cm", bleed: true },
  ];
  const { points } = lineOf([{ id: "line", length: "3 m", survey }]);
  expect(points.id.filter((_, p) => points.bleed[p] === 1)).toEqual(["line at 2.00 m"]);
});

test("buildLine lets the ground rise with the way between the ends of a run that is hung", () => {
  const { points } = lineOf(
    [{ id: "line", to: "end", length: "4 m", drinkers: { kind: "cup-float", first: "1 m" } }],
    { points: [{ id: "end", ground: "40 cm", above: "90 cm" }] },
  );
  expect(points.ground[points.id.indexOf("line at 1.00 m")]).toBeCloseTo(0.1, 12);
});

test("buildLine tells of levels the wrong way round the one that was typed", () => {
  const problemsOf = (level: object) => {
    const reading = checkDocument({
      headfall: 1,
      sources: [{ vessel: "drum-55gal-plastic", level }],
      runs: [{ length: "3 m" }],
    });
    if (!reading.ok) throw new Error("the document is none");
    const built = buildLine(reading.plan);
    return built.ok ? [] : built.problems.map(({ path, found }) => [path, found]);
  };
  expect(problemsOf({ full: "3 cm" })).toContainEqual(["sources[0].level.full", "3.0 cm"]);
  expect(problemsOf({ lowest: "85 cm" })).toContainEqual(["sources[0].level.lowest", "85.0 cm"]);
});

test("buildLine doubts an own drinker by as great a factor down as up, where its readings lie off a law", () => {
  const readings = [
    { head: "25 cm", flow: "60 mL/min" },
    { head: "50 cm", flow: "95 mL/min" },
    { head: "1 m", flow: "120 mL/min" },
  ];
  const own = { readings, holdsUpTo: "2 m", need: "50 mL/min" };
  const { groups } = lineOf([{ length: "3 m", drinkers: { kind: "own" } }], {
    ownDrinkers: { own },
  }).drinkers;
  expect(groups[0]!.flowHigh).toBeGreaterThan(1.05);
  expect(groups[0]!.flowLow * groups[0]!.flowHigh).toBeCloseTo(1, 12);
});
