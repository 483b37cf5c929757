import { checkKit } from "./check-kit.js";
import { checkPens } from "./check-pens.js";
import { checkReadings } from "./check-readings.js";
import { checkReadingsRise, checkSurvey } from "./check-series.js";
import { checkShelf } from "./check-shelf.js";
import { checkWaterers } from "./check-waterers.js";
import { checkWeather } from "./check-weather.js";
import { defaultRunId, defaultSourceId, endOfRun } from "./default-names.js";
import { type Entry, entries, fitProblem, isEntry, lengthOf, type Report } from "./entry.js";
import { readFittingText, unknownName } from "./find-names.js";
import { type PathStep, type Problem, writeFound, writePath } from "./problem.js";
import { readShare } from "./read-share.js";

/**
 * What the schema cannot see: names that must be known, given once, or lead somewhere; figures that must fit each
 * other. Reads a document that may be wrong elsewhere, so that all its problems are told at once.
 */
export function checkReferences(document: Entry): Problem[] {
  const problems: Problem[] = [];
  const report: Report = (problem) => {
    if (problem !== undefined) problems.push(problem);
  };
  const places = checkNames(document, report);
  entries(document["sources"]).forEach((source, i) => {
    checkSource(source, ["sources", i], places, report);
  });
  entries(document["runs"]).forEach((run, i) => {
    checkRun(run, ["runs", i], document, places, report);
  });
  checkShelf(document, report);
  checkPens(document, report);
  checkWaterers(document, report);
  checkKit(document, report);
  checkWeather(document, report);
  const own = document["ownDrinkers"];
  if (isEntry(own)) {
    for (const [name, drinker] of Object.entries(own)) {
      if (name === "__proto__") report(forbiddenName(["ownDrinkers", name]));
      if (isEntry(drinker)) checkReadings(drinker, ["ownDrinkers", name]).forEach(report);
    }
  }
  return problems;
}

/** Names of all places, with the problem of each that is given twice. A run may end at a name of its own making. */
function checkNames(document: Entry, report: Report): Set<string> {
  const places = new Set<string>();
  const claim = (name: unknown, path: readonly PathStep[], known: Set<string>) => {
    if (typeof name !== "string") return;
    if (known.has(name)) {
      report({
        code: "nameTwice",
        path: writePath(path),
        found: writeFound(name),
        allowed: "Each name is given once.",
        mend: "Choose another.",
      });
    }
    known.add(name);
  };
  entries(document["sources"]).forEach((source, i) => {
    claim(source["id"] ?? defaultSourceId(i), ["sources", i, "id"], places);
  });
  entries(document["points"]).forEach((point, i) => {
    claim(point["id"], ["points", i, "id"], places);
  });
  const runNames = new Set<string>();
  entries(document["runs"]).forEach((run, i) => {
    claim(run["id"] ?? defaultRunId(i), ["runs", i, "id"], runNames);
    places.add(typeof run["to"] === "string" ? run["to"] : endOfRun(run["id"], i));
  });
  return places;
}

function checkSource(
  source: Entry,
  path: readonly PathStep[],
  places: ReadonlySet<string>,
  report: Report,
): void {
  const { vessel, feed, level, roof } = source;
  if (isEntry(roof) && typeof roof["kind"] === "string")
    report(unknownName("roof", roof["kind"], writePath([...path, "roof", "kind"])));
  if (typeof vessel === "string") report(unknownName("vessel", vessel, writePath([...path, "vessel"])));
  if (isEntry(vessel) && vessel["shape"] === "table")
    checkReadingsRise(vessel["readings"], [...path, "vessel", "readings"], report);
  if (isEntry(feed)) {
    report(unknownPlace(feed["from"], places, [...path, "feed", "from"]));
    if (typeof feed["valve"] === "string")
      report(unknownName("fitting", feed["valve"], writePath([...path, "feed", "valve"])));
  }
  if (isEntry(level)) checkLevels(level, [...path, "level"], report);
}

function checkLevels(level: Entry, path: readonly PathStep[], report: Report): void {
  const [lowest, ordinary, full] = ["lowest", "ordinary", "full"].map((key) => lengthOf(level[key]));
  const below = (key: string, low: number | undefined, high: number | undefined, words: string) => {
    if (low === undefined || high === undefined || low <= high) return;
    report(fitProblem([...path, key], level[key], words, "Swap or correct the levels."));
  };
  below("lowest", lowest, full, "The lowest level is not above the full one.");
  below("ordinary", lowest, ordinary, "The ordinary level is not below the lowest one.");
  below("ordinary", ordinary, full, "The ordinary level is not above the full one.");
}

function checkRun(
  run: Entry,
  path: readonly PathStep[],
  document: Entry,
  places: ReadonlySet<string>,
  report: Report,
): void {
  report(unknownPlace(run["from"], places, [...path, "from"]));
  if (typeof run["pipe"] === "string") report(unknownName("pipe", run["pipe"], writePath([...path, "pipe"])));
  if (Array.isArray(run["fittings"])) {
    run["fittings"].forEach((fitting: unknown, i) => {
      if (typeof fitting === "string")
        report(unknownName("fitting", readFittingText(fitting).name, writePath([...path, "fittings", i])));
    });
  }
  const length = lengthOf(run["length"]);
  if (length !== undefined) {
    const sources = entries(document["sources"]).map(
      (source, i): unknown => source["id"] ?? defaultSourceId(i),
    );
    const startsAtSource = run["from"] === undefined ? path[1] === 0 : sources.includes(run["from"]);
    checkSurvey(run, { length, startsAtSource }, path, report);
  }
  const { drinkers } = run;
  if (Array.isArray(drinkers)) {
    drinkers.forEach((group: unknown, i) => {
      if (isEntry(group)) checkGroup(group, length, [...path, "drinkers", i], document, report);
    });
  } else if (isEntry(drinkers)) checkGroup(drinkers, length, [...path, "drinkers"], document, report);
}

function checkGroup(
  group: Entry,
  runLength: number | undefined,
  path: readonly PathStep[],
  document: Entry,
  report: Report,
): void {
  const { kind } = group;
  const own = document["ownDrinkers"];
  if (typeof kind === "string" && !(isEntry(own) && Object.hasOwn(own, kind)))
    report(unknownName("drinker", kind, writePath([...path, "kind"])));
  const count = typeof group["count"] === "number" ? group["count"] : 1;
  for (const key of ["busiest", "ordinary"]) {
    const atWork = group[key];
    if (typeof atWork === "number" && atWork > count)
      report(
        fitProblem([...path, key], atWork, `There are only ${count} drinkers.`, "Write at most that many."),
      );
    if (typeof atWork === "string" && readShare(atWork) === undefined)
      report(fitProblem([...path, key], atWork, "A share is from 0 to 100 %.", 'Write for instance "50 %".'));
  }
  const every = lengthOf(group["every"]);
  const first = lengthOf(group["first"]) ?? every;
  if (runLength === undefined || first === undefined) return;
  const last = first + (count - 1) * (every ?? 0);
  if (last > runLength + 1e-6) {
    report(
      fitProblem(
        [...path, every === undefined ? "first" : "every"],
        group["every"] ?? group["first"],
        `${count} drinkers would reach past the end of the run.`,
        "Lengthen the run, or put them closer together.",
      ),
    );
  }
}

/** The one name that data from a program may carry and no object can hold. */
function forbiddenName(path: readonly PathStep[]): Problem {
  return {
    code: "unknownKey",
    path: writePath(path),
    found: `the key "__proto__"`,
    allowed: "Nothing can have this name.",
    mend: "Give it another.",
  };
}

function unknownPlace(
  name: unknown,
  places: ReadonlySet<string>,
  path: readonly PathStep[],
): Problem | undefined {
  if (typeof name !== "string" || places.has(name)) return undefined;
  const known = [...places].slice(0, 6).map(writeFound);
  return {
    code: "unknownPoint",
    path: writePath(path),
    found: writeFound(name),
    allowed: "A source, a point, or the end of some run.",
    mend: `Known here: ${known.join(", ")}${places.size > 6 ? " ..." : ""}.`,
  };
}
