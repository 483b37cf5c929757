import { describe, expect, it } from "vitest";
import {
  changeOversOf,
  depthOf,
  suitOf,
  suitsOf,
} from "../../../../packages/hydraulics/src/judge/yard/waterer-suits.js";
import type { Batch, Pen } from "../../../../packages/hydraulics/src/model/flock.js";
import type { LooseWaterer, YardPen } from "../../../../packages/hydraulics/src/model/yard.js";
import { birdById } from "../../../../packages/hydraulics/src/tables/birds.js";
import type { WatererKind } from "../../../../packages/hydraulics/src/tables/waterer-types.js";
import { watererById } from "../../../../packages/hydraulics/src/tables/waterers.js";

const batch = (kind: string, ageDays: number, count = 20): Batch => ({
  ...{ kind: birdById(kind)!, index: 0, count, ageDays, lay: 0 },
});
const pen = (...batches: Batch[]): Pen => ({ id: "brooder", index: 0, drinkers: [], batches });
/** For chickens of such ages [days]. */
const kind = (
  fromDays: number,
  toDays: number | undefined,
  sizes: Record<string, unknown> = {},
): WatererKind =>
  ({ ...watererById("pan-40cm")!, species: ["chicken"], fromDays, toDays, ...sizes }) as WatererKind;
const waterer = (id: string, of: WatererKind): LooseWaterer => ({
  ...{ id, index: 0, kind: of, count: 1, slope: 0, hole: "downhill", holds: 0.01 },
  ...{ hang: undefined, cord: 1, refillEvery: undefined, isShaded: false },
});

describe("suitOf", () => {
  it("is by species, then from the youngest to the oldest day it suits, both of these too", () => {
    const verdicts = [6, 7, 28, 29].map((age) => suitOf(kind(7, 28), batch("pullet", age)).verdict);
    expect(verdicts).toEqual(["tooYoung", "suits", "suits", "tooOld"]);
    expect(suitOf(kind(7, undefined), batch("hen", 2000)).verdict).toBe("suits");
    expect(suitOf(kind(7, 28), batch("coturnix", 10)).verdict).toBe("notForThem");
  });

  it("is told of every batch that is there", () => {
    const two = pen(batch("pullet", 10), batch("pullet", -3), batch("pullet", 10, 0));
    expect(suitsOf(waterer("pan", kind(0, 28)), two)).toHaveLength(1);
  });
});

describe("depthOf", () => {
  it("is what young birds may drown in from 6 mm on, until they no longer do", () => {
    const { drownsUntilDays } = birdById("pullet")!;
    const drown = (depth: number, age: number) =>
      depthOf(waterer("pan", kind(0, undefined, { depth })), pen(batch("pullet", age))).mayDrown.length;
    expect([drown(0.006, 1), drown(0.0061, 1)]).toEqual([0, 1]);
    expect([drown(0.05, drownsUntilDays - 1), drown(0.05, drownsUntilDays)]).toEqual([1, 0]);
    expect(
      depthOf(waterer("pan", kind(0, undefined, { depth: 0.05 })), pen(batch("pullet", -1))).mayDrown,
    ).toEqual([]);
  });
});

describe("changeOversOf", () => {
  const yard = (...waterers: LooseWaterer[]): YardPen => ({ id: "brooder", index: 0, slope: 0, waterers });
  const jar = waterer("jar", kind(0, 28));

  it("goes to the one that suits longest of those that suit the day after", () => {
    const [short, long, ever, late] = [
      waterer("short", kind(0, 60)),
      waterer("long", kind(0, 90)),
      waterer("ever", kind(0, undefined)),
      waterer("late", kind(40, undefined)),
    ];
    const nextOf = (...others: LooseWaterer[]) =>
      changeOversOf(yard(jar, ...others), pen(batch("pullet", 3)), 100).find(({ from }) => from === "jar")
        ?.to;
    expect(nextOf(short, long)).toBe("long");
    expect(nextOf(long, short)).toBe("long");
    expect(nextOf(short, ever, long)).toBe("ever");
    expect(nextOf(late, short)).toBe("short");
    expect(nextOf(late)).toBeUndefined();
  });

  it("has both there for a week before, from when the next suits, or from today", () => {
    const both = (next: number, age: number) => {
      const [found] = changeOversOf(
        yard(jar, waterer("pan", kind(next, undefined))),
        pen(batch("pullet", age)),
        100,
      );
      return [found!.bothFromDays, found!.untilDays, found!.bothFromDay, found!.untilDay];
    };
    // Three days old on day 100: 21 days old on day 118, 28 on 125.
    expect(both(0, 3)).toEqual([21, 28, 118, 125]);
    expect(both(25, 3)).toEqual([25, 28, 122, 125]);
    expect(both(0, 24)).toEqual([24, 28, 100, 104]);
  });

  it("is none of what they are too young for, too old for, or never outgrow; and has no dates without a day", () => {
    const pan = waterer("pan", kind(0, undefined));
    expect(changeOversOf(yard(pan), pen(batch("pullet", 3)), 100)).toEqual([]);
    expect(changeOversOf(yard(jar, pan), pen(batch("pullet", 29)), 100)).toEqual([]);
    expect(changeOversOf(yard(jar, pan), pen(batch("pullet", -1)), 100)).toEqual([]);
    const [undated] = changeOversOf(yard(jar, pan), pen(batch("pullet", 3)), undefined);
    expect(undated).toMatchObject({ bothFromDays: 21, bothFromDay: undefined, untilDay: undefined });
  });
});
