import type { BuildSheet } from "../../judge/build/build-sheet.js";
import { writeDay } from "../../units/day.js";
import type { UnitSystem } from "../../units/quantity.js";
import { writeJug, writePart, writeStep } from "./build-words.js";
import { writeCutting } from "./cut-words.js";
import { writeBuildCautions, writeLoadLines } from "./load-words.js";

const BUILD_FORMAT = "headfall build";

/**
 * How to build a plan, as a plain document, SI throughout: m, m³, kg, Pa, rad, m/s, s.
 *
 * @example writeBuildDocument("a bucket", sheet, "metric").format   // "headfall build"
 */
export function writeBuildDocument(name: string, sheet: BuildSheet, system: UnitSystem) {
  const { day, coop } = sheet;
  return {
    format: BUILD_FORMAT,
    version: 1,
    plan: { name },
    ...sheet,
    day: day === undefined ? undefined : writeDay(day),
    parts: sheet.parts.map((part) => ({ ...part, words: writePart(part) })),
    pipes: sheet.pipes.map((pipe) => ({ ...pipe, sentences: writeCutting(pipe, system) })),
    steps: sheet.steps.map((step) => ({ ...step, sentence: writeStep(step, system) })),
    jugs: sheet.jugs.map((jug) => ({ ...jug, sentence: writeJug(jug, system) })),
    loads: sheet.loads.map((load) => ({ ...load, sentences: writeLoadLines(load, system) })),
    coop: {
      ...coop,
      marks: coop.marks.map((mark) => ({
        ...mark,
        day: mark.day === undefined ? undefined : writeDay(mark.day),
      })),
    },
    cautions: writeBuildCautions(sheet, system),
  };
}
