import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { checkDocument } from "../../../../packages/hydraulics/src/document/read-plan.js";
import { MORNING } from "../../../../packages/hydraulics/src/judge/asked-plan.js";
import { runDown } from "../../../../packages/hydraulics/src/judge/mishaps/draw-struck.js";
import { endsOf } from "../../../../packages/hydraulics/src/judge/mishaps/mishap-ends.js";
import type { MishapResult } from "../../../../packages/hydraulics/src/judge/mishaps/mishap-result.js";
import {
  compareHarm,
  guardsForMishap,
  mishapsOfPlan,
} from "../../../../packages/hydraulics/src/judge/mishaps/mishaps-of-plan.js";
import { runMishap } from "../../../../packages/hydraulics/src/judge/mishaps/run-mishap.js";
import { strike } from "../../../../packages/hydraulics/src/judge/mishaps/strike.js";
import type { Mishap } from "../../../../packages/hydraulics/src/model/mishap.js";
import { mishapsOf } from "../../../../packages/hydraulics/src/model/mishaps-of.js";
import { withMishap } from "../../../../packages/hydraulics/src/model/with-mishap.js";
import { timeToDrainUpright } from "../../../../packages/hydraulics/src/physics/draining.js";
import { prepareLine } from "../../../../packages/hydraulics/src/solve/prepare-line.js";
import { reachState } from "../../../../packages/hydraulics/src/solve/solve-line.js";
import type { PlanData } from "../../../arbitraries/plans.js";
import { asked, planWithPens } from "../../../laws/asked-plans.js";
import { cases } from "../../../runner/cases.js";
import { headerTank } from "../header-tank.js";

const CASES = cases(2);
const seeds = fc.integer({ min: 0, max: 0x7fffffff });

const every = (value: unknown, visit: (number: number, path: string) => void, path = ""): void => {
  if (typeof value === "number") visit(value, path);
  else if (typeof value === "object" && value !== null)
    for (const [key, inner] of Object.entries(value)) every(inner, visit, `${path}.${key}`);
};

function readPlan(data: PlanData) {
  const reading = checkDocument(data);
  if (!reading.ok) throw new Error(JSON.stringify(reading.problems));
  return reading.plan;
}

/** Hens at nipples under a tank of its own size. */
const hens = (more: PlanData = {}, source: PlanData = {}): PlanData => ({
  headfall: 1,
  sources: [
    {
      vessel: { shape: "upright", diameter: "50 cm", height: "1 m" },
      stand: "50 cm",
      outlet: "2 cm",
      ...source,
    },
  ],
  runs: [
    { id: "hose", length: "5 m", fall: "-30 cm", pipe: "pe-metric-sdr11-20" },
    { id: "lane", length: "4 m", fall: "0 cm", drinkers: { kind: "nipple-side-action", count: 8 } },
  ],
  pens: [{ id: "hens", birds: { kind: "hen", count: 20 } }],
  ...more,
});

const only = (data: PlanData, mishap: Mishap): MishapResult => runMishap(asked(data), mishap);

describe("a mishap run through line and time", () => {
  it("keeps its litres, gives no number that is none, and harms no later than nothing does, on random plans", {
    timeout: 120_000,
  }, () => {
    fc.assert(
      fc.property(seeds, (seed) => {
        const found = asked(planWithPens(seed));
        const all = mishapsOf(found.plan, found.judged.line, found.flock);
        const nothing = runMishapless(found);
        for (const mishap of all.filter((_, k) => k % Math.ceil(all.length / 6) === 0)) {
          const result = runMishap(found, mishap);
          every(result, (number, path) => {
            expect([mishap, path, number]).toEqual([
              mishap,
              path,
              Number.isFinite(number) ? number : "finite",
            ]);
          });
          const { start, poured, drunk, lost, left } = result.balance;
          expect(Math.abs(start + poured - drunk - lost - left)).toBeLessThan(1e-9);
          expect([mishap, Math.min(start, poured, drunk + 1e-9, lost, left + 1e-9) >= 0]).toEqual([
            mishap,
            true,
          ]);
          if (mishap.kind === "refillMissed" || !HARMFUL.has(mishap.kind)) continue;
          const [is, was] = [result, nothing].map(({ firstWithout }) => firstWithout?.after ?? Infinity);
          // The height at which a pen comes short is found to a micrometre.
          expect([mishap, is! <= was! * (1 + 1e-4) + 600 ? "no later" : [is, was]]).toEqual([
            mishap,
            "no later",
          ]);
        }
      }),
      CASES,
    );
  });

  it("is a number where a leak comes to rest under a hose (plan 39816732: in and out differed by rounding alone)", () => {
    const { balance } = only(planWithPens(39_816_732), { kind: "jointApart", point: 6 });
    expect(Number.isFinite(balance.poured)).toBe(true);
    expect(balance.start + balance.poured - balance.drunk - balance.lost - balance.left).toBeCloseTo(0, 9);
    expect(balance.lost).toBeGreaterThan(0.1);
  });

  it("that changes nothing gives what nothing gives, to the bit", () => {
    const found = asked(hens());
    // A tap that stands open already, a hose that does not run.
    for (const mishap of [
      { kind: "tapLeftOpen", run: 0 },
      { kind: "hoseOff", source: 0 },
    ] as const) {
      const { mishap: _, leakRate, dripRate, dry, starve, drip, night, ...result } = runMishap(found, mishap);
      expect(result).toEqual(runMishapless(found));
      expect([leakRate, dripRate, dry, starve, drip, night.lost]).toEqual([0, 0, [], [], [], 0]);
    }
  });

  it("(joint apart at a bare tank) empties it in Torricelli's time, and loses all over the outlet", () => {
    const plan = hens({ pens: [] }, { outlet: "0 cm", level: { full: "90 cm", lowest: "1 cm" } });
    const { judged } = asked(plan);
    const result = only(plan, { kind: "jointApart", point: judged.line.sources[0]!.point });
    const bore = judged.line.runs[0]!.bore;
    const byLaw = timeToDrainUpright(
      { diameter: 0.5 },
      { area: (Math.PI / 4) * bore * bore, dischargeCoefficient: 0.82 },
      { from: 0.9, to: 0 },
    );
    // The solver leaves a tenth of a micrometre of head, which is something where the last millimetre runs out.
    expect(Math.abs(result.empty! / byLaw - 1)).toBeLessThan(5e-4);
    expect(result.balance.lost).toBeCloseTo((Math.PI / 4) * 0.25 * 0.9, 9);
    expect(result.dry).toHaveLength(8);
  });

  it("(drinker stuck open) lasts no longer through a wider opening, and starts at what its law gives", () => {
    const flows = ["0.03 L/min", "0.06 L/min", "0.3 L/min", "1 L/min"];
    const results = flows.map((flow) => {
      const own = {
        "our valve": {
          readings: [
            { head: "50 cm", flow },
            { head: "2 m", flow: flow.replace(/^[\d.]+/, (typed) => String(2 * Number(typed))) },
          ],
          holdsUpTo: "3 m",
          need: "0.01 L/min",
        },
      };
      const plan = hens({ ownDrinkers: own });
      const runs = (plan["runs"] as PlanData[]).map((run) =>
        run["drinkers"] === undefined ? run : { ...run, drinkers: { kind: "our valve", count: 8 } },
      );
      return only({ ...plan, runs }, { kind: "drinkerStuckOpen", drinker: 7 });
    });
    for (let k = 1; k < results.length; k += 1) {
      expect(results[k]!.empty).toBeLessThan(results[k - 1]!.empty!);
      expect(results[k]!.balance.lost).toBeGreaterThan(results[k - 1]!.balance.lost);
    }
    // Head over the valve when full: 95 cm of water on a stand of 50 cm, the valve 30 cm up.
    const head = 0.95 + 0.5 - 0.3;
    expect(results[0]!.leakRate).toBeLessThanOrEqual((0.03e-3 / 60) * Math.sqrt(head / 0.5) * 1.001);
    expect(results[0]!.leakRate).toBeGreaterThan((0.03e-3 / 60) * Math.sqrt((head - 0.02) / 0.5));
  });

  it("(drinker stuck open, cap off) empties it in the time that many small steps of the solved line take", () => {
    const plan = hens({ pens: [] }, { level: { full: "70 cm" } });
    const { line } = asked(plan).judged;
    for (const mishap of [
      { kind: "drinkerStuckOpen", drinker: 3 },
      { kind: "jointApart", point: line.runs[1]!.points.at(-1)! },
    ] as const) {
      const changed = withMishap(line, mishap);
      const prepared = prepareLine(changed, "darcyWeisbach");
      const [source] = line.sources;
      const rateAt = (volume: number) =>
        reachState(prepared, {
          name: "fullIdle",
          sourceHead: Float64Array.of(source!.base + volume / ((Math.PI / 4) * 0.25)),
          atWork: new Uint8Array(line.drinkers.count),
        }).sourceFlow[0]!;
      // From full to a hand over the outlet, by the midpoint rule in even steps of volume.
      const [full, end] = [0.7, 0.1].map((level) => (Math.PI / 4) * 0.25 * level);
      const steps = 400;
      let time = 0;
      for (let k = 0; k < steps; k += 1)
        time += (full! - end!) / steps / rateAt(full! - ((full! - end!) * (k + 0.5)) / steps);
      const found = asked(plan);
      const struck = strike(found, mishap);
      const { drawdown } = runDown(struck, { start: found.fullVolumes, from: 0, lasts: time });
      expect(drawdown.balance.left / end! - 1).toBeCloseTo(0, 3);
    }
  });

  it("(run blocked) at the only run leaves the pen without at once; in one of two pens' lines, only that pen", () => {
    expect(only(hens(), { kind: "runBlocked", run: 0 })).toMatchObject({
      firstWithout: { after: 0, pen: "hens" },
      leakRate: 0,
      balance: { lost: 0, drunk: 0 },
    });
    const two = hens({
      runs: [
        { id: "left", length: "4 m", fall: "30 cm", drinkers: { kind: "nipple-side-action", count: 8 } },
        {
          id: "right",
          from: "barrel",
          length: "4 m",
          fall: "30 cm",
          drinkers: { kind: "nipple-side-action", count: 8 },
        },
      ],
      pens: [
        { id: "a", drinkers: ["left"], birds: { kind: "hen", count: 20 } },
        { id: "b", drinkers: ["right"], birds: { kind: "hen", count: 20 } },
      ],
    });
    const blocked = only(two, { kind: "runBlocked", run: 1 });
    expect(blocked.firstWithout).toEqual({ after: 0, pen: "b" });
    expect(blocked.dry).toEqual([8, 9, 10, 11, 12, 13, 14, 15]);
  });

  it("(vent blocked) gives what Boyle's law lets out of a full barrel, and no more", () => {
    const result = only(hens({}, { stand: "30 cm" }), { kind: "ventBlocked", source: 0 });
    // 9.8 L of air, 0.91 m over what opens a nipple: V h / (10.34 m - h) = 0.95 L, less what the falling level takes.
    expect(result.balance.drunk * 1000).toBeGreaterThan(0.9);
    expect(result.balance.drunk * 1000).toBeLessThan(0.95);
    expect(result.balance.lost).toBe(0);
    expect(result.firstWithout!.after).toBeLessThan(86_400);
  });

  it("(lid off a siphon tank) presses from the water's surface, and what then stands too high drips", () => {
    const source = {
      vent: { airTube: "10 cm" },
      vessel: { shape: "upright", diameter: "50 cm", height: "3 m" },
    };
    const result = only(hens({}, source), { kind: "lidOff", source: 0 });
    expect(result.drip.length).toBeGreaterThan(0);
    expect(result.dripRate * 86_400e3).toBeCloseTo(0.72 * result.drip.length, 9);
  });

  it("(refill missed) harms where the water does not last two rounds, and only then", () => {
    const missed = { kind: "refillMissed", source: 0 } as const;
    const weekly = only(hens({}, { refill: { every: "7 days" } }), missed);
    expect(weekly.firstWithout).toBeUndefined();
    const seldom = only(hens({}, { refill: { every: "12 days" } }), missed);
    expect(seldom.firstWithout!.after).toBeGreaterThan(12 * 86_400);
    expect(seldom.firstWithout!.after).toBeLessThan(24 * 86_400);
  });

  it("(float valve of a header tank) stuck up leaves the tank's own water; stuck down loses what it lets in", () => {
    const [main, lane] = headerTank.runs;
    const { sources, points } = headerTank;
    const runs = [main!, { ...lane!, drinkers: { kind: "nipple-side-action", count: 8 } }];
    const plan = hens({ sources, points, runs });
    const up = only(plan, { kind: "feedStuckUp", source: 1 });
    // 17 cm of 40 x 30: 20.4 L for 20 hens that take about 6 L a day.
    expect(up.firstWithout!.after / 86_400).toBeGreaterThan(2);
    expect(up.firstWithout!.after / 86_400).toBeLessThan(4.5);
    const down = only(plan, { kind: "feedStuckDown", source: 1 });
    expect(down.leakRate).toBeGreaterThan(1e-5);
    expect(down.balance.lost).toBeGreaterThan(0.8);
    expect(down.firstWithout!.after / 3600).toBeLessThan(24);
  });
});

describe("mishapsOfPlan", () => {
  it("ranks by the soonest bird without, then by litres lost, then by drinkers lost; the same order every time", () => {
    const plan = readPlan(hens());
    const progress: number[] = [];
    const answer = mishapsOfPlan(plan, {
      day: "2026-07-04",
      guardsFor: 1,
      progress: (share) => progress.push(share),
    });
    if (!answer.ok) throw new Error(JSON.stringify(answer.problems));
    const { rows } = answer.mishaps;
    for (let k = 1; k < rows.length; k += 1)
      expect(compareHarm(rows[k - 1]!.worst, rows[k]!.worst)).toBeLessThanOrEqual(0);
    expect(rows[0]!.worst.mishap.kind).toBe("jointApart");
    const alone = guardsForMishap(plan, rows[0]!.worst.mishap, { day: "2026-07-04" });
    expect(alone).toMatchObject({ ok: true, result: rows[0]!.worst, guards: rows[0]!.guards });
    expect(progress.at(-1)).toBe(1);
    expect(progress).toEqual([...progress].sort((a, b) => a - b));
    const again = mishapsOfPlan(plan, { day: "2026-07-04", guardsFor: 1 });
    expect(again.ok && JSON.stringify(again.mishaps.rows)).toBe(JSON.stringify(rows));
    // Nothing is told that is not the plan's: each mishap stands for itself or for its group.
    expect(rows.reduce((sum, { count, kinds }) => sum + count * kinds.length, 0)).toBe(
      mishapsOf(plan, answer.mishaps.line, answer.mishaps.flock).length,
    );
  });
});

/** Kinds that never make water last longer. */
const HARMFUL = new Set<Mishap["kind"]>([
  "drinkerStuckOpen",
  "drinkerBlocked",
  "floatStuckDown",
  "floatStuckUp",
  "cupTipped",
  "moreBirds",
  "ventBlocked",
]);

function runMishapless(found: ReturnType<typeof asked>) {
  const struck = strike(found, undefined);
  const run = runDown(struck, { start: found.fullVolumes, from: MORNING, lasts: struck.lasts });
  const { balance, lost, until } = run.drawdown;
  const { start, poured, drawn, left } = balance;
  return {
    ...endsOf(struck, run, MORNING),
    balance: { start, poured, drunk: drawn - lost, lost, left },
    followed: until - MORNING,
  };
}
