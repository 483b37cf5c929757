import { describe, expect, it } from "vitest";
import { SEGMENT_KIND } from "../../../packages/hydraulics/src/model/line.js";
import { type Asked, NOTHING_ASKED } from "../../../packages/hydraulics/src/search/asked.js";
import { compareBy, NO_COST } from "../../../packages/hydraulics/src/search/cost.js";
import { costAbove } from "../../../packages/hydraulics/src/search/cost-above.js";
import type { CureLines } from "../../../packages/hydraulics/src/search/cure-lines.js";
import type { DemandForest } from "../../../packages/hydraulics/src/search/demand-forest.js";
import { FRICTION_LAWS } from "../../../packages/hydraulics/src/solve/solution.js";

const SOURCE_HEAD = 10;
/** Money and loss of a segment with each size of a run [m]. */
type Sizes = readonly (readonly [money: number, loss: number])[];

/** Source, tee and far end, one segment after another; the valve is in the first of them. */
function bought({ sizes, flow = 1, valve = 0 }: { sizes: readonly Sizes[]; flow?: number; valve?: number }) {
  const ends = sizes.map((_, r) => ({ run: r, above: r, nodes: Int32Array.of(r + 1) }));
  const kind = sizes.map((_, r) => (r === 0 && valve > 0 ? SEGMENT_KIND.oneWay : SEGMENT_KIND.pipe));
  const forest = {
    line: { segments: { kind, setting: sizes.map((_, r) => (r === 0 ? valve : 0)) } },
    topology: { segment: [-1, ...sizes.keys()] },
    chains: ends,
  } as unknown as DemandForest;
  const runs = sizes.map((some) => ({ options: some.map(([money]) => ({ cost: { ...NO_COST, money } })) }));
  const byLaw = FRICTION_LAWS.map(() => Float64Array.from([0, ...sizes.map(() => flow)]));
  const above = costAbove(forest, { space: { runs } } as unknown as CureLines, compareBy("money"), {
    losses: (run, option) => () => sizes[run]![option]![1],
    asks: { most: SOURCE_HEAD } as DemandForest["standAt"] extends (...of: never) => { asks: infer A }
      ? A
      : never,
    drawn: { flow: byLaw, lost: byLaw },
  });
  return (head: number) => above(sizes.length, askedOf(head))?.money;
}

/** So much head asked by every law, for those at work. */
const askedOf = (head: number): Asked => NOTHING_ASKED.map((figure, k) => (k % 3 === 0 ? head : figure));

describe("costAbove", () => {
  const feed: Sizes = [
    [0, 4],
    [3, 2],
    [7, 1],
  ];
  const lane: Sizes = [
    [0, 3],
    [2, 1.5],
    [9, 0.5],
  ];

  it("is the cheapest of all sizes of the runs above that leave so much head, as trying each pair finds", () => {
    const above = bought({ sizes: [feed, lane] });
    for (let head = 2; head < 9.5; head += 0.25) {
      const costs = feed.flatMap(([money, loss]) =>
        lane.flatMap(([more, other]) => (SOURCE_HEAD - loss - other >= head ? [money + more] : [])),
      );
      expect([head, above(head)]).toEqual([head, costs.length > 0 ? Math.min(...costs) : undefined]);
    }
  });

  it("counts what opens a valve where water runs, and nothing where none does", () => {
    expect(bought({ sizes: [feed], valve: 0.5 })(5.75)).toBe(3);
    expect(bought({ sizes: [feed] })(5.75)).toBe(0);
    expect(bought({ sizes: [feed], valve: 0.5, flow: 0 })(SOURCE_HEAD)).toBe(0);
  });

  it("of very many sums of money tells every second, with what its dearer neighbour leaves: never too much", () => {
    // For each coin more a millimetre less is lost.
    const many: Sizes = Array.from({ length: 301 }, (_, k) => [k, 1 - k / 1000]);
    const above = bought({ sizes: [many] });
    expect([0, 1, 2, 3, 299, 300].map((k) => above(9 + k / 1000))).toEqual([0, 0, 2, 2, 298, 300]);
    expect(above(9.301)).toBeUndefined();
  });
});
