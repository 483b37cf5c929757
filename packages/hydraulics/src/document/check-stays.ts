import { readDay } from "../units/day.js";
import { type Entry, entries, fitProblem, type Report } from "./entry.js";
import { type PathStep, writeFound, writePath } from "./problem.js";

/** Where a batch stands in the document, and what its moves can mean. */
interface StayPlace {
  readonly path: readonly PathStep[];
  /** Name of the pen it is listed in. */
  readonly home: unknown;
  readonly pens: readonly unknown[];
}

/** Whether the days on which birds hatch, come, move and leave follow each other, and their moves lead somewhere else. */
export function checkStays(batch: Entry, { path, home, pens }: StayPlace, report: Report): void {
  const { hatched, arrives, leaves } = batch;
  const moves = entries(batch["moves"]);
  const after = (later: unknown, earlier: unknown, at: readonly PathStep[], allowed: string) => {
    const [last, first] = [later, earlier].map(dayOf);
    if (last !== undefined && first !== undefined && last <= first)
      report(fitProblem([...path, ...at], later, allowed, "Put the days in order."));
  };
  const [came, hatch] = [dayOf(arrives), dayOf(hatched)];
  if (came !== undefined && hatch !== undefined && came < hatch)
    report(
      fitProblem(
        [...path, "arrives"],
        arrives,
        "Birds arrive on the day they hatch or later.",
        "Put the days in order.",
      ),
    );
  let [before, where]: [unknown, unknown] = [arrives ?? hatched, home];
  moves.forEach(({ on, to }, k) => {
    const at = ["moves", k] as const;
    after(on, before, [...at, "on"], "Each move is later than the day they arrive and the move before.");
    if (typeof to === "string" && !pens.includes(to)) {
      report({
        code: "unknownName",
        path: writePath([...path, ...at, "to"]),
        found: writeFound(to),
        allowed: "A pen of this plan.",
        mend: `Known here: ${pens.slice(0, 6).map(writeFound).join(", ")}${pens.length > 6 ? " ..." : ""}.`,
      });
    } else if (to !== undefined && to === where)
      report(
        fitProblem(
          [...path, ...at, "to"],
          to,
          "A move leads to another pen than they are in.",
          "Take it out.",
        ),
      );
    [before, where] = [on, to];
  });
  after(leaves, before, ["leaves"], "Birds leave later than they arrive and move.");
}

const dayOf = (typed: unknown): number | undefined =>
  typeof typed === "string" ? readDay(typed) : undefined;
