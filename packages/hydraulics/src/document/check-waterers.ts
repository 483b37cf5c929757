import { type Entry, entries, isEntry, type Report } from "./entry.js";
import { unknownName } from "./find-names.js";
import { writeFound, writePath } from "./problem.js";

/** What the schema cannot see in loose waterers: their kinds, their names, and that a plan without a line has some. */
export function checkWaterers(document: Entry, report: Report): void {
  let count = 0;
  const names = new Set<unknown>();
  entries(document["pens"]).forEach((pen, p) => {
    entries(pen["waterers"]).forEach((waterer, w) => {
      count += 1;
      const path = ["pens", p, "waterers", w] as const;
      const { kind, id } = waterer;
      if (typeof kind === "string") report(unknownName("waterer", kind, writePath([...path, "kind"])));
      if (typeof id !== "string") return;
      if (names.has(id))
        report({
          code: "nameTwice",
          path: writePath([...path, "id"]),
          found: writeFound(id),
          allowed: "Each name is given once.",
          mend: "Choose another.",
        });
      names.add(id);
    });
  });
  if (count === 0) report(withoutWater(document));
}

/** A plan with neither a source nor a waterer, in a pen or in the kit, has no water. */
function withoutWater({ sources, pens, kit }: Entry) {
  if (!Array.isArray(sources) || sources.length > 0 || entries(kit).length > 0) return undefined;
  const hasPens = Array.isArray(pens) && pens.some(isEntry);
  return {
    code: "tooFew",
    path: "sources",
    found: "a list of 0",
    allowed: "This list has at least 1 entry.",
    mend: hasPens ? "Add a source, loose waterers to a pen, or a kit." : "Add what is missing.",
  } as const;
}
