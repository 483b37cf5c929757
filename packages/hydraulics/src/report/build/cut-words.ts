import type { BarToCut, PipeToCut, RunPiece } from "../../judge/build/part-list.js";
import type { UnitSystem } from "../../units/quantity.js";

const INCH = 0.0254;
const SIXTEENTHS = 16;

/**
 * A length to be cut or marked: whole millimetres, or feet and inches to a sixteenth.
 *
 * @example writeCutLength(1.234, "metric")   // "1.234 m"
 */
export function writeCutLength(metres: number, system: UnitSystem): string {
  if (system === "metric") {
    const mm = Math.round(metres * 1000);
    return Math.abs(mm) < 1000 ? `${mm} mm` : `${(mm / 1000).toFixed(3)} m`;
  }
  const sign = metres < 0 ? "-" : "";
  const parts = Math.round((Math.abs(metres) / INCH) * SIXTEENTHS);
  const feet = Math.floor(parts / (12 * SIXTEENTHS));
  const rest = parts - feet * 12 * SIXTEENTHS;
  const inches = writeSixteenths(rest);
  if (feet === 0) return `${sign}${inches} in`;
  return rest === 0 ? `${sign}${feet} ft` : `${sign}${feet} ft ${inches} in`;
}

function writeSixteenths(parts: number): string {
  const whole = Math.floor(parts / SIXTEENTHS);
  let [top, bottom] = [parts % SIXTEENTHS, SIXTEENTHS];
  if (top === 0) return String(whole);
  while (top % 2 === 0) [top, bottom] = [top / 2, bottom / 2];
  return whole === 0 ? `${top}/${bottom}` : `${whole} ${top}/${bottom}`;
}

/**
 * A piece of pipe: which part of which run, and its length.
 *
 * @example writePiece(sheet.pipes[0].bars[0].pieces[0], "metric")   // "line 1 of 3, 3.048 m"
 */
export const writePiece = ({ run, part, parts, length }: RunPiece, system: UnitSystem): string =>
  `${run}${parts === 1 ? "" : ` ${part} of ${parts}`}, ${writeCutLength(length, system)}`;

/** What a length of stock is, by its form. */
const stockWord = (form: PipeToCut["form"]): string => form ?? "length";

/**
 * One bar and what is cut from it.
 *
 * @example writeBar(sheet.pipes[0].bars[0], sheet.pipes[0], "metric")   // "New stick, 3.048 m: line 1 of 3, 3.048 m; 0 mm left"
 */
export function writeBar(
  { from, length, pieces, rest }: BarToCut,
  pipe: PipeToCut,
  system: UnitSystem,
): string {
  const what = from === "leftover" ? "On hand" : `New ${stockWord(pipe.form)}`;
  const cuts = pieces.map((piece) => writePiece(piece, system)).join("; ");
  return `${what}, ${writeCutLength(length, system)}: ${cuts}; ${writeCutLength(rest, system)} left`;
}

/**
 * What is to be bought of a pipe, and what is proven of it; a sentence each.
 *
 * @example writeCutting(sheet.pipes[0], "metric")[0]   // "9.000 m needed; buy 3 of 3.048 m, 9.144 m together."
 */
export function writeCutting(pipe: PipeToCut, system: UnitSystem): string[] {
  const { cutting, sold, soldFrom, needed, bars, uncut, chips, rests, untold } = pipe;
  const length = (metres: number) => writeCutLength(metres, system);
  const bought = bars.filter(({ from }) => from === "sold");
  return [
    bought.length === 0
      ? `${length(needed)} needed; nothing to buy.`
      : `${length(needed)} needed; buy ${countLengths(bought, system)}, ${length(cutting.bought)} together.`,
    ...(bought.length === 0 ? [] : [proofOf(pipe, system)]),
    ...(cutting.leftoverUsed > 0
      ? [
          `${length(cutting.leftoverUsed)} of what is on hand is cut into${cutting.isLeastLeftover ? "; nothing that buys as little cuts into less" : ""}.`,
        ]
      : []),
    ...(bars.length === 0 ? [] : [`Cuts take ${length(chips)}; ${length(rests)} is left over.`]),
    ...(uncut.length === 0
      ? []
      : [
          sold.length === 0
            ? `Nobody says in what length it is sold: pieces of ${uncut.map((piece) => writePiece(piece, system)).join("; ")}.`
            : `Nothing is long enough for ${uncut.map((piece) => writePiece(piece, system)).join("; ")}.`,
        ]),
    ...(soldFrom === "usual" && bought.length > 0
      ? [
          "The length sold is the commonest of its make, from memory: give the length the shop sells where it is another.",
        ]
      : []),
    ...(untold > 0
      ? [
          `${length(untold)} lies there in pieces that nobody told, and is not counted on: say \`pieces\` on the shelf.`,
        ]
      : []),
  ];
}

function countLengths(bars: readonly BarToCut[], system: UnitSystem): string {
  const counts = new Map<number, number>();
  for (const { length } of bars) counts.set(length, (counts.get(length) ?? 0) + 1);
  return [...counts].map(([length, count]) => `${count} of ${writeCutLength(length, system)}`).join(" and ");
}

function proofOf({ cutting }: PipeToCut, system: UnitSystem): string {
  const bound = writeCutLength(cutting.bound, system);
  if (!cutting.isProven)
    return `No plan buys less than ${bound}; whether one buys as little was not settled in the time given.`;
  return cutting.bought <= cutting.bound + 1e-6
    ? `No cutting buys less: the bound is ${bound} too.`
    : `No cutting buys less: the bound is ${bound}, and every other way was looked at.`;
}
