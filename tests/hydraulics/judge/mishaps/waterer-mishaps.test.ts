import { describe, expect, it } from "vitest";
import {
  checkDocument,
  type Mishaps,
  mishapsOfPlan,
  type Plan,
  pushThatTips,
  slopeThatDrains,
  swingForgiven,
  type WatererMishapKind,
  type WatererMishapRow,
  writeWatererEffects,
  writeWatererGuards,
  writeWatererMishap,
  yardForPlan,
} from "../../../../packages/hydraulics/src/index.js";

const HOUR = 3600;

function planOf(pen: Record<string, unknown>, more: Record<string, unknown> = {}): Plan {
  const reading = checkDocument({
    headfall: 1,
    day: "2026-07-04",
    sources: [],
    runs: [],
    weather: { high: "21 degC", low: "12 degC", light: "12 h" },
    ...more,
    pens: [pen],
  });
  if (!reading.ok) throw new Error(JSON.stringify(reading.problems));
  return reading.plan;
}

const hens = (waterers: readonly unknown[], more: Record<string, unknown> = {}) => ({
  id: "hens",
  birds: { kind: "hen", count: 12, age: "40 weeks", lay: "90 %" },
  waterers,
  ...more,
});

function mishapsIn(plan: Plan): Mishaps {
  const told = mishapsOfPlan(plan);
  if (!told.ok) throw new Error(JSON.stringify(told.problems));
  return told.mishaps;
}

const loose = (waterers: readonly unknown[], more?: Record<string, unknown>) =>
  mishapsIn(planOf(hens(waterers, more))).waterers;
function of(rows: readonly WatererMishapRow[], kind: WatererMishapKind, waterer = 0): WatererMishapRow {
  const found = rows.find(({ worst: { mishap } }) => mishap.kind === kind && mishap.waterer === waterer);
  if (found === undefined) throw new Error(`there is no ${kind}`);
  return found;
}
const guardIn = ({ guards }: WatererMishapRow, kind: string) =>
  guards.find(({ guard }) => guard.kind === kind);

describe("mishapsOfPlan, of loose waterers", () => {
  it("a plan without a line has no mishaps of a line; each waterer has those of how it works", () => {
    const { rows, waterers } = mishapsIn(
      planOf(hens([{ kind: "rubber-pan-3gal" }, { kind: "bell-bucket-5gal" }])),
    );
    expect(rows).toEqual([]);
    expect(waterers.map(({ worst: { mishap } }) => `${mishap.waterer} ${mishap.kind}`).sort()).toEqual([
      "0 kickedOver",
      "0 offLevel",
      "0 refillMissed",
      "1 heldAside",
      "1 refillMissed",
      "1 ventShut",
    ]);
  });

  it("the only pan kicked over leaves its hens without at once: twelve birds through the twelve hours of light", () => {
    const { worst } = of(loose([{ kind: "rubber-pan-3gal" }]), "kickedOver");
    expect(worst).toMatchObject({ harmAfter: 0, gives: 0, covered: { after: 0 } });
    expect(worst.birdHours).toBeCloseTo(12 * 12, 9);
    expect(worst.lost).toBeCloseTo(worst.balance.start, 12);
  });

  it("of two founts one runs out off level, and the other lasts as long as its water, by the hours of the day", () => {
    const rows = loose([{ kind: "fount-1gal", count: 2, shade: true }]);
    const { worst } = of(rows, "offLevel");
    // 2 cm under 23 cm is 8.7 %; with its hole uphill it drains from 6.3 % on.
    expect(worst.slope).toBeCloseTo(0.02 / 0.23, 9);
    expect(worst.drainsAt).toBeCloseTo(0.012 / 0.19, 9);
    expect(worst.gives).toBe(0);
    // 12 hens at 90 % lay drink 270 mL each, a fifth of it spilled: 3.9 L a day, all but 1 % in the light, from 07:00 on.
    const drawn = 12 * 270e-6 * 1.2;
    expect(worst.gave).toBeGreaterThan(drawn);
    expect(worst.harmAfter!).toBeGreaterThan(12 * HOUR);
    expect(worst.harmAfter!).toBeLessThan((worst.gave / drawn) * 24 * HOUR);
    expect(worst.balance.drunk + worst.balance.air).toBeCloseTo(worst.gave, 9);
    const alone = loose([{ kind: "fount-1gal", shade: true }]);
    expect(of(rows, "offLevel").worst.harmAfter).toBeCloseTo(of(alone, "refillMissed").nothing.harmAfter!, 3);
  });

  it("volumes balance in every mishap, and none comes sooner with one more waterer beside it", () => {
    const kinds = [
      ["fount-top-3gal", "bell-bucket-5gal"],
      ["jar-fount-1qt", "trough-90cm"],
      ["nipple-bucket-5gal", "dish-20cm"],
      ["bucket-fount-5gal"],
    ];
    for (const all of kinds) {
      const rows = loose(
        all.map((kind) => ({ kind, count: 2, refill: "12 h" })),
        { slope: "3 %" },
      );
      for (const row of rows) {
        const { start, poured, drunk, air, lost, left } = row.worst.balance;
        expect(start + poured - drunk - air - lost - left).toBeCloseTo(0, 9);
        expect(Math.min(start, poured, drunk, air, lost, left)).toBeGreaterThanOrEqual(0);
        const second = guardIn(row, "secondWaterer");
        if (second !== undefined && row.worst.harmAfter !== undefined)
          expect(second.harmAfter ?? Number.MAX_VALUE).toBeGreaterThanOrEqual(row.worst.harmAfter);
        if (row.worst.mishap.kind !== "refillMissed" && row.worst.harmAfter !== undefined)
          expect(row.worst.harmAfter).toBeLessThanOrEqual(row.nothing.harmAfter! + 1);
      }
    }
  });

  it("a fount put back with its hole uphill runs out on a slope that it bore; turned, shimmed or on a board it holds", () => {
    const rows = loose([{ kind: "fount-1gal", hole: "downhill" }], { slope: "7 %" });
    const uphill = of(rows, "holeUphill");
    expect(uphill.worst.gives).toBe(0);
    expect(guardIn(uphill, "shim")).toMatchObject({ guard: { height: expect.closeTo(0.07 * 0.23, 9) } });
    expect(guardIn(uphill, "shim")!.lost).toBe(0);
    // With the hole downhill it takes 30 %: sunk by 2 cm it stands on 15.7 %.
    expect(of(rows, "offLevel").worst.lost).toBe(0);
    const level = of(loose([{ kind: "fount-1gal" }]), "offLevel");
    expect(guardIn(level, "turnHole")!.lost).toBe(0);
    const board = guardIn(level, "board")!;
    if (board.guard.kind !== "board") throw new Error("a board is a board");
    const limit = slopeThatDrains({
      rim: 0.115,
      hole: 0.075,
      lipOverHole: 0.012,
      holes: 1,
      facing: Math.PI,
      hasSpouts: false,
    });
    expect(0.02 / board.guard.across).toBeLessThanOrEqual(limit / 2);
    expect(0.02 / (board.guard.across - 0.1)).toBeGreaterThan(limit / 2);
  });

  it("a bell held aside runs out by a short cord, and not by the one that is told", () => {
    const row = of(loose([{ kind: "bell-bucket-5gal", cord: "60 cm" }]), "heldAside");
    expect(row.worst).toMatchObject({ gives: 0, harmAfter: 0 });
    const longer = guardIn(row, "longerCord")!;
    if (longer.guard.kind !== "longerCord") throw new Error("a cord is a cord");
    expect(longer.lost).toBe(0);
    const bowl = { rim: 0.18, lipOverLevel: 0.02 };
    expect(swingForgiven(bowl, longer.guard.cord)).toBeGreaterThan(0.1);
    expect(swingForgiven(bowl, longer.guard.cord - 0.1)).toBeLessThan(0.1);
    expect(of(loose([{ kind: "bell-bucket-5gal", cord: "2 m" }]), "heldAside").worst.lost).toBe(0);
  });

  it("opened or shut wrongly, one loses or keeps what the yard says", () => {
    const plan = planOf(hens([{ kind: "fount-top-3gal" }, { kind: "nipple-bucket-5gal" }]));
    const yard = yardForPlan(plan, { weeks: 0 });
    if (!yard.ok) throw new Error("the yard can be judged");
    const [fount, bucket] = yard.yard.pens[0]!.waterers.map(({ openings }) => openings[0]!);
    const rows = mishapsIn(plan).waterers;
    expect(of(rows, "capOff").worst.lost).toBe("lost" in fount! ? fount.lost : undefined);
    const shut = of(rows, "ventShut", 1).worst;
    expect(shut.lost).toBe(0);
    expect(shut.gives).toBeCloseTo("gives" in bucket! ? bucket.gives : 0, 12);
    expect(guardIn(of(rows, "ventShut", 1), "ventHole")!.harmAfter).toBe(
      of(rows, "ventShut", 1).nothing.harmAfter,
    );
  });

  it("of guards only those are told that gain half an hour or a tenth of a litre, or all, but looks and weights", () => {
    const rows = [
      ...loose([{ kind: "fount-1gal", hole: "sideways" }, { kind: "pan-40cm" }], { slope: "5 %" }),
      ...loose([{ kind: "bell-bucket-5gal" }, { kind: "nipple-bucket-5gal" }]),
    ];
    const told = rows.flatMap(({ guards }) => guards);
    expect(told.length).toBeGreaterThan(5);
    for (const { guard, buysTime = HOUR, savesWater } of told)
      if (guard.kind !== "look" && guard.kind !== "weight")
        expect(buysTime >= HOUR / 2 || savesWater >= 1e-4).toBe(true);
  });

  it("a brick makes a pan harder to tip by its weight over that of the pan, and no bird is said to be safe for it", () => {
    const row = of(loose([{ kind: "rubber-pan-3gal" }]), "kickedOver");
    const { guard, isEnough } = guardIn(row, "weight")!;
    if (guard.kind !== "weight") throw new Error("a weight is a weight");
    const film = Math.PI * 0.175 ** 2 * 0.01 * 998.2;
    expect(guard.tippedThenBy / guard.tippedBy).toBeCloseTo((1.8 + film + 2.5) / (1.8 + film), 2);
    expect(isEnough).toBe(false);
    expect(pushThatTips({ mass: 2, base: 0.3, height: 0.1 })).toBeCloseTo(2 * 9.80665 * 1.5, 9);
  });

  it("a round missed matters when the water does not last for two; others are filled at theirs", () => {
    const seldom = of(loose([{ kind: "fount-1gal", refill: "1 day" }]), "refillMissed").worst;
    expect(seldom.comesAfter).toBe(48 * HOUR);
    expect(seldom.harmAfter!).toBeLessThan(48 * HOUR);
    const often = of(loose([{ kind: "fount-1gal", count: 2, refill: "6 h" }]), "refillMissed").worst;
    expect(often.harmAfter).toBeUndefined();
    expect(often.balance.poured).toBeGreaterThan(0);
  });

  it("birds that have the line as well go on there; the worst is that with the most bird-hours", () => {
    const line = {
      sources: [{ vessel: "rain-barrel-50gal", stand: "60 cm" }],
      runs: [
        { id: "lane", length: "4 m", fall: "10 cm", drinkers: { kind: "nipple-side-action", count: 8 } },
      ],
    };
    const both = mishapsIn(planOf(hens([{ kind: "rubber-pan-3gal" }], { drinkers: ["lane"] }), line));
    expect(both.rows.length).toBeGreaterThan(0);
    expect(of(both.waterers, "kickedOver").worst).toMatchObject({ goesOnAtLine: true, harmAfter: undefined });
    const rows = loose([{ kind: "fount-1gal" }, { kind: "rubber-pan-8qt" }]);
    const hours = rows.map(({ worst }) => worst.birdHours);
    expect(hours).toEqual([...hours].sort((a, b) => b - a));
  });

  it("is told in words, in either system", () => {
    const row = of(loose([{ kind: "fount-1gal", id: "fount" }]), "offLevel");
    expect(writeWatererMishap(row.worst, "metric")).toBe(
      "fount in hens off level, its lower edge sunk by 20 mm",
    );
    expect(writeWatererEffects(row, "metric")).toEqual([
      "4.09 L run out, nothing of it stays to drink.",
      "It stands on 8.7 % (5.0°) then, and drains from 6.3 % (3.6°) on.",
      "The 12 birds of its pen go without at once: 144 bird-hours of light until somebody comes.",
      expect.stringMatching(/^The pen then has 0 % of the places/),
    ]);
    expect(writeWatererGuards(row, "us")).toMatch(
      /^Turn its hole (sideways|downhill), and mark the jar: .* 1\.08 gal less/,
    );
  });
});
