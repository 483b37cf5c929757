import fc from "fast-check";
import { expect, test } from "vitest";
import type { Plan } from "../../packages/hydraulics/src/document/plan-schema.js";
import { checkDocument } from "../../packages/hydraulics/src/document/read-plan.js";
import { runEnds } from "../../packages/hydraulics/src/document/run-ends.js";
import { buildSheetOf } from "../../packages/hydraulics/src/judge/build/build-of-plan.js";
import type { BuildSheet } from "../../packages/hydraulics/src/judge/build/build-sheet.js";
import { JOINT_CLEAR } from "../../packages/hydraulics/src/judge/build/cut-pipes.js";
import type { PipeToCut, RunPiece } from "../../packages/hydraulics/src/judge/build/part-list.js";
import { buildLine } from "../../packages/hydraulics/src/model/build-line.js";
import type { Line } from "../../packages/hydraulics/src/model/line.js";
import { writeBuildText } from "../../packages/hydraulics/src/report/build/build-text.js";
import { withRandomBuilding } from "../arbitraries/plan-building.js";
import { type PlanData, plans } from "../arbitraries/plans.js";
import { cases } from "../runner/cases.js";
import { ASKED_ON } from "./asked-plans.js";

function built(data: PlanData, seed: number) {
  const reading = checkDocument(withRandomBuilding(data, seed));
  if (!reading.ok) throw new Error(JSON.stringify(reading.problems));
  const line = buildLine(reading.plan);
  const answer = buildSheetOf(reading.plan, { day: ASKED_ON, samples: 8, weeks: 1 });
  if (!line.ok || !answer.ok) throw new Error("the plan does not build");
  return { plan: reading.plan, line: line.line, sheet: answer.sheet };
}

const piecesOf = ({ bars, uncut }: PipeToCut): RunPiece[] => [
  ...bars.flatMap(({ pieces }) => pieces),
  ...uncut,
];

/** Numbers anywhere in a result that are not finite, by where. */
function notFinite(value: unknown, path = ""): string[] {
  if (typeof value === "number") return Number.isFinite(value) ? [] : [path];
  if (typeof value !== "object" || value === null) return [];
  return Object.entries(value).flatMap(([key, inside]) => notFinite(inside, `${path}.${key}`));
}

/** Joints of runs: that they keep clear of drinkers where they stand far enough apart for that. */
function jointsTooNear(line: Line, sheet: BuildSheet): string[] {
  const pieces = sheet.pipes.flatMap(piecesOf);
  return line.runs.flatMap((run) => {
    const drinkers = Array.from(line.drinkers.along).filter((_, d) => line.drinkers.run[d] === run.index);
    const gaps = [...drinkers].sort((a, b) => a - b).map((each, i, all) => each - (all[i - 1] ?? -1));
    if (gaps.some((gap) => gap < 2 * JOINT_CLEAR + 1e-6)) return [];
    const mine = pieces.filter((piece) => piece.run === run.id).sort((a, b) => a.part - b.part);
    let at = 0;
    return mine.slice(0, -1).flatMap((piece) => {
      at += piece.length;
      return drinkers.some((each) => Math.abs(each - at) < JOINT_CLEAR - 1e-5) ? [`${run.id} at ${at}`] : [];
    });
  });
}

/** Runs laid twice or never, or before any that brings water to them; and birds let in too early. */
function orderFaults(plan: Plan, line: Line, sheet: BuildSheet): string[] {
  const laid = sheet.steps.flatMap((step) => (step.code === "layRun" ? [step.run] : []));
  const names = line.runs.map(({ id }) => id);
  const faults = [...laid].sort().join() === [...names].sort().join() ? [] : ["not each run once"];
  if (sheet.steps.at(-1)?.code !== "letBirdsIn") faults.push("birds are not last");
  if (plan.runs.some(({ tap }) => tap === "shut")) return faults;
  const reached = new Set(line.sources.map(({ id }) => id));
  const ends = runEnds(plan);
  for (const run of laid) {
    const { from, to } = ends[names.indexOf(run)]!;
    if (!reached.has(from) && !reached.has(to)) faults.push(`${run} hangs in the air`);
    reached.add(from).add(to);
  }
  return faults;
}

test("buildSheetOf: pieces make up every run, bars hold them, runs follow the water, and every drinker is on the bill", () => {
  fc.assert(
    fc.property(plans(), fc.nat(), (data, seed) => {
      const { plan, line, sheet } = built(data, seed);
      const pieces = sheet.pipes.flatMap(piecesOf);
      for (const run of line.runs) {
        const mine = pieces.filter((piece) => piece.run === run.id);
        const sum = mine.reduce((total, { length }) => total + length, 0);
        expect(Math.abs(sum - run.length)).toBeLessThan(1e-5 * Math.max(1, mine.length));
      }
      for (const { bars, cutting } of sheet.pipes) {
        for (const { length, pieces: cut, rest } of bars) {
          const used = cut.reduce((total, piece) => total + piece.length, 0);
          expect(used + (cut.length - 1) * sheet.kerf).toBeLessThan(length + 1e-5);
          expect(rest).toBeGreaterThanOrEqual(0);
        }
        expect(cutting.bound).toBeLessThanOrEqual(cutting.bought + 1e-6);
      }
      const drinkers = sheet.parts.filter(({ kind }) => kind === "drinker");
      expect(drinkers.reduce((sum, { count }) => sum + count, 0)).toBe(line.drinkers.count);
      expect(jointsTooNear(line, sheet)).toEqual([]);
      expect(orderFaults(plan, line, sheet)).toEqual([]);
      expect(notFinite(sheet)).toEqual([]);
      expect(writeBuildText("", sheet, "us", (text) => text)).not.toMatch(/NaN|Infinity|undefined/);
    }),
    cases(6),
  );
}, 600_000);
