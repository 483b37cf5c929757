import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { checkDocument } from "../../../packages/hydraulics/src/document/read-plan.js";
import { buildFlock } from "../../../packages/hydraulics/src/model/build-flock.js";
import { buildLine } from "../../../packages/hydraulics/src/model/build-line.js";
import { MISHAP_KINDS, type Mishap } from "../../../packages/hydraulics/src/model/mishap.js";
import { mishapsOf } from "../../../packages/hydraulics/src/model/mishaps-of.js";
import { buildMoments } from "../../../packages/hydraulics/src/model/moment.js";
import { flockWithMishap, withMishap } from "../../../packages/hydraulics/src/model/with-mishap.js";
import { prepareLine } from "../../../packages/hydraulics/src/solve/prepare-line.js";
import { solveLine } from "../../../packages/hydraulics/src/solve/solve-line.js";
import { type PlanData, randomPlan } from "../../arbitraries/plans.js";
import { cases } from "../../runner/cases.js";

const seeds = fc.integer({ min: 0, max: 0x7fffffff });

function made(data: PlanData) {
  const reading = checkDocument(data);
  if (!reading.ok) throw new Error(JSON.stringify(reading.problems));
  const built = buildLine(reading.plan);
  if (!built.ok) throw new Error(JSON.stringify(built.problems));
  const flocking = buildFlock(reading.plan, built.line, "2026-07-04");
  if (!flocking.ok) throw new Error(JSON.stringify(flocking.problems));
  const { line } = built;
  return { line, flock: flocking.flock, mishaps: mishapsOf(reading.plan, line, flocking.flock) };
}

/** Every so many-th mishap, so that a plan of many drinkers takes no longer than another. */
const some = (mishaps: readonly Mishap[], most = 12) =>
  mishaps.filter((_, k) => k % Math.ceil(mishaps.length / most) === 0);

const YARD: PlanData = {
  headfall: 1,
  sources: [
    { id: "tote", vessel: "tote-275gal", stand: "1 m", refill: { every: "1 day" } },
    {
      id: "tank",
      vessel: { shape: "box", length: "40 cm", width: "30 cm", height: "25 cm" },
      ground: "0 cm",
      stand: "60 cm",
      outlet: "3 cm",
      vent: { airTube: "8 cm" },
      feed: { from: "tee", opening: "6 mm" },
    },
    { id: "drum", vessel: "drum-55gal-plastic", refill: { hose: "5 L/min" }, vent: "sealed" },
  ],
  points: [{ id: "tee", ground: "0 cm", above: "30 cm" }],
  runs: [
    { id: "main", from: "tote", to: "tee", length: "10 m", tap: "open" },
    {
      id: "lane",
      from: "tee",
      length: "4 m",
      regulator: { sets: "20 cm" },
      oneWay: true,
      drinkers: { kind: "nipple-side-action", count: 2 },
    },
    { id: "cups", from: "tank", length: "2 m", fall: "20 cm", drinkers: { kind: "cup-float", count: 1 } },
    { id: "yard", from: "drum", length: "2 m", tap: "shut" },
  ],
  pens: [{ id: "hens", birds: { kind: "hen", count: 10 } }],
};

describe("mishapsOf", () => {
  it("makes one of every kind that a plan has a place for, each drinker, joint, run and device on its own", () => {
    const { mishaps } = made(YARD);
    const count = (kind: Mishap["kind"]) => mishaps.filter((one) => one.kind === kind).length;
    expect(Object.fromEntries(MISHAP_KINDS.map((kind) => [kind, count(kind)]))).toEqual({
      ventBlocked: 2,
      lidOff: 2,
      drinkerStuckOpen: 2,
      drinkerBlocked: 2,
      floatStuckDown: 1,
      floatStuckUp: 1,
      cupTipped: 1,
      // Three outlets, the tee, and three bare ends.
      jointApart: 7,
      runBlocked: 2,
      tapLeftShut: 1,
      tapLeftOpen: 1,
      regulatorGone: 1,
      regulatorShut: 1,
      oneWayOpen: 1,
      oneWayShut: 1,
      feedStuckDown: 1,
      feedStuckUp: 1,
      refillMissed: 1,
      hoseOff: 1,
      moreBirds: 1,
      hottestWeek: 1,
    });
  });

  it("makes no more birds of a batch that is not there", () => {
    const birds = [
      { kind: "hen", count: 10 },
      { kind: "pullet", count: 5, hatched: "2027-01-01" },
    ];
    const { mishaps } = made({ ...YARD, pens: [{ id: "hens", birds }] });
    expect(mishaps.filter(({ kind }) => kind === "moreBirds")).toEqual([
      { kind: "moreBirds", pen: 0, batch: 0 },
    ]);
  });
});

describe("withMishap", () => {
  it("shares what it does not change, and what concerns no pipe is the same line", () => {
    const { line, flock, mishaps } = made(YARD);
    for (const mishap of mishaps) {
      const changed = withMishap(line, mishap);
      expect(changed.runs).toBe(line.runs);
      expect(changed.water).toBe(line.water);
      const isOfLine = !["refillMissed", "hoseOff", "moreBirds", "hottestWeek"].includes(mishap.kind);
      expect([mishap.kind, changed !== line]).toEqual([mishap.kind, isOfLine]);
      const isOfBirds = ["moreBirds", "hottestWeek"].includes(mishap.kind);
      expect([mishap.kind, flockWithMishap(flock, mishap) !== flock]).toEqual([mishap.kind, isOfBirds]);
    }
  });

  it("is solved and passes its checks at every moment, on random plans", { timeout: 60_000 }, () => {
    fc.assert(
      fc.property(seeds, (seed) => {
        const { line, mishaps } = made(randomPlan(seed));
        for (const mishap of some(mishaps)) {
          const changed = withMishap(line, mishap);
          const moments = buildMoments(changed);
          const prepared = prepareLine(changed, "darcyWeisbach");
          for (const name of ["fullIdle", "lowestBusiest"] as const) {
            const solution = solveLine(prepared, moments.named[name]);
            expect([mishap, name, solution.outcome]).toEqual([mishap, name, "solved"]);
            const flows = [...solution.leakFlow, ...solution.drinkerFlow, ...solution.head];
            expect(flows.every(Number.isFinite)).toBe(true);
          }
        }
      }),
      cases(15),
    );
  });

  it("(joint apart) at a bare tank's outlet pours what a short tube of that bore does", () => {
    const { line } = made({
      headfall: 1,
      sources: [
        {
          vessel: { shape: "upright", diameter: "50 cm", height: "1 m" },
          outlet: "0 cm",
          level: { full: "80 cm", lowest: "10 cm" },
        },
      ],
      runs: [
        { length: "3 m", fall: "0 cm", pipe: { bore: "20 mm" }, drinkers: { kind: "nipple-side-action" } },
      ],
    });
    const apart = withMishap(line, { kind: "jointApart", point: line.sources[0]!.point });
    const solution = solveLine(prepareLine(apart, "darcyWeisbach"), buildMoments(apart).named.fullIdle);
    expect(solution.leakFlow[0]).toBeCloseTo(
      0.82 * (Math.PI / 4) * 0.02 ** 2 * Math.sqrt(2 * 9.80665 * 0.8),
      9,
    );
    // The pipe that came off it is fed by nothing.
    expect(Array.from(solution.leakFlow).slice(1)).toEqual([0]);
    expect(solution.reached[line.drinkers.point[0]!]).toBe(0);
  });

  it("(drinker stuck open) passes its law with nobody drinking; (blocked) nothing with all drinking", () => {
    const { line } = made(YARD);
    const open = withMishap(line, { kind: "drinkerStuckOpen", drinker: 1 });
    const idle = solveLine(prepareLine(open, "darcyWeisbach"), buildMoments(open).named.fullIdle);
    const head = idle.head[line.drinkers.point[1]!]! - line.drinkers.height[1]!;
    expect(head).toBeGreaterThan(0.1);
    expect(idle.drinkerFlow[1]).toBeCloseTo(
      line.drinkers.coefficient[1]! * (head - line.drinkers.openingHead[1]!) ** line.drinkers.exponent[1]!,
      12,
    );
    const shut = withMishap(line, { kind: "drinkerBlocked", drinker: 1 });
    const busy = solveLine(prepareLine(shut, "darcyWeisbach"), {
      ...buildMoments(shut).named.fullBusiest,
      atWork: new Uint8Array(line.drinkers.count).fill(1),
    });
    expect(busy.drinkerFlow[1]).toBe(0);
    expect(busy.drinkerFlow[0]).toBeGreaterThan(0);
  });
});
