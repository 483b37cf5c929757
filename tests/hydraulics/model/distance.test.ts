import { expect, test } from "vitest";
import { distanceFromSources } from "../../../packages/hydraulics/src/model/distance.js";
import { lineOf } from "./built.js";

const distances = (line: ReturnType<typeof lineOf>) => {
  const distance = distanceFromSources(line);
  return Object.fromEntries(line.points.id.map((id, p) => [id, distance[p]]));
};

test("distanceFromSources adds up lengths along the runs, over drinkers and surveyed places", () => {
  const line = lineOf([
    {
      length: "3 m",
      survey: [{ along: "1 m", fall: "0 cm" }],
      drinkers: { kind: "cup-float", first: "2 m" },
    },
    { length: "4 m" },
  ]);
  expect(distances(line)).toEqual({
    barrel: 0,
    "run 1 at 1.00 m": 1,
    "run 1 at 2.00 m": 2,
    "run 1 end": 3,
    "run 2 end": 7,
  });
});

test("distanceFromSources takes the short way round a ring", () => {
  const line = lineOf([
    { length: "1 m", to: "a" },
    { length: "9 m", to: "b" },
    { length: "2 m", from: "a", to: "b" },
  ]);
  expect(distances(line)["b"]).toBe(3);
});

test("distanceFromSources is infinite behind a shut tap", () => {
  const line = lineOf([{ length: "1 m" }, { length: "2 m", tap: "shut" }]);
  expect(distances(line)["run 2 end"]).toBe(Number.POSITIVE_INFINITY);
});

test("distanceFromSources(two sources) is that of the nearer", () => {
  const line = lineOf(
    [
      { length: "5 m", to: "a" },
      { from: "second", to: "a", length: "2 m" },
    ],
    {
      sources: [{ vessel: "drum-55gal-plastic" }, { id: "second", vessel: "drum-55gal-plastic" }],
    },
  );
  expect(distances(line)["a"]).toBe(2);
});
