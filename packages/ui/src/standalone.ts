/**
 * Everything in one file for a page of one's own: the library's functions and the elements, registered. Built into
 * `dist/headfall.js`; a page that has a bundler imports `@headfall/ui/define` and `@headfall/hydraulics` instead.
 */
import "./define.js";

// Both have the word; it means the same.
export type { UnitSystem } from "@headfall/hydraulics";
export * from "@headfall/hydraulics";
export * from "./index.js";
