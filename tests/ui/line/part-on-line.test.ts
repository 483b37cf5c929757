import { expect, test } from "vitest";
import { drinkerOf, pathFor } from "../../../packages/ui/src/line/part-on-line.js";
import { smallLine } from "../fixtures/small-line.js";

const line = smallLine({ verdicts: ["good", "good", "good"], branchPoints: 2 });

test("pathFor shows the way to the drinker looked at while the chosen part lies on it", () => {
  const path = pathFor(line, { kind: "joint", joint: "point 1" }, 2);
  expect(path?.points).toEqual([0, 1, 2, 3]);
  expect(pathFor(line, undefined, 2)).toEqual(path);
  expect(pathFor(line, { kind: "source", source: 0 }, 2)).toEqual(path);
});

test("pathFor turns into the branch that is chosen", () => {
  expect(pathFor(line, { kind: "run", run: 1 }, 2)?.points).toEqual([0, 1, 4, 5]);
});

test("pathFor, of a part that the line does not have, shows the usual way", () => {
  expect(pathFor(line, { kind: "run", run: 7 }, 0)?.points).toEqual([0, 1, 2, 3]);
  expect(pathFor(line, { kind: "joint", joint: "nowhere" }, 0)?.points).toEqual([0, 1, 2, 3]);
});

test("pathFor, of a line without drinkers and with nothing chosen, shows the source", () => {
  expect(pathFor(smallLine({ verdicts: [] }), undefined, -1)?.points).toEqual([0]);
});

test("drinkerOf finds the one drinker that is chosen, and none when a group or another part is", () => {
  expect(drinkerOf(line, { kind: "drinkers", run: 0, group: 0, number: 2 })).toBe(2);
  expect(drinkerOf(line, { kind: "drinkers", run: 0, group: 0 })).toBeUndefined();
  expect(drinkerOf(line, { kind: "drinkers", run: 0, group: 0, number: 3 })).toBeUndefined();
  expect(drinkerOf(line, { kind: "run", run: 0 })).toBeUndefined();
});
