import { describe, expect, it } from "vitest";
import { checkDocument } from "../../../packages/hydraulics/src/document/read-plan.js";
import { NO_COST } from "../../../packages/hydraulics/src/search/cost.js";
import {
  buildCureSpace,
  costOf,
  hasPrices,
  planOf,
  shelfOf,
  typedLength,
} from "../../../packages/hydraulics/src/search/cure-space.js";

/** A barrel at 40 cm and two runs of half-inch pipe, 5 m and 3 m. */
function read(more: Record<string, unknown> = {}) {
  const reading = checkDocument({
    headfall: 1,
    sources: [{ id: "barrel", vessel: "drum-55gal-plastic", stand: "40 cm" }],
    points: [{ id: "tee", ground: "0 cm", above: "10 cm" }],
    runs: [
      { id: "feed", to: "tee", length: "5 m", pipe: "pvc-sch40-1/2" },
      {
        ...{ id: "lane", from: "tee", length: "3 m", fall: "0 cm", pipe: "pvc-sch40-1/2" },
        drinkers: { kind: "nipple-side-action", count: 2 },
      },
    ],
    ...more,
  });
  if (!reading.ok) throw new Error(JSON.stringify(reading.problems));
  return reading.plan;
}
const free = { pipes: true, stands: true } as const;
const shelf = (...entries: Record<string, unknown>[]) => shelfOf(read({ shelf: entries }));

describe("shelfOf", () => {
  it("reckons a price by the metre, whatever length it is told for", () => {
    const [piece] = shelf({ pipe: "pvc-sch40-3/4", price: 12, per: "3 m" })!;
    expect(piece!.price).toBeCloseTo(4, 12);
    expect(shelf({ pipe: "pvc-sch40-3/4", price: 1.5 })![0]!.price).toBe(1.5);
  });

  it("has on hand what it says, or else the sum of its pieces; entries of one pipe together, the first price told", () => {
    expect(shelf({ pipe: "pvc-sch40-3/4", onHand: "7 m", pieces: ["2 m", "1 m"] })![0]!.onHand).toBe(7);
    expect(shelf({ pipe: "pvc-sch40-3/4", pieces: ["2 m", "150 cm"] })![0]!.onHand).toBeCloseTo(3.5, 12);
    const both = shelf(
      { pipe: "pvc-sch40-3/4", onHand: "2 m" },
      { pipe: "pvc-sch40-1", onHand: "1 m" },
      { pipe: "pvc-sch40-3/4", onHand: "3 m", price: 2 },
    )!;
    expect(both.map(({ pipe, onHand, price }) => [pipe, onHand, price])).toEqual([
      ["pvc-sch40-3/4", 5, 2],
      ["pvc-sch40-1", 1, undefined],
    ]);
  });
});

describe("hasPrices", () => {
  it("is so where anything has one", () => {
    expect(hasPrices(read())).toBe(false);
    expect(hasPrices(read({ shelf: [{ pipe: "pvc-sch40-3/4" }] }))).toBe(false);
    expect(hasPrices(read({ shelf: [{ pipe: "pvc-sch40-3/4", price: 2 }] }))).toBe(true);
    expect(hasPrices(read({ prices: { drinker: 2 } }))).toBe(true);
  });
});

describe("buildCureSpace", () => {
  it("thinks of every size of the run's own family, the narrow first, and of the run as it is before all", () => {
    const { runs } = buildCureSpace(read(), {}, free);
    const pipes = runs[0]!.options.map(({ pipe }) => pipe);
    expect(pipes[0]).toBeUndefined();
    expect(pipes).not.toContain("pvc-sch40-1/2");
    expect(pipes.indexOf("pvc-sch40-3/4")).toBeLessThan(pipes.indexOf("pvc-sch40-1"));
    expect(runs[0]!.options[0]!.cost).toEqual(NO_COST);
  });

  it("moves the stand by tens of centimetres or what is asked, from the ground to the most allowed", () => {
    const heights = (options: Parameters<typeof buildCureSpace>[1]) =>
      buildCureSpace(read(), options, free).sources[0]!.options.map(({ height }) => height);
    const quarter = heights({ standMost: 1, standStep: 0.25 });
    expect(quarter).toEqual([0.4, 0, 0.25, 0.5, 0.75, 1]);
    // As it stands is told once.
    expect(heights({ standMost: 0.8, standStep: 0.2 })).toEqual([0.4, 0, 0.2, 0.6, 0.8]);
  });

  it("a stand costs its way up or down, and money only upwards: so much for each 10 cm", () => {
    const { options } = buildCureSpace(read({ prices: { stand: 3 } }), { standMost: 1, standStep: 0.2 }, free)
      .sources[0]!;
    const cost = (height: number) => options.find((one) => one.height === height)!.cost;
    expect(cost(1)).toMatchObject({ stand: expect.closeTo(0.6, 9), money: expect.closeTo(18, 9) });
    expect(cost(0)).toMatchObject({ stand: expect.closeTo(0.4, 9), money: 0 });
  });

  it("leaves alone what is not free, and what must never change", () => {
    const counts = (
      options: Parameters<typeof buildCureSpace>[1],
      is: Parameters<typeof buildCureSpace>[2],
    ) => {
      const { runs, sources } = buildCureSpace(read(), options, is);
      return [...runs, ...sources].map((choice) => choice.options.length > 1);
    };
    expect(counts({}, free)).toEqual([true, true, true]);
    expect(counts({}, { pipes: [1], stands: false })).toEqual([false, true, false]);
    expect(counts({ never: ["pipe"] }, free)).toEqual([false, false, true]);
    expect(counts({ never: ["stand"] }, free)).toEqual([true, true, false]);
    // A run that is laid anew must have some pipe, whatever must never change.
    expect(counts({ never: ["pipe"] }, { pipes: [0], stands: true, fresh: 0 })).toEqual([true, false, true]);
  });

  it("buys the pipe of a run that is laid, whatever it is", () => {
    const { runs } = buildCureSpace(
      read({ shelf: [{ pipe: "pvc-sch40-1/2", price: 2, onHand: "1 m" }] }),
      {},
      {
        ...{ pipes: [0], stands: false, fresh: 0 },
      },
    );
    expect(runs[0]!.options[0]).toMatchObject({ pipe: undefined, cost: { money: 8, pipe: 4, runs: 1 } });
  });
});

describe("planOf and costOf", () => {
  const plan = read({ shelf: [{ pipe: "pvc-sch40-3/4", price: 2, onHand: "6 m" }], prices: { stand: 1 } });
  const space = buildCureSpace(plan, { standMost: 1, standStep: 0.2 }, free);
  const [wide] = space.runs[0]!.options.flatMap(({ pipe }, k) => (pipe === "pvc-sch40-3/4" ? [k] : []));
  const [high] = space.sources[0]!.options.flatMap(({ height }, k) => (height === 0.6 ? [k] : []));

  it("types what is picked, and leaves the rest as it was typed", () => {
    const picked = planOf(space, [wide!, 0, high!]);
    expect(picked.runs.map(({ pipe }) => pipe)).toEqual(["pvc-sch40-3/4", "pvc-sch40-1/2"]);
    expect(picked.sources[0]!.stand).toBe("60 cm");
    expect(planOf(space, [0, 0, 0])).toEqual(plan);
  });

  it("counts what is on hand once for all runs: 5 and 3 m with 6 m there are 2 m at 2, and 20 cm of stand", () => {
    expect(costOf(space, [wide!, wide!, high!])).toMatchObject({
      ...{ money: expect.closeTo(2 * 2 + 2, 9), pipe: expect.closeTo(2, 9) },
      ...{ runs: 2, stand: expect.closeTo(0.2, 9) },
    });
    expect(costOf(space, [wide!, 0, 0])).toEqual({ ...NO_COST, runs: 1 });
    expect(costOf({ ...space, spent: { ...NO_COST, money: 7 } }, [0, 0, 0]).money).toBe(7);
  });
});

describe("typedLength", () => {
  it("is centimetres to a tenth of a millimetre, or inches to a hundredth", () => {
    expect([typedLength(0.60004, "metric"), typedLength(1.2, "metric")]).toEqual(["60 cm", "120 cm"]);
    expect([typedLength(0.3048, "us"), typedLength(0.1, "us")]).toEqual(["12 in", "3.94 in"]);
  });
});
