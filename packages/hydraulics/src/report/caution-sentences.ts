import type { Caution } from "../judge/check-result.js";
import { type UnitSystem, writeQuantity } from "../units/quantity.js";
import { writeFlow, writeMass } from "./words.js";

/** What ends every caution of building, plumbing or health. */
const DECIDES = "Local codes and licensed practice decide.";

/**
 * A caution as sentences, with its numbers and who decides.
 *
 * @example writeCaution({ code: "lookAtTheBirds" }, "metric")   // "Look at the birds every day: no computed figure replaces that."
 */
export function writeCaution(caution: Caution, system: UnitSystem): string {
  const length = (metres: number) => writeQuantity(metres, "length", system);
  switch (caution.code) {
    case "weightOnStand":
      return `Full, ${caution.source} weighs ${writeMass(caution.mass, system)} and stands ${length(caution.height)} up. Nobody and no bird stays under or beside an unproven stand; an empty vessel blows over, so tie it. ${DECIDES}`;
    case "foodGrade":
      return `${caution.source}: use only a food-grade vessel whose past contents are known, and lead-free fittings. Roof water is not for people.`;
    case "backflow":
      return `If ${caution.source} is filled from a hose or a drinking supply, keep an air gap or a vacuum breaker, and never leave the hose under water. ${DECIDES}`;
    case "sealedVessel":
      return `${caution.source} is sealed: as water leaves, the air above it thins until nothing flows. Give it a vent with a fine screen.`;
    case "ventTooSmall":
      return `The vent of ${caution.source} (${length(caution.diameter)}) holds back the busiest draw; ${length(caution.needed)} costs no more than a hundredth of the head. A screen needs more.`;
    case "feedFallsBehind":
      return `The float valve of ${caution.source} lets in ${writeFlow(caution.feedFlow, system)} at most, and the birds draw ${writeFlow(caution.draw, system)} at the busiest: the tank falls meanwhile.`;
    case "openWater":
      return `${caution.group} is open water: chicks and quail drown in ${system === "us" ? "an inch or two" : "a few centimetres"}. Use it for grown birds, or make it too shallow to drown in.`;
    case "criticalZone":
      return `${caution.run} runs between laminar and turbulent at the busiest (Reynolds number ${Math.round(caution.reynolds)}): its loss there is uncertain by a factor of two, and is counted so.`;
    case "outsideHazenWilliams":
      return `${caution.runs === 1 ? "One run is" : `${caution.runs} runs are`} outside the published range of the Hazen-Williams formula, as small lines nearly always are; every verdict is taken with Darcy-Weisbach too.`;
    case "lookAtTheBirds":
      return "Look at the birds every day: no computed figure replaces that.";
  }
}
