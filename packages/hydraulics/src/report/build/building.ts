/** What the library gives for building a plan, in one place. */

export { type BuildOptions, buildSheetOf, KERF } from "../../judge/build/build-of-plan.js";
export * from "../../judge/build/build-sheet.js";
export { GUST } from "../../judge/build/stand-loads.js";
export { cutStock } from "../../numerics/cutting/cut-stock.js";
export type { CutBar, Cutting, CuttingAsked } from "../../numerics/cutting/cutting.js";
export * from "../../physics/air-gap.js";
export * from "../../physics/load.js";
export * from "../../physics/screen.js";
export * from "../../physics/wind.js";
export * from "../../tables/building.js";
export { BUILD_FORMAT, writeBuildDocument } from "./build-document.js";
export { type PaperSize, writeBuildPage } from "./build-page.js";
export { writeContact } from "./build-text.js";
export * from "./build-words.js";
export { writePartsCsv } from "./csv-parts.js";
export * from "./cut-words.js";
export * from "./load-words.js";
