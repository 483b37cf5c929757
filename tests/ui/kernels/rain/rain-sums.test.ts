import { balanceRain, readDay, sequentPeak } from "@headfall/hydraulics";
import fc from "fast-check";
import { describe, expect, test } from "vitest";
import { deepestStretch } from "../../../../packages/ui/src/kernels/rain/dry-stretch.js";
import { exactVolume } from "../../../../packages/ui/src/kernels/rain/exact-volume.js";
import { monthSums, nextShortDay, sumsOf } from "../../../../packages/ui/src/kernels/rain/rain-months.js";
import { yearsOf } from "../../../../packages/ui/src/kernels/rain/rain-years.js";
import { laySizeChart } from "../../../../packages/ui/src/kernels/rain/size-chart.js";
import { wettestIn } from "../../../../packages/ui/src/kernels/rain/unit-evidence.js";

const litres = fc.integer({ min: 0, max: 4_000 }).map((centilitres) => centilitres * 1e-5);
const days = fc
  .array(fc.tuple(litres, litres), { minLength: 1, maxLength: 400 })
  .map((pairs) => ({ inflow: pairs.map(([q]) => q), demand: pairs.map(([, d]) => d) }));

describe("sums of a record", () => {
  test("months add up to their year, and years to the whole, on any days", () => {
    fc.assert(
      fc.property(days, (each) => {
        const firstDay = readDay("2012-11-20")!;
        const count = each.inflow.length;
        const balance = balanceRain({ ...each, capacity: 0.1, start: 0.05 }, "drawnFirst");
        const record = {
          firstDay,
          rain: Float64Array.from(each.inflow),
          missing: new Uint8Array(count),
        };
        const supply = { inflow: Float64Array.from(each.inflow), demand: Float64Array.from(each.demand) };
        const months = yearsOf(firstDay, count).flatMap((year) =>
          monthSums(record, supply, { balance }, year),
        );
        const total = (read: (sums: (typeof months)[number]) => number) =>
          months.reduce((all, sums) => all + read(sums), 0);
        expect(total((sums) => sums.days)).toBe(count);
        expect(total((sums) => sums.shortDays)).toBe(balance.shortDays);
        expect(total((sums) => sums.cameIn)).toBeCloseTo(balance.sums.in, 9);
        expect(total((sums) => sums.given)).toBeCloseTo(balance.sums.given, 9);
        expect(total((sums) => sums.over)).toBeCloseTo(balance.sums.over, 9);
        const whole = sumsOf(record, supply, { balance }, { from: 0, to: count });
        expect(whole.left).toBe(balance.sums.end);
        expect(whole.least).toBe(Math.min(...months.map(({ least }) => least)));
      }),
    );
  });

  test("the next short day goes round the end, and there may be none", () => {
    const short = Uint8Array.from([0, 1, 0, 0, 1, 0]);
    expect([0, 1, 4, 5].map((after) => nextShortDay(short, after))).toEqual([1, 4, 1, 1]);
    expect(nextShortDay(Uint8Array.from([0, 1]), 1)).toBe(1);
    expect(nextShortDay(new Uint8Array(3), 0)).toBeUndefined();
  });
});

describe("the stretch behind the size that never fails", () => {
  test("a dry season over the record's end is one stretch", () => {
    // The exercise of the published cases: 12 behind, from the fourth period round to the first.
    expect(deepestStretch([6, 10, 9, 5, 4, 0], [7, 0, 7, 8, 4, 8])).toEqual({
      from: 3,
      to: 0,
      days: 4,
      drawn: 27,
      cameIn: 15,
    });
  });

  test("what is drawn in it less what comes in is the sequent peak, on any days", () => {
    fc.assert(
      fc.property(days, ({ inflow, demand }) => {
        const peak = sequentPeak(inflow, demand);
        fc.pre(peak !== undefined);
        const stretch = deepestStretch(inflow, demand);
        expect((stretch?.drawn ?? 0) - (stretch?.cameIn ?? 0)).toBeCloseTo(peak, 9);
      }),
    );
  });
});

test("exactVolume writes to the millilitre, and columns of it add up", () => {
  expect(exactVolume(16.924449, "metric")).toBe("16,924.449 L");
  expect(exactVolume(0, "metric")).toBe("0.000 L");
  expect(exactVolume(0.003785411784, "us")).toBe("1.0000 gal");
});

test("wettestIn tells what a unit would make of the wettest day", () => {
  expect(wettestIn("mm", 55.9).words).toBe("the wettest day had 55.9 mm");
  expect(wettestIn("in", 55.9).words).toBe("the wettest day had 1420 mm; hardly anywhere rains so much");
  expect(wettestIn("mm", 2.2).words).toBe("the wettest day had 2.2 mm; hardly a wet day");
  expect(wettestIn("in", 2.2).words).toBe("the wettest day had 55.9 mm");
});

describe("laySizeChart", () => {
  const chart = laySizeChart({
    sizes: [
      { usable: 0.1, shortDays: 40 },
      { usable: 0.2, shortDays: 10 },
      { usable: 0.4, shortDays: 0 },
    ],
    marks: [
      { letter: "N", usable: 0.4 },
      { letter: "T", usable: 0.2 },
      { letter: "X", usable: 0.5 },
    ],
    unit: 1e-3,
    width: 330,
    height: 240,
  });

  test("falls to the floor where no day is short, and begins at its top", () => {
    expect(chart.points[0]!.y).toBe(chart.plot.top);
    expect(chart.points[2]).toEqual({ x: chart.plot.right, y: chart.plot.bottom });
  });

  test("marks what lies on it, from left to right, and no part of a day", () => {
    expect(chart.marks.map(({ letter }) => letter)).toEqual(["T", "N"]);
    expect(chart.marks[0]!.x).toBeCloseTo((chart.plot.left + chart.plot.right) / 2, 9);
    expect(chart.days.every(({ value }) => Number.isInteger(value))).toBe(true);
  });
});
