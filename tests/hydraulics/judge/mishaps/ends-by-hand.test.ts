import { describe, expect, it } from "vitest";
import { endsOf } from "../../../../packages/hydraulics/src/judge/mishaps/mishap-ends.js";

const MORNING = 1000;
const EMPTY = (pool: number, time: number) => ({ kind: "empty", pool, time: MORNING + time });
const DRY = (drinker: number, time: number) => ({ kind: "drinkerDry", drinker, time: MORNING + time });
const SHORT = (pen: number, pool: number, time: number) => ({
  kind: "penShort",
  pen,
  pool,
  time: MORNING + time,
});
const hens = (count = 3, ageDays = 100) => [{ count, ageDays }];

interface Made {
  readonly drinkers?: number;
  /** Drinkers that no water reaches, and that are stuck shut. */
  readonly unreached?: readonly number[];
  readonly shut?: readonly number[];
  readonly pens?: readonly { readonly id: string; readonly batches: readonly object[] }[];
  /** By pool the pens it serves. */
  readonly pools?: readonly (readonly number[])[];
}

function ends(events: readonly object[], made: Made = {}) {
  const { drinkers = 4, unreached = [], shut = [], pens = [], pools = [[]] } = made;
  const all = Array.from({ length: drinkers }, (_, d) => d);
  const struck = {
    flock: { pens },
    still: {
      line: {
        drinkers: {
          ...{ count: drinkers, id: all.map((d) => `nipple ${d}`), point: all },
          stuck: all.map((d) => (shut.includes(d) ? 2 : 0)),
        },
      },
      solved: {
        darcyWeisbach: {
          lowestBusiest: { idle: { reached: all.map((d) => (unreached.includes(d) ? 0 : 1)) } },
        },
      },
    },
  };
  const run = {
    pools: pools.map((served) => ({ pens: served.map((pen) => ({ pen })) })),
    drawdown: { events },
  };
  return endsOf(struck as never, run as never, MORNING);
}

describe("endsOf a run of a mishap", () => {
  it("is nothing where nothing comes to an end", () => {
    expect(ends([])).toEqual({
      ...{ hasBirds: false, firstWithout: undefined, firstDry: undefined },
      ...{ halfDry: undefined, empty: undefined },
    });
  });

  it("has half of the drinkers dry with the second of three or four, the third of five or six", () => {
    const dry = [10, 20, 30, 40].map((time, d) => DRY(d, time));
    expect([3, 4, 5, 6].map((drinkers) => ends(dry, { drinkers }).halfDry)).toEqual([20, 20, 30, 30]);
    expect(ends(dry, { drinkers: 9 }).halfDry).toBeUndefined();
    expect(ends(dry).firstDry).toEqual({ after: 10, drinker: "nipple 0" });
    expect(ends([], { drinkers: 0 }).halfDry).toBeUndefined();
  });

  it("counts one that is told dry twice once", () => {
    expect(ends([DRY(2, 10), DRY(2, 15), DRY(1, 25)]).halfDry).toBe(25);
  });

  it("counts from the beginning those that no water reaches, or that are stuck shut", () => {
    expect(ends([DRY(0, 10)], { unreached: [2] })).toMatchObject({
      firstDry: { after: 0, drinker: "nipple 2" },
      halfDry: 10,
    });
    expect(ends([], { unreached: [2], shut: [1] })).toMatchObject({
      firstDry: { after: 0, drinker: "nipple 1" },
      halfDry: 0,
    });
  });

  it("is empty with the last of its vessels, each when first it is", () => {
    const pools = [[], []];
    expect(ends([EMPTY(0, 5), EMPTY(0, 50)], { pools }).empty).toBeUndefined();
    expect(ends([EMPTY(0, 5), EMPTY(1, 30), EMPTY(1, 70)], { pools }).empty).toBe(30);
    expect(ends([EMPTY(1, 5), EMPTY(0, 8), EMPTY(1, 70)], { pools }).empty).toBe(8);
  });

  it("has a pen go without when it is told short, and at once where no vessel serves it that has birds", () => {
    const pens = [
      { id: "gone", batches: hens(0) },
      { id: "coop", batches: hens() },
      { id: "yard", batches: hens() },
    ];
    const served = ends([DRY(0, 5), SHORT(2, 0, 12), SHORT(1, 0, 20)], { pens, pools: [[1, 2]] });
    expect(served).toMatchObject({ hasBirds: true, firstWithout: { after: 12, pen: "yard" } });
    expect(ends([SHORT(1, 0, 20)], { pens, pools: [[1]] }).firstWithout).toEqual({ after: 0, pen: "yard" });
    const later = [{ id: "chicks", batches: hens(9, -3) }];
    expect(ends([], { pens: later, pools: [[]] })).toMatchObject({
      hasBirds: false,
      firstWithout: undefined,
    });
  });

  it("is never before it began", () => {
    expect(ends([DRY(0, -5)]).firstDry!.after).toBe(0);
  });
});
