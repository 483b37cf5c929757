import { expect, test } from "vitest";
import { tiltOf } from "../../../../packages/hydraulics/src/judge/yard/waterer-tilt.js";
import { loose } from "./loose.js";

const tiltOn = (kind: string, slope: number) => {
  const tilt = tiltOf(loose(kind, { slope }));
  if (!("halfAt" in tilt)) throw new Error("it is no open vessel");
  return tilt;
};

test("half of a full trough stays where the water's surface just leaves its far end: depth over length", () => {
  const { kind } = loose("trough-90cm");
  if (kind.works !== "trough") throw new Error("a trough is one");
  const { halfAt } = tiltOn("trough-90cm", 0);
  expect(halfAt).toBeCloseTo(kind.depth / kind.length, 5);
});

test("on the slope told for it half of a pan is left, and it is told alike wherever the pan stands", () => {
  const { halfAt } = tiltOn("pan-40cm", 0.03);
  expect(tiltOn("pan-40cm", halfAt).share).toBeCloseTo(0.5, 4);
  expect(tiltOn("pan-40cm", 0).halfAt).toBe(halfAt);
});
