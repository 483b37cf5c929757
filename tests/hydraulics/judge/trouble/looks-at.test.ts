import { expect, test } from "vitest";
import { looksAt } from "../../../../packages/hydraulics/src/judge/trouble/looks-at.js";
import { ANSWERS } from "../../../../packages/hydraulics/src/judge/trouble/signs.js";
import type { Alike } from "../../../../packages/hydraulics/src/judge/trouble/weigh.js";

const lineOf = (drinkers: number, runs: number) =>
  ({
    drinkers: { count: drinkers, id: Array.from({ length: drinkers }, (_, d) => `nipple ${d}`) },
    runs: Array.from({ length: runs }, (_, r) => ({ id: `run ${r}` })),
    sources: [{ id: "barrel" }, { id: "tank" }],
  }) as never;
const blocked = (at: string, index: number) =>
  ({ members: [{ candidate: { cause: { at, index } } }] }) as unknown as Alike;
const idsOf = (looks: ReturnType<typeof looksAt>, look: keyof typeof ANSWERS, at: string) =>
  looks.filter((one) => one.look === look && one.at === at).map(({ id }) => id);

test("looksAt thinks of every look at each place of a small line, once", () => {
  const looks = looksAt(lineOf(2, 3), [blocked("drinker", 1)]);
  expect(new Set(looks.map(({ look }) => look))).toEqual(new Set(Object.keys(ANSWERS)));
  // Five of either source, two of each run, two of each drinker.
  expect(looks).toHaveLength(2 * 5 + 3 * 2 + 2 * 2);
  expect(new Set(looks.map((look) => JSON.stringify(look))).size).toBe(looks.length);
});

test("looksAt thinks, on a long line, of what is likely and of forty drinkers evenly along it, and opens twelve ends", () => {
  const looks = looksAt(lineOf(400, 15), [blocked("drinker", 399), blocked("run", 3), blocked("drinker", 7)]);
  const gives = idsOf(looks, "gives", "drinker");
  expect(gives.slice(0, 2)).toEqual(["nipple 399", "nipple 7"]);
  expect(gives.slice(2)).toEqual(Array.from({ length: 40 }, (_, k) => `nipple ${10 * k + 5}`));
  expect(idsOf(looks, "end", "run")).toHaveLength(12);
  expect(idsOf(looks, "ground", "run")).toHaveLength(15);
});
