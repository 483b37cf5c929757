import { goingAway, howLongItLasts, type Lasting } from "@headfall/hydraulics";
import { product, sum, term } from "./expression.js";
import { type HowGot, soundSteps, stepOf, untold } from "./how-got.js";
import { type HowRequest, quoted } from "./request.js";
import type { HowSubject } from "./subject.js";
import { dayOf } from "./time.js";
import { alwaysValid } from "./validity.js";

type AwaySubject = Extract<HowSubject, { of: "away" }>;

/** What is needed while nobody comes, and what of the water that stands there reaches the birds. */
export function howAway(request: HowRequest, { what, days }: AwaySubject): HowGot {
  const { plan, figures } = request;
  const title = `${what === "needed" ? "Needed" : "Reaches the birds"}, ${days} ${days === 1 ? "day" : "days"} away`;
  if (plan === undefined) return untold(title);
  const day = dayOf(request);
  const [going, lasts] = [goingAway(plan, { days, day }), howLongItLasts(plan, { day })];
  if (!going.ok || !lasts.ok) return untold(title);
  const { away } = going;
  const step =
    what === "needed"
      ? neededStep(request, lasts.lasting, { hot: away.hotDays, usual: days - away.hotDays })
      : usableStep(request, lasts.lasting);
  return {
    title,
    result: figures.volume(away[what]),
    steps: soundSteps(step),
    valid: [
      alwaysValid("The cautious figure", "what birds drink to size on, with what is spilled and drips"),
    ],
    notes: what === "needed" ? NEEDED : USABLE,
    sources: ["closed-form", "cautious-defaults"],
  };
}

const NEEDED = [
  "Hot days come first, where they do most harm. Birds grow older each day, so each day is counted by itself, and not as in the line above.",
];
const USABLE = [
  "Each vessel is full at the beginning. It is drawn until the drinkers of some pen, all worked at once, pass less than the pen drinks in its busiest hour; at the latest until nothing is left over the outlet.",
  "The lowest usable level that a source has is a margin for the verdicts, and plays no part here.",
];

function neededStep(
  { figures }: HowRequest,
  { alone }: Lasting,
  days: { readonly hot: number; readonly usual: number },
) {
  const of = (count: number, which: "size" | "hot", words: string) =>
    product(
      term(`${words}s`, count, String(count)),
      term(`drawn on a ${words}`, alone[which].firstDay, figures.volumeIn(alone[which].firstDay), {
        of: "lasts",
        what: "firstDay",
        which,
      }),
    );
  const parts = [
    ...(days.hot > 0 ? [of(days.hot, "hot", "hot day")] : []),
    ...(days.usual > 0 ? [of(days.usual, "size", "usual day")] : []),
  ];
  return stepOf("needed, about", sum(...parts), figures.volumeIn);
}

const usableStep = ({ figures }: HowRequest, { sources }: Lasting) =>
  stepOf(
    "can be drawn, at most",
    sum(...sources.map(({ source, usable }) => term(quoted(source), usable, figures.volumeIn(usable)))),
    figures.volumeIn,
  );
