import { LIMITS } from "../../../packages/hydraulics/src/document/limits.js";
import type { Problem, ProblemCode } from "../../../packages/hydraulics/src/document/problem.js";
import { readPlan } from "../../../packages/hydraulics/src/document/read-plan.js";
import { buildLine } from "../../../packages/hydraulics/src/model/build-line.js";

/** The shortest plan, with keys added or exchanged. */
export const planWith = (more: Record<string, unknown>) => ({
  headfall: 1,
  sources: [{ vessel: "drum-55gal-plastic" }],
  runs: [{ length: "3 m" }],
  ...more,
});

/** The problems of a document, given as data or as text, from reading or from building it. */
export function problemsOf(document: unknown): readonly Problem[] {
  const reading = readPlan(typeof document === "string" ? document : JSON.stringify(document, null, 1));
  if (!reading.ok) return reading.problems;
  const built = buildLine(reading.plan);
  return built.ok ? [] : built.problems;
}

const runWith = (more: Record<string, unknown>) => planWith({ runs: [{ length: "3 m", ...more }] });

/** A document for each code, and the whole sentence it must give. */
export const PROBLEM_CASES: Readonly<Record<ProblemCode, readonly [document: unknown, sentence: string]>> = {
  tooLarge: [
    " ".repeat(LIMITS.textLength + 1),
    "the plan: found 8000001 characters. A plan has at most 8000000 characters. Write regular lines as one entry with a count.",
  ],
  notText: [undefined, "the plan: found nothing. A plan file is text. Pass the text of the file."],
  notJson: [
    '{"headfall": 1,\n "sources" []}',
    'the plan (line 2): found "[]}". A plan is JSON text (colon expected). Look for a missing comma, quote or bracket just before it.',
  ],
  tooDeep: [
    `${"[".repeat(41)}${"]".repeat(41)}`,
    "the plan: found brackets nested more than 40 deep. A plan nests at most 40 deep. Check that this is a plan file.",
  ],
  keyTwice: [
    '{"headfall": 1,\n"headfall": 1}',
    'headfall (line 2): found "headfall" a second time. Each key stands once. Remove one of the two.',
  ],
  notAPlan: [
    "[]",
    'the plan (line 1): found a list of 0. A plan is one JSON object that begins {"headfall": 1, ...}. Check that this is a plan file.',
  ],
  versionUnknown: [
    '{"headfall": "one"}',
    'headfall (line 1): found "one". A plan says which version of the format it is in: a whole number up to 1. Add "headfall": 1 as its first key.',
  ],
  versionNewer: [
    '{"headfall": 2}',
    "headfall (line 1): found 2. This program reads versions up to 1. The file is unharmed. Open it with a newer Headfall.",
  ],
  wrongType: [
    planWith({ runs: [{ length: 3 }] }),
    'runs[0].length (line 10): found 3. A quantity is text with its unit. Write for instance "3 cm", with the unit you mean.',
  ],
  missing: [
    planWith({ runs: [{ fall: "3 cm" }] }),
    "runs[0].length (line 9): found nothing. Here stands text in quotes. Add it.",
  ],
  unknownKey: [
    planWith({ colour: "red" }),
    'colour (line 13): found the key "colour". The plan format has no such key here. Check the spelling, or remove it.',
  ],
  unreadableQuantity: [
    runWith({ length: "12 furlongs" }),
    'runs[0].length (line 10): found "12 furlongs". A length is a number with its unit: m, cm, mm, km, ft, in or yd. Write for instance "3.6 m" or "2 ft 6 in".',
  ],
  outOfRange: [
    runWith({ fall: "3 km" }),
    'runs[0].fall (line 11): found "3 km". Here a length is from -200 m to 200 m. Check the unit and the figure.',
  ],
  tooMany: [
    planWith({
      sources: Array.from({ length: 201 }, (_, i) => ({ id: `s${i}`, vessel: "drum-55gal-plastic" })),
    }),
    "sources (line 3): found a list of 201. This list has at most 200 entries. Write regular lines as one entry with a count.",
  ],
  tooFew: [
    planWith({ sources: [] }),
    "sources (line 3): found a list of 0. This list has at least 1 entry. Add what is missing.",
  ],
  tooLong: [
    planWith({ name: "x".repeat(81) }),
    "name (line 13): found 81 characters. Text here has at most 80 characters. Shorten it.",
  ],
  unprintable: [
    planWith({ name: "hen\u001b[2Jhouse" }),
    "name (line 13): found the sign U+001B. A name is one line of signs that can be printed. Take it out, or type it again.",
  ],
  notAChoice: [
    planWith({ friction: "chezy" }),
    'friction (line 13): found "chezy". Allowed: "hazen-williams", "darcy-weisbach". Write one of these.',
  ],
  unknownName: [
    runWith({ pipe: "pvc-sch40-1/22" }),
    'runs[0].pipe (line 11): found "pvc-sch40-1/22". No pipe of that name is in the tables. Did you mean "pvc-sch40-1/2" or "pvc-sch40-3/4" or "pvc-sch40-1" or "pvc-sch40-1-1/2"?',
  ],
  nameTwice: [
    planWith({ points: [{ id: "barrel" }] }),
    'points[0].id (line 15): found "barrel". Each name is given once. Choose another.',
  ],
  unknownPoint: [
    runWith({ from: "barel" }),
    'runs[0].from (line 11): found "barel". A source, a point, or the end of some run. Known here: "barrel", "run 1 end".',
  ],
  twoWays: [
    runWith({ fall: "10 cm", survey: [{ along: "3 m", fall: "12 cm" }] }),
    'runs[0].survey[0].fall (line 15): found "12 cm". At its end the run falls "10 cm", as its own fall says. Correct one of the two, or leave one out.',
  ],
  doesNotFit: [
    runWith({ drinkers: { kind: "nipple-side-action", count: 11, every: "30 cm" } }),
    'runs[0].drinkers.every (line 14): found "30 cm". 11 drinkers would reach past the end of the run. Lengthen the run, or put them closer together.',
  ],
  heightsDisagree: [
    planWith({
      points: [{ id: "wall", ground: "-20 cm" }],
      runs: [{ length: "3 m", to: "wall", fall: "25 cm" }],
    }),
    'runs[0].fall: found "25 cm". By the other heights of "barrel" and "wall" it falls 20.0 cm. Correct one of them, or leave the fall out.',
  ],
  notConnected: [
    planWith({ points: [{ id: "far" }], runs: [{ length: "3 m" }, { from: "far", length: "1 m" }] }),
    'runs[1].from: found "run 2". Every run hangs on a source, by itself or through other runs. Say where it starts, or connect it.',
  ],
  regulatorInRing: [
    planWith({
      runs: [
        { length: "3 m", to: "a" },
        { length: "2 m", to: "b", regulator: { sets: "20 cm" } },
        { from: "a", to: "b", length: "4 m" },
      ],
    }),
    'runs[1].regulator: found a regulator in the ring through "run 2". Water reaches a regulator\'s outlet only through the regulator. Put it before the ring, or take one run of the ring out.',
  ],
};
