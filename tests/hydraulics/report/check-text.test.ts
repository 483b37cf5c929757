import { describe, expect, it } from "vitest";
import { checkDocument } from "../../../packages/hydraulics/src/document/read-plan.js";
import { checkPlan } from "../../../packages/hydraulics/src/judge/check-plan.js";
import { writeSeconds } from "../../../packages/hydraulics/src/report/birds/bird-sentences.js";
import { writeCheckText } from "../../../packages/hydraulics/src/report/check-text.js";
import { writeNames } from "../../../packages/hydraulics/src/report/name-ranges.js";
import { yard } from "../judge/yard/yard.js";

function checkOf(document: unknown) {
  const reading = checkDocument(document);
  if (!reading.ok) throw new Error(JSON.stringify(reading.problems));
  const checking = checkPlan(reading.plan, { samples: 0 });
  if (!checking.ok) throw new Error(JSON.stringify(checking.problems));
  return checking.checked;
}
const lane = (count: number, more: Record<string, unknown> = {}) => ({
  ...{ id: "lane", length: "3 m", fall: "0 cm", pipe: { bore: "10 cm" } },
  ...(count > 0 ? { drinkers: { kind: "plain", count } } : {}),
  ...more,
});
const checked = checkOf(yard({ runs: [lane(3)], more: { name: "Bank" } }));
const text = (one = checked) => writeCheckText(one, "metric", (words) => words);

describe("writeCheckText", () => {
  it("begins with the name and the counts, and what is a close call", () => {
    expect(text()).toMatch(/^Bank: 3 good\.\n/);
    expect(text(checkOf(yard({ runs: [lane(0)] })))).toMatch(/^This plan: no drinkers\.\n/);
    const close = checked.drinkers.map((one, d) =>
      d === 0 ? { ...one, certainty: { ...one.certainty, kind: "closeCall" } } : one,
    );
    expect(text({ ...checked, drinkers: close } as never)).toMatch(
      /^Bank: 3 good; 1 of them a close call\.\n/,
    );
  });

  it("has a row for each drinker: heads and flows of each moment, margin and verdict", () => {
    // Over the first drinker stand 80 cm when full, 20 at the lowest, 50 between; each gives 100 mL/min times the root
    // of its head in metres and needs 16 cm; the wide pipe loses nothing.
    const [row] = text()
      .split("\n")
      .filter((line) => line.startsWith("+  lane 1"));
    expect(row!.split(/ {2,}/)).toEqual([
      ...["+", "lane 1", "80 cm", "80 cm", "89 mL/min"],
      ...["20 cm", "20 cm", "45 mL/min", "50 cm", "50 cm", "71 mL/min"],
      ...["+40 mm", "good"],
    ]);
  });

  it("shows of a long line the two hundred with the least margin, and says how many it leaves out", () => {
    const [one] = checked.drinkers;
    const many = (count: number) =>
      text({
        ...checked,
        drinkers: Array.from({ length: count }, (_, k) => ({
          ...one!,
          drinker: `d ${k}`,
          margin: 1 - k / 1000,
        })),
      });
    expect(many(200)).toMatch(/\n\+ +d 0 /);
    expect(many(200)).not.toContain("with the least margin are shown");
    expect(many(201)).not.toMatch(/\n\+ +d 0 /);
    expect(many(201)).toMatch(/\n\+ +d 1 /);
    expect(many(203)).toContain("The 200 with the least margin are shown, 3 more are not");
  });

  it("has the worst of each verdict of a group speak for the others", () => {
    expect(text()).toMatch(/Why\n {2}\+ lane 1 .*\(worst of 3; all do well\)/);
    expect(text(checkOf(yard({ runs: [lane(1)] })))).not.toContain("worst of");
    const other = lane(2, { id: "other", drinkers: { kind: "plain", count: 2 } });
    const both = text(checkOf(yard({ runs: [lane(3), { ...other, from: "barrel" }] })));
    expect(both).toMatch(/\(worst of 3 that do well\)/);
    expect(both).toMatch(/\(worst of 2 that do well\)/);
  });
});

describe("small words", () => {
  it("writeNames draws numbers of one name together, and keeps names without numbers apart", () => {
    expect(writeNames(["lane", "lane 1", "lane 2", "lane 4"])).toBe("lane; lane 1, 2 and 4");
    expect(writeNames(["lane 3", "lane 1", "lane 2"])).toBe("lane 1 to 3");
    expect(writeNames(["a 1", "b"])).toBe("a 1 and b");
  });

  it("writeSeconds goes no further than a day", () => {
    expect(writeSeconds(1e7)).toBe(writeSeconds(86_400));
  });
});
