import { describe, expect, it, test } from "vitest";
import { checkDocument } from "../../../../packages/hydraulics/src/document/read-plan.js";
import { drinkersForPlan } from "../../../../packages/hydraulics/src/judge/birds/drinkers-for-plan.js";
import {
  type Device,
  drinkersNeeded,
  type Region,
} from "../../../../packages/hydraulics/src/judge/birds/drinkers-needed.js";
import type { Batch, Pen } from "../../../../packages/hydraulics/src/model/flock.js";
import { birdById } from "../../../../packages/hydraulics/src/tables/birds.js";
import { codesOf, findingOf, flockOfPlan, penPlan } from "./pens.js";

const birds = (id: string, count: number, ageDays: number): Batch => {
  const kind = birdById(id);
  if (kind === undefined) throw new Error(`no bird is called ${id}`);
  return { kind, index: 0, count, ageDays, lay: 0.9 };
};
const penOf = (...batches: Batch[]): Pen => ({ id: "pen", index: 0, batches, drinkers: [] });
const NOBODY = { birds: 0, places: 1 };
const asked = (batches: Batch | Batch[], device: Device, region: Region, atOnce = NOBODY) =>
  drinkersNeeded(penOf(...[batches].flat()), device, { region, atOnce });
const answerOf = (need: ReturnType<typeof asked>, source: string, counts: string) =>
  need.asked.find(({ rule }) => rule.citation.source === source && rule.counts === counts);

describe("how many drinkers a pen needs", () => {
  // Council Directive 1999/74/EC, Art. 4: one nipple or cup for 10 hens, at least two within reach.
  test.each([
    [24, 3],
    [6, 1],
    [350, 35],
    [351, 36],
  ])("for %i hens, by the EU's rule of ten a nipple (directive 1999/74, Art. 4): %i", (hens, needed) => {
    const need = asked(birds("hen", hens, 200), "nipple", "EU");
    expect(answerOf(need, "eu-1999-74", "birds")?.needed).toBe(needed);
    expect(answerOf(need, "eu-1999-74", "least")?.needed).toBe(2);
  });

  it("takes the EU's rule as law from 350 hens on and as advice below (directive 1999/74, Art. 1)", () => {
    const small = asked(birds("hen", 349, 200), "cup", "EU");
    expect(small).toMatchObject({ byRule: 0, byAdvice: 35, because: "advice", ruleOfRegion: "forMoreBirds" });
    const large = asked(birds("hen", 350, 200), "cup", "EU");
    expect(large).toMatchObject({ byRule: 35, needed: 35, because: "rule", ruleOfRegion: "binds" });
  });

  it("lists what binds before what advises, and of either first what asks the most", () => {
    for (const hens of [6, 60, 400]) {
      const { asked: answers } = asked([birds("hen", hens, 200), birds("coturnix", 30, 60)], "nipple", "EU");
      expect(answers.length).toBeGreaterThan(2);
      const order = answers.map(({ isBinding, needed }) => (isBinding ? 1e6 : 0) + needed);
      expect(order).toEqual([...order].sort((a, b) => b - a));
    }
  });

  it("counts all that are kept, not the pen alone, where a rule binds from so many on", () => {
    const hens = birds("hen", 200, 200);
    const kept = [hens, birds("hen", 150, 300)];
    const need = drinkersNeeded(penOf(hens), "cup", { region: "EU", atOnce: NOBODY, kept });
    expect(need).toMatchObject({ byRule: 20, because: "rule" });
  });

  it("gives 83 hens to a bell of 40 cm where each has 1.5 cm of edge (Austria, Anlage 6), and 2 bells to 84", () => {
    for (const [hens, bells] of [
      [83, 1],
      [84, 2],
    ] as const) {
      const need = asked(birds("hen", hens, 200), "bell", "Austria");
      expect(answerOf(need, "austria-animal-keeping-order", "edge")).toMatchObject({
        needed: bells,
        isBinding: true,
      });
    }
  });

  it("is two in reach for a small flock, one for a single bird, and none for nobody, with no rule named", () => {
    expect(asked(birds("hen", 6, 200), "cup", "EU")).toMatchObject({ needed: 2, because: "inReach" });
    expect(asked(birds("hen", 1, 200), "cup", "EU")).toMatchObject({ inReach: 1 });
    expect(asked(birds("hen", 0, 200), "cup", "EU")).toMatchObject({
      needed: 0,
      because: "nobody",
      asked: [],
      isSilent: false,
    });
    expect(asked(birds("hen", 9, -3), "cup", "EU")).toMatchObject({ birds: 0, needed: 0, because: "nobody" });
  });

  it("lets the keeper's five a nipple count for the first fifty birds only, and never asks fewer for more", () => {
    const needs = [25, 50, 51, 99, 100, 101].map(
      (hens) => asked(birds("hen", hens, 200), "nipple", "none").needed,
    );
    expect(needs).toEqual([5, 10, 10, 10, 10, 10]);
    expect(asked(birds("hen", 101, 200), "nipple", "EU").needed).toBe(11);
  });

  it("takes a day-old as in its first day, and ages between two bands of a source as in the younger", () => {
    expect(asked(birds("turkey-tom", 40, 0), "nipple", "none")).toMatchObject({
      byAdvice: 2,
      isSilent: false,
    });
    const edgeAt = (ageDays: number) =>
      answerOf(asked(birds("pullet", 100, ageDays), "trough", "USA"), "extension-space-second-hand", "edge")
        ?.rule.of;
    expect([21, 24, 28, 63, 66, 70].map(edgeAt)).toEqual([
      "1-3 weeks",
      "1-3 weeks",
      "4-9 weeks",
      "4-9 weeks",
      "4-9 weeks",
      "10-20 weeks",
    ]);
    expect([3, 141].map(edgeAt)).toEqual([undefined, undefined]);
  });

  it("says where no rule and no advice speaks of the birds, and of which", () => {
    expect(asked(birds("goose", 30, 100), "nipple", "England")).toMatchObject({
      isSilent: true,
      silentOn: ["goose"],
      needed: 2,
      ruleOfRegion: "none",
    });
    const mixed = asked([birds("hen", 20, 200), birds("goose", 3, 200)], "nipple", "EU");
    expect(mixed).toMatchObject({ isSilent: false, silentOn: ["goose"] });
  });

  it("says that England has no rule in force for hens at nipples, only advice", () => {
    expect(asked(birds("hen", 400, 200), "nipple", "England")).toMatchObject({
      byRule: 0,
      byAdvice: 40,
      ruleOfRegion: "none",
    });
  });

  it("adds up batches, each by the strictest that speaks of it", () => {
    const hens = birds("hen", 10, 200);
    const quail = birds("coturnix", 10, 60);
    expect(asked(hens, "nipple", "EU").needed).toBe(2);
    expect(asked(quail, "nipple", "EU").needed).toBe(2);
    expect(asked([hens, quail], "nipple", "EU").needed).toBe(4);
  });

  it("is the crowd's where more come at once than rules and advice ask", () => {
    expect(asked(birds("hen", 24, 200), "cup", "EU", { birds: 7, places: 1 })).toMatchObject({
      byCrowd: 7,
      needed: 7,
      because: "crowd",
    });
    expect(asked(birds("hen", 24, 200), "bell", "EU", { birds: 7, places: 5 }).byCrowd).toBe(2);
  });
});

const drinkersOf = (document: unknown) => {
  const reading = checkDocument(document);
  if (!reading.ok) throw new Error(JSON.stringify(reading.problems));
  const answer = drinkersForPlan(reading.plan, { day: "2026-07-04" });
  if (!answer.ok) throw new Error(JSON.stringify(answer.problems));
  return answer.drinkers;
};

describe("the drinkers of a plan", () => {
  it("are told pen by pen, by device, with the crowd of a check", () => {
    const document = penPlan();
    const [pen] = drinkersOf(document).pens;
    const [report] = flockOfPlan(document).pens;
    expect(pen).toMatchObject({
      pen: "hens",
      isSuggestion: false,
      devices: [{ device: "nipple", has: 8, byAdvice: 5, byCrowd: report!.atOnce }],
    });
    expect(pen!.covered).toBeCloseTo(8 / pen!.devices[0]!.needed, 12);
  });

  it("are suggested as nipples where a pen reaches none", () => {
    const { pens } = drinkersOf({
      ...penPlan(),
      pens: [
        { id: "hens", birds: { kind: "hen", count: 24 }, drinkers: ["hen line"] },
        { id: "new pen", birds: { kind: "hen", count: 60 } },
      ],
    });
    expect(pens[1]).toMatchObject({
      isSuggestion: true,
      covered: 0,
      devices: [{ device: "nipple", has: 0, birds: 60 }],
    });
    expect(pens[1]!.devices[0]!.byCrowd).toBeGreaterThan(0);
  });

  it("are told as too few: by advice below 350 hens, by law where it binds, and not at all where enough", () => {
    expect(codesOf(flockOfPlan(penPlan()))).not.toContain("tooFewDrinkers");
    const more = penPlan({ birds: { kind: "hen", count: 100 } });
    expect(findingOf(flockOfPlan(more), "tooFewDrinkers")).toMatchObject({
      drinkers: 8,
      needed: 10,
      device: "nipple",
      binding: false,
    });
    const lawful = penPlan({ birds: { kind: "hen", count: 100 }, more: { region: "Austria" } });
    expect(findingOf(flockOfPlan(lawful), "tooFewDrinkers")).toMatchObject({
      needed: 10,
      binding: true,
      source: "austria-animal-keeping-order",
      counts: "birds",
      figure: 10,
    });
  });
});
