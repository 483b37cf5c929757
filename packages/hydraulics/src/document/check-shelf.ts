import { type Entry, entries, fitProblem, lengthOf, type Report } from "./entry.js";
import { unknownName } from "./find-names.js";
import { writePath } from "./problem.js";

/** Pipes on the shelf that no table has, and pieces that are longer together than all that is on hand. */
export function checkShelf(document: Entry, report: Report): void {
  entries(document["shelf"]).forEach((entry, i) => {
    const { pipe, pieces, onHand } = entry;
    if (typeof pipe === "string") report(unknownName("pipe", pipe, writePath(["shelf", i, "pipe"])));
    const all = lengthOf(onHand);
    if (!Array.isArray(pieces) || all === undefined) return;
    const sum = pieces.reduce<number>((total, piece) => total + (lengthOf(piece) ?? 0), 0);
    if (sum > all + 1e-6)
      report(
        fitProblem(
          ["shelf", i, "onHand"],
          onHand,
          `Its pieces are ${sum.toFixed(2)} m together: there is at least as much on hand.`,
          "Correct one of the two, or leave `onHand` out.",
        ),
      );
  });
}
