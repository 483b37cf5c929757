import { expect, test } from "vitest";
import { checkDocument } from "../../../packages/hydraulics/src/document/read-plan.js";
import { buildYard } from "../../../packages/hydraulics/src/model/build-yard.js";
import { holdsOf } from "../../../packages/hydraulics/src/model/waterer-sizes.js";
import { FACING, hasWaterers } from "../../../packages/hydraulics/src/model/yard.js";

function yardOf(...waterers: object[]) {
  const reading = checkDocument({
    headfall: 1,
    sources: [],
    runs: [],
    pens: [{ id: "hens", birds: { kind: "hen", count: 12 }, waterers }],
  });
  if (!reading.ok) throw new Error(JSON.stringify(reading.problems));
  const building = buildYard(reading.plan);
  if (!building.ok) throw new Error(JSON.stringify(building.problems));
  return building.yard.pens[0]!.waterers;
}

test("buildYard takes one waterer where no number is told, and names each by its pen and place", () => {
  const [one] = yardOf({ kind: "fount-1gal" });
  expect([one!.count, one!.id]).toEqual([1, "hens waterer"]);
  const two = yardOf({ kind: "fount-1gal", count: 3 }, { kind: "fount-1gal" });
  expect(two.map(({ id, count }) => [id, count])).toEqual([
    ["hens waterer 1", 3],
    ["hens waterer 2", 1],
  ]);
});

test("holes face half a turn, a quarter and none from downhill", () => {
  expect(FACING).toEqual({ uphill: Math.PI, sideways: Math.PI / 2, downhill: 0 });
});

test("buildYard takes a rim that is typed across as half of it, and other sizes as they are", () => {
  const [one] = yardOf({ kind: "fount-1gal", sizes: { rim: "24 cm", hole: "9 cm" } });
  expect(one!.kind).toMatchObject({ rim: 0.12, hole: 0.09 });
});

test("what stands in a pen stands on its slope, what hangs there hangs plumb, and what says its own slope has that", () => {
  const pen = { id: "hens", slope: "5 %", birds: { kind: "hen", count: 12 } };
  const waterers = [
    { kind: "fount-1gal" },
    { kind: "bell-bucket-5gal" },
    { kind: "fount-1gal", slope: "2 %" },
  ];
  const reading = checkDocument({ headfall: 1, sources: [], runs: [], pens: [{ ...pen, waterers }] });
  if (!reading.ok) throw new Error(JSON.stringify(reading.problems));
  const building = buildYard(reading.plan);
  if (!building.ok) throw new Error(JSON.stringify(building.problems));
  const slopes = building.yard.pens[0]!.waterers.map(({ kind, slope }) => [kind.hangs, slope]);
  expect(slopes).toEqual([
    [false, expect.closeTo(0.05, 9)],
    [true, 0],
    [false, expect.closeTo(0.02, 9)],
  ]);
});

test("a plan without pens, or with none that has any, has no waterers", () => {
  expect([hasWaterers({}), hasWaterers({ pens: [] })]).toEqual([false, false]);
  const pen = { id: "a", birds: { kind: "hen", count: 1 } } as const;
  expect([hasWaterers({ pens: [pen] }), hasWaterers({ pens: [{ ...pen, waterers: [] }] })]).toEqual([
    false,
    false,
  ]);
  expect(hasWaterers({ pens: [pen, { ...pen, waterers: [{ kind: "fount-1gal" }] }] })).toBe(true);
});

test("the ring of a fount holds what lies between rim and jar: 10 and 8 cm in radius, 2 cm deep, are 0.226 L", () => {
  const [plain] = yardOf({ kind: "fount-1gal" });
  const kind = plain!.kind;
  if (kind.works !== "vacuum") throw new Error(kind.works);
  const held = holdsOf({ ...kind, rim: 0.1, jar: 0.08, pool: 0.02 }) - kind.reservoir;
  expect(held).toBeCloseTo(Math.PI * (0.01 - 0.0064) * 0.02, 12);
});
