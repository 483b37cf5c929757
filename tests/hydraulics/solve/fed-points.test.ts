import { expect, it } from "vitest";
import { SEGMENT_KIND } from "../../../packages/hydraulics/src/model/line.js";
import { pointsFed } from "../../../packages/hydraulics/src/solve/fed-points.js";
import { prepareLine } from "../../../packages/hydraulics/src/solve/prepare-line.js";
import { makeLine } from "../../arbitraries/make-line.js";

/** 0 source - pipe - 1 - valve - 2 - pipe - 3; 4 - valve - 1; 1 - shut tap - 5. */
const line = makeLine({
  heights: [0, 0, 0, 0, 0, 0],
  pipes: [
    { from: 0, to: 1, length: 1 },
    { from: 1, to: 2, length: 1, kind: SEGMENT_KIND.oneWay },
    { from: 3, to: 2, length: 1 },
    { from: 4, to: 1, length: 1, kind: SEGMENT_KIND.oneWay },
    { from: 1, to: 5, length: 1, shut: true },
  ],
  drinkers: [],
  sources: [0],
});

it("pointsFed follows pipes either way and valves forwards, and stops at a shut tap", () => {
  const prepared = prepareLine(line, "hazenWilliams");
  expect([...pointsFed(prepared, prepared.current)]).toEqual([1, 1, 1, 1, 0, 0]);
});

it("pointsFed stops at a device that is found shut, and not at one that holds", () => {
  const prepared = prepareLine(line, "hazenWilliams");
  const fedWith = (setting: "shut" | "holds") =>
    pointsFed(prepared, { ...prepared.current, set: [{ segment: 1, setting }] });
  expect([...fedWith("shut")]).toEqual([1, 1, 0, 0, 0, 0]);
  expect([...fedWith("holds")]).toEqual([1, 1, 1, 1, 0, 0]);
});
