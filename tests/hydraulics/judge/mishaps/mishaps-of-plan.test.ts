import { expect, test } from "vitest";
import { checkDocument } from "../../../../packages/hydraulics/src/document/read-plan.js";
import { mishapsOfPlan } from "../../../../packages/hydraulics/src/judge/mishaps/mishaps-of-plan.js";

test("mishapsOfPlan tells each source and each run by itself", () => {
  const reading = checkDocument({
    headfall: 1,
    sources: ["left", "right"].map((id) => ({ id, vessel: "bucket-5gal", stand: "60 cm" })),
    runs: ["left", "right"].map((from) => ({
      from,
      length: "2 m",
      fall: "30 cm",
      drinkers: { kind: "nipple-side-action", count: 1 },
    })),
  });
  if (!reading.ok) throw new Error(JSON.stringify(reading.problems));
  const answer = mishapsOfPlan(reading.plan, { guardsFor: 0 });
  if (!answer.ok) throw new Error(JSON.stringify(answer.problems));
  const { rows } = answer.mishaps;
  const places = (key: "source" | "run") =>
    rows.flatMap(({ worst: { mishap }, count }) =>
      key in mishap ? [[mishap.kind, (mishap as Record<string, unknown>)[key], count]] : [],
    );
  for (const key of ["source", "run"] as const) {
    const told = places(key);
    expect(told.length).toBeGreaterThan(1);
    expect(told.every(([, , count]) => count === 1)).toBe(true);
    expect(new Set(told.map(([, place]) => place))).toEqual(new Set([0, 1]));
  }
});
