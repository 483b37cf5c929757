import { expect, test } from "vitest";
import { checkDocument } from "../../../../packages/hydraulics/src/document/read-plan.js";
import {
  guardsForMishap,
  mishapsOfPlan,
} from "../../../../packages/hydraulics/src/judge/mishaps/mishaps-of-plan.js";

const vessel = { shape: "upright", diameter: "40 cm", height: "60 cm" };
const two = (more: Record<string, unknown> = {}) => ({
  headfall: 1,
  sources: ["left", "right"].map((id) => ({ id, vessel, stand: "60 cm" })),
  runs: ["left", "right"].map((from) => ({
    from,
    length: "2 m",
    fall: "30 cm",
    drinkers: { id: `${from} nipple`, kind: "nipple-side-action", count: 1 },
  })),
  ...more,
});

test("mishapsOfPlan tells each source and each run by itself", () => {
  const reading = checkDocument(two());
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

test("a drinker that runs: its own vessel rings the alarm, and what stood in both is lost, drunk or left", () => {
  const reading = checkDocument(two({ pens: [{ birds: { kind: "hen", count: 8 } }] }));
  if (!reading.ok) throw new Error(JSON.stringify(reading.problems));
  for (const drinker of [0, 1]) {
    const answer = guardsForMishap(
      reading.plan,
      { kind: "drinkerStuckOpen", drinker },
      { day: "2026-07-04" },
    );
    if (!answer.ok) throw new Error(JSON.stringify(answer.problems));
    const { guards, result } = answer;
    const alarm = guards.find(({ guard }) => guard.kind === "alarm")!.guard;
    expect(alarm).toMatchObject({ kind: "alarm", source: drinker });
    const { start, poured, drunk, lost, left } = result.balance;
    expect(start + poured - drunk - lost - left).toBeCloseTo(0, 12);
    // Both full to nine tenths or so of their height.
    expect(start).toBeGreaterThan(1.6 * (Math.PI / 4) * 0.16 * 0.5);
  }
});
