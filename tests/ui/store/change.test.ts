import type { Plan } from "@headfall/hydraulics";
import { expect, test } from "vitest";
import { applyChange, type LineChange, nameOfChange } from "../../../packages/ui/src/store/change.js";

const plan: Plan = {
  headfall: 1,
  sources: [{ id: "barrel", vessel: "drum-55gal-plastic", stand: "60 cm", level: { full: "80 cm" } }],
  runs: [
    { id: "feed", length: "12 m", drinkers: { kind: "nipple-bucket", count: 24 } },
    { id: "brooder", length: "3 m", drinkers: [{ kind: "nipple-bucket" }, { kind: "cup-float" }] },
  ],
};

test("applyChange(setStand) keeps the text as typed, and leaves the old plan as it was", () => {
  const before = JSON.stringify(plan);
  const after = applyChange(plan, { kind: "setStand", source: 0, typed: "2 ft 6 in" });
  expect(after.sources[0]!.stand).toBe("2 ft 6 in");
  expect(JSON.stringify(plan)).toBe(before);
  expect(after.runs).toBe(plan.runs);
});

test("applyChange(setLevel) changes one level and keeps the others", () => {
  const after = applyChange(plan, { kind: "setLevel", source: 0, level: "lowest", typed: "7 cm" });
  expect(after.sources[0]!.level).toEqual({ full: "80 cm", lowest: "7 cm" });
});

test("applyChange(setPipe) changes the pipe of its run only", () => {
  const after = applyChange(plan, { kind: "setPipe", run: 1, pipe: "pvc-sch40-3/4" });
  expect(after.runs.map(({ pipe }) => pipe)).toEqual([undefined, "pvc-sch40-3/4"]);
});

test("applyChange(setAtWork) keeps the form in which the groups were written", () => {
  const one = applyChange(plan, { kind: "setAtWork", run: 0, group: 0, when: "busiest", count: 9 });
  expect(one.runs[0]!.drinkers).toEqual({ kind: "nipple-bucket", count: 24, busiest: 9 });
  const two = applyChange(plan, { kind: "setAtWork", run: 1, group: 1, when: "ordinary", count: 1 });
  expect(two.runs[1]!.drinkers).toEqual([{ kind: "nipple-bucket" }, { kind: "cup-float", ordinary: 1 }]);
});

test("nameOfChange says every edit in words of its own", () => {
  const changes: LineChange[] = [
    { kind: "setStand", source: 0, typed: "70 cm" },
    { kind: "setLevel", source: 0, level: "full", typed: "70 cm" },
    { kind: "setPipe", run: 0, pipe: "pvc-sch40-1" },
    { kind: "setAtWork", run: 0, group: 0, when: "busiest", count: 3 },
  ];
  expect(new Set(changes.map(nameOfChange)).size).toBe(changes.length);
});
