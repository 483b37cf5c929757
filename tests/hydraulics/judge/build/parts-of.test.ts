import { expect, test } from "vitest";
import { checkDocument } from "../../../../packages/hydraulics/src/document/read-plan.js";
import { buildSheetOf } from "../../../../packages/hydraulics/src/judge/build/build-of-plan.js";
import { headerTank } from "../header-tank.js";

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
