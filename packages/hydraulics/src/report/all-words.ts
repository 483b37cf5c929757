/** What the library gives for telling of its results: the only place with sentences. */

// Documents, as the command prints them with --json.

export * from "./birds/birds-document.js";
export { writeWeeksDocument } from "./birds/weeks-document.js";
export { writeBuildDocument } from "./build/build-document.js";
export { writeCheckDocument } from "./check-document.js";
export { writeCureDocument, writeFrontDocument } from "./cure/cure-document.js";
export { writeSizesDocument } from "./cure/sizes-document.js";
export * from "./cure/variants-document.js";
export * from "./mishaps/mishaps-document.js";
export * from "./sureness/measure-document.js";
export * from "./time/day-documents.js";
export * from "./time/time-documents.js";
export * from "./trouble/trouble-document.js";
export * from "./weather/weather-documents.js";
export * from "./yard/yard-document.js";
export * from "./year/year-document.js";

// Tables, calendars and sheets as files.

export * from "./build/build-page.js";
export * from "./build/csv-parts.js";
export type { CsvOptions } from "./csv.js";
export * from "./csv-drinkers.js";
export * from "./csv-line.js";
export type { CsvUnits } from "./csv-units.js";
export * from "./year/csv-year.js";
export * from "./year/year-calendar.js";

// Words: what was found, as sentences and names.

export { writeAge, writeBirdFinding, writeGroupCrowd, writeSeconds } from "./birds/bird-sentences.js";
export {
  writeAsks,
  writeForce,
  writeNeedReason,
  writeSilences,
} from "./birds/drinkers-needed-text.js";
export { writeContact } from "./build/build-text.js";
export {
  BASIS_WORDS,
  gatherMarks,
  HOLES_NOTE,
  JUG_NOTE,
  writeBasis,
  writeHole,
  writeJug,
  writePart,
  writePrice,
  writePriceLine,
  writeStep,
} from "./build/build-words.js";
export * from "./build/cut-words.js";
export { BUILD_ROUNDS, writeBuildCautions, writeLoadLines } from "./build/load-words.js";
export * from "./caution-sentences.js";
export {
  CURE_WORDS,
  writeChange,
  writeClose,
  writeCost,
  writeCureHeadline,
  writeRelaxation,
  writeScene,
  writeSearch,
} from "./cure/cure-sentences.js";
export {
  bestVariants,
  nameOfVariant,
  VARIANT_ROWS,
  type VariantRow,
  writeConclusion,
  writeDifference,
} from "./cure/variants-text.js";
export * from "./durations.js";
export * from "./finding-sentences.js";
export { writeHarm, writeLoss, writeNothing, writeRowName } from "./mishaps/mishap-sentences.js";
export { type Named, writeGain, writeGuard } from "./mishaps/mishap-words.js";
export { writeMishapCautions } from "./mishaps/mishaps-text.js";
export * from "./mishaps/waterer-mishap-words.js";
export { writeNames } from "./name-ranges.js";
export * from "./sentences.js";
export { writeCertainty } from "./sureness/certainty-words.js";
export {
  MEASURED_AS_WRITTEN,
  writeMeasuring,
  writeRemedy,
  writeSways,
} from "./sureness/measure-words.js";
export { writeAwayAnswer, writeFailure, writeLookEvery } from "./time/away-text.js";
export { writeDry, writePenDay, writeShare, writeWait } from "./time/day-text.js";
export { LEFT_OUT_WORDS } from "./time/lasting-text.js";
export { writeMarkLines } from "./time/mark-text.js";
export {
  SEASON_WORDS,
  writeRain,
  writeRainAnswer,
  writeRainCautions,
  writeRainFinding,
  writeRainRun,
} from "./time/rain-text.js";
export * from "./trouble/trouble-causes.js";
export {
  percent as writeChance,
  writeAnswers,
  writeLook,
  writeLookAnswer,
  writeSigns,
  writeUsefulLook,
} from "./trouble/trouble-looks.js";
export { TROUBLE_CAUTIONS, writeNextLook, writeTried, writeWhy } from "./trouble/trouble-text.js";
export * from "./trouble/trouble-todo.js";
export * from "./trouble/trouble-two.js";
export * from "./verdict-sentences.js";
export { writeAirQuestion, writeFrostRecordAnswer } from "./weather/frost-record-text.js";
export * from "./weather/frost-sentences.js";
export { HEAT_RECORD_CAUTIONS, writeHeatRecordAnswer } from "./weather/heat-record-text.js";
export {
  HEAT_CAUTIONS,
  HEAT_CHANGE_WORDS,
  writeDegrees,
  writeHeatAnswer,
  writeHeatCautions,
  writeHeatDay,
  writeHeatFlush,
  writeHeatIntake,
  writeHeatWaterer,
  writeRenewal,
  writeSoftening,
} from "./weather/heat-sentences.js";
export {
  LAW_WORDS,
  MOMENT_WORDS,
  writeFlow,
  writeHead,
  writeMargin,
  writeMass,
  writeVelocity,
  writeVolume,
} from "./words.js";
export { writeYardFindingBriefly } from "./yard/finding-words.js";
export * from "./yard/yard-sentences.js";
export { writeMark, writeRefills, writeSlope } from "./yard/yard-words.js";
export * from "./year/year-sentences.js";
