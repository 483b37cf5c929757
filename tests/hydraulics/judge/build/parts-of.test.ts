import { describe, expect, it, test } from "vitest";
import { checkDocument } from "../../../../packages/hydraulics/src/document/read-plan.js";
import { buildSheetOf } from "../../../../packages/hydraulics/src/judge/build/build-of-plan.js";
import { sizeOf } from "../../../../packages/hydraulics/src/judge/build/parts-of.js";
import { headerTank } from "../header-tank.js";
import { sheetOf } from "./two-lanes.js";

test("where a run ends at the float valve of a header tank it is joined to it, not capped", () => {
  const reading = checkDocument(headerTank);
  if (!reading.ok) throw new Error(JSON.stringify(reading.problems));
  const answer = buildSheetOf(reading.plan, { samples: 1, weeks: 0, day: "2026-07-04" });
  if (!answer.ok) throw new Error(JSON.stringify(answer.problems));
  const { parts } = answer.sheet;
  const at = (kind: string) => parts.filter((part) => part.kind === kind);
  // The lane has an end to cap; the main has none.
  expect(at("endCap").reduce((sum, { count }) => sum + count, 0)).toBe(1);
  expect(at("joiner").length).toBeGreaterThan(0);
});

describe("the parts of a plan", () => {
  const { parts } = sheetOf();
  const counts = (kind: string, sheet = parts) =>
    sheet.filter((part) => part.kind === kind).map(({ id, count }) => [id, count]);

  it("have a tee where three pipes meet and at every cup, none at nipples, which screw into the pipe", () => {
    expect(counts("tee")).toEqual([["tee 3/4 in", 3]]);
  });

  it("have a coupling where two pipes meet, and at each joint within a run; a cap at each end", () => {
    // At the hump, and two in the lane of three sticks.
    expect(counts("joiner")).toEqual([["coupling 3/4 in", 3]]);
    expect(counts("endCap")).toEqual([["end-cap 3/4 in", 2]]);
    expect(counts("bulkhead")).toEqual([["bulkhead 3/4 in", 1]]);
  });

  it("have a reducer where two pipes of different sizes meet", () => {
    const narrow = sheetOf({}, { far: { pipe: "pvc-sch40-1/2" } });
    expect(counts("joiner", narrow.parts)).toContainEqual(["reducer 1/2 in to 3/4 in", 1]);
  });

  it("name a fitting as it is bought, not the state of it that its loss is of", () => {
    const fittings = ["ball-valve x 2", "strainer", "tee-run", "elbow-90", "tee-run-tapped"];
    const named = sheetOf({}, { far: { fittings } }).parts.filter((part) => part.kind === "fitting");
    expect(named.map(({ id, name, count }) => [id, name, count])).toEqual([
      ["ball-valve 3/4 in", "Ball valve, full bore", 2],
      ["strainer 3/4 in", "Basket strainer", 1],
      ["tee-run 3/4 in", "Tee", 1],
      ["elbow-90 3/4 in", "90 degree elbow, threaded or cemented", 1],
      ["tee-run-tapped 3/4 in", "Tapped branch, such as a drinker saddle", 1],
    ]);
  });

  it("buy nothing for the shape of a pipe's mouth: the outlet's fitting is in the list already", () => {
    const mouths = sheetOf({}, { far: { fittings: ["entry-sharp", "bulkhead", "exit"] } });
    expect(mouths.parts.filter((part) => part.kind === "fitting")).toEqual([]);
    expect(counts("bulkhead", mouths.parts)).toEqual([["bulkhead 3/4 in", 1]]);
    expect(mouths.steps.flatMap((step) => ("fittings" in step ? step.fittings : []))).toEqual([]);
  });

  it("take a pipe's size from what stands behind the last comma of its name", () => {
    expect(sizeOf("PVC pipe, schedule 40, 3/4 in")).toBe("3/4 in");
    expect(sizeOf("polyethylene, 20 mm")).toBe("20 mm");
    expect(sizeOf("own pipe of mine")).toBeUndefined();
  });
});
