import { expect, test } from "vitest";
import { readFitting, writeFitting } from "../../../packages/ui/src/kernels/fitting-counts.js";

test("readFitting reads a name with its count, a bare name as one, and a fitting of one's own", () => {
  expect(readFitting("elbow-90 x 4")).toEqual({ name: "elbow-90", count: 4 });
  expect(readFitting(" ball-valve ")).toEqual({ name: "ball-valve", count: 1 });
  expect(readFitting({ name: "filter", k: 12 })).toEqual({ name: "filter", count: 1, k: 12 });
});

test("writeFitting writes what readFitting read", () => {
  for (const fitting of ["elbow-90 x 4", "ball-valve", { name: "filter", k: 12, count: 2 }])
    expect(writeFitting(readFitting(fitting))).toEqual(fitting);
});
