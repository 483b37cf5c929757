import type { FlockReport } from "../../judge/birds/flock-report.js";
import type { UnitSystem } from "../../units/quantity.js";
import { dayEntry } from "../day-entry.js";
import { writeBirdFinding, writeGroupCrowd, writePen } from "./bird-sentences.js";

/** The birds of a check or a week for a document: SI, with sentences. */
export function flockEntry(
  { pens, groups, findings, intakeSize, intakeExpect }: Omit<FlockReport, "day" | "region" | "needed">,
  system: UnitSystem,
) {
  return {
    intakeSize,
    intakeExpect,
    pens: pens.map(({ index: _, ...pen }) => ({
      ...pen,
      batches: pen.batches.map(({ index: __, ...batch }) => batch),
      sentence: writePen({ ...pen, index: 0 }, system),
    })),
    groups: groups.map((group) => {
      const { index: _, pen, ...told } = group;
      const reachedBy = pen === undefined ? undefined : pens.find(({ index }) => index === pen)?.pen;
      return {
        ...told,
        ...(reachedBy === undefined ? {} : { pen: reachedBy }),
        sentence: writeGroupCrowd(group, system),
      };
    }),
    findings: findings.map((finding) => ({ ...finding, sentence: writeBirdFinding(finding, system) })),
  };
}

/** With the day the ages were counted on. */
export const flockOfCheck = ({ day, ...flock }: FlockReport, system: UnitSystem) => ({
  ...dayEntry(day),
  ...flockEntry(flock, system),
});
