/* What the fuzzing command runs, in one file. */
export { beginWith } from "./begin-with.js";
export { fuzz } from "./fuzz-loop.js";
export { READERS } from "./readers.js";
