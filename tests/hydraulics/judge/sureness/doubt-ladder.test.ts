import { describe, expect, it } from "vitest";
import { rungsOf } from "../../../../packages/hydraulics/src/judge/sureness/doubt-ladder.js";
import type { Input } from "../../../../packages/hydraulics/src/judge/sureness/doubted-inputs.js";

const input = (more: Partial<Input>): Input =>
  ({ key: "one", index: 0, doubt: 0.02, spread: { low: 1, high: 1 }, ...more }) as Input;
const height = (doubt: number) => rungsOf(input({ input: { kind: "height", place: "end" }, doubt }));

describe("rungsOf", () => {
  it("of a height 2 cm in doubt goes from 2 mm, the finest a string gives, by round figures, and keeps as much of it", () => {
    expect(height(0.02).map(({ doubt }) => doubt)).toEqual([0.002, 0.003, 0.005, 0.007, 0.01, 0.015]);
    for (const { doubt, keeps } of height(0.02)) expect(keeps).toBeCloseTo(doubt / 0.02, 12);
  });

  it("of a metre in doubt begins at three hundredths of it: better is as good as none", () => {
    expect(height(1)[0]).toEqual({ doubt: 0.03, keeps: 0.03 });
    expect(height(1).at(-1)!.doubt).toBe(0.7);
  });

  it("is none of what is as good as it gets", () => {
    expect(height(0.002)).toEqual([]);
    expect(height(0.001)).toEqual([]);
  });

  it("of a bore goes down to a tenth of a millimetre", () => {
    const rungs = rungsOf(input({ input: { kind: "bore", run: "lane" }, doubt: 0.0004 }));
    expect(rungs.map(({ doubt }) => doubt)).toEqual([0.0001, 0.00015, 0.0002, 0.0003]);
  });

  it("of a flow keeps the part of the logarithm that is left, on the side where that is less", () => {
    const flow = (low: number, high: number) =>
      rungsOf(input({ input: { kind: "flow", drinkers: "nipple" }, doubt: 0.3, spread: { low, high } }));
    const at = (low: number, high: number, doubt: number) =>
      flow(low, high).find((rung) => rung.doubt === doubt)!.keeps;
    expect(at(0.7, 1.5, 0.1)).toBeCloseTo(Math.log(1.1) / Math.log(1.5), 12);
    expect(at(0.5, 1.1, 0.05)).toBeCloseTo(Math.log(0.95) / Math.log(0.5), 12);
    // Only one side is in doubt.
    expect(at(1, 1.4, 0.2)).toBeCloseTo(Math.log(1.2) / Math.log(1.4), 12);
    expect(at(0.7, 1, 0.2)).toBeCloseTo(Math.log(0.8) / Math.log(0.7), 12);
    // Never more than all of it.
    expect(at(0.95, 1.05, 0.2)).toBe(1);
  });

  it("of what birds do is known or not", () => {
    for (const one of [{ kind: "intake", pen: "hens" }, { kind: "takenIn" }, { kind: "roughness" }] as const)
      expect(rungsOf(input({ input: one }))).toEqual([{ doubt: 0, keeps: 0 }]);
  });
});
