import { expect, it } from "vitest";
import { demandAt } from "../../../packages/hydraulics/src/solve/demand-at.js";
import { prepareLine } from "../../../packages/hydraulics/src/solve/prepare-line.js";
import { makeLine, makeMoment } from "../../arbitraries/make-line.js";

it("demandAt gives the head of each source, and those at work in the order of their points", () => {
  const line = makeLine({
    heights: [0, 0, 0, 0],
    pipes: [0, 1, 2].map((from) => ({ from, to: from + 1, length: 2 })),
    drinkers: [1, 2, 3].map((point) => ({ point, coefficient: 1e-5 })),
    sources: [0, 3],
  });
  const prepared = prepareLine(line, "hazenWilliams");
  const asked = (atWork: boolean[]) =>
    demandAt(prepared, prepared.current, makeMoment(line, [0.7, 0.4], atWork), undefined);
  const all = asked([true, true, true]);
  expect([...all.rootHead]).toEqual([0.7, 0.4]);
  expect([...all.working]).toEqual([0, 1, 2]);
  const { drinker } = prepared.current.network.topology;
  expect([...asked([true, false, true]).working].map((d) => drinker[d]).sort()).toEqual([0, 2]);
});
