import { expect, test } from "vitest";
import { checkDocument } from "../../../packages/hydraulics/src/document/read-plan.js";
import { buildYard } from "../../../packages/hydraulics/src/model/build-yard.js";
import { FACING } from "../../../packages/hydraulics/src/model/yard.js";

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
