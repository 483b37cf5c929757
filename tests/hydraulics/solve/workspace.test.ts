import { expect, it } from "vitest";
import { prepareLine } from "../../../packages/hydraulics/src/solve/prepare-line.js";
import { reachState, solveLine } from "../../../packages/hydraulics/src/solve/solve-line.js";
import { createWorkspace, type Workspace } from "../../../packages/hydraulics/src/solve/workspace.js";
import { makeLine, makeMoment } from "../../arbitraries/make-line.js";

const line = () =>
  makeLine({
    heights: [0, -0.2, -0.3, -0.1],
    pipes: [
      { from: 0, to: 1, length: 10 },
      { from: 1, to: 2, length: 10 },
      { from: 2, to: 3, length: 10 },
      { from: 3, to: 0, length: 10 },
    ],
    drinkers: [1, 2, 3].map((point) => ({ point, coefficient: 5e-6 })),
    sources: [0],
  });

/** The buffers of a workspace, whichever of a pair holds the present state. */
const buffersOf = (work: Workspace) =>
  new Set(Object.values(work).filter((value) => value instanceof Float64Array));

it("solveLine works in the buffers made once: after many solves they are the same ones, in some order", () => {
  const prepared = prepareLine(line(), "hazenWilliams");
  const before = buffersOf(prepared.current.work);
  for (const head of [1, 0.2, 0, 2, 0.5]) {
    reachState(prepared, makeMoment(prepared.line, [head]));
    reachState(prepared, makeMoment(prepared.line, [head], [false, true, false]));
  }
  const after = buffersOf(prepared.current.work);
  expect(before.size).toBeGreaterThan(15);
  expect([...after].every((buffer) => before.has(buffer))).toBe(true);
  expect(after.size).toBe(before.size);
});

it("solveLine hands out arrays of its own: a later solve leaves an earlier answer as it was", () => {
  const prepared = prepareLine(line(), "darcyWeisbach");
  const first = solveLine(prepared, makeMoment(prepared.line, [1]));
  const kept = structuredClone(first);
  solveLine(prepared, makeMoment(prepared.line, [0.3], [true, false, false]));
  expect(first).toStrictEqual(kept);
});

it("createWorkspace sizes each buffer by what it holds: edges, drinkers, nodes", () => {
  const { network } = prepareLine(line(), "hazenWilliams").current;
  const work = createWorkspace(network);
  expect(work.flow).toHaveLength(5);
  expect(work.drinkerFlow).toHaveLength(3);
  expect(work.head).toHaveLength(4);
  expect(work.unknownDiagonal.buffer).toBe(work.nodeConductance.buffer);
  expect(work.warm).toBe(false);
});
