import { writeDrinkerTable, writeFittingTable } from "./drinker-table.js";
import { writeElbowTable } from "./elbow-table.js";
import { writeFrictionRatio } from "./friction-ratio.js";
import { writeTroubleRates } from "./trouble-rates.js";
import { writeWaterTable } from "./water-table.js";
import { writeFirstStep, writeWorkedGivens, writeWorkedSteps } from "./worked-example.js";

/** Every block of numbers that the documents show and the library makes, by the name it bears there. */
export const FIGURES: Readonly<Record<string, () => string>> = {
  "drinker-table": writeDrinkerTable,
  "elbow-table": writeElbowTable,
  "first-step": writeFirstStep,
  "fitting-table": writeFittingTable,
  "friction-ratio": writeFrictionRatio,
  "trouble-rates": writeTroubleRates,
  "water-table": writeWaterTable,
  "worked-givens": writeWorkedGivens,
  "worked-steps": writeWorkedSteps,
};
