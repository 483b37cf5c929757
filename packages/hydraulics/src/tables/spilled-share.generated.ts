// Made from reference-tables/spilled-share.csv by reference-tables/compile-tables.mjs. Edit the table, not this file.
import type { SpilledShare } from "./row-types.js";

export const spilledShares: readonly SpilledShare[] = [
  {"id":"bell","device":"bell","spilled":0.15,"spilledLow":0.08,"spilledHigh":0.25,"citation":{"source":"common-practice","where":"not stated","seen":"from memory"}},
  {"id":"cup","device":"cup","spilled":0.08,"spilledLow":0.02,"spilledHigh":0.15,"citation":{"source":"common-practice","where":"not stated","seen":"from memory"}},
  {"id":"fount","device":"fount","spilled":0.2,"spilledLow":0.1,"spilledHigh":0.3,"citation":{"source":"common-practice","where":"not stated","seen":"from memory"}},
  {"id":"nipple","device":"nipple","spilled":0.05,"spilledLow":0,"spilledHigh":0.1,"citation":{"source":"common-practice","where":"not stated","seen":"from memory"}},
  {"id":"trough","device":"trough","spilled":0.15,"spilledLow":0.08,"spilledHigh":0.25,"citation":{"source":"common-practice","where":"not stated","seen":"from memory"}},
];
