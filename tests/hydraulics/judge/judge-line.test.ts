import { describe, expect, it } from "vitest";
import { isWorse } from "../../../packages/hydraulics/src/judge/judge-line.js";
import { checkOf, verdictOf, yard } from "./yard/yard.js";

describe("isWorse", () => {
  const of = (verdict: "good" | "drips" | "starves" | "dry", margin: number) => ({ verdict, margin });

  it("is the worse verdict, whatever the margins: good, drips, starves, dry", () => {
    const order = ["good", "drips", "starves", "dry"] as const;
    order.forEach((one, a) => {
      order.forEach((other, b) => {
        if (a !== b) expect([one, other, isWorse(of(one, 1), of(other, -1))]).toEqual([one, other, a > b]);
      });
    });
  });

  it("is at the same verdict the smaller margin, and neither where they are alike", () => {
    expect(isWorse(of("starves", -0.2), of("starves", -0.1))).toBe(true);
    expect(isWorse(of("starves", -0.1), of("starves", -0.2))).toBe(false);
    expect(isWorse(of("good", 0.1), of("good", 0.1))).toBe(false);
  });
});

describe("a drinker judged by both laws of friction", () => {
  it("is told the worse of both, and whether they agree", () => {
    // In still water with a drop of flow the laws differ by millimetres: far from any edge they agree.
    const runs = [{ length: "3 m", fall: "0 cm", drinkers: { kind: "plain", count: 1 } }];
    expect(verdictOf(checkOf(yard({ stand: "60 cm", runs })))).toMatchObject({
      verdict: "good",
      lawsAgree: true,
      also: [],
    });
  });
});
