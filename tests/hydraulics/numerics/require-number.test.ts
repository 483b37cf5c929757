import { describe, expect, it } from "vitest";
import {
  requireBetween,
  requireFinite,
  requireNotNegative,
  requirePositive,
} from "../../../packages/hydraulics/src/numerics/require-number.js";

describe("the checks of numbers", () => {
  const unreal = [Number.NaN, Number.POSITIVE_INFINITY, Number.NEGATIVE_INFINITY];

  it("requireFinite accepts any finite number and names the one that is not", () => {
    expect(() => requireFinite("f", { one: 0, other: -1e300 })).not.toThrow();
    for (const value of unreal) {
      expect(() => requireFinite("f", { one: 1, other: value })).toThrow(
        `f: other is ${value}; it must be a finite number`,
      );
    }
  });

  it("requirePositive refuses nought and less", () => {
    expect(() => requirePositive("f", { one: Number.MIN_VALUE })).not.toThrow();
    for (const value of [...unreal, 0, -0, -1])
      expect(() => requirePositive("f", { one: value })).toThrow(RangeError);
    expect(() => requirePositive("f", { one: -1 })).toThrow("f: one is -1; it must be finite and above 0");
  });

  it("requireNotNegative accepts nought", () => {
    expect(() => requireNotNegative("f", { one: 0, other: 3 })).not.toThrow();
    for (const value of [...unreal, -1e-300])
      expect(() => requireNotNegative("f", { one: value })).toThrow(RangeError);
    expect(() => requireNotNegative("f", { one: -2 })).toThrow(
      "f: one is -2; it must be finite and not below 0",
    );
  });

  it("requireBetween accepts both ends and shows them", () => {
    const range = { least: 1, greatest: 2 };
    expect(() => requireBetween("f", "one", 1, range)).not.toThrow();
    expect(() => requireBetween("f", "one", 2, range)).not.toThrow();
    for (const value of [...unreal, 0.99, 2.01])
      expect(() => requireBetween("f", "one", value, range)).toThrow(RangeError);
    expect(() => requireBetween("f", "one", 3, range)).toThrow("f: one is 3; it must be from 1 to 2");
  });

  it("a value that is no number at all is named by its type, as untyped callers will hand it", () => {
    const text = "12" as unknown as number;
    expect(() => requirePositive("f", { one: text })).toThrow("f: one is string");
  });
});
