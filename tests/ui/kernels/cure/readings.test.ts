import { checkDocument, findCures, type Outcome } from "@headfall/hydraulics";
import { expect, test } from "vitest";
import { readingOf } from "../../../../packages/ui/src/kernels/cure/cautious-reading.js";
import { leastSpareOf } from "../../../../packages/ui/src/kernels/cure/least-spare.js";

const reading = (flowingHead: number, flow: number) => ({ staticHead: 1, flowingHead, flow });

test("readingOf takes head and flow of the law that leaves less head", () => {
  const low = reading(0.2, 1e-6);
  const high = reading(0.3, 2e-6);
  expect(readingOf({ hazenWilliams: high, darcyWeisbach: low })).toEqual({ head: 0.2, flow: 1e-6 });
  expect(readingOf({ hazenWilliams: low, darcyWeisbach: high })).toEqual({ head: 0.2, flow: 1e-6 });
});

test("leastSpareOf names the drinker and the scene with least, which is what each drinker's own figure says", () => {
  const read = checkDocument({
    headfall: 1,
    sources: [{ id: "barrel", vessel: "drum-55gal-plastic", stand: "40 cm" }],
    points: [{ id: "end", ground: "0 cm", above: "10 cm" }],
    runs: [{ id: "line", to: "end", length: "5 m", drinkers: { kind: "nipple-side-action", count: 4 } }],
  });
  if (!read.ok) throw new Error("not a plan");
  const found = findCures(read.plan, { never: ["stand", "pipe"] });
  if (!found.ok) throw new Error("not solved");
  const { before } = found.answer;
  const least = leastSpareOf(before)!;
  const own = Math.min(...before.drinkers.map(({ spare }) => spare));
  expect(least.head).toBe(own);
  expect(before.drinkers.find(({ drinker }) => drinker === least.drinker)!.spare).toBe(own);
  const later: Outcome = {
    ...before,
    scenes: [
      ...before.scenes,
      { ...before.scenes[0]!, week: 3, spare: { head: own - 1, drinker: 1, against: "starving" } },
    ],
  };
  expect(leastSpareOf(later)).toMatchObject({
    head: own - 1,
    drinker: before.drinkers[1]!.drinker,
    scene: { week: 3 },
  });
  expect(leastSpareOf({ ...before, scenes: [] })).toBeUndefined();
});
