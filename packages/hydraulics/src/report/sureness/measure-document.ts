import type { Checked } from "../../judge/check-result.js";
import type { Measuring } from "../../judge/sureness/measuring.js";
import type { UnitSystem } from "../../units/quantity.js";
import { writeRemedy, writeWorthwhile } from "./measure-words.js";

/**
 * Which measurements to take again, as a plain document, SI throughout. Described in docs/reference/check-result.md.
 *
 * @example writeMeasureDocument(checked, measuring, "metric").format   // "headfall measure"
 */
export function writeMeasureDocument(checked: Checked, measuring: Measuring, system: UnitSystem) {
  return {
    format: "headfall measure",
    version: 1,
    plan: { name: checked.line.name, digest: checked.madeFrom.planDigest },
    sure: measuring.sure,
    measurements: measuring.measurements.map((worth) => ({
      ...worth,
      sentence: writeWorthwhile(worth, system),
    })),
    close: measuring.close.map((close) => {
      const { index: _, ...told } = close;
      return { ...told, sentence: writeRemedy(close, system) };
    }),
    madeFrom: { ...checked.madeFrom, samplesEach: measuring.samples },
  };
}
