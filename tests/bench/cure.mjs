/** What the search for a cure costs: yards of twelve runs, six sizes each, twenty heights of the stand. */

import { readPlan } from "../../packages/hydraulics/dist/index.js";
import { compareBy } from "../../packages/hydraulics/dist/search/cost.js";
import { buildCureLines } from "../../packages/hydraulics/dist/search/cure-lines.js";
import { buildCureSpace } from "../../packages/hydraulics/dist/search/cure-space.js";
import { buildRequirement } from "../../packages/hydraulics/dist/search/requirement.js";
import { solveSpace } from "../../packages/hydraulics/dist/search/solve-space.js";

/** Sizes and prices a metre; all figures of these yards are invented. */
const SHELF = [
  ["pvc-sch40-1/2", 0.9],
  ["pvc-sch40-3/4", 1.2],
  ["pvc-sch40-1", 1.8],
  ["pvc-sch40-1-1/4", 2.6],
  ["pvc-sch40-1-1/2", 3.3],
  ["pvc-sch40-2", 4.9],
];
const HEIGHTS = { standMost: 0.95, standStep: 0.05 };

/** Where each of twelve runs starts, and whether drinkers hang on it. */
const SHAPES = {
  "one line": (i) => ({ from: i - 1, drinks: i % 2 === 1 }),
  "a main with lanes to both sides": (i) => ({
    from: i % 3 === 0 ? i - 3 : i - (i % 3),
    drinks: i % 3 !== 0,
  }),
  "a tree": (i) => ({ from: Math.floor((i - 1) / 2), drinks: i > 4 }),
};

function yard(shape, birds) {
  const points = [];
  const runs = Array.from({ length: 12 }, (_, i) => {
    const { from, drinks } = SHAPES[shape](i);
    points.push({ id: `end ${i}`, ground: "0 cm", above: "40 cm" });
    const drinkers = { kind: "nipple-side-action", count: 8 };
    return {
      id: `run ${i}`,
      from: i === 0 ? "barrel" : `end ${from}`,
      to: `end ${i}`,
      length: `${5 + (i % 4)} m`,
      ...(drinks ? { drinkers } : {}),
    };
  });
  const sources = [
    { id: "barrel", vessel: "drum-55gal-plastic", stand: "10 cm", level: { full: "75 cm", lowest: "7 cm" } },
  ];
  const pens = birds === 0 ? {} : { pens: [{ birds: { kind: "hen", count: birds } }] };
  const shelf = SHELF.map(([pipe, price]) => ({ pipe, price }));
  const reading = readPlan(
    JSON.stringify({
      headfall: 1,
      water: "8 degC",
      sources,
      points,
      runs,
      shelf,
      prices: { stand: 4 },
      ...pens,
    }),
  );
  if (!reading.ok) throw new Error(JSON.stringify(reading.problems));
  return reading.plan;
}

function search(plan, by) {
  const space = buildCureSpace(plan, HEIGHTS, { pipes: true, stands: true });
  const { lines } = buildCureLines(space);
  const { requirement } = buildRequirement(plan, lines.present, {});
  const effort = { judged: 0, most: 1600, isStopped: () => false, progress: () => undefined };
  return solveSpace(lines, requirement, { compare: compareBy(by), effort });
}

/** @param bench  where rows and measured bars go (book.mjs) */
export function measureCure({ row, measured }) {
  const rows = [];
  for (const shape of Object.keys(SHAPES)) {
    for (const birds of [0, 100]) {
      const plan = yard(shape, birds);
      for (const by of ["money", "stand", "parts"]) {
        const begin = process.cpuUsage();
        const times = Array.from({ length: 3 }, () => {
          const start = performance.now();
          search(plan, by);
          return performance.now() - start;
        }).sort((a, b) => a - b);
        const { user, system } = process.cpuUsage(begin);
        const { plans, judged, parts, proven, found } = search(plan, by);
        const processor = (user + system) / 3000;
        rows.push({ processor, proven });
        row(`${shape}${birds > 0 ? `, ${birds} hens` : ""}, least ${by}`, {
          ms: times[1],
          least: times[0],
          "processor [ms]": processor,
          plans,
          judged,
          parts,
          proven,
          money: found?.cost.money ?? "-",
          "stand up [m]": found?.cost.stand ?? "-",
        });
      }
    }
  }
  const proven = rows.filter((each) => each.proven).length;
  measured("search", Math.max(...rows.map(({ processor }) => processor)), {
    proven: `${proven} of ${rows.length}`,
  });
}
