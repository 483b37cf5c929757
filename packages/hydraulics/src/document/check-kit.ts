import { type Entry, entries, fitProblem, type Report } from "./entry.js";
import { findDrinkerByName, findWatererId, unknownName } from "./find-names.js";
import { writePath } from "./problem.js";

/** Kinds of the kit that no table has, and more kept back than there are. */
export function checkKit(document: Entry, report: Report): void {
  entries(document["kit"]).forEach(({ kind, count, spare }, k) => {
    const path = ["kit", k] as const;
    // Loose waterers are asked for first: most of a kit is.
    if (
      typeof kind === "string" &&
      findWatererId(kind) === undefined &&
      findDrinkerByName(kind) === undefined
    )
      report(unknownName("waterer", kind, writePath([...path, "kind"])));
    if (typeof count === "number" && typeof spare === "number" && spare > count)
      report(
        fitProblem(
          [...path, "spare"],
          spare,
          "No more can be kept back than there are.",
          "Correct one of the two.",
        ),
      );
  });
}
