import { expect, test } from "vitest";
import { rehearseTwo } from "../../../../packages/hydraulics/src/judge/trouble/rehearse-two.js";
import { ASKED_ON, example } from "./ask.js";

test("rehearseTwo tells nothing of two that do not show", () => {
  const rehearsal = rehearseTwo(example("alder-bank-brooder"), { seed: 3, count: 6, day: ASKED_ON });
  if (!rehearsal.ok) throw new Error(JSON.stringify(rehearsal.problems));
  const hidden = rehearsal.cases.filter(({ shows }) => !shows);
  expect(hidden.length).toBeGreaterThan(0);
  for (const { isTold, areBoth, share, isOneFirst } of hidden)
    expect([isTold, areBoth, share, isOneFirst]).toEqual([false, false, 0, false]);
  for (const { isTold, share } of rehearsal.cases) expect(isTold || share === 0).toBe(true);
});
