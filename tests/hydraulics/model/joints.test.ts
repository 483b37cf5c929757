import { expect, test } from "vitest";
import { builtFrom, faultsOf, heightOf, lineOf } from "./built.js";

// The outlet of the drum is 5 cm above its inside bottom, and the drum stands on the datum.
const OUTLET = 0.05;
const drum = { vessel: "drum-55gal-plastic" };

test("buildLine takes heights from points: ground and height above it", () => {
  const line = lineOf([{ length: "3 m", to: "wall" }], {
    points: [{ id: "wall", ground: "-20 cm", above: "10 cm" }],
  });
  expect(heightOf(line, "barrel")).toBeCloseTo(OUTLET, 12);
  expect(heightOf(line, "wall")).toBeCloseTo(-0.1, 12);
});

test("buildLine takes heights from falls, run after run, down and up", () => {
  const line = lineOf([
    { length: "3 m", fall: "30 cm" },
    { length: "2 m", fall: "-10 cm" },
  ]);
  expect(heightOf(line, "run 1 end")).toBeCloseTo(-0.3, 12);
  expect(heightOf(line, "run 2 end")).toBeCloseTo(-0.2, 12);
});

test("falls from a source are counted from the ground it stands on: a higher stand leaves the line where it is", () => {
  const endAt = (stand: string) => {
    const { line } = builtFrom({
      headfall: 1,
      sources: [{ ...drum, ground: "50 cm", stand }],
      runs: [{ length: "3 m", fall: "30 cm", survey: [{ along: "1 m", fall: "10 cm" }] }],
    });
    return [heightOf(line, "barrel"), heightOf(line, "run 1 at 1.00 m"), heightOf(line, "run 1 end")];
  };
  expect(endAt("0 cm").map((h) => Number(h.toFixed(9)))).toEqual([0.55, 0.4, 0.2]);
  expect(endAt("80 cm").map((h) => Number(h.toFixed(9)))).toEqual([1.35, 0.4, 0.2]);
});

test("a first run of which no fall is told comes down to the ground, if it is long enough", () => {
  const endOf = (length: string) =>
    heightOf(
      builtFrom({ headfall: 1, sources: [{ ...drum, stand: "1 m" }], runs: [{ length }] }).line,
      "run 1 end",
    );
  expect(endOf("3 m")).toBeCloseTo(0, 12);
  expect(endOf("50 cm")).toBeCloseTo(1.05, 12);
});

test("buildLine follows a fall up the line: a point below tells the height above it", () => {
  const line = lineOf(
    [
      { length: "3 m", to: "a" },
      { length: "2 m", to: "b", fall: "40 cm" },
    ],
    { points: [{ id: "b", ground: "-1 m" }] },
  );
  expect(heightOf(line, "a")).toBeCloseTo(-0.6, 12);
});

test("buildLine takes the fall of a run from a survey that reaches its end", () => {
  const line = lineOf([
    {
      length: "4 m",
      survey: [
        { along: "2 m", fall: "-5 cm" },
        { along: "4 m", fall: "25 cm" },
      ],
    },
  ]);
  expect(heightOf(line, "run 1 at 2.00 m")).toBeCloseTo(0.05, 12);
  expect(heightOf(line, "run 1 end")).toBeCloseTo(-0.25, 12);
});

test("buildLine lays a run level only where nothing says otherwise, and lists that default", () => {
  const built = builtFrom({
    headfall: 1,
    sources: [drum],
    points: [{ id: "wall", ground: "-20 cm" }],
    runs: [{ length: "3 m", to: "wall" }, { length: "2 m" }],
  });
  expect(heightOf(built.line, "run 2 end")).toBeCloseTo(-0.2, 12);
  expect(built.defaults.filter(({ path }) => path.endsWith(".fall")).map(({ path }) => path)).toEqual([
    "runs[1].fall",
  ]);
});

test("buildLine refuses falls that contradict heights, and says by how much", () => {
  const document = {
    headfall: 1,
    sources: [drum],
    runs: [
      { length: "3 m", to: "a", fall: "10 cm" },
      { length: "3 m", from: "barrel", to: "b", fall: "10 cm" },
      { length: "1 m", from: "a", to: "b", fall: "4 cm" },
    ],
  };
  expect(faultsOf(document)).toEqual(["runs[2].fall: heightsDisagree"]);
});

test("a ring of which no run has a fall lies level", () => {
  const line = lineOf([
    { length: "3 m", to: "a" },
    { length: "1 m", to: "b" },
    { length: "1 m", from: "a", to: "b" },
  ]);
  expect(heightOf(line, "b")).toBeCloseTo(0, 12);
});

test("a ring with all falls but one is closed by what is left", () => {
  const line = lineOf([
    { length: "3 m", to: "a", fall: "10 cm" },
    { length: "1 m", to: "b", fall: "5 cm" },
    { length: "1 m", from: "a", to: "b" },
  ]);
  expect(heightOf(line, "b")).toBeCloseTo(-0.15, 12);
});

test("a ring that leaves open which of two runs falls is refused, in whatever order its runs stand", () => {
  const runs = [
    { id: "1", from: "barrel", length: "3 m", to: "a" },
    { id: "2", from: "a", length: "1 m", to: "b", fall: "20 cm" },
    { id: "3", from: "b", length: "1 m", to: "barrel" },
  ];
  for (const ordered of [runs, [...runs].reverse()]) {
    const faults = faultsOf({ headfall: 1, sources: [drum], runs: ordered });
    expect(faults.map((fault) => fault.split(": ")[1])).toEqual(["heightsDisagree"]);
  }
});

test("runs that hang on nothing are told, each", () => {
  const document = {
    headfall: 1,
    sources: [drum],
    points: [{ id: "x" }, { id: "y" }],
    runs: [{ length: "1 m" }, { from: "x", to: "y", length: "1 m" }, { length: "2 m" }],
  };
  expect(faultsOf(document)).toEqual(["runs[1].from: notConnected", "runs[2]: notConnected"]);
});

test("a regulator before a ring is allowed, in a ring it is refused", () => {
  const ring = (where: number) => ({
    headfall: 1,
    sources: [drum],
    runs: [
      { length: "3 m", to: "a" },
      { length: "1 m", to: "b" },
      { length: "1 m", from: "a", to: "b" },
    ].map((run, i) => (i === where ? { ...run, regulator: { sets: "20 cm" } } : run)),
  });
  expect(faultsOf(ring(0))).toEqual([]);
  expect(faultsOf(ring(1))).toEqual(["runs[1].regulator: regulatorInRing"]);
  expect(faultsOf(ring(2))).toEqual(["runs[2].regulator: regulatorInRing"]);
});

test("buildLine resolves a line of many runs told from its far end in one pass", () => {
  const count = 20_000;
  const runs = Array.from({ length: count }, (_, k) => {
    const i = count - 1 - k;
    return { from: i === 0 ? "barrel" : `p${i - 1}`, to: `p${i}`, length: "1 m" };
  });
  expect(heightOf(lineOf(runs), `p${count - 1}`)).toBeCloseTo(0, 12);
});

test("a run shorter than its ends are apart in height is refused, with both figures", () => {
  const document = {
    headfall: 1,
    sources: [{ ...drum, stand: "1 m" }],
    runs: [{ length: "50 cm", fall: "0 cm" }],
  };
  expect(faultsOf(document)).toEqual(["runs[0].length: doesNotFit"]);
  expect(faultsOf({ ...document, runs: [{ length: "1.04 m", fall: "0 cm" }] })).toEqual([]);
});
