import { expect, test } from "vitest";
import type {
  Better,
  CloseCall,
  Remedy,
} from "../../../../packages/hydraulics/src/judge/sureness/measuring.js";
import { rankMeasurements } from "../../../../packages/hydraulics/src/judge/sureness/worthwhile.js";

const level = (source: string, needed: number): Better => ({
  ...{ input: { kind: "level", source }, doubt: 0.02, needed },
});
const call = (drinker: string, remedy: Remedy) => ({ drinker, remedy }) as CloseCall;

test("rankMeasurements asks once for each thing, as good as its most demanding drinker needs, the most decisive first", () => {
  const measurements = rankMeasurements([
    call("one", { kind: "one", better: level("a", 0.01), or: [level("b", 0.005)] }),
    call("two", { kind: "one", better: level("b", 0.003), or: [] }),
    call("three", { kind: "one", better: level("b", 0.007), or: [] }),
    call("four", { kind: "none" }),
  ]);
  expect(measurements).toEqual([
    { ...level("b", 0.003), drinkers: ["one", "two", "three"], with: [] },
    { ...level("a", 0.01), drinkers: ["one"], with: [] },
  ]);
});

test("rankMeasurements names with each of two the other, once", () => {
  const [a, b] = [level("a", 0.01), level("b", 0.01)];
  const measurements = rankMeasurements([
    call("one", { kind: "two", better: [a, b] }),
    call("two", { kind: "two", better: [a, b] }),
  ]);
  const shortly = ({ input, doubt }: Better) => ({ input, doubt });
  expect(measurements).toEqual([
    { ...a, drinkers: ["one", "two"], with: [shortly(b)] },
    { ...b, drinkers: ["one", "two"], with: [shortly(a)] },
  ]);
});
