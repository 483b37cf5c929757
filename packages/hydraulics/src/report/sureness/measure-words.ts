import type { InputKind } from "../../judge/sureness/doubted-inputs.js";
import type { Better, CloseCall, Measuring, Worthwhile } from "../../judge/sureness/measuring.js";
import { type UnitSystem, writeQuantity } from "../../units/quantity.js";
import { writeDoubt, writeInput } from "./certainty-words.js";

/**
 * What a close call asks for, in one or two sentences.
 *
 * @example writeRemedy(measuring.close[0], "metric")   // "Measure the flow of Side-action nipple, low pressure (jug ..."
 */
export function writeRemedy(close: CloseCall, system: UnitSystem): string {
  const { remedy } = close;
  switch (remedy.kind) {
    case "one":
      return `${sentence(writeBetter(remedy.better, system))}${remedy.or.length === 0 ? "" : ` Or: ${remedy.or.map((other) => writeBetter(other, system)).join("; or ")}.`}`;
    case "two":
      return `No one measurement is enough. ${sentence(remedy.better.map((one) => writeBetter(one, system)).join(", and "))}`;
    case "none":
      return `No measurement makes it sure. ${writeLift(close, system)}`;
  }
}

const sentence = (text: string): string => `${text.charAt(0).toUpperCase()}${text.slice(1)}.`;

/** What to do and how well: "measure the height of wall within 5 mm (now 1 cm)". */
function writeBetter({ input, doubt, needed }: Better, system: UnitSystem): string {
  const now = writeDoubt(input.kind, doubt, system);
  if (needed === 0) return COUNTED[input.kind] ?? `settle ${writeInput(input)} (now within ${now})`;
  return `measure ${writeInput(input)} within ${writeDoubt(input.kind, needed, system)} (now ${now})`;
}

const COUNT =
  "count how many drink at once in the busiest minutes, and write it as `busiest` of those drinkers";
/** What is not measured a little better but counted. */
const COUNTED: Readonly<Partial<Record<InputKind, string>>> = { takenIn: COUNT, intake: COUNT };

/** How far the water must come up or go down for a drinker to be good and sure whatever is in doubt. */
function writeLift(
  { moreHead, lessHead }: Pick<CloseCall, "moreHead" | "lessHead">,
  system: UnitSystem,
): string {
  const head = (h: number) => writeQuantity(h, "head", system, 2);
  if (moreHead === undefined || lessHead === undefined)
    return "Change the line there: with some of these plans no water comes at all.";
  if (moreHead > 0 && lessHead > 0)
    return `Change the drinker: in doubt as things are it wants ${head(moreHead)} more head, and ${head(lessHead)} less so as not to drip.`;
  if (moreHead > 0) return `With ${head(moreHead)} more head it would be good, and sure of that.`;
  if (lessHead > 0) return `With ${head(lessHead)} less head it would be good, and sure of that.`;
  return "Its head is enough as it is; what is near the edge is whether water comes.";
}

/** A head that is not worth a word [m]. */
const NOTHING = 1e-4;

/**
 * What moves it: "Off by its 1 cm, the height of wall moves its head to spare by 9 mm."
 *
 * @example writeSways(measuring.close[0], "metric")   // "Its head to spare is moved most by the flow of Side-action ..."
 */
export function writeSways({ sways }: CloseCall, system: UnitSystem): string {
  const told = [...sways]
    .sort((a, b) => (b.head ?? 0) - (a.head ?? 0))
    .flatMap(({ input, doubt, head }) =>
      head === undefined || head < NOTHING
        ? []
        : [
            `${writeInput(input)} (${writeDoubt(input.kind, doubt, system)}) by ${writeQuantity(head, "head", system, 2)}`,
          ],
    );
  return told.length === 0 ? "" : `Its head to spare is moved most by ${told.join(", ")}.`;
}

/** One measurement of the list, with the drinkers it decides. */
export function writeWorthwhile(worth: Worthwhile, system: UnitSystem): string {
  const others = worth.with.map(({ input }) => writeInput(input));
  const together =
    others.length === 0
      ? ""
      : `,${worth.drinkers.length === 1 ? "" : " for some of them"} together with ${others.join(" or ")}`;
  return `${sentence(writeBetter(worth, system)).slice(0, -1)}: makes sure of ${writeNames(worth.drinkers)}${together}.`;
}

/** Names as long as they are few. */
function writeNames(names: readonly string[]): string {
  const MOST = 6;
  if (names.length <= MOST) return names.join(", ");
  return `${names.slice(0, MOST - 1).join(", ")} and ${names.length - MOST + 1} more`;
}

/** What all of it rests on. */
export const MEASURED_AS_WRITTEN =
  "All this holds if the new figure comes out near the old one. Write it into the plan with its `doubt` (readings with jug and watch as a drinker of your own), and check again.";

/** Drinkers that no measurement makes sure, and what the one among them needs that is worst off. */
function writeUnmeasurable(without: readonly CloseCall[], system: UnitSystem): string {
  const most = (lifts: readonly (number | undefined)[]) =>
    lifts.reduce<number | undefined>(
      (a, b) => (a === undefined || b === undefined ? undefined : Math.max(a, b)),
      0,
    );
  const lift = writeLift(
    {
      moreHead: most(without.map(({ moreHead }) => moreHead)),
      lessHead: most(without.map(({ lessHead }) => lessHead)),
    },
    system,
  );
  return `No measurement makes sure of ${writeNames(without.map(({ drinker }) => drinker))}. ${lift}`;
}

/**
 * What to measure again, a sentence a line: the measurements worth taking, and those drinkers that none makes sure;
 * nothing where all are sure.
 *
 * @example writeMeasuring(measuring, "metric")[0]   // "Measure the flow of Side-action nipple, low pressure (jug and ..."
 */
export function writeMeasuring({ close, measurements }: Measuring, system: UnitSystem): string[] {
  if (close.length === 0) return [];
  const worth = measurements.map((one) => writeWorthwhile(one, system));
  const without = close.filter(({ remedy }) => remedy.kind === "none");
  const none = without.length === 0 ? [] : [writeUnmeasurable(without, system)];
  return [...worth, ...none, ...(worth.length === 0 ? [] : [MEASURED_AS_WRITTEN])];
}
