import { describe, expect, it } from "vitest";
import { checkRows, checkRule, inches } from "../../reference-tables/table-rules.mjs";

const pipe = {
  id: "a",
  source: "s",
  outside_mm: "20",
  wall_mm: "2",
  bore_mm: "16",
  basis: "plain",
  blank: "",
  nominal: "1-1/4",
};

describe("checkRule", () => {
  it.each([
    ["outside_mm = bore_mm + 2 * wall_mm ± 0.02", true],
    ["outside_mm = bore_mm + 2.1 * wall_mm ± 0.02", false],
    ["bore_mm < outside_mm", true],
    ["outside_mm <= bore_mm", false],
    ["(outside_mm - bore_mm) / wall_mm = 2 ± 0", true],
    ["bore_mm ^ 2 = 256 ± 0", true],
    ["-bore_mm >= -16", true],
    ["bore_mm > 1.6e1", false],
    ["max(1, min(3, wall_mm ^ 2)) = 3 ± 0", true],
    ["inches(nominal) = 1.25 ± 0", true],
    ["basis in plain | fancy", true],
    ["basis in fancy | odd", false],
    ["id matches ^[a-z]+$", true],
    ["id matches ^\\d", false],
  ])("%s is %s", (rule, holds) => {
    expect(checkRule(rule, pipe)).toBe(holds);
  });

  it("passes over a row with a blank in a column it names, and a row the condition does not fit", () => {
    expect(checkRule("blank > 0", pipe)).toBeUndefined();
    expect(checkRule("outside_mm = 0 ± 0 where basis is fancy", pipe)).toBeUndefined();
    expect(checkRule("outside_mm = 0 ± 0 where basis is plain", pipe)).toBe(false);
  });

  it("throws on a column that is not there and on a rule it cannot read, instead of passing", () => {
    expect(() => checkRule("borre_mm > 0", pipe)).toThrow('no column "borre_mm"');
    expect(() => checkRule("bore_mm is nice", pipe)).toThrow("cannot read");
    expect(() => checkRule("bore_mm wall_mm > 0", pipe)).toThrow("cannot read");
    expect(() => checkRule("bore_mm > 0 where baasis is plain", pipe)).toThrow('no column "baasis"');
  });
});

describe("checkRows", () => {
  it("names the row, its source and the rule, and counts the rows a rule spoke of", () => {
    const { broken, spokenOf } = checkRows(["bore_mm > 17", "blank > 0"], [pipe]);
    expect(broken).toEqual(['a (s): breaks "bore_mm > 17"']);
    expect([...spokenOf.values()]).toEqual([1, 0]);
  });
});

describe("inches", () => {
  it("reads whole, fraction and both", () => {
    expect([inches("2"), inches("3/8"), inches("1-1/2")]).toEqual([2, 0.375, 1.5]);
  });
});
