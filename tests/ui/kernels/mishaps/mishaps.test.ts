import { readFileSync } from "node:fs";
import { describe, expect, test } from "vitest";
import {
  checkPlan,
  MISHAP_KINDS,
  type Mishap,
  mishapsOf,
  mishapsOfPlan,
  type Plan,
  readPlan,
} from "../../../../packages/hydraulics/src/index.js";
import { dayBarOf } from "../../../../packages/ui/src/kernels/mishaps/day-share.js";
import { drinkersIn } from "../../../../packages/ui/src/kernels/mishaps/drinkers-in.js";
import { dripLossInDay, readCount } from "../../../../packages/ui/src/kernels/mishaps/drip-loss.js";
import {
  FAMILY_OF,
  FAMILY_WORDS,
  familiesOf,
  rowsOfFamily,
} from "../../../../packages/ui/src/kernels/mishaps/mishap-families.js";
import {
  checkedAfter,
  drawingOfMishap,
  drinkersByVerdict,
  spotOfMishap,
} from "../../../../packages/ui/src/kernels/mishaps/mishap-place.js";
import { layProfile } from "../../../../packages/ui/src/kernels/profile-layout.js";

function told(name: string) {
  const reading = readPlan(readFileSync(`docs/examples/${name}.json`, "utf8"));
  if (!reading.ok) throw new Error(JSON.stringify(reading.problems));
  const plan: Plan = reading.plan;
  const checking = checkPlan(plan, { samples: 0 });
  const run = mishapsOfPlan(plan, { guardsFor: 0 });
  if (!checking.ok || !run.ok) throw new Error("the plan cannot be worked out");
  return { plan, checked: checking.checked, mishaps: run.mishaps };
}

const EXAMPLES = ["alder-bank-hen-house", "alder-bank-two-pens"].map(told);

describe("familiesOf(rows)", () => {
  test("each row is in one family, and the families together have every row in its place", () => {
    for (const { mishaps } of EXAMPLES) {
      const { rows } = mishaps;
      const families = familiesOf(rows);
      const inFamilies = families.flatMap(({ family }) => rowsOfFamily(rows, family));
      expect(families.map(({ family, rows: count }) => [family, count])).toEqual(
        families.map(({ family }) => [family, rowsOfFamily(rows, family).length]),
      );
      expect(inFamilies.map(({ at }) => at).sort((a, b) => a - b)).toEqual(rows.map((_, at) => at));
      for (const { row, at } of inFamilies) expect(rows[at]).toBe(row);
      expect(rowsOfFamily(rows, undefined)).toHaveLength(rows.length);
    }
  });

  test("every kind has a family with words", () => {
    for (const kind of MISHAP_KINDS) expect(FAMILY_WORDS[FAMILY_OF[kind]].length).toBeGreaterThan(4);
  });
});

describe("dayBarOf(after)", () => {
  test("goes from nothing at once to all of it after a day, and says where it is longer", () => {
    expect(dayBarOf(0)).toEqual({ share: 0, isOver: false });
    expect(dayBarOf(6 * 3600)).toEqual({ share: 0.25, isOver: false });
    expect(dayBarOf(86_400)).toEqual({ share: 1, isOver: false });
    expect(dayBarOf(86_401).isOver).toBe(true);
    expect(dayBarOf(undefined)).toEqual({ share: 1, isOver: true });
  });
});

describe("dripLossInDay", () => {
  test("ten small drops a minute are 0.72 L a day, as many large ones 3.6 L", () => {
    // 10 × 60 × 24 drops of 0.05 and 0.25 mL.
    const { small, large } = dripLossInDay({ aMinute: 10, drinkers: 1 });
    expect(small).toBeCloseTo(0.72e-3, 12);
    expect(large).toBeCloseTo(3.6e-3, 12);
    expect(dripLossInDay({ aMinute: 10, drinkers: 7 }).large).toBeCloseTo(7 * large, 12);
  });

  test("readCount takes whole numbers within bounds and nothing else", () => {
    expect([" 12 ", "0", "300"].map((typed) => readCount(typed, 300))).toEqual([12, 0, 300]);
    for (const typed of ["", "301", "-1", "2.5", "1e2", "ten", "9999999"])
      expect(readCount(typed, 300)).toBeUndefined();
  });
});

test("drinkersIn counts what the check counts", () => {
  for (const { plan, checked } of EXAMPLES) expect(drinkersIn(plan)).toBe(checked.line.drinkers.count);
});

describe("the drawing of a mishap", () => {
  const spots = EXAMPLES.flatMap(({ checked, mishaps, plan }) =>
    mishapsOf(plan, mishaps.line, mishaps.flock).map((mishap) => {
      const struck = drawingOfMishap(checked, {
        ...mishaps.rows[0]!.worst,
        mishap,
        dry: [],
        starve: [],
        drip: [],
      })!;
      const layout = layProfile({
        ...{ checked: struck.checked, path: struck.path, moment: "fullBusiest", drinker: -1 },
        ...{ width: 600, height: 420, tickUnit: 1 },
      });
      return { mishap, layout, struck, spot: spotOfMishap(layout, struck), line: mishaps.line };
    }),
  );

  test("every mishap of a place is on it, inside the drawing; those of birds are nowhere", () => {
    expect(spots.length).toBeGreaterThan(80);
    for (const { mishap, spot, layout } of spots) {
      const isPlaced = "source" in mishap || "drinker" in mishap || "run" in mishap || "point" in mishap;
      expect([mishap, spot !== undefined]).toEqual([mishap, isPlaced]);
      if (spot === undefined) continue;
      expect(spot.x).toBeGreaterThanOrEqual(0);
      expect(spot.x).toBeLessThanOrEqual(layout.width);
      expect(spot.y).toBeGreaterThanOrEqual(0);
      expect(spot.y).toBeLessThanOrEqual(layout.plot.bottom + 1);
    }
  });

  test("a joint is where its point is, and what sits in a run lies between its ends", () => {
    const near = (one: number, other: number) => expect(Math.abs(one - other)).toBeLessThan(1e-6);
    for (const { mishap, spot, layout, struck, line } of spots) {
      const at = (point: number) => layout.pipe[struck.path.points.indexOf(point)]!;
      if ("point" in mishap) near(spot!.x, at(mishap.point).x);
      if (!("run" in mishap)) continue;
      const { points } = line.runs[mishap.run]!;
      near(spot!.x, (at(points[0]!).x + at(points[points.length - 1]!).x) / 2);
    }
  });

  test("checkedAfter gives the drinkers it harms their verdicts, and leaves the others and the plan's own", () => {
    const [{ checked, mishaps }] = EXAMPLES as [(typeof EXAMPLES)[0]];
    const mishap: Mishap = { kind: "hottestWeek" };
    const before = checked.drinkers.map(({ verdict }) => verdict);
    const after = checkedAfter(checked, {
      ...mishaps.rows[0]!.worst,
      mishap,
      dry: [1],
      starve: [2],
      drip: [4],
    });
    const changed = after.drinkers.map(({ verdict }) => verdict);
    expect([changed[1], changed[2], changed[4]]).toEqual(["dry", "starves", "drips"]);
    expect(changed.filter((_, d) => ![1, 2, 4].includes(d))).toEqual(
      before.filter((_, d) => ![1, 2, 4].includes(d)),
    );
    expect(checked.drinkers.map(({ verdict }) => verdict)).toEqual(before);
    const byVerdict = drinkersByVerdict(after);
    expect(byVerdict[0]).toEqual(["dry", [checked.line.drinkers.id[1]]]);
    expect(byVerdict.flatMap(([, names]) => names).sort()).toEqual([...checked.line.drinkers.id].sort());
  });
});
