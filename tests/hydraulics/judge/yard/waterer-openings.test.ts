import { describe, expect, it } from "vitest";
import { openingsOf, warmedOf } from "../../../../packages/hydraulics/src/judge/yard/waterer-openings.js";
import { tiltOf } from "../../../../packages/hydraulics/src/judge/yard/waterer-tilt.js";
import type { LooseWaterer } from "../../../../packages/hydraulics/src/model/yard.js";
import type { VacuumFount } from "../../../../packages/hydraulics/src/tables/waterer-types.js";
import { watererById } from "../../../../packages/hydraulics/src/tables/waterers.js";

/** A fount of 4 L in a ring from 6 to 10 cm, its lip 2 cm over its air hole: 0.402 L more fill it to the lip. */
const fount: VacuumFount = {
  ...(watererById("fount-1gal") as VacuumFount),
  ...{ rim: 0.1, jar: 0.06, hole: 0.06, holes: 1, pool: 0.02, lipOverHole: 0.02, reservoir: 0.004 },
  ...{ lip: "ring", seal: "jar", fills: "turned over" },
};
const RING = Math.PI * (0.1 ** 2 - 0.06 ** 2) * 0.02;

const standing = (kind: Partial<VacuumFount> = {}, slope = 0): LooseWaterer => ({
  ...{ id: "fount", index: 0, kind: { ...fount, ...kind } as VacuumFount, count: 1, slope, hole: "downhill" },
  ...{ holds: 0.004, hang: undefined, cord: 1, refillEvery: undefined, isShaded: false },
});

const warmed = (hotDay: { high: number; low: number }, kind: Partial<VacuumFount> = {}, slope = 0) => {
  const waterer = standing(kind, slope);
  return warmedOf(waterer, { ...hotDay, isTaken: false }, tiltOf(waterer));
};

describe("warmedOf", () => {
  it("warms from the night's air to the day's, as long as water is liquid in both", () => {
    const swing = (low: number, high: number) => {
      const { from, to, isTaken } = warmed({ low, high })!;
      return [from, to, isTaken];
    };
    expect(swing(12, 31)).toEqual([12, 31, false]);
    expect(swing(-8, 20)).toEqual([0, 20, false]);
    expect(swing(20, 58)).toEqual([20, 50, false]);
  });

  it("takes 15 to 35 °C where the day has no swing of a degree", () => {
    expect(warmed({ low: 30, high: 31 })).toMatchObject({ from: 30, to: 31, isTaken: false });
    expect(warmed({ low: 30.1, high: 31 })).toMatchObject({ from: 15, to: 35, isTaken: true });
  });

  it("loses what is pushed out over what its ring has room for, level the ring between hole and lip", () => {
    const wide = warmed({ low: 15, high: 35 })!;
    expect(wide.room).toBeCloseTo(RING, 9);
    expect(wide.pushed).toBeGreaterThan(0);
    expect(wide.lost).toBeCloseTo(Math.max(0, wide.pushed - RING), 12);
    // Ten times the jar pushes out ten times as much, by Boyle and Charles; the ring is the same.
    const tall = warmed({ low: 15, high: 35 }, { reservoir: 0.04 })!;
    expect(tall.pushed / wide.pushed).toBeCloseTo(10, 9);
    expect(tall.lost).toBeCloseTo(tall.pushed - RING, 12);
    expect(tall.airShare).toBeCloseTo(wide.airShare, 12);
  });

  it("has least room with its hole uphill, for then it stands full to the hole there", () => {
    const room = (slope: number) => warmed({ low: 15, high: 35 }, {}, slope)!.room;
    expect(room(0.02)).toBeLessThan(room(0));
    expect(room(0.02)).toBeGreaterThan(0);
  });

  it("is nothing of a fount that has drained, nor of open water", () => {
    const pan = { ...standing(), kind: watererById("pan-40cm")! };
    expect(warmedOf(pan, { high: 35, low: 15, isTaken: false }, tiltOf(pan))).toBeUndefined();
    const uphill = { ...standing({}, 0.5), hole: "uphill" } as const;
    expect(tiltOf(uphill)).toMatchObject({ isDraining: true });
    expect(warmedOf(uphill, { high: 35, low: 15, isTaken: false }, tiltOf(uphill))).toBeUndefined();
  });
});

describe("openingsOf", () => {
  it("(vacuum lost) lets all of the reservoir run but what fills the ring to its lip", () => {
    const lost = 0.004 - RING;
    const codes = (kind: Partial<VacuumFount>) => openingsOf(standing(kind), 998);
    expect(codes({ seal: "jar" })).toEqual([{ code: "jarCracked", lost: expect.closeTo(lost, 12) }]);
    expect(codes({ seal: "cap" })).toEqual([{ code: "capOff", lost: expect.closeTo(lost, 12) }]);
    expect(codes({ seal: "lid" })).toEqual([{ code: "lidLoose", lost: expect.closeTo(lost, 12) }]);
    // What is filled from the top can be left open below while it is filled.
    expect(codes({ seal: "cap", fills: "top" })).toEqual([
      { code: "capOff", lost: expect.closeTo(lost, 12) },
      { code: "filledOpen", lost: expect.closeTo(lost, 12) },
    ]);
  });

  it("(vacuum lost) loses nothing where the ring takes it all", () => {
    expect(openingsOf(standing({ reservoir: 0.0003 }), 998)).toEqual([{ code: "jarCracked", lost: 0 }]);
  });

  it("(vent shut) gives what Boyle's law lets go, never more than is in it; the rest stays", () => {
    const bucket = (holds: number): LooseWaterer => ({
      ...standing(),
      kind: watererById("nipple-bucket-5gal")!,
      holds,
    });
    const [full] = openingsOf(bucket(0.019), 999.7);
    const [nearlyEmpty] = openingsOf(bucket(1e-6), 999.7);
    if (full?.code !== "ventShut" || nearlyEmpty?.code !== "ventShut") throw new Error("a vent is shut");
    expect(full.gives + full.stays).toBeCloseTo(0.019, 12);
    expect(full.gives).toBeLessThan(0.0002);
    expect(nearlyEmpty).toEqual({ code: "ventShut", gives: 1e-6, stays: 0 });
  });

  it("is nothing of open water", () => {
    expect(openingsOf({ ...standing(), kind: watererById("pan-40cm")! }, 998)).toEqual([]);
  });
});
