import { expect, test } from "vitest";
import { pathToDrinker } from "../../../packages/ui/src/kernels/profile-path.js";
import { smallLine } from "../fixtures/small-line.js";

const good = (count: number) => new Array<"good">(count).fill("good");

test("pathToDrinker runs from the source's outlet through the drinker to the end of its run", () => {
  const path = pathToDrinker(smallLine({ verdicts: good(4) }), 1)!;
  expect(path.source).toBe(0);
  expect(path.points).toEqual([0, 1, 2, 3, 4]);
  expect(path.segments).toEqual([-1, 0, 1, 2, 3]);
  expect(path.along).toEqual([0, 1, 2, 3, 4]);
});

test("pathToDrinker lists all drinkers on the way, nearest first", () => {
  expect(pathToDrinker(smallLine({ verdicts: good(4) }), 3)!.drinkers).toEqual([0, 1, 2, 3]);
});

test("pathToDrinker leaves out a branch that does not lead to the drinker", () => {
  const line = smallLine({ verdicts: good(3), branchPoints: 2 });
  expect(pathToDrinker(line, 2)!.points).toEqual([0, 1, 2, 3]);
});

test("pathToDrinker follows the branch when the drinker sits on it, and its run to the end", () => {
  const line = smallLine({ verdicts: good(3), branchPoints: 3 });
  const moved = {
    ...line,
    drinkers: { ...line.drinkers, point: Int32Array.of(1, 2, 4), run: Int32Array.of(0, 0, 1) },
  };
  const path = pathToDrinker(moved, 2)!;
  expect(path.points).toEqual([0, 1, 4, 5, 6]);
  expect(path.segments).toEqual([-1, 0, 3, 4, 5]);
  expect(path.drinkers).toEqual([0, 2]);
});

test("pathToDrinker goes against the run's own direction where the water does", () => {
  const line = smallLine({ verdicts: good(3) });
  const source = { ...line.sources[0]!, point: 3 };
  const path = pathToDrinker({ ...line, sources: [source] }, 1)!;
  expect(path.points).toEqual([3, 2, 1, 0]);
  expect(path.segments).toEqual([-1, 2, 1, 0]);
});

test("pathToDrinker is undefined for a drinker that no pipe joins to a source", () => {
  const line = smallLine({ verdicts: good(2) });
  const cut = { ...line, segments: { ...line.segments, count: 1 } };
  expect(pathToDrinker(cut, 1)).toBeUndefined();
});

test("pathToDrinker is undefined for a drinker the line does not have", () => {
  expect(pathToDrinker(smallLine({ verdicts: good(2) }), 2)).toBeUndefined();
  expect(pathToDrinker(smallLine({ verdicts: [] }), 0)).toBeUndefined();
});
