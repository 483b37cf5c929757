import { describe, expect, it } from "vitest";
import type { GuardResult } from "../../../../packages/hydraulics/src/judge/mishaps/guard.js";
import type { MishapRow } from "../../../../packages/hydraulics/src/judge/mishaps/mishap-result.js";
import type { Mishaps } from "../../../../packages/hydraulics/src/judge/mishaps/mishaps-of-plan.js";
import type {
  WatererMishapResult,
  WatererMishapRow,
} from "../../../../packages/hydraulics/src/judge/mishaps/waterers/waterer-mishap-result.js";
import {
  toldGuards,
  writeGuards,
  writeHarm,
  writeLoss,
  writeNothing,
  writeRowName,
} from "../../../../packages/hydraulics/src/report/mishaps/mishap-sentences.js";
import {
  type Named,
  writeGain,
  writeGuard,
  writeMishap,
} from "../../../../packages/hydraulics/src/report/mishaps/mishap-words.js";
import {
  writeWatererEffects,
  writeWatererGain,
  writeWatererGuard,
  writeWatererGuards,
  writeWatererMishap,
} from "../../../../packages/hydraulics/src/report/mishaps/waterer-mishap-words.js";

const HOUR = 3600;
const DAY = 24 * HOUR;

/** A barrel, a run to a tee, and one from there to an end. */
const named = {
  line: {
    sources: [{ id: "barrel", point: 0 }],
    points: { id: ["barrel", "tee", "end"] },
    runs: [
      { id: "feed", points: [0, 1] },
      { id: "lane", points: [1, 2] },
    ],
    drinkers: { id: ["lane 1", "lane 2"], groups: [{ id: "lane" }] },
  },
  flock: { pens: [{ id: "hens", batches: [{ count: 12, kind: { many: "laying hens" } }] }] },
} as unknown as Named;

const none = {
  hasBirds: true,
  firstWithout: undefined,
  firstDry: undefined,
  halfDry: undefined,
  empty: undefined,
};
const result = (more: object = {}) =>
  ({
    ...none,
    ...{
      mishap: { kind: "drinkerStuckOpen", drinker: 1 },
      leakRate: 0,
      dripRate: 0,
      drip: [],
      dry: [],
      starve: [],
    },
    night: { lost: 0, falls: [0] },
    ...more,
  }) as unknown as MishapRow["worst"];
const guard = (one: GuardResult["guard"], more: Partial<GuardResult> = {}): GuardResult => ({
  ...{ guard: one, harmAfter: 5 * HOUR, lost: 0, buysTime: 0, savesWater: 0, leakRate: 0, isEnough: true },
  ...more,
});
const row = (more: object = {}) =>
  ({
    kinds: ["drinkerStuckOpen"],
    worst: result(),
    count: 1,
    guards: [],
    cheapest: undefined,
    ...more,
  }) as unknown as MishapRow;

describe("the name of a mishap", () => {
  it("has its place, the worst of how many, and what else does the same", () => {
    expect(writeRowName(row(), named)).toBe("lane 2 stuck open");
    expect([2, 7].map((count) => writeRowName(row({ count }), named))).toEqual([
      "lane 2 stuck open (the worst of 2)",
      "lane 2 stuck open (the worst of 7)",
    ]);
    expect(writeRowName(row({ kinds: ["floatStuckDown", "cupTipped"] }), named)).toBe(
      "lane 2 stuck open, or tipped",
    );
  });

  it("is that of a cap where one run ends and no vessel stands, else of a joint", () => {
    const joint = (point: number) => writeMishap({ kind: "jointApart", point } as never, named);
    expect([0, 1, 2].map(joint)).toEqual(["joint apart at barrel", "joint apart at tee", "cap off at end"]);
  });

  it("is that of the pen for birds, of the run for what sits in it, of the vessel for the rest", () => {
    const name = (mishap: object) => writeMishap(mishap as never, named);
    expect(name({ kind: "moreBirds", pen: 0, batch: 0 })).toBe("12 more birds in hens (laying hens)");
    expect(name({ kind: "tapLeftShut", run: 1 })).toBe("lane with its tap left shut");
    expect(name({ kind: "hoseOff", source: 0 })).toBe("barrel with its hose off");
    expect(name({ kind: "hottestWeek" })).toBe("the hottest week");
  });
});

describe("what a mishap does", () => {
  it("is told by the first bird without, or without birds by half of the drinkers", () => {
    const after = { firstWithout: { after: 2 * HOUR, pen: "hens" }, halfDry: 5 * HOUR };
    expect(writeHarm({ ...none, ...after })).toBe("2 h");
    expect(writeHarm({ ...none, ...after, hasBirds: false })).toBe("5 h");
    expect(writeHarm(none)).toBe("not");
  });

  it("is told by what pours, what is gone by morning, and how far the level falls", () => {
    const pours = result({ leakRate: 1e-4, night: { lost: 0.05, falls: [0.2] } });
    expect(writeLoss(pours, named, "metric")).toEqual([
      "6 L/min pour out when full.",
      "In a night it loses 50 L: the level of barrel falls 20 cm by morning.",
    ]);
    const little = result({ leakRate: 1e-4, night: { lost: 1e-3, falls: [0.0009] } });
    expect(writeLoss(little, named, "metric")[1]).toBe("In a night it loses 1 L.");
    const millimetre = result({ leakRate: 1e-4, night: { lost: 1e-3, falls: [0.001] } });
    expect(writeLoss(millimetre, named, "metric")[1]).toContain("falls 1 mm by morning");
    expect(writeLoss(result(), named, "metric")).toEqual([]);
  });

  it("is told by the drops of all that drip, a day long", () => {
    const [one] = writeLoss(result({ drip: [0] }), named, "metric");
    const [three] = writeLoss(result({ drip: [0, 1, 2] }), named, "metric");
    const litres = (text: string) =>
      [...text.matchAll(/([\d.]+) (mL|L)/g)].map(([, n, u]) => Number(n) * (u === "L" ? 1000 : 1));
    expect(one).toMatch(/^One drinker drips: .* at ten small drops a minute, /);
    expect(three).toMatch(/^3 drinkers drip: .* at ten small drops a minute each, /);
    const [few, many] = [litres(one!), litres(three!)];
    few.forEach((volume, k) => void expect(many[k]! / volume).toBeCloseTo(3, 1));
    expect(few[1]! / few[0]!).toBeGreaterThan(6);
  });

  it("is held against what happens if nothing goes wrong", () => {
    const nothing = (more: object) => writeNothing({ nothing: { ...none, ...more } } as Mishaps);
    expect(nothing({})).toContain("nobody goes without in 60 days");
    expect(nothing({ firstWithout: { after: 3 * DAY, pen: "hens" } })).toContain("goes without after 3 days");
    expect(nothing({ firstWithout: { after: 0, pen: "hens" } })).toContain("goes without at once");
    expect(nothing({ hasBirds: false })).toMatch(/^The plan has no birds: nobody drinks/);
    expect(nothing({ hasBirds: false, halfDry: DAY })).toContain("half of its drinkers are dry after 1 day");
  });
});

describe("a guard", () => {
  it("is told with what is bought or done", () => {
    const told = (one: GuardResult["guard"]) => writeGuard(one, named, "metric");
    expect(told({ kind: "look", every: DAY })).toBe("Look every day");
    expect(told({ kind: "look", every: HOUR })).toBe("Look every hour");
    expect(told({ kind: "look", every: 12 * HOUR })).toBe("Look every 12 h");
    expect(told({ kind: "tap", run: 1, within: DAY })).toBe(
      "A tap at the start of lane, shut at a look every day",
    );
    expect(told({ kind: "tap", run: 1, within: HOUR })).toMatch(/a look every hour$/);
    expect(told({ kind: "limiter", run: 0, hole: 0.004 })).toBe(
      "A disc with a hole of 4 mm at the start of feed",
    );
    expect(told({ kind: "alarm", source: 0, level: 0.3 })).toBe("A float alarm in barrel at 30 cm");
  });

  it("buys time, water, or a smaller flood, each told only where it is worth a word", () => {
    const limiter = { kind: "limiter", run: 0, hole: 0.004 } as const;
    const gain = (more: Partial<GuardResult>, pours = 0, hasBirds = true) =>
      writeGain(guard(limiter, more), pours, "metric", hasBirds);
    expect(gain({})).toBe("");
    expect(gain({ buysTime: 60 })).toBe(": 1 min more before a bird goes without");
    expect(gain({ buysTime: 59 })).toBe("");
    const alarm = guard({ kind: "alarm", source: 0, level: 0.3 }, { buysTime: HOUR });
    expect(writeGain(alarm, 0, "metric")).toBe(": no bird goes without");
    expect(gain({ buysTime: HOUR }, 0, false)).toBe(": 1 h more before half of the drinkers are dry");
    expect(gain({ buysTime: undefined })).toBe(": no bird goes without");
    expect(gain({ buysTime: undefined }, 0, false)).toBe(": the drinkers do not run dry");
    expect(gain({ savesWater: 0.01 })).toBe(": 10 L less to the ground");
    expect(gain({ savesWater: 9e-5 })).toBe("");
    expect(gain({ leakRate: 1e-5 }, 1e-4)).toBe(": no more than 600 mL/min can pour");
    expect(gain({ leakRate: 0.99e-4 }, 1e-4)).toBe("");
    expect(gain({ buysTime: HOUR, savesWater: 0.01 })).toBe(
      ": 1 h more before a bird goes without, 10 L less to the ground",
    );
  });

  it("is told first where it is the cheapest, with two others at the most; a second station only first", () => {
    const look = guard({ kind: "look", every: DAY });
    const others = [1, 2, 3].map(() => guard({ kind: "spareDrinker", group: 0 }));
    const station = guard({ kind: "secondStation" });
    expect(toldGuards(row())).toEqual([]);
    const told = toldGuards(row({ cheapest: look, guards: [station, look, ...others] }));
    expect(told).toEqual([look, others[0], others[1]]);
    expect(toldGuards(row({ cheapest: station, guards: [station] }))).toEqual([station]);
    const text = writeGuards(row({ cheapest: look, guards: [look, others[0]] }), named, "metric");
    expect(text).toBe("Look every day: no bird goes without. Or: one more drinker of lane.");
  });

  it("that is not enough says so, unless it is a look; where there is none, that is said", () => {
    const spare = guard({ kind: "spareDrinker", group: 0 }, { isEnough: false });
    expect(writeGuards(row({ cheapest: spare, guards: [spare] }), named, "metric")).toMatch(
      /Even so a look every day may come too late\.$/,
    );
    const look = guard({ kind: "look", every: HOUR }, { isEnough: false });
    expect(writeGuards(row({ cheapest: look, guards: [look] }), named, "metric")).not.toContain("Even so");
    expect(writeGuards(row({ guards: [] }), named, "metric")).toMatch(/^No guard was found/);
    expect(writeGuards(row({ guards: undefined }), named, "metric")).toBe("");
  });
});

describe("a mishap of a loose waterer", () => {
  const worst = (more: object = {}) =>
    ({
      ...{
        mishap: { kind: "capOff", pen: 0, waterer: 0 },
        pen: "hens",
        waterer: "fount",
        count: 1,
        birds: 12,
      },
      ...{ lost: 0.004, gives: 0, gave: 0.004, slope: 0, drainsAt: undefined, goesOnAtLine: false },
      ...{ harmAfter: 0, birdHours: 30, covered: { before: 1, after: 1 }, comesAfter: DAY },
      ...more,
    }) as unknown as WatererMishapResult;
  const effects = (more: object, nothing: object = { harmAfter: undefined }) =>
    writeWatererEffects({ worst: worst(more), nothing } as unknown as WatererMishapRow, "metric");

  it("has its pen named but where the name has it, and how many there are", () => {
    expect(writeWatererMishap(worst(), "metric")).toBe("fount in hens with its cap off, or its seal gone");
    expect(writeWatererMishap(worst({ count: 3, waterer: "hens founts" }), "metric")).toMatch(
      /^one of 3 hens founts with/,
    );
  });

  it("tells what runs out and what stays", () => {
    expect(effects({})[0]).toBe("4 L run out, nothing of it stays to drink.");
    expect(effects({ gives: 0.001 })[0]).toBe("4 L run out, 1 L stay to drink.");
    expect(effects({ lost: 0 })[0]).toMatch(/^The 12 birds/);
    expect(effects({ mishap: { kind: "ventShut" }, gives: 0.001 })[0]).toBe(
      "It gives 1 L of 4 L, and stops.",
    );
  });

  it("tells whether it stands steeper than it holds", () => {
    const lean = (slope: number, kind = "offLevel") =>
      effects({ mishap: { kind }, slope, drainsAt: 0.05 })[1];
    expect(lean(0.05)).toBe("It stands on 5 % (2.9°) then, and drains from 5 % (2.9°) on.");
    expect(lean(0.04)).toBe("It stands on 4 % (2.3°) then, and would drain from 5 % (2.9°) on: it holds.");
    expect(lean(0.04, "heldAside")).toMatch(/^It leans on/);
    expect(lean(0.04, "capOff")).toMatch(/^The 12 birds/);
  });

  it("tells when its birds go without, for how many hours of theirs, and whether that is any sooner", () => {
    const birds = (more: object, nothing?: object) => effects({ lost: 0, ...more }, nothing)[0];
    expect(birds({})).toBe(
      "The 12 birds of its pen go without at once: 30 bird-hours of light until somebody comes.",
    );
    expect(birds({ birds: 1, harmAfter: HOUR, birdHours: 1.2 })).toBe(
      "The bird of its pen goes without after 1 h: 1 bird-hour of light until somebody comes.",
    );
    expect(birds({ birdHours: 0.4 })).toBe("The 12 birds of its pen go without at once.");
    expect(birds({ harmAfter: 5 * HOUR }, { harmAfter: 5 * HOUR + 1800 })).toContain("hardly sooner");
    expect(birds({ harmAfter: 5 * HOUR }, { harmAfter: 5 * HOUR + 1801 })).not.toContain("hardly sooner");
    expect(birds({ harmAfter: 5 * HOUR, mishap: { kind: "refillMissed" } }, { harmAfter: 0 })).not.toContain(
      "hardly sooner",
    );
    expect(birds({ harmAfter: undefined, goesOnAtLine: true })).toBe(
      "The 12 birds of its pen go on at the line.",
    );
    expect(birds({ harmAfter: undefined, mishap: { kind: "refillMissed" } })).toContain(
      "before the round after, in 1 day.",
    );
    const missed = { harmAfter: undefined, birds: 1, mishap: { kind: "refillMissed" } };
    expect(birds(missed)).toMatch(/^The bird of its pen does not go without before the round after/);
    expect(birds({ harmAfter: undefined, birds: 1 })).toBe(
      "The bird of its pen does not go without in 60 days.",
    );
    expect(effects({ lost: 0, birds: 0 })).toEqual([]);
  });

  it("tells what places are left only where there are fewer than are asked", () => {
    const places = (before: number, after: number) =>
      effects({ lost: 0, birds: 0, covered: { before, after } });
    expect(places(1.5, 0.6)).toEqual(["The pen then has 60 % of the places that rules and advice ask."]);
    expect(places(2, 1.2)).toEqual([]);
    expect(places(0.5, 0.5)).toEqual([]);
  });

  const won = (kind: object, more: object = {}) =>
    ({
      guard: kind,
      harmAfter: HOUR,
      birdHours: 0,
      lost: 0,
      buysTime: 2 * HOUR,
      savesWater: 0,
      isEnough: true,
      ...more,
    }) as never;

  it("has guards with what they measure, and what they buy", () => {
    const brick = { kind: "weight", mass: 2, tippedBy: 4, tippedThenBy: 10 } as const;
    expect(writeWatererGuard(brick, "metric")).toMatch(/^A brick of 2\.0 kg .* a push 2\.5 times as hard/);
    expect(writeWatererGuard({ kind: "shim", height: 0.012 }, "metric")).toBe(
      "A shim of 12 mm under its lower edge",
    );
    expect(writeWatererGuard({ kind: "look", every: HOUR }, "metric")).toBe("Look every hour");
    expect(writeWatererGuard({ kind: "look", every: DAY }, "metric")).toBe("Look every day");
    const shim = { kind: "shim", height: 0.012 };
    expect(writeWatererGain(won(shim))).toBe(": 2 h more before a bird goes without");
    expect(writeWatererGain(won(shim, { buysTime: 60 }))).toBe(": 1 min more before a bird goes without");
    expect(writeWatererGain(won(shim, { buysTime: 59 }))).toBe("");
    expect(writeWatererGain(won(shim, { buysTime: undefined, savesWater: 0.002 }))).toBe(
      ": no bird goes without, 2 L less to the ground",
    );
    expect(writeWatererGain(won(brick))).toBe("");
  });

  it("has the cheapest guard told first, then two others, each after an Or", () => {
    const [shim, hole, board, more] = [
      { kind: "shim", height: 0.012 },
      { kind: "ventHole" },
      { kind: "board", across: 0.4 },
      { kind: "secondWaterer" },
    ].map((one) => won(one, { buysTime: 0, isEnough: false }));
    const text = writeWatererGuards({ cheapest: shim, guards: [hole, shim, board, more] } as never, "metric");
    expect(text).toBe(
      "A shim of 12 mm under its lower edge. Even so a look every day may come too late. Or: a hole in the lid that lets air in, with a fine screen. Or: a level board of 40 cm under it.",
    );
    expect(writeWatererGuards({ cheapest: undefined, guards: [] } as never, "metric")).toMatch(
      /^No guard was found/,
    );
  });
});
