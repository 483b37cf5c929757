import { describe, expect, test } from "vitest";
import type { Plan } from "../../../../packages/hydraulics/src/document/plan-schema.js";
import { checkDocument } from "../../../../packages/hydraulics/src/document/read-plan.js";
import { askPlan, MORNING } from "../../../../packages/hydraulics/src/judge/asked-plan.js";
import { carryingOf } from "../../../../packages/hydraulics/src/judge/time/carrying.js";
import { dailyMark } from "../../../../packages/hydraulics/src/judge/time/daily-mark.js";
import { poolsOf } from "../../../../packages/hydraulics/src/judge/time/give-out.js";
import { goingAway } from "../../../../packages/hydraulics/src/judge/time/going-away.js";
import { howLongItLasts } from "../../../../packages/hydraulics/src/judge/time/lasting.js";
import { writeMarkLines } from "../../../../packages/hydraulics/src/report/time/mark-text.js";
import { drawDown } from "../../../../packages/hydraulics/src/simulate/drawdown.js";
import { penPlan } from "../birds/pens.js";

const DAY = 86_400;

function planOf(document: unknown): Plan {
  const reading = checkDocument(document);
  if (!reading.ok) throw new Error(JSON.stringify(reading.problems));
  return reading.plan;
}

function lastingOf(document: unknown) {
  const answer = howLongItLasts(planOf(document), { day: "2026-07-04" });
  if (!answer.ok) throw new Error(JSON.stringify(answer.problems));
  return answer.lasting;
}

/** A five-gallon bucket hung over its birds, drained by nipples in a short pipe. */
const bucket = (birds: unknown, high: string) => ({
  headfall: 1,
  sources: [
    {
      vessel: { shape: "upright", diameter: "29 cm", height: "35 cm" },
      stand: "1 m",
      outlet: "0 cm",
      level: { full: "28.66 cm", lowest: "2 cm" },
    },
  ],
  runs: [
    { length: "2 m", fall: "60 cm", drinkers: { kind: "nipple-side-action", count: 6, every: "20 cm" } },
  ],
  weather: { high },
  pens: [{ birds }],
});

describe("howLongItLasts", () => {
  // Common practice, no source: about thirty meat birds empty a five-gallon bucket (18.93 L) in a summer day.
  test("five gallons last thirty meat birds about a day of summer", () => {
    const { alone } = lastingOf(bucket({ kind: "meat-chicken", count: 30, age: "6 weeks" }, "32 degC"));
    // On the cautious figure it is empty the same night; on the one to expect it lasts into the next day.
    expect(alone.size.empty! / DAY).toBeGreaterThan(0.6);
    expect(alone.size.empty! / DAY).toBeLessThan(1);
    expect(alone.expect.empty! / DAY).toBeGreaterThan(1);
    expect(alone.expect.empty! / DAY).toBeLessThan(1.5);
  });

  test("from the least that may be drunk to the most, it lasts ever shorter", () => {
    const { alone } = lastingOf(
      penPlan({ more: { weather: { high: "26 degC", hotSpell: { high: "35 degC" } } } }),
    );
    const ends = (["low", "expect", "size", "hot", "high"] as const).map(
      (name) => alone[name].firstWithout!.after,
    );
    expect(ends).toEqual([...ends].sort((a, b) => b - a));
    for (const one of Object.values(alone)) {
      expect(one.firstWithout!.after).toBeLessThanOrEqual(one.empty!);
      const { start, poured, drawn, left } = one.balance;
      expect(start + poured - drawn - left).toBeCloseTo(0, 12);
    }
  });

  test("what is drawn on the first day is the same whether the vessel is filled up again or not", () => {
    const plan = bucket({ kind: "hen", count: 6 }, "21 degC");
    const filled = (refill: unknown) =>
      lastingOf({ ...plan, sources: [{ ...plan.sources[0], stand: "0 cm", refill }] }).cases.size.firstDay;
    // Six hens in full lay at 21 degC drink 270 mL each, and a twentieth is spilled at nipples; so low none drips.
    expect(filled("none")).toBeCloseTo(6 * 270e-6 * 1.05, 12);
    expect(filled({ every: "1 day" })).toBeCloseTo(filled("none"), 12);
    expect(filled({ every: "6 h" })).toBeCloseTo(filled("none"), 12);
    expect(filled({ hose: "1 L/min" })).toBeCloseTo(filled("none"), 12);
  });

  test("half of the drinkers are dry though another vessel is filled meanwhile; not while their own is", () => {
    const small = { vessel: { shape: "upright", diameter: "30 cm", height: "80 cm" }, stand: "1 m" };
    const slope = (from: string, id: string) => ({
      from,
      length: "4 m",
      fall: "-160 cm",
      drinkers: { id, kind: "nipple-side-action", count: 6, every: "50 cm" },
    });
    const halfDry = (left: unknown, right: unknown) =>
      lastingOf({
        headfall: 1,
        sources: [
          { id: "left", ...small, refill: left },
          { id: "right", ...small, refill: right },
        ],
        runs: [slope("left", "left nipples"), slope("right", "right nipples")],
        pens: [{ birds: { kind: "hen", count: 40 } }],
      }).cases.size.halfDry;
    const alone = halfDry("none", "none")!;
    // The drinkers of one vessel are half of all; they give out one after another, over more than the 2 h between two rounds.
    expect(halfDry({ every: "2 h" }, "none")).toBeGreaterThan(alone);
    expect(halfDry({ every: "2 h" }, { every: "2 h" })).toBeUndefined();
  });

  test("a pen behind a hump is short at the latest when the hump stands above the water, though another pen still drinks", () => {
    const drinkers = (id: string) => ({ id, kind: "nipple-side-action", count: 4, every: "30 cm" });
    const plan = planOf({
      headfall: 1,
      sources: [
        {
          id: "barrel",
          vessel: { shape: "upright", diameter: "40 cm", height: "80 cm" },
          stand: "60 cm",
          outlet: "2 cm",
          level: { full: "75 cm", lowest: "50 cm" },
        },
      ],
      points: [
        { id: "tee", ground: "0 cm", above: "30 cm" },
        { id: "crest", ground: "0 cm", above: "90 cm", bleed: true },
        { id: "foot", ground: "0 cm", above: "30 cm" },
      ],
      runs: [
        { id: "feed", from: "barrel", to: "tee", length: "3 m" },
        { id: "near", from: "tee", length: "2 m", fall: "0 cm", drinkers: drinkers("near") },
        { id: "up", from: "tee", to: "crest", length: "3 m" },
        { id: "down", from: "crest", to: "foot", length: "3 m" },
        { id: "far", from: "foot", length: "2 m", fall: "0 cm", drinkers: drinkers("far") },
      ],
      pens: [
        { id: "near pen", birds: { kind: "hen", count: 6 }, drinkers: ["near"] },
        { id: "far pen", birds: { kind: "hen", count: 6 }, drinkers: ["far"] },
      ],
    });
    const asking = askPlan(plan, "2026-07-04");
    if (!asking.ok) throw new Error(JSON.stringify(asking.problems));
    const { judged, flock, fullVolumes: start } = asking.asked;
    const supply = { refills: [{ kind: "none" as const }], start, failed: new Set<number>(), dripRate: 0 };
    const pools = poolsOf(judged, flock, supply);
    const { events } = drawDown(judged.line, flock, pools, {
      figure: "size",
      from: MORNING,
      lasts: 90 * DAY,
    });
    const farDry = events.filter(
      (event) => event.kind === "drinkerDry" && judged.line.drinkers.id[event.drinker]!.startsWith("far"),
    );
    expect(farDry).toHaveLength(4);
    const lastDry = Math.max(...farDry.map(({ time }) => time));
    const short = events.find((event) => event.kind === "penShort" && event.pen === 1)!;
    expect(short.time).toBeLessThanOrEqual(lastDry);
    expect(events.find(({ kind }) => kind === "empty")!.time).toBeGreaterThan(lastDry + DAY);
  });

  test("what can be used of a vessel stands above its lowest valve", () => {
    const [hung] = lastingOf(bucket({ kind: "hen", count: 6 }, "21 degC")).sources;
    // The nipples hang 60 cm below the bucket: all of it down to its outlet, at its bottom.
    expect(hung!.usable).toBeCloseTo((Math.PI / 4) * 0.29 ** 2 * 0.2866, 9);
  });

  test("more birds, more heat, less water: never longer", () => {
    const end = (birds: number, high: string, full: string) =>
      lastingOf({
        ...penPlan({ birds: { kind: "hen", count: birds }, more: { weather: { high } } }),
        sources: [
          {
            id: "barrel",
            vessel: { shape: "upright", diameter: "57 cm", height: "85 cm" },
            stand: "60 cm",
            level: { full, lowest: "10 cm" },
          },
        ],
      }).alone.size.firstWithout!.after;
    const plain = end(24, "21 degC", "40 cm");
    expect(end(25, "21 degC", "40 cm")).toBeLessThanOrEqual(plain);
    expect(end(24, "30 degC", "40 cm")).toBeLessThanOrEqual(plain);
    expect(end(24, "21 degC", "35 cm")).toBeLessThanOrEqual(plain);
  });

  test("filled as the plan says is told beside nobody coming; a plan without birds says so", () => {
    const plan = penPlan();
    const filled = lastingOf({ ...plan, sources: [{ ...plan.sources[0], refill: { every: "2 days" } }] });
    expect(filled.cases.hot.firstWithout).toBeUndefined();
    expect(filled.cases.hot.refilled.length).toBeGreaterThan(20);
    expect(filled.alone.hot.firstWithout).toBeDefined();
    const { pens: _, ...empty } = plan;
    expect(lastingOf(empty).leavesOut).toEqual(["nobodyDrinks"]);
  });
});

describe("goingAway", () => {
  const away = (document: unknown, days: number) => {
    const answer = goingAway(planOf(document), { days, day: "2026-07-04" });
    if (!answer.ok) throw new Error(JSON.stringify(answer.problems));
    return answer.away;
  };

  // Holiday page (worked case SZ-09): 50 hens at half a litre a day for a week are 175 L. Hens at 31 degC and 90 % lay.
  test("fifty hens in a hot week need about what a keeper's sum says", () => {
    const { needed } = away(
      penPlan({ birds: { kind: "hen", count: 50 }, more: { weather: { high: "31 degC" } } }),
      7,
    );
    expect(needed * 1000).toBeGreaterThan(165);
    expect(needed * 1000).toBeLessThan(195);
  });

  test("what is missing is what is needed less what reaches the birds, and it says when they go without", () => {
    const found = away(penPlan({ birds: { kind: "hen", count: 60 } }), 10);
    expect(found.short).toBeCloseTo(found.needed - found.usable, 12);
    expect(found.short).toBeGreaterThan(0);
    expect(found.lasts!).toBeLessThan(10 * DAY);
    expect(found.pen).toBe("hens");
    expect(away(penPlan({ birds: { kind: "hen", count: 6 } }), 2).lasts).toBeUndefined();
  });

  test("a pen of one bird that no water reaches goes without at once", () => {
    const plan = penPlan({ birds: { kind: "hen", count: 6 } });
    const served = { ...plan.pens[0], drinkers: ["hen line"] };
    const found = away({ ...plan, pens: [served, { id: "new pen", birds: { kind: "hen", count: 1 } }] }, 2);
    expect(found).toMatchObject({ lasts: 0, pen: "new pen" });
  });

  test("one station only: its failure is felt at once; with two lines the other keeps up", () => {
    const one = away(penPlan(), 3);
    expect(one.failures.map(({ after }) => after)).toEqual([0, 0]);
    expect(one.lookEvery).toBeUndefined();
    const plan = penPlan();
    const two = away(
      {
        ...plan,
        runs: [
          ...plan.runs,
          { id: "second", from: "riser", length: "3 m", drinkers: { kind: "nipple-side-action", count: 8 } },
        ],
      },
      3,
    );
    const groups = two.failures.filter(({ kind }) => kind === "drinkers");
    expect(groups.map(({ after }) => after)).toEqual([undefined, undefined]);
  });

  test("goingAway refuses no days and more than sixty", () => {
    for (const days of [0, 61, Number.NaN])
      expect(() => goingAway(planOf(penPlan()), { days })).toThrow(RangeError);
  });
});

describe("dailyMark", () => {
  const mark = (document: unknown, options = {}) => {
    const answer = dailyMark(planOf(document), { day: "2026-07-04", ...options });
    if (!answer.ok) throw new Error(JSON.stringify(answer.problems));
    return answer.mark;
  };

  test("the fall is the day's litres over the vessel's area, in a band that holds what is expected", () => {
    const { fall, volume, nightFall, leakAbove, stuckBelow } = mark(penPlan());
    const area = (Math.PI / 4) * 0.57 ** 2;
    expect(fall.expect).toBeCloseTo(volume.expect / area, 9);
    expect(volume.size).toBeCloseTo(24 * 270e-6 * 1.05, 9);
    expect(fall.low).toBeLessThan(fall.expect);
    expect(fall.expect).toBeLessThan(fall.size);
    expect(fall.size).toBeLessThan(fall.high);
    // A hundredth of the day is drunk in the dark.
    expect(nightFall).toBeCloseTo(0.01 * fall.high, 6);
    expect(leakAbove).toBeGreaterThan(nightFall);
    expect(stuckBelow).toBeLessThan(fall.low);
  });

  test("the marks go down day by day to the outlet, each inside its band", () => {
    const { marks, outlet, from, fall } = mark(penPlan({ birds: { kind: "hen", count: 60 } }));
    expect(marks.length).toBeGreaterThan(3);
    expect(marks[0]!.level).toBeLessThan(from);
    expect(marks[0]!.low).toBeCloseTo(from - fall.high, 12);
    expect(marks[0]!.high).toBeCloseTo(from - fall.low, 12);
    marks.forEach((one, k) => {
      expect(one.low).toBeLessThanOrEqual(one.level + 1e-12);
      expect(one.high).toBeGreaterThanOrEqual(one.level - 1e-12);
      expect(one.level).toBeGreaterThanOrEqual(outlet - 1e-9);
      if (k > 0) expect(one.level).toBeLessThanOrEqual(marks[k - 1]!.level);
    });
  });

  test("where the least a day may fall is under 4 mm, no fall is called too small", () => {
    const markOf = (count: number) => {
      const answer = dailyMark(planOf(bucket({ kind: "hen", count }, "21 degC")));
      if (!answer.ok) throw new Error(JSON.stringify(answer.problems));
      return { mark: answer.mark, lines: writeMarkLines(answer.mark, "metric") };
    };
    const [few, many] = [markOf(1), markOf(12)];
    expect(few.mark.fall.low).toBeLessThan(0.004);
    expect(few.mark.isTooSmallToRead).toBe(true);
    expect(few.lines.join(" ")).not.toContain("Less than");
    expect(many.mark.fall.low).toBeGreaterThan(0.004);
    expect(many.mark.isTooSmallToRead).toBe(false);
    expect(many.mark.stuckBelow).toBeCloseTo(many.mark.fall.low - 0.002, 12);
  });

  test("a source that is kept full has no mark; a level or source that is not there is the caller's mistake", () => {
    const plan = penPlan();
    expect(
      mark({ ...plan, sources: [{ ...plan.sources[0], refill: { hose: "10 L/min" } }] }).isKeptFull,
    ).toBe(true);
    expect(() => mark(plan, { source: 3 })).toThrow(RangeError);
    expect(() => mark(plan, { level: 0.6 })).toThrow(RangeError);
  });
});

describe("carryingOf", () => {
  const carrying = (more: Record<string, unknown>, source: Record<string, unknown> = {}) => {
    const plan = penPlan({ more: { weather: { high: "21 degC", hotSpell: { high: "35 degC" } }, ...more } });
    const answer = carryingOf(planOf({ ...plan, sources: [{ ...plan.sources[0], ...source }] }), {
      weeks: 1,
    });
    if (!answer.ok) throw new Error(JSON.stringify(answer.problems));
    return answer.carrying;
  };

  // Farm diary (worked case LD-01): a five-gallon bucket of water weighs 42 lb, 18.9 kg.
  test("a trip with five gallons weighs 42 lb of water", () => {
    const { days } = carrying({ carry: { each: "5 gal" }, water: "20 degC" });
    expect(days[0]!.massPerTrip / 0.45359237).toBeCloseTo(41.7, 0);
  });

  test("trips are whole, climb is trips times the climb, work is weight times height; a limit splits the load", () => {
    const { days, each, isLimited } = carrying({ carry: { each: "10 L", climb: "3 m", most: 5 } });
    expect(isLimited).toBe(true);
    expect(each).toBeCloseTo(0.005, 4);
    const [now] = days;
    expect(now!.trips.size).toBe(Math.ceil(now!.volume.size / each));
    expect(now!.climb).toBeCloseTo(3 * now!.trips.size, 12);
    expect(now!.work).toBeCloseTo(now!.volume.size * 998.2 * 9.80665 * 3, 1);
    expect(days.filter(({ hot }) => hot)).toHaveLength(2);
    expect(days.find(({ hot }) => hot)!.volume.size).toBeGreaterThan(2 * now!.volume.size);
  });

  test("nothing is carried to what a hose or a roof fills", () => {
    expect(carrying({}, { refill: { hose: "5 L/min" } }).sources).toEqual([]);
    expect(carrying({}, { roof: { area: "10 m2" } }).days[0]!.trips.size).toBe(0);
  });
});
