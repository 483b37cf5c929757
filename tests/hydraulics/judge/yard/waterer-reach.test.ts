import { describe, expect, it } from "vitest";
import type { Region } from "../../../../packages/hydraulics/src/judge/birds/drinkers-needed.js";
import { reachOf } from "../../../../packages/hydraulics/src/judge/yard/waterer-reach.js";
import { tiltOf } from "../../../../packages/hydraulics/src/judge/yard/waterer-tilt.js";
import type { Batch, Pen } from "../../../../packages/hydraulics/src/model/flock.js";
import type { LooseWaterer } from "../../../../packages/hydraulics/src/model/yard.js";
import { birdById } from "../../../../packages/hydraulics/src/tables/birds.js";
import type { WatererKind } from "../../../../packages/hydraulics/src/tables/waterer-types.js";
import { watererById } from "../../../../packages/hydraulics/src/tables/waterers.js";

const hens = (count: number, ageDays = 400): Batch => ({
  ...{ kind: birdById("hen")!, index: 0, count, ageDays, lay: 0.9 },
});
const pen = (...batches: Batch[]): Pen => ({ id: "hens", index: 0, drinkers: [], batches });
const waterer = (id: string, more: Partial<LooseWaterer> = {}, sizes: Record<string, unknown> = {}) =>
  ({
    ...{ id, index: 0, kind: { ...watererById(id)!, ...sizes } as WatererKind, count: 1, slope: 0 },
    ...{ hole: "downhill", holds: 0.01, hang: undefined, cord: 1, refillEvery: undefined, isShaded: false },
    ...more,
  }) as LooseWaterer;
const reach = (one: LooseWaterer, birds: Pen = pen(hens(10)), region: Region = "USA") =>
  reachOf(one, tiltOf(one), birds, region);

describe("reachOf", () => {
  it("a pan has its rim, a trough its two long sides; a grown hen takes 12 cm of either", () => {
    expect(reach(waterer("pan-40cm", {}, { rim: 0.2 }))).toMatchObject({
      edge: expect.closeTo(Math.PI * 0.4, 12),
      ...{ room: expect.closeTo(0.12, 12), atOnce: 10 },
    });
    expect(reach(waterer("trough-90cm", {}, { length: 0.9 }))).toMatchObject({
      edge: expect.closeTo(1.8, 12),
      atOnce: 15,
    });
  });

  it("chicks take three tenths of that at hatching: a trough of 90 cm has room for fifty", () => {
    expect(reach(waterer("trough-90cm", {}, { length: 0.9 }), pen(hens(80, 0))).atOnce).toBe(50);
    // As many grown as young: 0.65 of the room, in the mean.
    const mixed = reach(waterer("trough-90cm", {}, { length: 0.9 }), pen(hens(10, 0), hens(10)));
    expect(mixed.room).toBeCloseTo(0.65 * 0.12, 12);
    expect(mixed.atOnce).toBe(Math.floor(1.8 / (0.65 * 0.12)));
  });

  it("a place where no bird is yet takes a hen's room", () => {
    expect(reach(waterer("pan-40cm"), pen(hens(10, -3)))).toMatchObject({ room: 0.12, covers: undefined });
  });

  it("nipples and spouts have as many places as they have, and no edge", () => {
    const bucket = watererById("nipple-bucket-5gal")!;
    const places = bucket.works === "nipples" ? bucket.places : 0;
    expect(reach(waterer("nipple-bucket-5gal"))).toMatchObject({ edge: 0, atOnce: places, room: undefined });
  });

  it("several cover as many times as much as one, and twice the birds half of it", () => {
    const covers = (id: string, count: number, birds: number) =>
      reach(waterer(id, { count }), pen(hens(birds)), "EU").covers!;
    for (const id of ["pan-40cm", "trough-90cm", "nipple-bucket-5gal"]) {
      expect(covers(id, 3, 10) / covers(id, 1, 10)).toBeCloseTo(3, 9);
      expect(covers(id, 1, 20) / covers(id, 1, 10)).toBeCloseTo(0.5, 9);
    }
  });

  it("nipples cover as many birds as their rule counts to each: a part of a nipple for every bird", () => {
    const { covers, rules } = reach(waterer("nipple-bucket-5gal"), pen(hens(24)));
    const [rule] = rules;
    expect(rule).toMatchObject({ counts: "birds" });
    const bucket = watererById("nipple-bucket-5gal")!;
    if (bucket.works !== "nipples") throw new Error("it has nipples");
    expect(covers).toBeCloseTo((bucket.places * rule!.figure) / 24, 9);
  });

  it("drained, it offers nothing", () => {
    const uphill = waterer("fount-1gal", { slope: 0.5, hole: "uphill" });
    expect(reach(uphill, pen(hens(10)), "EU")).toMatchObject({ edge: 0, atOnce: 0, covers: 0 });
  });
});
