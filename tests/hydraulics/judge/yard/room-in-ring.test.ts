import { expect, test } from "vitest";
import { openAreaOf } from "../../../../packages/hydraulics/src/judge/yard/waterer-draw.js";
import { openingsOf, warmedOf } from "../../../../packages/hydraulics/src/judge/yard/waterer-openings.js";
import { reachOf } from "../../../../packages/hydraulics/src/judge/yard/waterer-reach.js";
import { staysIn, tiltOf, waterLeft } from "../../../../packages/hydraulics/src/judge/yard/waterer-tilt.js";
import { volumeAtLevel } from "../../../../packages/hydraulics/src/physics/vessel.js";
import { vesselById } from "../../../../packages/hydraulics/src/tables/vessels.js";
import { loose } from "./loose.js";

const fountOf = (slope = 0) => {
  const fount = loose("fount-1gal", { slope });
  if (fount.kind.works !== "vacuum") throw new Error("a fount works by vacuum");
  return { fount, kind: fount.kind, tilt: tiltOf(fount) };
};
const HOT = { high: 35, low: 15, isTaken: false };

test("a level fount's ring takes what warming air pushes out up to its lip; the rest is lost", () => {
  const { fount, kind, tilt } = fountOf();
  const ring = Math.PI * (kind.rim ** 2 - kind.jar ** 2);
  expect(openAreaOf(fount)).toBeCloseTo(kind.lip === "ring" ? ring : ring / 10, 12);
  const warmed = warmedOf(fount, HOT, tilt)!;
  expect(warmed.room).toBeCloseTo(ring * kind.lipOverHole, 9);
  expect(warmed.lost).toBeCloseTo(Math.max(0, warmed.pushed - warmed.room), 12);
  expect(warmed).toMatchObject({ from: 15, to: 35, isTaken: false });
  // A day of one temperature stands for one from 15 to 35.
  expect(warmedOf(fount, { high: 20.9, low: 20, isTaken: false }, tilt)).toMatchObject({
    from: 15,
    to: 35,
    isTaken: true,
  });
  expect(warmedOf(fount, { high: 21, low: 20, isTaken: false }, tilt)).toMatchObject({
    from: 20,
    to: 21,
    isTaken: false,
  });
});

test("on a slope there is less room the steeper it is, and none where it drains", () => {
  const { tilt } = fountOf();
  if (tilt.works !== "vacuum") throw new Error("a fount works by vacuum");
  const roomAt = (share: number) => {
    const { fount, tilt: tilted } = fountOf(share * tilt.drainsAt!);
    return warmedOf(fount, HOT, tilted)?.room;
  };
  const [level, half, most] = [roomAt(0)!, roomAt(0.5)!, roomAt(0.99)!];
  expect(half).toBeLessThan(0.7 * level);
  expect(half).toBeGreaterThan(0.3 * level);
  expect(most).toBeLessThan(0.05 * level);
  expect(roomAt(1)).toBeUndefined();
});

test("opened, a fount loses all its jar but what the ring holds up to the lip", () => {
  const { fount, kind } = fountOf();
  const ring = Math.PI * (kind.rim ** 2 - kind.jar ** 2) * kind.lipOverHole;
  for (const { code, ...opening } of openingsOf(fount, 998))
    if (code !== "ventShut") expect("lost" in opening && opening.lost).toBeCloseTo(kind.reservoir - ring, 12);
  expect(openingsOf(fount, 998).length).toBe(kind.fills === "top" ? 2 : 1);
  expect(openingsOf(loose("pan-40cm"), 998)).toEqual([]);
});

test("of what stays in one no bird drinks a film: in a pan of its floor, in a bucket what is under its nipples", () => {
  const pan = loose("pan-40cm");
  if (pan.kind.works !== "pan") throw new Error("a pan is one");
  expect(waterLeft(pan, tiltOf(pan))).toBeCloseTo(Math.PI * pan.kind.floor ** 2 * pan.kind.left, 9);
  expect(staysIn(pan, tiltOf(pan))).toBeCloseTo(pan.holds, 12);
  const trough = loose("trough-90cm");
  if (trough.kind.works !== "trough") throw new Error("a trough is one");
  const { length, width, left } = trough.kind;
  expect(waterLeft(trough, tiltOf(trough))).toBeCloseTo(length * width * left, 9);
  const bucket = loose("nipple-bucket-5gal");
  if (bucket.kind.works !== "nipples") throw new Error("a bucket with nipples is one");
  expect(waterLeft(bucket, tiltOf(bucket))).toBe(
    volumeAtLevel(vesselById(bucket.kind.vessel)!.shape, bucket.kind.left),
  );
  const bell = loose("bell-bucket-5gal");
  if (bell.kind.works !== "bell") throw new Error("a bell is one");
  const bowl = Math.PI * (bell.kind.rim ** 2 - bell.kind.jar ** 2);
  expect(waterLeft(bell, tiltOf(bell))).toBeCloseTo(bowl * bell.kind.left, 12);
  expect(openAreaOf(bell)).toBeCloseTo(bowl, 12);
  expect([openAreaOf(pan), openAreaOf(trough), openAreaOf(bucket)]).toEqual([
    expect.closeTo(Math.PI * pan.kind.rim ** 2, 12),
    expect.closeTo(length * width, 12),
    0,
  ]);
});

test("a trough offers both long sides, a round one all of its lip, a bucket its nipples; to nobody's birds room for a hen", () => {
  const nobody = { id: "pen", index: 0, batches: [], drinkers: [] };
  const reach = (id: string) => {
    const waterer = loose(id);
    return reachOf(waterer, tiltOf(waterer), nobody, "EU");
  };
  expect(reach("trough-90cm").edge).toBeCloseTo(1.8, 9);
  expect(reach("trough-90cm").atOnce).toBe(Math.floor(1.8 / 0.12 + 1e-9));
  expect(reach("pan-40cm").edge).toBeCloseTo(2 * Math.PI * 0.2, 6);
  const bucket = reach("nipple-bucket-5gal");
  expect([bucket.edge, bucket.room, bucket.covers]).toEqual([0, undefined, undefined]);
  expect(bucket.atOnce).toBeGreaterThan(0);
});
