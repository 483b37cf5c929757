import { describe, expect, it } from "vitest";
import {
  kitChangeOvers,
  ownChangeOvers,
} from "../../../../packages/hydraulics/src/judge/year/change-overs.js";
import type { KitKind, YearPeriod } from "../../../../packages/hydraulics/src/judge/year/year-result.js";
import type { Flock } from "../../../../packages/hydraulics/src/model/flock.js";
import type { LooseWaterer, Yard } from "../../../../packages/hydraulics/src/model/yard.js";
import { birdById } from "../../../../packages/hydraulics/src/tables/birds.js";
import { watererById } from "../../../../packages/hydraulics/src/tables/waterers.js";

const kind = (name: string, count: number): KitKind => ({
  ...{ id: name, name, isWaterer: true, count, spare: 0, holds: 0.004, mostOut: count },
});
/** Two jars and two pans; weeks that begin on days 100 and 107. */
const kinds = [kind("jar", 2), kind("pan", 2)];
const weekWith = (birds: readonly number[], from: number) =>
  ({ week: 0, from, to: from + 7, pens: birds.map((count) => ({ birds: count })) }) as unknown as YearPeriod;

/** What changes over from one week to the next; of each pen [jars, pans] before and after. */
const changes = (
  before: readonly (readonly number[])[],
  after: readonly (readonly number[])[],
  birds: readonly (readonly number[])[] = [before.map(() => 20), after.map(() => 20)],
) =>
  kitChangeOvers(
    birds.map((own, t) => weekWith(own, 100 + 7 * t)),
    before.map((_, p) => `pen ${p + 1}`),
    { kinds, lent: [before, after] },
  );

describe("kitChangeOvers", () => {
  it("of jars for pans in one pen lets the jars stay for a week, for nobody else wants them", () => {
    expect(changes([[2, 0]], [[0, 2]])).toEqual([
      {
        ...{ code: "changeOver", by: "kit", pen: "pen 1", from: ["jar"], to: ["pan"] },
        ...{ day: 107, until: 114, wantedElsewhere: [] },
      },
    ]);
  });

  it("tells which of the old are wanted elsewhere that day: those of which fewer are left over than go", () => {
    const wanted = (other: number) =>
      changes(
        [
          [2, 0],
          [0, 0],
        ],
        [
          [0, 2],
          [other, 0],
        ],
      ).map(({ pen, wantedElsewhere }) => [pen, wantedElsewhere]);
    // Two jars go. The other pen takes both, one, or none of them.
    expect(wanted(2)).toEqual([["pen 1", ["jar"]]]);
    expect(wanted(1)).toEqual([["pen 1", ["jar"]]]);
    expect(wanted(0)).toEqual([["pen 1", []]]);
  });

  it("names what goes and what comes, and not what stays as it was", () => {
    const three = [...kinds, kind("trough", 1)];
    const [found] = kitChangeOvers([weekWith([20], 100), weekWith([20], 107)], ["pen 1"], {
      kinds: three,
      lent: [[[2, 0, 1]], [[0, 2, 1]]],
    });
    expect([found!.from, found!.to, found!.wantedElsewhere]).toEqual([["jar"], ["pan"], []]);
  });

  it("is none where kit only comes, only goes, or stays", () => {
    expect(changes([[1, 0]], [[1, 1]])).toEqual([]);
    expect(changes([[1, 1]], [[1, 0]])).toEqual([]);
    expect(changes([[1, 1]], [[1, 1]])).toEqual([]);
  });

  it("is none where no birds stay: the pen was empty before, or is now", () => {
    expect(changes([[2, 0]], [[0, 2]], [[0], [20]])).toEqual([]);
    expect(changes([[2, 0]], [[0, 2]], [[20], [0]])).toEqual([]);
    expect(changes([[2, 0]], [[0, 2]], [[1], [1]])).toHaveLength(1);
  });

  it("is none in the first week, with nothing before it", () => {
    expect(kitChangeOvers([weekWith([20], 100)], ["pen 1"], { kinds, lent: [[[2, 0]]] })).toEqual([]);
  });
});

describe("ownChangeOvers", () => {
  const waterer = (id: string, of: string): LooseWaterer => ({
    ...{ id, index: 0, kind: watererById(of)!, count: 1, slope: 0, hole: "downhill", holds: 0.001 },
    ...{ hang: undefined, cord: 1, refillEvery: undefined, isShaded: false },
  });
  const yard = (waterers: readonly LooseWaterer[]): Yard => ({
    pens: [{ id: "brooder", index: 0, slope: 0, waterers }],
  });
  /** Chicks of day 100, as they are some days later. */
  const chicksOn = (day: number): Flock => ({
    day,
    weather: { high: 20, low: 10, light: 43_200, dawn: 21_600, hotSpell: undefined },
    pens: [
      {
        ...{ id: "brooder", index: 0, drinkers: [] },
        batches: [{ kind: birdById("pullet")!, index: 0, count: 20, ageDays: day - 100, lay: 0 }],
      },
    ],
  });
  const jarThenFount = [waterer("jar", "jar-fount-1qt"), waterer("fount", "fount-bottom-5gal")];
  // A quart jar is for chicks of up to four weeks; both stay for a week before.
  const toldOnce = {
    ...{ code: "changeOver", pen: "brooder", from: ["jar"], to: ["fount"], by: "pen" },
    ...{ day: 121, until: 128, wantedElsewhere: [] },
  };

  it("tells each once, however many weeks see it come", () => {
    const flocks = [105, 112, 119].map(chicksOn);
    expect(ownChangeOvers(yard(jarThenFount), flocks, 150)).toEqual([toldOnce]);
  });

  it("tells those that begin before the end of the year, on its last day too", () => {
    expect(ownChangeOvers(yard(jarThenFount), [chicksOn(105)], 122)).toEqual([toldOnce]);
    expect(ownChangeOvers(yard(jarThenFount), [chicksOn(105)], 121)).toEqual([]);
  });

  it("goes to nothing where no other of the pen comes after it", () => {
    const found = ownChangeOvers(yard(jarThenFount.slice(0, 1)), [chicksOn(105)], 150);
    expect(found.map(({ from, to }) => [from, to])).toEqual([[["jar"], []]]);
  });
});
