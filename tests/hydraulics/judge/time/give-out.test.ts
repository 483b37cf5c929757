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

test("two vessels that share no drinker are one pool while something pours out where pipes of both meet", () => {
  const tank = (id: string) => ({
    ...{
      id,
      vessel: { shape: "upright", diameter: "40 cm", height: "80 cm" },
      stand: "40 cm",
      outlet: "5 cm",
    },
  });
  const lane = (from: string) => ({
    ...{ id: `lane ${from}`, from, length: "3 m", fall: "20 cm" },
    drinkers: { kind: "nipple-side-action", count: 2 },
  });
  const cross = (from: string) => ({ id: `cross ${from}`, from, to: "meet", length: "2 m", oneWay: true });
  const {
    judged,
    flock,
    fullVolumes: start,
    refills,
  } = asked({
    headfall: 1,
    sources: [tank("left"), tank("right")],
    points: [{ id: "meet", ground: "0 cm", above: "10 cm" }],
    runs: [lane("left"), lane("right"), cross("left"), cross("right")],
  });
  const supply = { refills, start, failed: new Set<number>(), dripRate: 0 };
  // Behind the valves that let nothing back there is no drinker.
  expect(poolsOf(judged, flock, supply).map(({ stores }) => stores.length)).toEqual([1, 1]);
  const { line } = judged;
  const meet = line.points.id.indexOf("meet");
  const leaking = { ...line, leaks: [{ point: meet, height: 0.1, coefficient: 1e-7 }] };
  const pools = poolsOf(judged, flock, { ...supply, leaking });
  expect(pools.map(({ stores }) => stores.length)).toEqual([2]);
  expect(pools[0]!.leak!.flowAt(0.9)).toBeGreaterThan(0);
});
