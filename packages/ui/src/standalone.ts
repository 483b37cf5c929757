/**
 * Everything in one file for a page of one's own: the library's functions and the elements, registered. Built into
 * `dist/headfall.js`; a page that has a bundler imports `@headfall/ui/define` and `@headfall/hydraulics` instead. It is
 * all fetched at once here, so that the views can be used without the line around them.
 */
import "./define.js";
import "./define-rest.js";
import "./define-rooms.js";

// Both have the word; it means the same.
export type { UnitSystem } from "@headfall/hydraulics";
export * from "@headfall/hydraulics";
export * from "./index.js";
