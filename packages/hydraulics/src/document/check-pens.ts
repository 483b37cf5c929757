import { checkStays } from "./check-stays.js";
import { type Entry, entries, fitProblem, isEntry, type Report } from "./entry.js";
import { unknownName } from "./find-names.js";
import { type PathStep, type Problem, writeFound, writePath } from "./problem.js";

/** What the schema cannot see in pens: names of birds, of drinkers, of the pens themselves. */
export function checkPens(document: Entry, report: Report): void {
  const known = namesOfDrinkers(document);
  const pens = new Set<unknown>();
  const allPens = entries(document["pens"]).map((pen, p) => pen["id"] ?? `pen ${p + 1}`);
  entries(document["pens"]).forEach((pen, p) => {
    const path = ["pens", p] as const;
    const id = pen["id"] ?? `pen ${p + 1}`;
    if (pens.has(id)) report(givenTwice(id, [...path, "id"]));
    pens.add(id);
    const { birds, drinkers } = pen;
    const check = (batch: unknown, at: readonly PathStep[]) => {
      if (!isEntry(batch)) return;
      checkBatch(batch, at, report);
      checkStays(batch, { path: at, home: id, pens: allPens }, report);
    };
    if (Array.isArray(birds)) birds.forEach((batch: unknown, k) => void check(batch, [...path, "birds", k]));
    else check(birds, [...path, "birds"]);
    if (!Array.isArray(drinkers)) return;
    drinkers.forEach((name: unknown, k) => {
      if (typeof name === "string" && !known.has(name))
        report(unknownDrinkers(name, known, [...path, "drinkers", k]));
    });
  });
}

function checkBatch(batch: Entry, path: readonly PathStep[], report: Report): void {
  const { kind, age, hatched } = batch;
  if (typeof kind === "string") report(unknownName("bird", kind, writePath([...path, "kind"])));
  if (age !== undefined && hatched !== undefined) {
    report(
      fitProblem(
        [...path, "age"],
        age,
        "An age, or the day they hatched, not both.",
        "Take one of them out.",
      ),
    );
  }
}

/** Names by which a pen can mean drinkers: groups, and runs that have any. */
function namesOfDrinkers(document: Entry): Set<string> {
  const names = new Set<string>();
  entries(document["runs"]).forEach((run, r) => {
    const { drinkers } = run;
    if (drinkers === undefined) return;
    const id = typeof run["id"] === "string" ? run["id"] : `run ${r + 1}`;
    names.add(id);
    const groups = Array.isArray(drinkers) ? entries(drinkers) : entries([drinkers]);
    groups.forEach((group, g) => {
      names.add(
        typeof group["id"] === "string" ? group["id"] : groups.length === 1 ? id : `${id} group ${g + 1}`,
      );
    });
  });
  return names;
}

const givenTwice = (id: unknown, path: readonly PathStep[]): Problem => ({
  code: "nameTwice",
  path: writePath(path),
  found: writeFound(id),
  allowed: "Each name is given once.",
  mend: "Choose another.",
});

function unknownDrinkers(name: string, known: ReadonlySet<string>, path: readonly PathStep[]): Problem {
  const some = [...known].slice(0, 6).map(writeFound);
  return {
    code: "unknownName",
    path: writePath(path),
    found: writeFound(name),
    allowed: "A group of drinkers, or a run that has drinkers.",
    mend:
      some.length === 0
        ? "Give the line drinkers first."
        : `Known here: ${some.join(", ")}${known.size > 6 ? " ..." : ""}.`,
  };
}
