import { expect, test } from "vitest";
import { runMishap } from "../../../../packages/hydraulics/src/judge/mishaps/run-mishap.js";
import { poolsOf } from "../../../../packages/hydraulics/src/judge/time/give-out.js";
import { asked } from "../../../laws/asked-plans.js";
import { headerTank } from "../header-tank.js";

test("a joint apart at the source empties it though a one-way valve stands behind it, which lets nothing back", () => {
  const found = asked({
    headfall: 1,
    sources: [
      { vessel: { shape: "upright", diameter: "50 cm", height: "1 m" }, stand: "50 cm", outlet: "2 cm" },
    ],
    runs: [
      {
        id: "lane",
        length: "4 m",
        fall: "20 cm",
        oneWay: true,
        drinkers: { kind: "nipple-side-action", count: 4 },
      },
    ],
    pens: [{ id: "hens", birds: { kind: "hen", count: 20 } }],
  });
  const [source] = found.judged.line.sources;
  const { leakRate, balance } = runMishap(found, { kind: "jointApart", point: source!.point });
  expect(leakRate).toBeGreaterThan(0);
  expect(balance.lost).toBeGreaterThan(0.5 * balance.start);
});

test("a header tank is of one pool with what fills it, and its drinkers give out with its float valve", () => {
  const { judged, flock, fullVolumes: start, refills } = asked(headerTank);
  const pools = poolsOf(judged, flock, { refills, start, failed: new Set(), dripRate: 0 });
  expect(pools).toHaveLength(1);
  expect(pools[0]!.stores.map(({ source }) => source)).toEqual([0]);
  const valve = judged.line.sources[1]!.feed!.height;
  expect(pools[0]!.dryBelow).toEqual([0, 1].map((drinker) => ({ drinker, surface: valve })));
});
