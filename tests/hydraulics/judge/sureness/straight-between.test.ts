import { describe, expect, it, test } from "vitest";
import { listInputs, spreadBy } from "../../../../packages/hydraulics/src/judge/sureness/doubted-inputs.js";
import { doubtsOf } from "../../../../packages/hydraulics/src/judge/sureness/doubts.js";
import { varyLine } from "../../../../packages/hydraulics/src/judge/sureness/vary-line.js";
import { buildLine } from "../../../../packages/hydraulics/src/model/build-line.js";
import { planOf } from "../trouble/ask.js";
import { yard } from "../yard/yard.js";
import { sampledOf } from "./sampling.js";

test("spreadBy is nothing at no deviation, both ends at two, and even in logarithms between", () => {
  const spread = { low: 0.64, high: 1.44 };
  expect([-2, -1, 0, 1, 2].map((z) => spreadBy(spread, z))).toEqual(
    [0.64, 0.8, 1, 1.2, 1.44].map((factor) => expect.closeTo(factor, 12)),
  );
});

function varied(off: (name: string) => number, lane: Record<string, unknown> = {}) {
  const plan = planOf(
    yard({
      runs: [
        {
          ...{ id: "lane", length: "4 m", fall: "0 cm", survey: [{ along: "2 m", fall: "5 cm" }] },
          drinkers: { kind: "plain", count: 4, first: "50 cm", every: "1 m" },
          ...lane,
        },
      ],
      more: { doubts: { heights: "2 cm", level: "4 cm" } },
    }),
  );
  const built = buildLine(plan);
  if (!built.ok) throw new Error(JSON.stringify(built.problems));
  const { line } = built;
  const inputs = listInputs(line, doubtsOf(plan, line), undefined);
  const nameOf = (input: (typeof inputs)[number]["input"]) =>
    input.kind === "height" ? `height ${input.place}` : input.kind;
  const made = varyLine(
    line,
    inputs,
    {
      inputs: Float64Array.from(inputs, ({ input }) => off(nameOf(input))),
      own: new Float64Array(line.drinkers.count),
    },
    undefined,
  ).line;
  return { line, inputs, made };
}

describe("a line whose measured places are off", () => {
  it("stays straight between them: drinkers move by their share of both", () => {
    const { line, inputs, made } = varied((name) =>
      name === "height barrel" ? 1 : name.startsWith("height lane at 2") ? 3 : 0,
    );
    expect(inputs.filter(({ input }) => input.kind === "height")).toHaveLength(3);
    // One centimetre at the barrel, three at the surveyed place, none at the end.
    const moved = [...made.drinkers.height].map((height, d) => height - line.drinkers.height[d]!);
    expect(moved).toEqual([0.015, 0.025, 0.0225, 0.0075].map((by) => expect.closeTo(by, 12)));
    expect(made.sources[0]!.base - line.sources[0]!.base).toBeCloseTo(0.01, 12);
  });

  it("moves what stands behind a one-way valve with where that sits", () => {
    const { line, made } = varied((name) => (name === "height barrel" ? 2 : 0), { oneWay: true });
    const moved = [...made.drinkers.height].map((height, d) => height - line.drinkers.height[d]!);
    expect(moved).toEqual([0.015, 0.005, 0, 0].map((by) => expect.closeTo(by, 12)));
  });
});

test.each([0, 1])(
  "a valve that begins a later run moves with the joint it sits at, %i drinkers before it",
  (before) => {
    const plan = planOf(
      yard({
        runs: [
          {
            ...{ id: "hose", to: "tee", length: "2 m" },
            ...(before === 0 ? {} : { drinkers: { kind: "plain", count: before, first: "1 m" } }),
          },
          {
            ...{ id: "lane", from: "tee", length: "4 m", fall: "0 cm", oneWay: true },
            drinkers: { kind: "plain", count: 1, first: "2 m" },
          },
        ],
        more: { points: [{ id: "tee", ground: "0 cm", above: "0 cm" }], doubts: { heights: "2 cm" } },
      }),
    );
    const built = buildLine(plan);
    if (!built.ok) throw new Error(JSON.stringify(built.problems));
    const { line } = built;
    const inputs = listInputs(line, doubtsOf(plan, line), undefined);
    const isTee = ({ input }: (typeof inputs)[number]) => input.kind === "height" && input.place === "tee";
    const off = {
      inputs: Float64Array.from(inputs, (input) => (isTee(input) ? 1 : 0)),
      own: new Float64Array(1 + before),
    };
    const { height } = varyLine(line, inputs, off, undefined).line.drinkers;
    // Half way from the joint, a centimetre off, to an end that is not.
    expect(height[before]! - line.drinkers.height[before]!).toBeCloseTo(0.005, 12);
  },
);

test("what one kind of drinker passes is off for that kind alone", () => {
  const at = (kind: string, first: string) => ({ id: kind, kind, count: 1, first });
  const plan = planOf(
    yard({
      runs: [
        { length: "4 m", fall: "0 cm", drinkers: [at("nipple-side-action", "1 m"), at("cup-float", "3 m")] },
      ],
    }),
  );
  const built = buildLine(plan);
  if (!built.ok) throw new Error(JSON.stringify(built.problems));
  const { line } = built;
  const inputs = listInputs(line, doubtsOf(plan, line), undefined);
  const flows = inputs.filter(({ input }) => input.kind === "flow");
  expect(flows).toHaveLength(2);
  for (const flow of flows) {
    const off = {
      inputs: Float64Array.from(inputs, (one) => (one === flow ? 2 : 0)),
      own: new Float64Array(2),
    };
    const { coefficient } = varyLine(line, inputs, off, undefined).line.drinkers;
    const factors = [...coefficient].map((k, d) => k / line.drinkers.coefficient[d]!);
    const own = line.drinkers.groups.findIndex(
      ({ kindName }) => flow.input.kind === "flow" && kindName === flow.input.drinkers,
    );
    expect(factors).toEqual([0, 1].map((g) => expect.closeTo(g === own ? flow.spread.high : 1, 12)));
    expect(flow.spread.high).toBeGreaterThan(1);
  }
});

describe("what is in doubt", () => {
  it("is told by its farther end, those that bear on many drinkers first, of heights that of a source first", () => {
    const { inputs } = sampledOf(
      yard({
        runs: [
          { id: "lane", length: "3 m", fall: "0 cm", drinkers: { kind: "nipple-side-action", count: 2 } },
        ],
        more: { pens: [{ id: "hens", birds: { kind: "hen", count: 6 } }] },
      }),
    )!.sampler({ seed: 1 });
    const kinds = inputs.map(({ input }) => input.kind).filter((kind, k, all) => kind !== all[k - 1]);
    expect(kinds.filter((kind) => kind !== "bore")).toEqual([
      ...["level", "takenIn", "intake", "flow", "roughness", "fittings", "height"],
    ]);
    const doubtOf = (kind: string) => inputs.find(({ input }) => input.kind === kind)!.doubt;
    expect([doubtOf("takenIn"), doubtOf("roughness"), doubtOf("fittings")]).toEqual([0.6, 0.05, 0.3]);
    const [first] = inputs.filter(({ input }) => input.kind === "height");
    expect(first!.input).toEqual({ kind: "height", place: "barrel" });
    expect(new Set(inputs.map(({ key }) => key)).size).toBe(inputs.length);
  });

  it("between laminar and turbulent is half of the loss at most, as it is drawn", () => {
    const { sampler, drinkers } = sampledOf(
      yard({
        stand: "150 cm",
        drinker: {
          readings: [
            { head: "25 cm", flow: "380 mL/min" },
            { head: "1 m", flow: "760 mL/min" },
          ],
          need: "200 mL/min",
        },
        runs: [
          {
            ...{ length: "4 m", fall: "0 cm", pipe: { bore: "6 mm" } },
            drinkers: { kind: "plain", count: 1, busiest: 1, first: "4 m" },
          },
        ],
      }),
    )!;
    // Every draw in the middle: nothing is off, and three quarters of the loss are left.
    const { take, judge, inputs } = sampler({ seed: 1, draws: () => ({ uniform: () => 0.5 }) });
    const nothing = { inputs: new Float64Array(inputs.length), own: new Float64Array(drinkers.length) };
    expect(take(0).spare(0)).toEqual(judge(nothing, 0.75).spare(0));
    expect(judge(nothing, 0.75).spare(0).below).toBeGreaterThan(judge(nothing, 1).spare(0).below);
    expect(take(0, { rest: 0 }).spare(0)).toEqual(judge(nothing, 1).spare(0));
  });
});
