import type { PublishedCase } from "./case-file.js";

/** What a reader asks about, and the questions to the library that belong to it. */
export const SUBJECTS: Readonly<Record<string, readonly string[]>> = {
  "Water: density, viscosity, vapour, surface": ["water", "waterAtKelvin"],
  "Friction in pipes and hoses": [
    ...["frictionLaminar", "frictionDarcyWeisbach", "frictionHazenWilliams", "flowHazenWilliams"],
    ...["factorChurchill", "factorColebrook", "factorSwameeJain", "inclinedLaminar"],
  ],
  "Fittings, outlets, siphons, draining": [
    ...["twoK", "fittingLosses", "coefficientFromKv", "coefficientFromLength", "lossPerVelocity"],
    ...["orifice", "velocityShare", "dischargeCoefficient", "fillThroughTube", "drainUpright", "drainPrism"],
  ],
  "Lines and networks": [
    ...["network", "lawAtHead", "fallingLine", "lineTurnover"],
    ...["multiOutlet", "multiOutletHalf", "multiOutletExact"],
  ],
  "What birds drink, by age and heat": ["flockIntake", "intakeSince", "rowIntake", "volumeEach", "heat"],
  "Drinkers, their flow, the hours of the day": ["allowance", "flowNeed", "heatTrial", "dayShares"],
  "Birds at the drinkers at once": ["crowd", "loss", "delay"],
  "Rain, roofs and storage": ["roofYield", "rainStore", "monthlyStore", "neverFails", "drySpell"],
  "Frost, sun and evaporation": [
    "timeToFreezing",
    "iceGrowth",
    "filmInWind",
    "sunnyHose",
    "panWeek",
    "openLoss",
  ],
  "Drips and air gaps": ["drips", "airGap"],
  "Vessels, founts and pans, level or tilted": [
    ...["vesselShare", "capacityUpright", "tiltedPan", "tiltedTrough", "fountTilt", "expelledByWarming"],
  ],
  "Weight, soil and wind": ["plan", "footing", "bearing", "overturning"],
  "Least cost and cutting": ["leastCost", "cutting"],
  Units: ["typedHead", "typedVolume", "typedFlow", "columnAtPressure"],
};

/** The subject a case belongs to. */
export function subjectOf({ id, question }: PublishedCase): string {
  const found = Object.entries(SUBJECTS).find(([, questions]) => questions.includes(question));
  if (found === undefined) throw new Error(`${id}: ${question} belongs to no subject`);
  return found[0];
}
