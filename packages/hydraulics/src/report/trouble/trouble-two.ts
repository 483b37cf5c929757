import type { TwoAtOnce } from "../../judge/trouble/trouble-result.js";
import type { UnitSystem } from "../../units/quantity.js";
import { writeCause } from "./trouble-causes.js";
import { percent, writeSigns } from "./trouble-looks.js";

/**
 * Two things wrong at once, in a sentence without its full stop.
 *
 * @example writeBothCauses({ causes: [trouble.likely[0], trouble.likely[1]] }, "metric")   // "The pipe is apart, or a cap is off, at one of bucket and ..."
 */
export const writeBothCauses = ({ causes }: TwoAtOnce, system: UnitSystem): string =>
  causes.map((cause) => writeCause(cause, system)).join("; and at the same time: ");

/**
 * What one cause leaves unexplained, what two would be, how much that is worth, and what to do first.
 *
 * @example writeTwoAtOnce({ causes: [trouble.likely[0], trouble.likely[1]], share: 0.6, aloneShare: 0.4, unexplained: trouble.signs, fits: [], against: [], tried: 10 }, "metric")[0]   // "The likeliest thing alone leaves badly explained: line 4 dry."
 */
export function writeTwoAtOnce(two: TwoAtOnce, system: UnitSystem): string[] {
  const { unexplained, fits, against, share, aloneShare } = two;
  const all = fits.length + against.length;
  const left =
    unexplained.length >= all && all > 1
      ? "No one thing that was tried explains all of this."
      : `The likeliest thing alone leaves badly explained: ${writeSigns(unexplained, system)}.`;
  return [
    left,
    `Two at once: ${writeBothCauses(two, system)}.`,
    `That holds ${percent(share)}, against ${percent(aloneShare)} for the likeliest alone. ${
      against.length === 0
        ? "No sign speaks against it."
        : `It does not fit ${writeSigns(
            against.map(({ sign }) => sign),
            system,
          )}.`
    }`,
    "See to one of them, then look again: what is left shows whether there was a second.",
  ];
}
