import { describe, expect, it } from "vitest";
import {
  birdsForPlan,
  checkDocument,
  checkPlan,
  isGrave,
  type PenYard,
  type Plan,
  yardForPlan,
} from "../../../../packages/hydraulics/src/index.js";
import { roomOf } from "../../../../packages/hydraulics/src/judge/yard/waterer-reach.js";
import { tiltOf } from "../../../../packages/hydraulics/src/judge/yard/waterer-tilt.js";
import { birdById } from "../../../../packages/hydraulics/src/tables/birds.js";

function planOf(document: unknown): Plan {
  const reading = checkDocument(document);
  if (!reading.ok) throw new Error(JSON.stringify(reading.problems));
  return reading.plan;
}

function penOf(pen: Record<string, unknown>, more: Record<string, unknown> = {}): PenYard {
  const plan = planOf({ headfall: 1, day: "2026-07-04", sources: [], runs: [], ...more, pens: [pen] });
  const answer = yardForPlan(plan, { weeks: 6 });
  if (!answer.ok) throw new Error(JSON.stringify(answer.problems));
  return answer.yard.pens[0]!;
}

const hens = (count: number, waterers: unknown[], more: Record<string, unknown> = {}) =>
  penOf({ id: "hens", birds: { kind: "hen", count, age: "40 weeks", lay: "90 %" }, waterers, ...more });
const codes = (pen: PenYard) => pen.findings.map(({ code }) => code);
const GRAVE_ON = (pen: PenYard) => pen.findings.filter(isGrave).map(({ code }) => code);

describe("yardForPlan", () => {
  it("12 hens at one pan take what the tables say, a fifth more that is spilled, and what the air takes", () => {
    const pen = hens(12, [{ kind: "pan-40cm" }]);
    const [pan] = pen.waterers;
    // Poultry CRC: 270 mL a hen at 90 % lay, 21 °C.
    const drawn = 12 * 270e-6 * 1.2 + pan!.open.now;
    expect(pan!.weeks[0]!.draw.size).toBeCloseTo(drawn, 9);
    expect(pan!.weeks[0]!.refills).toBeCloseTo(drawn / pan!.gives, 9);
    // FAO's way of reckoning: 0.1257 m² at 4.36 mm a day (21 °C), a quarter more in the sun.
    expect(pan!.open.now).toBeCloseTo(0.12566 * 0.004357 * 1.25, 5);
    expect(pan!.weeks).toHaveLength(7);
  });

  it("a fount on 7 % drains with its hole uphill, holds with it downhill, and says which way to turn it", () => {
    const uphill = hens(6, [{ kind: "fount-1gal", hole: "uphill" }], { slope: "7 %" });
    expect(uphill.waterers[0]!.gives).toBe(0);
    expect(uphill.findings).toContainEqual(
      expect.objectContaining({ code: "drains", turn: "sideways", shimLevel: expect.closeTo(0.0161, 4) }),
    );
    expect(GRAVE_ON(uphill)).toContain("noWater");
    const downhill = hens(6, [{ kind: "fount-1gal", hole: "downhill" }], { slope: "7 %" });
    expect(codes(downhill)).not.toContain("drains");
    expect(downhill.waterers[0]!.gives).toBeGreaterThan(0.0039);
  });

  it("a fount within three tenths of where it drains is told as near it, and none farther off", () => {
    const at = (slope: number) =>
      hens(6, [{ kind: "fount-1gal", hole: "uphill" }], { slope: `${100 * slope} %` });
    const { tilt } = at(0.001).waterers[0]!;
    if (tilt.works !== "vacuum") throw new Error("a fount works by vacuum");
    const { drainsAt } = tilt;
    expect(codes(at(0.72 * drainsAt!))).toContain("nearlyDrains");
    expect(codes(at(0.68 * drainsAt!))).not.toContain("nearlyDrains");
  });

  it("a bell drains from the very slope at which its bowl overflows", () => {
    const { waterer, tilt } = hens(10, [{ kind: "bell-bucket-5gal" }]).waterers[0]!;
    if (tilt.works !== "bell") throw new Error("a bell works as a bell");
    const isDraining = (slope: number) => {
      const tilted = tiltOf({ ...waterer, slope });
      return tilted.works === "bell" && tilted.isDraining;
    };
    expect([0.999, 1, 1.001].map((share) => isDraining(share * tilt.drainsAt))).toEqual([false, true, true]);
  });

  it("the lip of what stands is its water and the lip over that above the ground: 80 mm at a water tower", () => {
    const [tower] = hens(10, [{ kind: "water-tower-15gal" }]).waterers;
    expect(tower!.ownHeight).toBeCloseTo(0.045 + 0.02, 9);
  });

  it("counts the birds that are there, and the room each takes at an edge as the page about waterers tells", () => {
    expect(hens(12, [{ kind: "pan-40cm" }]).birds).toBe(12);
    for (const [kind, room] of [
      ["hen", 0.12],
      ["turkey-tom", 0.2],
      ["goose", 0.2],
      ["coturnix", 0.05],
    ] as const)
      expect([kind, roomOf({ kind: birdById(kind)!, ageDays: 400 })]).toEqual([kind, room]);
    expect(roomOf({ kind: birdById("hen")!, ageDays: 0 })).toBeCloseTo(0.3 * 0.12, 12);
  });

  it("tells what in a plan's line does not fit", () => {
    const plan = planOf({
      headfall: 1,
      sources: [{ vessel: "bucket-5gal", stand: "60 cm" }],
      points: [{ id: "end", ground: "0 cm", above: "0 cm" }],
      runs: [{ to: "end", length: "3 m", fall: "10 cm" }],
    });
    const answer = yardForPlan(plan);
    expect(answer.ok ? [] : answer.problems.map(({ code }) => code)).toEqual(["heightsDisagree"]);
  });

  it("nobody drinks at what drains, and the air takes what is in its ring all the same", () => {
    const [fount] = hens(6, [{ kind: "fount-1gal", hole: "uphill" }], { slope: "7 %" }).waterers;
    expect(fount!.reach.atOnce).toBe(0);
    expect(fount!.weeks[0]!.draw.size).toBe(fount!.open.now);
  });

  it("where no rule speaks of the birds, each kind of waterer with room for one is enough", () => {
    const geese = (...kinds: string[]) =>
      penOf({ birds: { kind: "goose", count: 3 }, waterers: kinds.map((kind) => ({ id: kind, kind })) });
    const pen = geese("pan-40cm");
    expect(pen.waterers[0]!.reach.covers).toBeUndefined();
    expect([pen.covered, geese("pan-40cm", "trough-90cm").covered]).toEqual([1, 2]);
    expect(codes(pen)).toContain("noRule");
  });

  it("hens do not grow out of a pan", () => {
    expect(hens(12, [{ kind: "pan-40cm" }]).changeOvers).toEqual([]);
  });

  it("nothing is too heavy where nobody says what may be carried", () => {
    const heavy = [{ kind: "fount-bottom-5gal" }];
    expect(codes(hens(6, heavy))).not.toContain("tooHeavy");
    expect(
      codes(penOf({ id: "hens", birds: { kind: "hen", count: 6 }, waterers: heavy }, { carry: { most: 5 } })),
    ).toContain("tooHeavy");
  });

  it("what hangs is plumb on any ground, and its swing grows with its cord", () => {
    const bell = (cord: string) => {
      const { tilt } = hens(10, [{ kind: "bell-bucket-5gal", cord }], { slope: "30 %" }).waterers[0]!;
      if (tilt.works !== "bell") throw new Error("a bell works as a bell");
      return tilt;
    };
    expect(bell("1 m").isDraining).toBe(false);
    expect(bell("2 m").swing).toBeCloseTo(2 * bell("1 m").swing!, 12);
  });

  it("the rule for round drinkers in the EU is 1 cm of edge a hen: one 40 cm pan is enough for 125", () => {
    const [covers] = [125, 126].map((count) => hens(count, [{ kind: "pan-40cm" }]).covered);
    expect(covers).toBeCloseTo((Math.PI * 0.4) / 1.25, 6);
    expect(codes(hens(126, [{ kind: "pan-40cm" }]))).toContain("tooFewPlaces");
    expect(codes(hens(60, [{ kind: "pan-40cm" }]))).not.toContain("tooFewPlaces");
  });

  it("young quail: a deep pan is not for them and may drown them, a tiny fount of 6 mm may not", () => {
    const quail = (kind: string) =>
      penOf({ birds: { kind: "coturnix", count: 20, age: "3 days" }, waterers: [{ kind }] });
    expect(codes(quail("quail-fount-1qt"))).not.toContain("mayDrown");
    expect(GRAVE_ON(quail("pan-40cm"))).toEqual(["notForThem", "mayDrown"]);
  });

  it("chicks change over from a jar to a fount at four weeks, both there for the week before", () => {
    const pen = penOf({
      birds: { kind: "pullet", count: 20, hatched: "2026-06-20" },
      waterers: [
        { id: "jar", kind: "jar-fount-1qt" },
        { id: "fount", kind: "fount-bottom-5gal" },
      ],
    });
    expect(pen.changeOvers).toEqual([
      expect.objectContaining({ from: "jar", to: "fount", bothFromDays: 21, untilDays: 28 }),
    ]);
    const [{ untilDay, bothFromDay }] = pen.changeOvers as [PenYard["changeOvers"][number]];
    expect(untilDay! - bothFromDay!).toBe(7);
  });

  it("a pan filled every other day that lasts a day is told, with how long it lasts in heat", () => {
    const pen = hens(24, [{ kind: "rubber-pan-8qt", refill: "2 days" }]);
    expect(GRAVE_ON(pen)).toEqual(["emptyBetween"]);
    const [found] = pen.findings.filter(({ code }) => code === "emptyBetween");
    expect(found).toMatchObject({ every: 172_800 });
    expect(found?.code === "emptyBetween" && found.hotLasts).toBeLessThan(
      found?.code === "emptyBetween" ? found.lasts : 0,
    );
  });

  it("birds of a pen without drinkers count for nothing at the line, and for all they drink with the birds", () => {
    const pens = [
      {
        id: "house",
        birds: { kind: "hen", count: 10 },
        drinkers: ["line"],
        waterers: [{ kind: "pan-40cm" }],
      },
      { id: "hill", birds: { kind: "hen", count: 500 }, drinkers: [], waterers: [{ kind: "pan-40cm" }] },
    ];
    const plan = planOf({
      headfall: 1,
      sources: [{ vessel: "drum-55gal-plastic", stand: "60 cm" }],
      runs: [{ id: "line", length: "3 m", drinkers: { kind: "nipple-side-action", count: 6 } }],
      pens,
    });
    const checking = checkPlan(plan, { samples: 0 });
    if (!checking.ok) throw new Error("it can be checked");
    const reports = checking.checked.flock!.pens;
    expect(reports.map(({ birds, isElsewhere }) => [birds, isElsewhere])).toEqual([
      [10, undefined],
      [0, true],
    ]);
    const birds = birdsForPlan(plan, { weeks: 0 });
    expect(birds.ok && birds.birds.pens.map((pen) => pen.birds)).toEqual([10, 500]);
    const yard = yardForPlan(plan, { weeks: 0 });
    expect(yard.ok && yard.yard.pens[0]!.looseShare).toBeCloseTo(10 / 16, 12);
  });

  it("a sealed nipple bucket gives by Boyle's law a few millilitres and stops", () => {
    const [bucket] = hens(10, [{ kind: "nipple-bucket-5gal" }]).waterers;
    const [shut] = bucket!.openings;
    // 5 % of 20.97 L of air under 0.358 m of water: V ρ g h / (p − ρ g h).
    const suction = 999.7 * 9.80665 * 0.358;
    expect(shut).toMatchObject({ code: "ventShut" });
    expect(shut!.code === "ventShut" && shut!.gives).toBeCloseTo(
      (0.05 * 0.020974 * suction) / (101_325 - suction),
      6,
    );
  });
});
