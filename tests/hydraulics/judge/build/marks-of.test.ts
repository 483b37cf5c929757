import { expect, test } from "vitest";
import { marksOf } from "../../../../packages/hydraulics/src/judge/build/marks-of.js";
import { buildLine } from "../../../../packages/hydraulics/src/model/build-line.js";
import { planOf } from "../trouble/ask.js";

function marks(more: Record<string, unknown> = {}) {
  const built = buildLine(
    planOf({
      headfall: 1,
      sources: [
        { id: "barrel", vessel: "drum-55gal-plastic", ground: "20 cm", stand: "60 cm", outlet: "5 cm" },
      ],
      points: [
        { id: "tee", ground: "10 cm", above: "30 cm" },
        { id: "end", ground: "-10 cm", above: "40 cm" },
      ],
      runs: [
        { id: "hose", to: "tee", length: "2 m" },
        {
          ...{ id: "lane", from: "tee", to: "end", length: "4 m" },
          survey: [{ along: "1 m", fall: "-10 cm" }],
          drinkers: { id: "nipples", kind: "nipple-side-action", count: 2, first: "2 m", every: "1 m" },
        },
        ...((more["runs"] as unknown[]) ?? []),
      ],
    }),
  );
  if (!built.ok) throw new Error(JSON.stringify(built.problems));
  return marksOf(built.line);
}
const told = (all: ReturnType<typeof marksOf>, kind: string) =>
  all
    .filter((mark) => mark.kind === kind)
    .map(({ name, run, along, height, aboveGround }) => [name, run, along, height, aboveGround]);

test("marksOf tells the stand's top and the outlet over the ground at the source", () => {
  const all = marks();
  expect(told(all, "standTop")).toEqual([["barrel", undefined, undefined, 0.8, 0.6].map(close)]);
  expect(told(all, "outlet")).toEqual([["barrel", undefined, undefined, 0.85, 0.65].map(close)]);
});

test("marksOf tells each end and surveyed place once, in the run that comes to it first, and every drinker", () => {
  const all = marks();
  expect(told(all, "end")).toEqual([
    ["tee", "hose", 2, 0.4, 0.3].map(close),
    ["end", "lane", 4, 0.3, 0.4].map(close),
  ]);
  expect(told(all, "survey")).toHaveLength(1);
  expect(all.find(({ kind }) => kind === "survey")).toMatchObject({ run: "lane", along: 1 });
  const drinkers = all.filter(({ kind }) => kind === "drinker");
  expect(drinkers.map(({ along }) => along)).toEqual([2, 3]);
  expect(drinkers.map(({ run }) => run)).toEqual(["lane", "lane"]);
  // Between 50 cm a metre along and 30 cm at its end: 6.7 cm lower each metre.
  expect(drinkers.map(({ height }) => height)).toEqual([
    expect.closeTo(0.5 - 0.2 / 3, 9),
    expect.closeTo(0.5 - 0.4 / 3, 9),
  ]);
});

/** A figure to rounding. */
function close(value: string | number | undefined) {
  return typeof value === "number" ? expect.closeTo(value, 9) : value;
}
