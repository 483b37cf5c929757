import type { FillingFinding } from "../judge/check-result.js";
import type { UnitSystem } from "../units/quantity.js";
import { MOMENT_WORDS, writeFlow, writeHead } from "./words.js";

/**
 * A finding on filling, air or suction as a sentence.
 *
 * @example writeFinding({ code: "endHoldsAir", point: "line end", pointIndex: 1, rise: 0.1 }, "metric")   // "line end is a high dead end, 10 cm above the sag before it: ..."
 */
export function writeFinding(finding: FillingFinding, system: UnitSystem): string {
  const head = (h: number) => writeHead(h, system);
  const flow = (q: number) => writeFlow(q, system);
  switch (finding.code) {
    case "humpTrapsAir":
      return `Filled from empty, the pipe keeps air beyond ${finding.point}, a column ${head(finding.airHead)} high that takes as much from the head behind it${finding.locks ? " and stops the line" : ""}. Flow does not clear it: that takes ${flow(finding.flowToClear)} and the line never draws more than ${flow(finding.flowThere)}. Put a bleed or riser vent there.`;
    case "humpAboveWater":
      return `At ${finding.point} the pipe stands ${head(finding.above)} above the lowest usable water: the line will not start by itself. Lower the pipe there, or raise the source.`;
    case "endHoldsAir":
      return `${finding.point} is a high dead end, ${head(finding.rise)} above the sag before it: air gathers there. Put a bleed at that end and open it when filling.`;
    case "suction":
      return `At ${finding.point} the running line is under suction (${head(-finding.head)} below the air's pressure, ${MOMENT_WORDS[finding.moment]}): a leak there draws air in${finding.breaks ? ", and the column of water breaks" : ""}.`;
  }
}
