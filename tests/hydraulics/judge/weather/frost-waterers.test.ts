import { expect, test } from "vitest";
import {
  drunkFrom,
  frostOfWaterer,
} from "../../../../packages/hydraulics/src/judge/weather/frost-waterers.js";
import { filmOfWind } from "../../../../packages/hydraulics/src/physics/cooling.js";
import type { WatererKind } from "../../../../packages/hydraulics/src/tables/waterer-types.js";
import { loose } from "../yard/loose.js";

const HOUR = 3600;
const frost = { night: { low: -10, high: -10, hours: 12 * HOUR, wind: 0 }, water: 10 };
const sized = (id: string, sizes: Partial<Record<string, number>>) =>
  ({ ...loose(id).kind, ...sizes }) as Exclude<WatererKind, { readonly works: "nipples" }>;

test("drunkFrom is the ring of a fount, over the ground it stands on", () => {
  const ring = drunkFrom(sized("fount-1gal", { rim: 0.15, jar: 0.1, pool: 0.03 }), 0.004);
  const open = Math.PI * (0.15 ** 2 - 0.1 ** 2);
  expect(ring.surface).toBeCloseTo(open, 12);
  expect(ring.wall).toBeCloseTo(open, 12);
  expect([ring.full, ring.least]).toEqual([expect.closeTo(open * 0.03, 12), expect.closeTo(open * 0.03, 12)]);
});

test("drunkFrom is all of a pan or a trough, half of it left at dusk; surface and sides lose heat", () => {
  const pan = drunkFrom(sized("pan-40cm", { rim: 0.2, floor: 0.15, depth: 0.1 }), 0.008);
  expect(pan.surface).toBeCloseTo(Math.PI * 0.04, 12);
  // Sides as of a cylinder of the mean radius.
  expect(pan.wall).toBeCloseTo(Math.PI * 0.04 + 2 * Math.PI * 0.175 * 0.1, 12);
  expect([pan.full, pan.least]).toEqual([0.008, 0.004]);
  const trough = drunkFrom(sized("trough-90cm", { length: 0.9, width: 0.12, depth: 0.08 }), 0.006);
  expect(trough.surface).toBeCloseTo(0.108, 12);
  expect(trough.wall).toBeCloseTo(0.108 + 2 * (0.9 + 0.12) * 0.08, 12);
});

test("of a fount the ring stops, and the jar over it freezes later: half full, a plain cylinder", () => {
  const fount = loose("fount-1gal");
  if (fount.kind.works !== "vacuum") throw new Error("a fount works by vacuum");
  const part = frostOfWaterer(fount, "pens[0].waterers[0]", frost);
  const jar = Math.PI * fount.kind.jar ** 2;
  const wall = jar + 2 * Math.PI * fount.kind.jar * (fount.holds / jar);
  expect(part.volume).toEqual({ least: fount.holds / 2, full: fount.holds });
  // Held at 2 degC against air at -10: 12 degrees through a film.
  expect(part.watts).toBeCloseTo(filmOfWind(0) * wall * 12, 9);
  expect(part.kind).toBe("fount");
  expect(part.solid.soonest).toBeGreaterThan(part.blocked!.latest);
});

test("of a nipple bucket the pins stop, and the bucket over them is half full at dusk", () => {
  const bucket = loose("nipple-bucket-5gal");
  const part = frostOfWaterer(bucket, "pens[0].waterers[0]", frost);
  expect(part.volume).toEqual({ least: bucket.holds / 2, full: bucket.holds });
  expect(part.kind).toBe("bucket");
  expect(part.lasts).toBe("no");
  // Pins are frozen long before the water over them.
  expect(part.blocked!.latest).toBeLessThan(part.solid.soonest);
  const mild = frostOfWaterer(bucket, "", { ...frost, night: { ...frost.night, hours: HOUR / 10 } });
  expect(mild.lasts).toBe("yes");
});
