import { describe, expect, test } from "vitest";
import { buildYard, checkDocument, writeProblem } from "../../../packages/hydraulics/src/index.js";

const HENS = { birds: { kind: "hen", count: 3 } };
const plan = (...pens: unknown[]) => ({ headfall: 1, sources: [], runs: [], pens });
const withWaterer = (more: Record<string, unknown>) =>
  plan({ ...HENS, waterers: [{ kind: "fount-1gal", ...more }] });

/** The sentences told of a document, whether it cannot be read or cannot be built. */
function told(document: unknown): string[] {
  const reading = checkDocument(document);
  if (!reading.ok) return reading.problems.map(writeProblem);
  const building = buildYard(reading.plan);
  return building.ok ? [] : building.problems.map(writeProblem);
}

const CASES: readonly (readonly [what: string, document: unknown, sentences: readonly string[]])[] = [
  ["a fount and no line", withWaterer({}), []],
  [
    "neither line nor waterers",
    plan(HENS),
    [
      "sources: found a list of 0. This list has at least 1 entry. Add a source, loose waterers to a pen, or a kit.",
    ],
  ],
  [
    "a kind no table has",
    withWaterer({ kind: "fount-2gal" }),
    [
      'pens[0].waterers[0].kind: found "fount-2gal". No waterer of that name is in the tables. Did you mean "fount-1gal" or "fount-bottom-5gal" or "fount-top-3gal"?',
    ],
  ],
  [
    "one name for two",
    plan(
      { ...HENS, waterers: [{ id: "pan", kind: "pan-40cm" }] },
      {
        ...HENS,
        waterers: [{ id: "pan", kind: "trough-90cm" }],
      },
    ),
    ['pens[1].waterers[0].id: found "pan". Each name is given once. Choose another.'],
  ],
  [
    "a cliff",
    withWaterer({ slope: "70 deg" }),
    [
      'pens[0].waterers[0].slope: found "70 deg". Here a slope is from 0 to 100 % (45 degrees). Check the unit and the figure.',
    ],
  ],
  [
    "a hole that looks up",
    withWaterer({ hole: "up" }),
    ['pens[0].waterers[0].hole: found "up". Allowed: "uphill", "sideways", "downhill". Write one of these.'],
  ],
  [
    "a hole outside its lip",
    withWaterer({ sizes: { hole: "13 cm" } }),
    [
      'pens[0].waterers[0].sizes.hole: found "13 cm". The air hole lies nearer the middle than the lip. Measure it again, or leave it out.',
    ],
  ],
  [
    "a lip inside its jar",
    withWaterer({ sizes: { rim: "17 cm" } }),
    [
      'pens[0].waterers[0].sizes.rim: found "17 cm". The lip lies outside the jar. Measure it again, or leave it out.',
    ],
  ],
  [
    "a hole in a pan",
    plan({ ...HENS, waterers: [{ kind: "pan-40cm", sizes: { hole: "3 cm" } }] }),
    [
      'pens[0].waterers[0].sizes.hole: found "3 cm". Open pan, 40 cm has no such size. Measure it again, or leave it out.',
    ],
  ],
];

describe("what is wrong with loose waterers is told: where, what, what may be, how to mend it", () => {
  test.each(CASES)("%s", (_, document, sentences) => {
    expect(told(document)).toEqual(sentences);
  });
});
