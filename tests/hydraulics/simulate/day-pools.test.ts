import { expect, test } from "vitest";
import { beginPools, passPools, volumesNow } from "../../../packages/hydraulics/src/simulate/day-pools.js";
import type { DaySetting } from "../../../packages/hydraulics/src/simulate/day-setting.js";
import type { Refill } from "../../../packages/hydraulics/src/simulate/drawn-pool.js";
import { storeOf } from "../../../packages/hydraulics/src/simulate/store.js";
import { lineOf } from "../model/built.js";

const AREA = (Math.PI / 4) * 0.5 ** 2;
const line = lineOf([{ length: "1 m", drinkers: { kind: "bell", count: 1 } }], {
  sources: [
    {
      vessel: { shape: "upright", diameter: "50 cm", height: "80 cm" },
      stand: "1 m",
      level: { full: "70 cm" },
    },
  ],
});
const [source] = line.sources;
const store = storeOf(line, source!);
const poolsWith = (refill: Refill) => {
  const pool = {
    stores: [store],
    start: [store.full],
    refills: [refill],
    drips: 0,
    pens: [],
    dryBelow: [],
    shortBelow: [],
  };
  return beginPools({ line, pools: [pool] } as unknown as DaySetting);
};

test("the surface of a pool follows what is drawn, once time has passed", () => {
  const running = poolsWith({ kind: "none" });
  const top = source!.base + 0.7;
  expect(running.sources.surfaces[0]).toBeCloseTo(top, 12);
  running.drawn[0] = AREA * 0.1;
  passPools(running, 0, 60);
  expect(running.sources.surfaces[0]).toBeCloseTo(top - 0.1, 9);
  expect(running.height[0]).toBeCloseTo(top - 0.1, 9);
  expect(volumesNow(running)).toEqual([expect.closeTo(store.full - AREA * 0.1, 12)]);
});

test("a hose pours no more than was drawn; a round by hand fills up at its hour, and not before", () => {
  const hose = poolsWith({ kind: "hose", flow: 1e-4 });
  hose.drawn[0] = 0.01;
  passPools(hose, 0, 60);
  expect(hose.drawn[0]).toBeCloseTo(0.004, 12);
  passPools(hose, 60, 120);
  expect([hose.drawn[0], hose.sources.sums.poured]).toEqual([0, expect.closeTo(0.01, 12)]);
  const hand = poolsWith({ kind: "byHand", every: 86_400, first: 25_200 });
  hand.drawn[0] = 0.01;
  passPools(hand, 25_000, 25_199);
  expect(hand.sources.sums.poured).toBe(0);
  passPools(hand, 25_199, 25_300);
  expect(hand.sources.sums.poured).toBeCloseTo(0.01, 12);
  expect(hand.sources.surfaces[0]).toBeCloseTo(source!.base + 0.7, 9);
});
