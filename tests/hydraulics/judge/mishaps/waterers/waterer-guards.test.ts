import { describe, expect, it, test } from "vitest";
import { checkDocument } from "../../../../../packages/hydraulics/src/document/read-plan.js";
import { mishapsOfPlan } from "../../../../../packages/hydraulics/src/judge/mishaps/mishaps-of-plan.js";

const HOUR = 3600;

/** The guards told against a mishap of the only waterer of twelve hens. */
function guardsOf(waterer: Record<string, unknown>, mishap: string, pen: Record<string, unknown> = {}) {
  const reading = checkDocument({
    ...{ headfall: 1, day: "2026-07-04", sources: [], runs: [], weather: { high: "21 degC", light: "12 h" } },
    pens: [{ id: "hens", birds: { kind: "hen", count: 12, age: "40 weeks" }, waterers: [waterer], ...pen }],
  });
  if (!reading.ok) throw new Error(JSON.stringify(reading.problems));
  const answer = mishapsOfPlan(reading.plan);
  if (!answer.ok) throw new Error(JSON.stringify(answer.problems));
  const row = answer.mishaps.waterers.find(({ worst }) => worst.mishap.kind === mishap);
  if (row === undefined) throw new Error(`there is no ${mishap}`);
  return row;
}
const kinds = (row: ReturnType<typeof guardsOf>) => row.guards.map(({ guard }) => guard.kind);

describe("guards against a fount that stands off level", () => {
  const turned = (hole: string, slope: string) =>
    guardsOf({ kind: "fount-1gal", hole }, "offLevel", { slope }).guards.flatMap(({ guard }) =>
      guard.kind === "turnHole" ? [guard.way] : [],
    );

  it("turn its hole on from where it is, the least far first, and never back uphill", () => {
    const ways = [turned("uphill", "1 %"), turned("sideways", "6 %"), turned("downhill", "3 %")];
    for (const told of ways) expect(told).not.toContain("uphill");
    expect(ways[2]).toEqual([]);
    expect(ways[1]).toEqual(["downhill"]);
    expect([...ways[0]!].sort().reverse()).toEqual(ways[0]);
  });
});

describe("a look at a loose waterer", () => {
  it("is in whole hours that leave one before harm, and enough only where a day is", () => {
    const row = guardsOf({ kind: "rubber-pan-3gal", count: 4 }, "refillMissed");
    for (const { guard, isEnough } of row.guards) {
      if (guard.kind !== "look") continue;
      expect(guard.every % HOUR).toBe(0);
      expect(guard.every).toBeLessThanOrEqual(24 * HOUR);
      expect(guard.every).toBeLessThanOrEqual((row.worst.harmAfter ?? Number.POSITIVE_INFINITY) - HOUR);
      expect(isEnough).toBe(guard.every >= 24 * HOUR);
    }
    // Kicked over, the only pan leaves its birds without at once: no look comes soon enough.
    expect(kinds(guardsOf({ kind: "rubber-pan-3gal" }, "kickedOver"))).not.toContain("look");
  });
});

describe("a second waterer beside it", () => {
  it("keeps birds drinking when the first is kicked over, as long as its water lasts", () => {
    const row = guardsOf({ kind: "rubber-pan-3gal" }, "kickedOver");
    const second = row.guards.find(({ guard }) => guard.kind === "secondWaterer")!;
    expect(row.worst.harmAfter).toBe(0);
    expect(second.harmAfter!).toBeGreaterThan(12 * HOUR);
    expect(second.buysTime).toBe(second.harmAfter);
  });
});

describe("a brick in a pan", () => {
  it("makes it take a harder push, and is never enough by itself", () => {
    const row = guardsOf({ kind: "rubber-pan-3gal" }, "kickedOver");
    const { guard, isEnough } = row.guards.find((one) => one.guard.kind === "weight")!;
    if (guard.kind !== "weight") throw new Error("a brick is a weight");
    expect(guard.tippedThenBy / guard.tippedBy).toBeGreaterThan(1.5);
    expect(isEnough).toBe(false);
  });
});

test("a guard is enough where no bird goes without for a day and an hour", () => {
  const guards = ["rubber-pan-3gal", "dish-20cm"].flatMap((kind) => guardsOf({ kind }, "kickedOver").guards);
  const second = guards.filter(({ guard }) => guard.kind === "secondWaterer");
  expect(second.some(({ harmAfter }) => harmAfter !== undefined)).toBe(true);
  for (const { harmAfter, isEnough } of second)
    expect([harmAfter, isEnough]).toEqual([harmAfter, harmAfter === undefined || harmAfter >= 25 * HOUR]);
});
