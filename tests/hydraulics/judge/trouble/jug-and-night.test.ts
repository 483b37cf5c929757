import { describe, expect, it, test } from "vitest";
import { supposeAirAtHumps } from "../../../../packages/hydraulics/src/judge/trouble/air-causes.js";
import { askAboutTrouble } from "../../../../packages/hydraulics/src/judge/trouble/ask-about-trouble.js";
import { benchOf, drawnFrom } from "../../../../packages/hydraulics/src/judge/trouble/bench.js";
import { FAULTY_PLAN, PRIORS } from "../../../../packages/hydraulics/src/judge/trouble/cause.js";
import { causesOf } from "../../../../packages/hydraulics/src/judge/trouble/causes-of.js";
import { logChanceOf } from "../../../../packages/hydraulics/src/judge/trouble/chances.js";
import { expectTrial } from "../../../../packages/hydraulics/src/judge/trouble/expect-trial.js";
import { mergeTrials } from "../../../../packages/hydraulics/src/judge/trouble/merge-trials.js";
import { supposeMishap } from "../../../../packages/hydraulics/src/judge/trouble/mishap-causes.js";
import { drawOfPen } from "../../../../packages/hydraulics/src/simulate/pen-draw.js";
import { penPlan } from "../birds/pens.js";
import { yard } from "../yard/yard.js";
import { ASKED_ON, example, planOf, sight, troubleOf } from "./ask.js";

function asked(document: unknown) {
  const asking = askAboutTrouble(planOf(document), { day: ASKED_ON });
  if (!asking.ok) throw new Error(JSON.stringify(asking.problems));
  return asking.question;
}

describe("what a jug gives", () => {
  const { usual, seen } = asked(penPlan());
  const id = [...seen.places.drinker.keys()][0]!;
  const density = (expected: number, flow: number) =>
    Math.exp(
      logChanceOf(
        { look: "jug", at: "drinker", id, flow },
        { ...usual, flow: usual.flow.map(() => expected) },
        seen,
      ),
    );
  /** Three in a hundred may be anything over four powers of ten, the rest spread by three tenths of a logarithm. */
  const byHand = (deviations: number) =>
    0.03 / Math.log(1e4) + (0.97 * Math.exp(-(deviations ** 2) / 2)) / (0.3 * Math.sqrt(2 * Math.PI));

  it("is likeliest as it should be, and falls off as a normal curve of its logarithm", () => {
    for (const deviations of [-2, -1, 0, 1, 3]) {
      const flow = (1e-6 + 2e-8) * Math.exp(0.3 * deviations) - 2e-8;
      expect(density(1e-6, flow)).toBeCloseTo(byHand(deviations), 9);
    }
  });

  it("may be next to nothing under a drinker that gives nothing: a jug takes a while to be sure", () => {
    expect(density(0, 0)).toBeCloseTo(byHand(0), 9);
    expect(density(0, 2e-8)).toBeCloseTo(byHand(Math.LN2 / 0.3), 9);
  });
});

describe("askAboutTrouble", () => {
  const plan = planOf(penPlan());
  const ask = (options: Parameters<typeof askAboutTrouble>[1]) => () =>
    askAboutTrouble(plan, { day: ASKED_ON, ...options });

  it("takes levels from the bottom to full, and refuses what no vessel holds", () => {
    for (const level of [0, 0.2, 0.4]) expect(ask({ levels: [level] })().ok).toBe(true);
    for (const level of [-0.001, 0.401, Number.NaN])
      expect(ask({ levels: [level] })).toThrow("it must be from 0 to 0.4");
  });

  it("takes a source to stand at its ordinary level, last seen a day ago, where nobody says", () => {
    const asking = ask({})();
    if (!asking.ok) throw new Error("it can be asked about");
    const { bench, seen } = asking.question;
    expect(bench.levels).toEqual([bench.line.sources[0]!.levels.ordinary]);
    expect(seen.usual.lastSeen).toBe(86_400);
    for (const lastSeen of [0, -1, Number.NaN]) expect(ask({ lastSeen })).toThrow("it must be above 0");
  });
});

describe("what birds draw of a source", () => {
  /** Litres of a pen by the minute, those in the light and all of them. */
  function byMinutes(document: ReturnType<typeof penPlan>) {
    const { bench } = asked(document);
    const { flock } = bench.asked;
    const { edges, rates, daily } = drawOfPen(bench.line, flock, flock.pens[0]!, "expect");
    const { dawn, light } = flock.weather;
    let dark = 0;
    for (let minute = 0; minute < 1440; minute += 1) {
      const time = 60 * minute + 30;
      const isLight = (time - dawn + 86_400) % 86_400 < light;
      if (!isLight) dark += 60 * rates[edges.findIndex((edge) => edge > time) - 1]!;
    }
    const flow = bench.line.drinkers.height.map(() => 1e-3);
    return { daily, dark, bench, drawn: drawnFrom(bench, flock, 0, { flow, ordinary: 0 }) };
  }

  it("is in the dark what is drunk outside the light, also where the light runs past midnight", () => {
    for (const weather of [
      { high: "21 degC", light: "14 h", dawn: "06:00" },
      { high: "21 degC", light: "10 h", dawn: "20:00" },
      { high: "21 degC", light: "16 h", dawn: "00:00" },
    ]) {
      const { daily, dark, drawn } = byMinutes(penPlan({ more: { weather } }));
      expect(drawn.day).toBeCloseTo(daily, 12);
      expect(drawn.night / daily).toBeCloseTo(dark / daily, 4);
      expect(dark).toBeGreaterThan(0);
    }
  });

  it("is less where drinkers pass less than is wanted: half of what a nipple passes is drunk", () => {
    const { bench, daily } = byMinutes(penPlan());
    const { flock } = bench.asked;
    const half = (flow: number) =>
      drawnFrom(bench, flock, 0, { flow: bench.line.drinkers.height.map(() => flow), ordinary: 0 }).day;
    const few = half(1e-8);
    expect(half(2e-8) / few).toBeCloseTo(2, 9);
    expect(half(1)).toBeCloseTo(daily, 12);
    expect(half(0)).toBe(0);
  });

  it("is an hour and a half of an ordinary hour where no birds are told", () => {
    const { bench } = asked({ ...penPlan(), pens: undefined });
    const { flock } = bench.asked;
    const of = (ordinary: number) => drawnFrom(bench, flock, 0, { flow: new Float64Array(8), ordinary });
    expect(of(1e-6)).toEqual({ day: expect.closeTo(1e-6 * 5400, 12), night: 0 });
    expect(of(-1e-6)).toEqual({ day: 0, night: 0 });
  });

  it("comes in equal parts from two sources of one line", () => {
    const barrel = (id: string) => ({ id, vessel: "drum-55gal-plastic", stand: "60 cm", ground: "0 cm" });
    const { bench } = asked({
      headfall: 1,
      sources: [barrel("left"), barrel("right")],
      points: [{ id: "tee", ground: "0 cm", above: "30 cm" }],
      runs: [
        { from: "left", to: "tee", length: "2 m" },
        { from: "right", to: "tee", length: "2 m" },
        { from: "tee", length: "3 m", fall: "0 cm", drinkers: { kind: "nipple-side-action", count: 4 } },
      ],
      pens: [{ birds: { kind: "hen", count: 8 } }],
    });
    expect(bench.drawnBy).toEqual([[{ pen: 0, share: 0.5 }], [{ pen: 0, share: 0.5 }]]);
    expect(bench.dark).toBe(86_400 - bench.asked.flock.weather.light);
  });
});

test("the plan itself is suspected first where its own check finds one drinker wanting, else as all others", () => {
  const priorOf = (lowest: string) => {
    const { bench, usual } = asked(
      yard({
        stand: "0 cm",
        lowest,
        runs: [
          {
            ...{ length: "4 m", fall: "0 cm" },
            drinkers: [
              { id: "low", kind: "plain", count: 1, first: "1 m" },
              { id: "high", kind: "plain", count: 1, first: "3 m", drop: "-20 cm" },
            ],
          },
        ],
      }),
    );
    const verdicts = bench.asked.judged.drinkers.map(({ verdict }) => verdict);
    const { candidates } = causesOf(bench, usual, []);
    return { verdicts, prior: candidates.find(({ cause }) => cause.code === "asDesigned")!.prior };
  };
  expect(priorOf("50 cm")).toEqual({ verdicts: ["good", "good"], prior: PRIORS.asDesigned });
  expect(priorOf("30 cm")).toEqual({ verdicts: ["good", "starves"], prior: FAULTY_PLAN });
});

test("a drinker that was looked at is tried though others stand for its neighbours", () => {
  const { bench, usual } = asked({
    headfall: 1,
    sources: [{ vessel: "drum-55gal-plastic", stand: "1 m" }],
    runs: [
      { length: "6 m", drinkers: { id: "lane", kind: "nipple-side-action", count: 50, every: "10 cm" } },
    ],
  });
  const signs = [1, 13].map((k) => sight("gives", "drinker", `lane ${k}`, "dry"));
  const { candidates, drinkersTried } = causesOf(bench, usual, signs);
  const blocked = candidates.filter(({ cause }) => cause.code === "drinkerBlocked");
  const ids = blocked.map(({ cause }) => cause.id);
  // Of fifty, forty-eight evenly: all but the thirteenth, which was looked at, and the thirty-eighth.
  expect([drinkersTried, ids.length]).toEqual([49, 49]);
  expect([ids.includes("lane 13"), ids.includes("lane 38")]).toEqual([true, false]);
  expect(blocked[0]!.prior).toBeCloseTo(PRIORS.drinkerBlocked / Math.sqrt(49), 12);
});

test("air is supposed at the hump that holds most of it, whichever comes first in the plan", () => {
  const branch = (id: string, height: string) => [
    { id: `${id} up`, from: "tee", to: id, length: "3 m" },
    { id: `${id} down`, from: id, length: "3 m", fall: height, drinkers: { kind: "plain", count: 1 } },
  ];
  const humpOf = (first: string, second: string) => {
    const { bench } = asked(
      yard({
        stand: "60 cm",
        lowest: "40 cm",
        runs: [
          { from: "barrel", to: "tee", length: "2 m" },
          ...branch("first", first),
          ...branch("second", second),
        ],
        more: {
          points: [
            { id: "tee", ground: "0 cm", above: "0 cm" },
            { id: "first", ground: "0 cm", above: first },
            { id: "second", ground: "0 cm", above: second },
          ],
        },
      }),
    );
    const supposed = supposeAirAtHumps(bench)!;
    return { id: supposed.cause.id, trials: supposed.trials };
  };
  expect(humpOf("30 cm", "10 cm").id).toBe("first");
  expect(humpOf("10 cm", "30 cm").id).toBe("second");
  const { trials } = humpOf("30 cm", "10 cm");
  expect(trials.map(({ weight, severity }) => [weight, severity.airHead])).toEqual([
    [0.6, expect.closeTo(0.3, 9)],
    [0.4, expect.closeTo(0.15, 9)],
  ]);
});

describe("the lid of a source", () => {
  const gainOf = (vent?: unknown) => {
    const { usual } = asked(
      yard({
        ...{
          stand: "0 cm",
          full: "60 cm",
          lowest: "20 cm",
          source: { outlet: "2 cm", ...(vent ? { vent } : {}) },
        },
        runs: [
          {
            ...{ length: "10 cm", fall: "0 cm", pipe: { bore: "15.8 mm" } },
            drinkers: { kind: "plain", count: 1 },
          },
        ],
      }),
    );
    return { gain: usual.lidGain(0), usual };
  };

  it("taken off changes nothing where the vessel is open", () => {
    expect(gainOf().gain).toBe(1);
  });

  it("taken off lets an air tube's constant head become that of the water: by the root of the two", () => {
    // Ordinarily half way between: 40 cm of water, the tube's foot at 10.
    const { gain } = gainOf({ airTube: "10 cm" });
    expect(gain).toBeGreaterThan(0.9 * Math.sqrt(0.4 / 0.1));
    expect(gain).toBeLessThan(1.02 * Math.sqrt(0.4 / 0.1));
  });
});

test("mergeTrials keeps the points of the one that has more of them, whichever comes first", () => {
  const { bench } = asked(penPlan());
  const trialOf = (mishap: Parameters<typeof supposeMishap>[1]) => supposeMishap(bench, mishap)!.trials[0]!;
  const apart = trialOf({ kind: "jointApart", point: bench.line.runs[0]!.points.at(-1)! });
  const blocked = trialOf({ kind: "drinkerBlocked", drinker: 2 });
  expect(apart.line.points.count).toBeGreaterThan(bench.line.points.count);
  for (const both of [mergeTrials(bench, apart, blocked), mergeTrials(bench, blocked, apart)]) {
    expect(both!.line.points.count).toBe(apart.line.points.count);
    const { flow } = expectTrial(bench, both!, undefined);
    expect(flow[2]).toBe(0);
  }
});

test("a source that is low, not empty, need not be filled before a look that wants water", () => {
  const { nextLook, moreLooks } = troubleOf(example("alder-bank-brooder"), [
    sight("water", "source", "bucket", "low"),
    sight("drips", "drinker", "chick nipples 5", "drips"),
  ]);
  const looks = [nextLook, ...moreLooks].filter((look) => look !== undefined);
  expect(looks.length).toBeGreaterThan(0);
  for (const { afterFilling } of looks) expect(afterFilling).toBe(false);
});

test("benchOf counts the dark hours, and holds nobody at work where nobody drinks", () => {
  const { bench } = asked(penPlan({ more: { weather: { high: "21 degC", light: "14 h" } } }));
  expect(bench.dark).toBe(10 * 3600);
  expect([...bench.nobody]).toEqual(new Array(8).fill(0));
  expect(benchOf(bench.asked, [0.2]).levels).toEqual([0.2]);
});
