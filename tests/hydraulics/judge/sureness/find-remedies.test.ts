import { expect, test } from "vitest";
import type { Input } from "../../../../packages/hydraulics/src/judge/sureness/doubted-inputs.js";
import { findRemedies } from "../../../../packages/hydraulics/src/judge/sureness/find-remedies.js";
import type { Keeping, Sampler } from "../../../../packages/hydraulics/src/judge/sureness/sample-verdicts.js";
import { normalQuantile } from "../../../../packages/hydraulics/src/numerics/normal-quantile.js";

const EVEN = 20;
/** One input's deviations, evenly through the normal curve. */
const evenly = Array.from({ length: EVEN }, (_, k) => normalQuantile((k + 0.5) / EVEN));

/** Levels read to two centimetres: finer ones may be asked for, from 15 mm down to 2. */
const levelsNamed = (...names: string[]): Input[] =>
  names.map((source, index) => ({
    ...{ input: { kind: "level", source }, key: `level ${source}`, index },
    ...{ doubt: 0.02, spread: { low: 1, high: 1 } },
  }));

/** A drinker that starves where its inputs together are more than so many deviations too low. */
interface Edge {
  readonly on: readonly Input[];
  readonly at: number;
}

/** Every pairing of the deviations of the first two inputs; the others are as they should be. */
function samplerOf(inputs: readonly Input[], edges: readonly Edge[]): Sampler {
  const take = (k: number, keeping?: Keeping) => {
    const row = Float64Array.from(inputs, (_, i) =>
      i > 1 ? 0 : evenly[(i === 0 ? k : Math.floor(k / EVEN)) % EVEN]!,
    );
    const off = row.map((z, i) => (keeping?.inputs?.[i] ?? 1) * z);
    const verdicts = edges.map(({ on, at }) =>
      on.reduce((sum, input) => sum + off[inputs.indexOf(input)]!, 0) < -at ? 2 : 0,
    );
    return { verdicts: Uint8Array.from(verdicts), off: { inputs: off, own: new Float64Array(0) } };
  };
  return { inputs, drinkers: edges.length, take } as unknown as Sampler;
}

const ALL = EVEN * EVEN;
function remediesOf(
  inputs: readonly Input[],
  edges: readonly Edge[],
  ranked = edges.map(({ on }) => on),
  samples = ALL,
) {
  const told: string[] = [];
  const tried = (done: number, of: number) => void told.push(`${done} of ${of}`);
  const open = edges.map((_, drinker) => ({ drinker, ranked: ranked[drinker]! }));
  const options = { samples, most: samples, tried };
  const found = findRemedies(
    samplerOf(inputs, edges),
    edges.map(() => 0),
    open,
    options,
  );
  return { told, remedies: edges.map((_, drinker) => found.get(drinker)) };
}

const [A, B] = levelsNamed("a", "b") as [Input, Input];
const needed = (remedy: ReturnType<typeof remediesOf>["remedies"][number]) =>
  remedy?.kind === "one" ? remedy.better.needed : remedy?.kind;

test("findRemedies asks for no better a measurement than makes it sure: nineteen in twenty good", () => {
  // With an edge at x deviations it is sure once x over what is kept of them passes 1.645. The draws stand at the
  // middles of twentieths: one of them, at 1.96, may be beyond, the next, at 1.44, not.
  const inputs = [A, B];
  const { remedies } = remediesOf(
    inputs,
    [1.4, 0.71, 0.34, 0.15, 0.14].map((at) => ({ on: [A], at })),
  );
  // 15 mm keep three quarters of 1.44, which is 1.08; 10 mm half, 0.72; 5 mm a quarter, 0.36; 2 mm a tenth, 0.144.
  expect(remedies.map(needed)).toEqual([0.015, 0.007, 0.003, 0.002, "none"]);
  expect(remedies[0]).toMatchObject({ better: { input: A.input, doubt: 0.02 }, or: [] });
});

test("findRemedies tells, where either of two does it, the weightier first, each with what it needs", () => {
  const { remedies } = remediesOf([A, B], [{ on: [A, B], at: 2.2 }], [[B, A]]);
  const [remedy] = remedies;
  if (remedy?.kind !== "one") throw new Error("one is enough");
  expect([remedy.better, ...remedy.or].map(({ input }) => input)).toEqual([B.input, A.input]);
  expect(remedy.better.needed).toBe(remedy.or[0]!.needed);
});

test("findRemedies asks for two where neither alone is enough, both as good", () => {
  const [remedy] = remediesOf([A, B], [{ on: [A, B], at: 1.2 }]).remedies;
  expect(remedy).toMatchObject({
    kind: "two",
    better: [
      { input: A.input, doubt: 0.02, needed: 0.01 },
      { input: B.input, doubt: 0.02, needed: 0.01 },
    ],
  });
  // Too near the edge for any two.
  expect(remediesOf([A, B], [{ on: [A, B], at: 0.1 }]).remedies[0]).toEqual({ kind: "none" });
});

test("findRemedies tries three things for each drinker, and eight in all, and tells how far it is", () => {
  const many = levelsNamed("a", "b", "c", "d");
  const first = many[0]!;
  const ranked = [many[1]!, many[2]!, many[3]!, first];
  // What would help stands fourth.
  const { remedies, told } = remediesOf(many, [{ on: [first], at: 1 }], [ranked]);
  expect(remedies).toEqual([{ kind: "none" }]);
  expect(told).toEqual(["0 of 4", "1 of 4", "2 of 4"]);
  const nine = levelsNamed(..."abcdefghi");
  const each = nine.map((input): Edge => ({ on: [input], at: 1 }));
  expect(remediesOf(nine, each, undefined, EVEN).told).toHaveLength(8);
});

test("findRemedies has nothing to ask of what is measured as finely as it can be", () => {
  const fine: Input = { ...A, doubt: 0.002 };
  const { remedies, told } = remediesOf([fine, B], [{ on: [fine], at: 1 }], [[fine, B]]);
  expect(remedies).toEqual([{ kind: "none" }]);
  expect(told).toEqual(["0 of 2"]);
  // Nor of a pair of which one is.
  const both: Edge = { on: [B, fine], at: 1.2 };
  expect(remediesOf([B, fine], [both], [[B, fine]]).remedies).toEqual([{ kind: "none" }]);
});
