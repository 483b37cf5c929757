/** Every bar of speed and scale: what is measured, how much it may be, and how it stands. */
import { writeCells, writeFigure } from "./book.mjs";

const LAW = { hazenWilliams: "Hazen-Williams", darcyWeisbach: "Darcy-Weisbach" };
const FRICTIONS = Object.keys(LAW);
const SIZES = [60, 1000, 10_000, 100_000];
const written = (count) => count.toLocaleString("en");

const atMost = (id, what, most, unit) => ({ id, what, most, unit });
const atLeast = (id, what, least, unit) => ({ id, what, least, unit });
const ofBoth = (make) => FRICTIONS.flatMap((friction) => make(friction, LAW[friction]));

/** `unit` "times" is a ratio of two figures taken in one run; `isOurs` where no bar was set beforehand. */
export const BARS = [
  ...ofBoth((friction, law) =>
    SIZES.map((count) =>
      atMost(
        `laws ${friction} ${count}`,
        `one solve, ${law}, ${written(count)} drinkers, against its bare laws`,
        friction === "darcyWeisbach" ? 1.5 : 2,
        "times",
      ),
    ),
  ),
  ...ofBoth((friction, law) => ({
    ...atMost(`growth ${friction}`, `cost of a solve as a power of the drinkers, ${law}`, 1.1, ""),
    isOurs: true,
  })),
  ...ofBoth((friction, law) =>
    SIZES.filter((count) => count !== 10_000).map((count) =>
      atLeast(
        `scipy ${friction} ${count}`,
        `against a sparse Newton in scipy, ${law}, ${written(count)} drinkers`,
        count === 100_000 ? 3 : 10,
        "times",
      ),
    ),
  ),
  ...ofBoth((friction, law) =>
    atMost(`rings ${friction}`, `10,000 points with 500 rings against the tree, ${law}`, 5, "times"),
  ),
  atMost("check", "60 drinkers: four moments, both laws, verdicts, times four", 1000 / 60, "ms"),
  atMost("samples", "the same with 200 samples in the page's worker, times four", 250, "ms"),
  atMost("day", "a day of 85 birds, the line solved along", 100, "ms"),
  atLeast("days", "1,000 such days, two workers against one", 1.5, "times"),
  atMost("search", "12 runs, 6 sizes, 20 heights of the stand, proven: the slowest of all asked", 1000, "ms"),
  atMost("first script", "script before the first verdict, gzip", 100, "kB"),
  atMost("first verdict", "first verdict painted, a quarter of the speed", 1500, "ms"),
  atMost("long task", "longest task while dragging, a quarter of the speed", 50, "ms"),
  // A number that a function hands back may take as much; an object or an array takes more.
  { ...atMost("allocated", "allocated by one more step of the solver", 16, "bytes"), isOurs: true },
  { ...atMost("leak of solves", "heap grown by 100,000 solves", 100, "kB"), isOurs: true },
  { ...atMost("leak of drags", "kept by the page of 1,000 more steps of dragging", 20, "kB"), isOurs: true },
];

/** How a bar stands by what was measured of it: value, by how many times it is kept or missed, what stands beside. */
export function standingOf(bar, book) {
  const found = Object.values(book.parts).find(({ bars }) => bars[bar.id] !== undefined)?.bars[bar.id];
  if (found === undefined) return { isMeasured: false };
  const { value, ...more } = found;
  const limit = bar.most ?? bar.least;
  const isMet = bar.most === undefined ? value >= limit : value <= limit;
  const spare = bar.most === undefined ? value / limit : limit / value;
  return { isMeasured: true, value, isMet, by: writeBy(isMet, spare), beside: writeCells(more) };
}

/** "1.4 times under" reads for a most and a least alike: how far on the good side, or on the bad one. */
function writeBy(isMet, spare) {
  if (!Number.isFinite(spare) || spare <= 0) return isMet ? "kept" : "missed";
  return isMet ? `better by ${writeFigure(spare)}` : `worse by ${writeFigure(1 / spare)}`;
}

export const writeLimit = ({ most, least, unit }) =>
  `${most === undefined ? "at least" : "at most"} ${writeFigure(most ?? least)} ${unit}`.trim();

/** Prints every bar, measured or not. */
export function printBars(book) {
  console.log("\nEvery bar: measured, against what it may be, by how many times");
  for (const bar of BARS) {
    const standing = standingOf(bar, book);
    const text = standing.isMeasured
      ? `${standing.isMet ? "met   " : "MISSED"} ${`${writeFigure(standing.value)} ${bar.unit}`.padEnd(12)} ${writeLimit(bar).padEnd(20)} ${standing.by.padEnd(16)} ${standing.beside}`
      : "not measured";
    console.log(`${bar.what.padEnd(76)} ${text}`);
  }
  for (const [name, { day, load }] of Object.entries(book.parts))
    console.log(
      `${name}: ${day}, load of the machine ${load.map((one) => one.toFixed(1)).join(" before, ")} after`,
    );
}
