import { expect, test } from "vitest";
import { checkDocument } from "../../../../packages/hydraulics/src/document/read-plan.js";
import { listInputs } from "../../../../packages/hydraulics/src/judge/sureness/doubted-inputs.js";
import { doubtsOf } from "../../../../packages/hydraulics/src/judge/sureness/doubts.js";
import { varyLine } from "../../../../packages/hydraulics/src/judge/sureness/vary-line.js";
import { evenDraws } from "../../../../packages/hydraulics/src/numerics/even-draws.js";
import { builtFrom } from "../../model/built.js";
import { yard } from "../yard/yard.js";
import { sampledOf } from "./sampling.js";

const document = yard({
  runs: [{ length: "3 m", fall: "0 cm", drinkers: { kind: "plain", count: 2 } }],
  more: { doubts: { level: "4 cm" } },
});

test("a level that is off moves full, lowest and ordinary alike: by half its doubt for each deviation", () => {
  const { line } = builtFrom(document);
  const reading = checkDocument(document);
  if (!reading.ok) throw new Error(JSON.stringify(reading.problems));
  const inputs = listInputs(line, doubtsOf(reading.plan, line), undefined);
  const off = {
    inputs: Float64Array.from(inputs, ({ input }) => (input.kind === "level" ? 1.5 : 0)),
    own: new Float64Array(line.drinkers.count),
  };
  const [{ levels }, { levels: written }] = [
    varyLine(line, inputs, off, undefined).line.sources[0]!,
    line.sources[0]!,
  ];
  for (const name of ["full", "lowest", "ordinary"] as const)
    expect(levels[name] - written[name]).toBeCloseTo(0.03, 12);
});

test("all that is measured is drawn evenly, with the loss between laminar and turbulent; drinkers against their like are not", () => {
  const asked: [names: number, even: number][] = [];
  const { sampler, drinkers } = sampledOf(document)!;
  const { inputs } = sampler({
    seed: 1,
    draws: (names, seed, even) => {
      asked.push([names.length, even ?? 0]);
      return evenDraws(names, seed, even);
    },
  });
  expect(inputs.length).toBeGreaterThan(3);
  expect(asked).toEqual([[1 + inputs.length + drinkers.length, 1 + inputs.length]]);
});

test("nothing that is certain moves, however far the rest was off before", () => {
  const certain = yard({
    runs: [{ length: "3 m", fall: "0 cm", drinkers: { kind: "plain", count: 2 } }],
    more: { doubts: { heights: "0 cm", level: "0 cm" } },
  });
  const { line } = builtFrom(certain);
  const reading = checkDocument(certain);
  if (!reading.ok) throw new Error(JSON.stringify(reading.problems));
  const inputs = listInputs(line, doubtsOf(reading.plan, line), undefined);
  const off = { inputs: new Float64Array(inputs.length).fill(2), own: new Float64Array(2) };
  const varied = varyLine(line, inputs, off, undefined).line;
  expect([...varied.points.height]).toEqual([...line.points.height]);
  expect([...varied.drinkers.height]).toEqual([...line.drinkers.height]);
  expect(varied.sources).toEqual(line.sources);
});
