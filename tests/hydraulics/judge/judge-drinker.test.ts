import { describe, expect, it } from "vitest";
import type { DrinkerVerdict } from "../../../packages/hydraulics/src/judge/check-result.js";
import { judgeDrinker } from "../../../packages/hydraulics/src/judge/judge-drinker.js";
import { solveMoments } from "../../../packages/hydraulics/src/judge/solve-moments.js";
import { buildMoments } from "../../../packages/hydraulics/src/model/moment.js";
import { headLossDarcyWeisbach } from "../../../packages/hydraulics/src/physics/darcy-weisbach.js";
import { checkOf, PLAIN, reasonOf, verdictOf, yard } from "./yard/yard.js";

const mm = (metres: number) => Math.round(1000 * metres * 100) / 100;
const one = (more: Record<string, unknown> = {}) => ({ kind: "plain", count: 1, ...more });
/** Pipe so wide that nothing is lost in it. */
const wide = { pipe: { bore: "10 cm" } };
const summary = ({ verdict, moment, because, also }: DrinkerVerdict) => ({
  verdict,
  moment,
  code: because.code,
  also: also.map((other) => `${other.verdict} ${other.because.code}`),
});

describe("checkPlan judges a drinker good", () => {
  it("when its need is met at the lowest level: 50 cm there, 16 cm needed, 340 mm to spare", () => {
    const good = verdictOf(checkOf(yard({ runs: [{ length: "2 m", ...wide, drinkers: one() }] })));
    expect(summary(good)).toEqual({
      verdict: "good",
      moment: "lowestBusiest",
      code: "flowsEnough",
      also: [],
    });
    expect(mm(good.margin)).toBe(340);
    const reason = reasonOf(good.because, "flowsEnough");
    // 100 mL/min sqrt(0.5) = 70.7 mL/min; idle and full it stands under 40 + 70 cm.
    expect(reason.flow * 6e7).toBeCloseTo(70.71, 2);
    expect(reason.need * 6e7).toBeCloseTo(40, 9);
    expect(mm(reason.idleHead)).toBe(1100);
    expect(good.moments.ordinary.hazenWilliams.staticHead).toBeCloseTo(0.8, 9);
    expect(good.moments.fullIdle.darcyWeisbach).toEqual({ staticHead: 1.1, flowingHead: 1.1, flow: 0 });
    expect(good.moments.fullBusiest.darcyWeisbach.flow * 6e7).toBeCloseTo(100 * Math.sqrt(1.1), 2);
  });

  it("by what the longer way leaves: the root of laminar loss and drinker by hand, with the worse law's margin", () => {
    const run = { length: "40 m", pipe: { bore: "6 mm" }, drinkers: one() };
    const good = verdictOf(checkOf(yard({ runs: [run], source: { outlet: "5 cm" } })));
    const loss = (q: number) =>
      headLossDarcyWeisbach({ length: 40, bore: 0.006, roughness: 1.5e-6, viscosity: 1.0034e-6 }, q);
    let [low, high] = [0, 1e-5];
    for (let k = 0; k < 60; k += 1) {
      const q = (low + high) / 2;
      [low, high] = loss(q) + (q / PLAIN.coefficient) ** 2 > 0.5 ? [low, q] : [q, high];
    }
    const reading = good.moments.lowestBusiest.darcyWeisbach;
    // The way in from the barrel, which the plan always counts, costs a hundredth of a millimetre here.
    expect(reading.flow * 6e7).toBeCloseTo(low * 6e7, 1);
    expect(mm(reading.flowingHead)).toBeCloseTo(mm(0.5 - loss(low)), 0);
    expect(good.friction).toBe("darcyWeisbach");
  });
});

describe("checkPlan judges a drinker to starve", () => {
  const far = yard({
    runs: [
      { length: "1 m", ...wide },
      { length: "60 m", pipe: { bore: "7 mm" }, drinkers: { kind: "plain", count: 20, busiest: "100 %" } },
    ],
  });

  it("at the far end while the near ones have enough, and says how much was lost on the way", () => {
    const checked = checkOf(far);
    const verdicts = checked.drinkers.map(({ verdict }) => verdict);
    expect(verdicts[0]).toBe("good");
    expect(verdicts.at(-1)).toBe("starves");
    // Once one starves all beyond it do.
    expect(verdicts.slice(verdicts.indexOf("starves")).every((verdict) => verdict === "starves")).toBe(true);
    const last = verdictOf(checked, 19);
    const reason = reasonOf(last.because, "flowTooLow");
    expect(reason.flow).toBeLessThan(reason.need);
    expect(reason.headNeeded).toBeCloseTo(PLAIN.headNeeded, 9);
    expect(reason.staticHead - reason.lostOnTheWay).toBeCloseTo(reason.head, 9);
    expect(reason.flow).toBeCloseTo(PLAIN.coefficient * Math.sqrt(reason.head), 12);
    expect(last.margin).toBeLessThan(0);
    expect(checked.counts.good + checked.counts.starves).toBe(20);
    expect(checked.verdict).toBe("starves");
  });

  it("when the lowest level stands 12 cm over it and 16 are needed: 40 mm short", () => {
    const runs = [{ length: "2 m", ...wide, drinkers: one() }];
    const short = verdictOf(checkOf(yard({ stand: "2 cm", runs })));
    expect(summary(short)).toMatchObject({ verdict: "starves", moment: "lowestBusiest", code: "flowTooLow" });
    expect(mm(short.margin)).toBe(-40);
  });

  it("though it is not among those at work: it is judged as worked besides them", () => {
    const drinkers = { kind: "plain", count: 2, every: "20 m", busiest: 1, need: "60 mL/min" };
    const checked = checkOf(
      yard({ stand: "35 cm", runs: [{ length: "40 m", pipe: { bore: "5 mm" }, drinkers }] }),
    );
    const near = verdictOf(checked, 0);
    const alone = checkOf(
      yard({
        stand: "35 cm",
        runs: [{ length: "20 m", pipe: { bore: "5 mm" }, drinkers: one({ need: "60 mL/min" }) }],
      }),
    );
    expect(near.margin).toBeLessThan(verdictOf(alone).margin);
    expect(near.moments.lowestBusiest.darcyWeisbach.flow).toBeGreaterThan(0);
  });
});

describe("checkPlan judges a drinker to drip", () => {
  it("at the lowest place only, where the full barrel stands over more than it holds", () => {
    // Full 110 cm over the ground; the line falls 30 cm over four drinkers; each holds 125 cm.
    const runs = [
      { length: "4 m", ...wide },
      { length: "4 m", fall: "30 cm", ...wide, drinkers: { kind: "plain", count: 4 } },
    ];
    const checked = checkOf(yard({ runs, drinker: { holdsUpTo: "125 cm" } }));
    expect(checked.drinkers.map(({ verdict }) => verdict)).toEqual(["good", "good", "drips", "drips"]);
    const lowest = verdictOf(checked, 3);
    expect(summary(lowest)).toEqual({
      verdict: "drips",
      moment: "fullIdle",
      code: "idleHeadTooHigh",
      also: [],
    });
    expect(mm(lowest.margin)).toBe(-150);
    expect(mm(reasonOf(lowest.because, "idleHeadTooHigh").head)).toBe(1400);
  });

  it("when the lowest level is too little to press its seal shut: 12 cm where 20 are wanted", () => {
    const runs = [{ length: "2 m", ...wide, drinkers: one({ need: "20 mL/min" }) }];
    const weeps = verdictOf(checkOf(yard({ stand: "2 cm", runs, drinker: { sealsFrom: "20 cm" } })));
    expect(summary(weeps)).toMatchObject({
      verdict: "drips",
      moment: "lowestBusiest",
      code: "idleHeadTooLow",
    });
    expect(mm(weeps.margin)).toBe(-80);
    expect(mm(reasonOf(weeps.because, "idleHeadTooLow").sealsFrom)).toBe(200);
  });

  it("besides starving: the worse stands first, the other is told too", () => {
    const runs = [{ length: "2 m", ...wide, drinkers: one() }];
    const both = verdictOf(checkOf(yard({ stand: "2 cm", runs, drinker: { holdsUpTo: "60 cm" } })));
    expect(summary(both)).toEqual({
      verdict: "starves",
      moment: "lowestBusiest",
      code: "flowTooLow",
      also: ["drips idleHeadTooHigh"],
    });
    // Full: 2 + 70 cm over a drinker that holds 60.
    expect(mm(both.also[0]!.margin)).toBe(-120);
  });
});

describe("checkPlan judges a drinker dry", () => {
  it("too high: the lowest level stands under its opening head", () => {
    const runs = [
      { length: "2 m", ...wide },
      { length: "4 m", fall: "-52 cm", ...wide, drinkers: one({ kind: "plain" }) },
    ];
    const dry = verdictOf(checkOf(yard({ runs })));
    expect(summary(dry)).toMatchObject({ verdict: "dry", moment: "lowestBusiest", code: "tooHigh" });
    // The water at its lowest stands at 50 cm; the drinker at 52, and needs 16 more.
    expect(mm(dry.margin)).toBe(-180);
  });

  it("too high by its own opening head: 5 cm over it where 6 open it", () => {
    const runs = [{ length: "2 m", ...wide, drinkers: one() }];
    const source = { level: { full: "70 cm", lowest: "5 cm" } };
    const opens = {
      opensAt: "6 cm",
      readings: [
        { head: "31 cm", flow: "50 mL/min" },
        { head: "106 cm", flow: "100 mL/min" },
      ],
    };
    const dry = verdictOf(checkOf(yard({ stand: "0 cm", runs, source, drinker: opens })));
    expect(summary(dry)).toMatchObject({ verdict: "dry", code: "tooHigh" });
    expect(reasonOf(dry.because, "tooHigh")).toMatchObject({ staticHead: 0.05 });
    expect(mm(dry.margin)).toBe(-170);
  });

  it("because friction takes all: drinkers before it draw so much that less is left than opens it", () => {
    const greedy = {
      readings: [
        { head: "25 cm", flow: "5 L/min" },
        { head: "1 m", flow: "10 L/min" },
      ],
      holdsUpTo: "5 m",
      need: "0 L/min",
    };
    const own = {
      greedy,
      plain: {
        readings: [
          { head: "31 cm", flow: "50 mL/min" },
          { head: "106 cm", flow: "100 mL/min" },
        ],
        opensAt: "6 cm",
        holdsUpTo: "5 m",
        need: "40 mL/min",
      },
    };
    const runs = [
      { length: "30 m", pipe: { bore: "8 mm" }, drinkers: { kind: "greedy", count: 1, busiest: 1 } },
      { length: "1 m", drinkers: one() },
    ];
    const checked = checkOf(yard({ stand: "10 cm", runs, more: { ownDrinkers: own } }));
    const dry = verdictOf(checked, 1);
    expect(summary(dry)).toMatchObject({ verdict: "dry", code: "frictionTakesAll" });
    const reason = reasonOf(dry.because, "frictionTakesAll");
    expect(mm(reason.staticHead)).toBe(200);
    expect(reason.head).toBeLessThan(0.06);
  });

  it("behind a shut tap, and behind a one-way valve laid against the flow", () => {
    const shut = [{ length: "2 m" }, { id: "lane", length: "2 m", tap: "shut", drinkers: one() }];
    expect(verdictOf(checkOf(yard({ runs: shut }))).because).toEqual({ code: "shutOff", at: "lane" });
    const against = [
      {
        id: "lane",
        from: "yard end",
        to: "barrel",
        length: "2 m",
        oneWay: true,
        drinkers: one({ first: "1 m" }),
      },
    ];
    const points = [{ id: "yard end", ground: "0 cm" }];
    const backwards = verdictOf(checkOf(yard({ runs: against, more: { points } })));
    expect(summary(backwards)).toMatchObject({ verdict: "good" });
    const behind = [
      { id: "lane", from: "yard end", to: "barrel", length: "2 m", oneWay: true },
      { from: "yard end", length: "2 m", drinkers: one() },
    ];
    expect(verdictOf(checkOf(yard({ runs: behind, more: { points } })))).toMatchObject({
      verdict: "dry",
      because: { code: "shutOff" },
    });
  });

  it("because a sealed barrel stalls: 15 cm of air over the water thins as it falls, by Boyle's law", () => {
    const runs = [{ length: "2 m", ...wide, drinkers: one() }];
    const dry = verdictOf(checkOf(yard({ runs, source: { vent: "sealed" } })));
    expect(summary(dry)).toMatchObject({ verdict: "dry", code: "sourceStalls" });
    const { litres, source } = reasonOf(dry.because, "sourceStalls");
    expect(source).toBe("barrel");
    // With area A, air 15 cm high when full and a fall x of the level: p0/(rho g) x/(15 cm + x) = 110 cm - x.
    const [p, air, head] = [101325 / (998.207 * 9.80665), 0.15, 1.1];
    let [low, high] = [0, 1];
    for (let k = 0; k < 60; k += 1) {
      const x = (low + high) / 2;
      [low, high] = (p * x) / (air + x) > head - x ? [low, x] : [x, high];
    }
    expect(litres).toBeCloseTo(1000 * (Math.PI / 4) * 0.57 ** 2 * low, 2);
  });
});

describe("judgeDrinker of a state that is not solved", () => {
  it("is dry, since nothing is known to flow, and says so instead of giving figures", () => {
    const { line } = checkOf(yard({ runs: [{ length: "2 m", ...wide, drinkers: one() }] }));
    const moments = buildMoments(line);
    const { fullIdle, lowestBusiest } = solveMoments(line, moments).darcyWeisbach;
    const stalled = {
      ...lowestBusiest,
      solution: { ...lowestBusiest.solution, outcome: "stalled" as const },
    };
    const none = new Float64Array(line.points.count);
    const filling = { findings: [], airHead: none, hump: new Int32Array(none.length).fill(-1), above: none };
    const situation = {
      line,
      moments,
      friction: "darcyWeisbach" as const,
      fullIdle,
      filling,
      stalledBelow: false,
    };
    expect(judgeDrinker({ ...situation, lowestBusiest }, 0)[0]).toMatchObject({ verdict: "good" });
    expect(judgeDrinker({ ...situation, lowestBusiest: stalled }, 0)[0]).toMatchObject({
      verdict: "dry",
      because: { code: "notSolved", outcome: "stalled" },
    });
  });
});

describe("checkPlan with laws that disagree", () => {
  // 40 mL/min through 60 m of 9 mm in cold water: 38 mm laminar, a tenth of that by Hazen-Williams; 185 mm to spend.
  const cold = (stand: string) =>
    checkOf(
      yard({
        stand,
        runs: [{ length: "60 m", pipe: { bore: "9 mm" }, drinkers: one() }],
        more: { water: "5 degC" },
      }),
    );

  it("keeps the cautious one, says they differ, and keeps both laws' figures", () => {
    const found = verdictOf(cold("8.5 cm"));
    const { hazenWilliams, darcyWeisbach } = found.moments.lowestBusiest;
    expect(hazenWilliams.flow).toBeGreaterThan(PLAIN.need);
    expect(darcyWeisbach.flow).toBeLessThan(PLAIN.need);
    expect(found).toMatchObject({ verdict: "starves", friction: "darcyWeisbach", lawsAgree: false });
  });

  it("agrees where there is head to spare for both", () => {
    expect(verdictOf(cold("60 cm"))).toMatchObject({ verdict: "good", lawsAgree: true });
  });
});
