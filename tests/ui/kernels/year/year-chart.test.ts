import { readFileSync } from "node:fs";
import { expect, test } from "vitest";
import { readPlan, yearForPlan } from "../../../../packages/hydraulics/src/index.js";
import { layYearChart, YEAR_ROW } from "../../../../packages/ui/src/kernels/year/year-chart.js";

function yearOf(weeks: number) {
  const reading = readPlan(readFileSync("docs/examples/alder-bank-eighty-five-chicks.json", "utf8"));
  if (!reading.ok) throw new Error(JSON.stringify(reading.problems));
  const answer = yearForPlan(reading.plan, { weeks, mostParts: 5 });
  if (!answer.ok) throw new Error(JSON.stringify(answer.problems));
  return answer.year;
}

const year = yearOf(8);
const chart = layYearChart(year, 600);

test("layYearChart gives each pen a row of blocks that fill the axis, without gaps", () => {
  expect(chart.rows.map(({ name }) => name)).toEqual(year.pens.map(({ pen }) => pen));
  for (const { blocks, y } of chart.rows) {
    expect(blocks[0]?.x).toBeCloseTo(chart.left, 9);
    blocks.forEach(({ x, width }, k) => {
      expect(x + width).toBeCloseTo(blocks[k + 1]?.x ?? chart.right, 9);
    });
    expect(y + YEAR_ROW.height).toBeLessThanOrEqual(chart.bottom + 1e-9);
  }
});

test("a block is as high as its pen drinks against the most of any, and empty where no bird is there", () => {
  const all = chart.rows.flatMap(({ blocks, pen }) => blocks.map((block) => ({ ...block, pen })));
  expect(Math.max(...all.map(({ fill }) => fill))).toBe(1);
  for (const { fill, period, pen } of all)
    expect(fill === 0).toBe(year.periods[period]?.pens[pen]?.birds === 0);
});

test("blocks are marked short on the days the year says, and a move is marked in both pens", () => {
  const short = chart.rows.flatMap(({ name, blocks }) =>
    blocks.filter(({ isShort }) => isShort).map(({ period }) => [name, year.periods[period]?.from]),
  );
  expect(short.length).toBeGreaterThan(0);
  for (const [name, from] of short)
    expect(
      year.kit?.shortages.some(
        (one) => one.pen === name && one.from <= Number(from) && Number(from) < one.to,
      ),
    ).toBe(true);
  const moved = chart.rows.filter(({ marks }) => marks.some(({ event }) => event.code === "moves"));
  expect(moved.map(({ name }) => name)).toEqual(["brooder 1", "grass pen"]);
});

test("months are named where there is room, on a year and on a phone", () => {
  const long = yearOf(52);
  const named = (width: number) => layYearChart(long, width).months.filter(({ words }) => words !== "");
  // From the first of May, June to April begin within 52 weeks.
  expect(named(760)).toHaveLength(11);
  const few = named(200);
  expect(few.length).toBeLessThan(11);
  few.forEach(({ x }, k) => {
    if (k > 0) expect(x - few[k - 1]!.x).toBeGreaterThanOrEqual(30);
  });
});
