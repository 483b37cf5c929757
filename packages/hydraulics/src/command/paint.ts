import pc from "picocolors";
import type { Paint } from "../report/check-text.js";

/** Colours for a terminal; words and marks already say everything. */
export function paintFor(colour: boolean): Paint {
  const { bold, dim, green, yellow, red, magenta } = pc.createColors(colour && pc.isColorSupported);
  const paints = { good: green, drips: yellow, starves: magenta, dry: red, quiet: dim, title: bold };
  return (text, what) => paints[what](text);
}
