import type { Line } from "../model/line.js";
import type { Caution, RunReport, SourceReport } from "./check-result.js";

/** A source that stands at least this high is one that can fall [m]; common practice, no source. */
const WORTH_A_WARNING = 0.15;

/** The cautions that apply to this line. None is ever hidden; local codes and licensed practice decide. */
export function gatherCautions(
  line: Line,
  runs: readonly RunReport[],
  sources: readonly SourceReport[],
  openWater: readonly string[],
): Caution[] {
  const cautions: Caution[] = [];
  line.sources.forEach((source, i) => {
    const report = sources[i];
    if (source.stand >= WORTH_A_WARNING)
      cautions.push({
        code: "weightOnStand",
        source: source.id,
        mass: report.massFull,
        height: source.stand,
      });
    if (source.vent.kind === "sealed") cautions.push({ code: "sealedVessel", source: source.id });
    const { ventDiameter, ventDiameterNeeded, feedFlow } = report;
    if (ventDiameter !== undefined && ventDiameterNeeded !== undefined && ventDiameter < ventDiameterNeeded) {
      cautions.push({
        code: "ventTooSmall",
        source: source.id,
        diameter: ventDiameter,
        needed: ventDiameterNeeded,
      });
    }
    if (report.feedKeepsUp === false && feedFlow !== undefined) {
      cautions.push({ code: "feedFallsBehind", source: source.id, feedFlow, draw: report.drawBusiest });
    }
    cautions.push({ code: "foodGrade", source: source.id }, { code: "backflow", source: source.id });
  });
  for (const group of openWater) cautions.push({ code: "openWater", group });
  for (const run of runs) {
    if (run.busiest.regime === "critical")
      cautions.push({ code: "criticalZone", run: run.run, reynolds: run.busiest.reynolds });
  }
  const outside = runs.filter(
    (run) => run.busiest.regime !== "still" && !run.busiest.hazenWilliamsInRange,
  ).length;
  if (outside > 0) cautions.push({ code: "outsideHazenWilliams", runs: outside });
  cautions.push({ code: "lookAtTheBirds" });
  return cautions;
}
