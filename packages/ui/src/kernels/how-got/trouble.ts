import { writeCause, writeChance, writeSigns } from "@headfall/hydraulics";
import { bare } from "./figures.js";
import { type HowGot, untold } from "./how-got.js";
import type { HowRequest } from "./request.js";
import { alwaysValid } from "./validity.js";

/** How a cause came to its share: the chance that it shows what is seen, against all others. */
export function howTroubleShare({ room, figures }: HowRequest, at: number): HowGot {
  const cause = room.trouble?.likely[at];
  if (room.trouble === undefined || cause === undefined) return UNTOLD;
  const { tried } = room.trouble;
  const { system } = figures;
  const signs = [...cause.fits, ...cause.against];
  return {
    title: `Share of a cause: ${writeCause(cause, system)}`,
    result: writeChance(cause.share),
    steps: [],
    listed: {
      caption:
        "What each sign says of it; those between half and one and a quarter times as likely say little",
      columns: ["sign", "as likely as by chance"],
      rows: signs.map(({ sign, ratio }) => ({
        cells: [writeSigns([sign], system), `${bare(ratio, 2)} times`],
        value: ratio,
      })),
    },
    valid: [
      alwaysValid(
        "Bayes' rule",
        "one thing wrong at a time, each sign taken by itself once the state is supposed",
      ),
    ],
    notes: [
      "share of a cause = how often it happens × how likely it shows these signs, over the same of all causes together.",
      `${tried.causes} causes in ${tried.states} states were each put into this line and solved; what each would show at ${tried.drinkers} drinkers is held against what is seen, with room for a look that errs.`,
      ...(cause.places.length > 1
        ? [`It stands for ${cause.places.length} places that the signs so far do not tell apart.`]
        : []),
      "How often such things happen is common practice, no source, and kept gentle.",
    ],
    sources: ["common-practice"],
  };
}

const UNTOLD = untold("Share of a cause", "The causes have been ranked anew since; press the number again.");
