import { describe, expect, it } from "vitest";
import { DRIP } from "../../../../packages/hydraulics/src/judge/asked-plan.js";
import { readAsFilled, readDrinker } from "../../../../packages/hydraulics/src/judge/read-drinker.js";
import { supposeAirAtHumps } from "../../../../packages/hydraulics/src/judge/trouble/air-causes.js";
import { askAboutTrouble } from "../../../../packages/hydraulics/src/judge/trouble/ask-about-trouble.js";
import { drawnFrom } from "../../../../packages/hydraulics/src/judge/trouble/bench.js";
import { expectTrial } from "../../../../packages/hydraulics/src/judge/trouble/expect-trial.js";
import type { Expectation } from "../../../../packages/hydraulics/src/judge/trouble/expectation.js";
import { answerOfKeeper } from "../../../../packages/hydraulics/src/judge/trouble/rehearse-keeper.js";
import { mayHappen } from "../../../../packages/hydraulics/src/judge/trouble/rehearse-truth.js";
import { randomFrom } from "../../../../packages/hydraulics/src/numerics/random.js";
import { penPlan } from "../birds/pens.js";
import { yard } from "../yard/yard.js";
import { ASKED_ON, example, planOf } from "./ask.js";

function asked(plan = example("alder-bank-brooder")) {
  const asking = askAboutTrouble(plan, { day: ASKED_ON });
  if (!asking.ok) throw new Error(JSON.stringify(asking.problems));
  return asking.question;
}
const asIs = (line: Parameters<typeof expectTrial>[1]["line"]) => ({
  weight: 1,
  severity: {},
  line,
  isAlike: true,
});

describe("expectTrial", () => {
  it("of the plan as it should be gives each drinker what the check reads of it in an ordinary hour", () => {
    const { bench, usual } = asked();
    const { solved, moments, filling } = bench.asked.judged;
    const { drinkers } = bench.line;
    drinkers.id.forEach((_, d) => {
      const point = drinkers.point[d]!;
      const read = readDrinker(bench.line, solved.darcyWeisbach.ordinary, moments, "ordinary", d);
      const { flow } = readAsFilled(bench.line, d, read, { airHead: 0, above: filling.above[point]! });
      expect(flow).toBeGreaterThan(0);
      expect(usual.flow[d]! / flow).toBeCloseTo(1, 5);
    });
  });

  it("lets the level fall at night by what a drinker drips that no longer holds", () => {
    const { bench, usual } = asked(
      planOf({ ...penPlan(), pens: undefined, runs: penPlan().runs, weather: undefined }),
    );
    const groups = bench.line.drinkers.groups.map((group) => ({ ...group, holdsUpTo: 0.01 }));
    const line = { ...bench.line, drinkers: { ...bench.line.drinkers, groups } };
    const { sources, leaks } = expectTrial(bench, asIs(line), usual);
    const drips = bench.line.drinkers.count * DRIP.expect;
    expect(leaks.reduce((sum, { flow }) => sum + flow, 0)).toBeCloseTo(drips, 15);
    const area = (Math.PI / 4) * 0.57 ** 2;
    expect(usual.sources[0]!.nightFall).toBe(0);
    expect(sources[0]!.nightFall).toBeCloseTo((drips * bench.dark) / area, 9);
  });
});

describe("the end of a run, opened", () => {
  // Ten centimetres of 15.8 mm pipe: nearly all of the head goes into the jet, a √(2 g h).
  const stub = (more: Record<string, unknown> = {}) =>
    asked(
      planOf(
        yard({
          stand: "0 cm",
          ...{ full: "60 cm", lowest: "10 cm" },
          runs: [
            {
              ...{ id: "stub", length: "10 cm", fall: "0 cm", pipe: { bore: "15.8 mm" } },
              ...{ drinkers: { kind: "plain", count: 1 }, ...more },
            },
          ],
        }),
      ),
    ).bench;
  const jet = (head: number) => (Math.PI / 4) * 0.0158 ** 2 * Math.sqrt(2 * 9.80665 * head);
  const trialWith = (bench: ReturnType<typeof stub>, level: number, airHead?: number) => ({
    ...{ ...asIs(bench.line), levels: [level] },
    ...(airHead === undefined ? {} : { airHead: new Float64Array(bench.line.points.count).fill(airHead) }),
  });

  it("pours by Torricelli's law, less what its entry and six diameters of pipe take: about √(1/1.7)", () => {
    const bench = stub();
    const poured = (level: number, airHead?: number) =>
      expectTrial(bench, trialWith(bench, level, airHead), undefined).endShare(0);
    // From the outlet at 5 cm the pipe goes down to where the vessel stands.
    for (const level of [0.55, 0.3, 0.1]) {
      expect(poured(level) / jet(level)).toBeLessThan(0.85);
      expect(poured(level) / jet(level)).toBeGreaterThan(0.72);
    }
  });

  it("pours with a column of air on the way as if it stood that much higher, and not at all against a higher one", () => {
    const bench = stub();
    const poured = (level: number, airHead: number) =>
      expectTrial(bench, trialWith(bench, level, airHead), undefined).endShare(0);
    expect(poured(0.55, 0.2) / poured(0.35, 0)).toBeCloseTo(1, 6);
    expect(poured(0.25, 0.3)).toBe(0);
  });

  it("is told against what it pours as it should", () => {
    const bench = stub();
    const usual = expectTrial(bench, trialWith(bench, 0.55), undefined);
    const now = expectTrial(bench, trialWith(bench, 0.55, 0.3), usual);
    const bare = expectTrial(bench, trialWith(bench, 0.55, 0.3), undefined);
    expect(now.endShare(0)).toBeCloseTo(bare.endShare(0) / usual.endShare(0), 12);
    // √(25/55), for the loss in the pipe goes nearly as the jet's own.
    expect(now.endShare(0)).toBeCloseTo(Math.sqrt(0.25 / 0.55), 2);
  });
});

describe("what fills a source", () => {
  const filled = (refill: unknown) =>
    asked(
      planOf(
        yard({
          ...{ full: "60 cm", lowest: "10 cm", source: { refill } },
          runs: [{ length: "2 m", fall: "0 cm", drinkers: { kind: "plain", count: 1 } }],
        }),
      ),
    );

  it("hides every fall where it is a hose, and none where it is somebody with a can, or nobody", () => {
    const isKept = (refill: unknown) => filled(refill).usual.sources[0]!.isKeptFull;
    expect(isKept({ hose: "1 L/min" })).toBe(true);
    expect(isKept({ every: "1 day" })).toBe(false);
    expect(isKept("none")).toBe(false);
  });

  it("is told to be nothing in a trial in which nobody fills it any more", () => {
    const { bench, usual } = filled({ hose: "1 L/min" });
    const now = expectTrial(bench, { ...asIs(bench.line), notFilled: 0 }, usual);
    expect(now.sources[0]).toMatchObject({ isKeptFull: false, dayUsual: usual.sources[0]!.dayFall });
    // An hour and a half of its one drinker at work, 57 cm across.
    const hour = bench.line.drinkers.groups[0]!.ordinary;
    expect(hour).toBeGreaterThanOrEqual(0);
    expect(now.sources[0]!.dayFall).toBeGreaterThanOrEqual(usual.sources[0]!.dayFall);
  });
});

describe("where water is seen on the ground", () => {
  it("is along every run that meets the place, and at a source that stands there", () => {
    const { bench, usual } = asked();
    const { line } = bench;
    expect(line.runs).toHaveLength(2);
    const pouring = (point: number) => {
      const leaks = [{ point, height: line.points.height[point]!, coefficient: 1e-5 }];
      return expectTrial(bench, { ...asIs({ ...line, leaks }), isAlike: false }, usual).leaks;
    };
    const atSource = pouring(line.sources[0]!.point).map(({ at, index, run: on }) => [at, index, on]);
    expect(atSource).toEqual([
      ["run", 0, 0],
      ["source", 0, -1],
    ]);
    const alongOf = (r: number) => pouring(line.runs[r]!.points.at(-1)!).map(({ at, index }) => [at, index]);
    expect(alongOf(0)).toEqual([
      ["run", 0],
      ["run", 1],
    ]);
    expect(alongOf(1)).toEqual([["run", 1]]);
  });
});

describe("drawnFrom", () => {
  it("is nothing of birds that have not come, though their drinkers give nothing", () => {
    const { bench } = asked(planOf(penPlan({ birds: { kind: "hen", count: 24, arrives: "2026-09-01" } })));
    const flow = new Float64Array(bench.line.drinkers.count);
    expect(drawnFrom(bench, bench.asked.flock, 0, { flow, ordinary: 1e-6 })).toEqual({ day: 0, night: 0 });
  });
});

describe("drawnFrom a line without birds", () => {
  it("is an hour and a half of an ordinary hour a day, all of it in the light", () => {
    const { bench } = asked(planOf({ ...penPlan(), pens: undefined }));
    const flow = new Float64Array(bench.line.drinkers.count).fill(1e-6);
    expect(drawnFrom(bench, bench.asked.flock, 0, { flow, ordinary: 2e-6 })).toEqual({
      day: expect.closeTo(2e-6 * 5400, 12),
      night: 0,
    });
  });
});

describe("supposeAirAtHumps", () => {
  it("leaves all of a hump's column, or half of it", () => {
    const survey = [1, 4].flatMap((along) => [
      { along: `${along} m`, fall: "-10 cm" },
      { along: `${along + 1} m`, fall: "0 cm" },
    ]);
    const half = { fall: "0 cm", pipe: { bore: "15.8 mm" } };
    const lane = { id: "lane", length: "12 m", survey, ...half, drinkers: { kind: "plain", count: 1 } };
    const { bench } = asked(
      planOf(yard({ stand: "0 cm", lowest: "30 cm", runs: [{ length: "2 m", ...half }, lane] })),
    );
    const supposed = supposeAirAtHumps(bench);
    const [whole, kept] = supposed!.trials;
    // Two columns of 10 cm.
    expect(supposed!.cause).toMatchObject({ code: "airLocked", id: "lane at 4.00 m" });
    expect([whole, kept].map((trial) => trial!.severity.airHead)).toEqual([
      expect.closeTo(0.2, 9),
      expect.closeTo(0.1, 9),
    ]);
    expect(Math.max(...kept!.airHead!)).toBeCloseTo(0.1, 9);
  });
});

describe("what is made to happen", () => {
  it("makes a stopped run shut, or open by a little: never what it does not say", () => {
    const { bench } = asked();
    const makers = mayHappen(bench);
    const random = randomFrom(5);
    const stopped = Array.from({ length: 6 }, () => makers.map((make) => make(bench, random)))
      .flat()
      .filter(({ cause }) => cause.code === "runBlocked" && cause.at === "run");
    const shares = stopped.flatMap(({ trial }) =>
      trial.isAlike === false ? [trial.severity.openShare] : [],
    );
    expect(shares.length).toBeGreaterThan(0);
    expect(new Set(shares)).toEqual(new Set([0]));
  });
});

describe("answerOfKeeper", () => {
  it("finds the ground wet where water runs out, more often than along its run, and dry elsewhere", () => {
    const { usual, seen, bench } = asked();
    const [run] = bench.line.runs;
    const leaks: Expectation["leaks"] = [{ at: "drinker", index: 1, run: 0, flow: 1e-6 }];
    const wetAt = (at: "drinker" | "run", id: string) => {
      const random = randomFrom(7);
      const told = Array.from({ length: 300 }, () =>
        answerOfKeeper({ look: "ground", at, id }, { ...usual, leaks }, seen, random),
      );
      return told.filter((sign) => "sees" in sign && sign.sees === "wet").length / told.length;
    };
    const [here, there] = [1, 2].map((d) => wetAt("drinker", bench.line.drinkers.id[d]!));
    expect(here).toBeGreaterThan(0.97);
    expect(there).toBeLessThan(0.03);
    expect(wetAt("run", run!.id)).toBeCloseTo(0.6, 1);
  });
});
