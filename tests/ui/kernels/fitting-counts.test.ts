import { expect, test } from "vitest";
import {
  readFitting,
  readFittings,
  writeFitting,
  writeFittings,
} from "../../../packages/ui/src/kernels/fitting-counts.js";

test("readFitting reads a name with its count, a bare name as one, and a fitting of one's own", () => {
  expect(readFitting("elbow-90 x 4")).toEqual({ name: "elbow-90", count: 4 });
  expect(readFitting(" ball-valve ")).toEqual({ name: "ball-valve", count: 1 });
  expect(readFitting({ name: "filter", k: 12 })).toEqual({ name: "filter", count: 1, k: 12 });
});

test("writeFitting writes what readFitting read", () => {
  for (const fitting of ["elbow-90 x 4", "ball-valve", { name: "filter", k: 12, count: 2 }])
    expect(writeFitting(readFitting(fitting))).toEqual(fitting);
});

test("writeFittings writes all in one line, and readFittings reads it back", () => {
  const list = [
    "ball-valve",
    "elbow-90 x 2",
    { name: "filter", k: 12, count: 1 },
    { name: "bend", k: 0.5, count: 3 },
  ];
  expect(writeFittings(list)).toBe("ball-valve; elbow-90 x 2; filter (K 12); bend (K 0.5) x 3");
  expect(readFittings(writeFittings(list))).toEqual(list);
});

test("readFittings parts by commas where there is no semicolon, and passes over nothing between two", () => {
  expect(readFittings("ball-valve, elbow-90 x 2,")).toEqual(["ball-valve", "elbow-90 x 2"]);
  expect(readFittings("Ball valve, full bore; strainer")).toEqual(["Ball valve, full bore", "strainer"]);
  expect(readFittings(" ")).toEqual([]);
});
