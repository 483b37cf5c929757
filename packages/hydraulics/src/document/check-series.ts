import { type Entry, entries, fitProblem, lengthOf, type Report, siOf } from "./entry.js";
import { type PathStep, writeFound, writePath } from "./problem.js";

/** Readings in a series: whether each follows the one before, and the ends agree with what else is said. */

export function checkReadingsRise(readings: unknown, path: readonly PathStep[], report: Report): void {
  const list = entries(readings);
  const first = list[0];
  if (first !== undefined && (lengthOf(first["level"]) ?? 0) !== 0) {
    report(
      fitProblem(
        [...path, 0, "level"],
        first["level"],
        "The first reading is the inside bottom.",
        'Begin with level "0 cm" and volume "0 L".',
      ),
    );
  }
  for (let i = 1; i < list.length; i += 1) {
    for (const key of ["level", "volume"] as const) {
      const kind = key === "level" ? "length" : "volume";
      const [before, here] = [siOf(list[i - 1][key], kind), siOf(list[i][key], kind)];
      if (before !== undefined && here !== undefined && here <= before) {
        report(
          fitProblem(
            [...path, i, key],
            list[i][key],
            `Each ${key} is more than the one before.`,
            "Put the readings in order from the bottom up.",
          ),
        );
      }
    }
  }
}

export function checkSurvey(
  run: Entry,
  known: { readonly length: number; readonly startsAtSource: boolean },
  path: readonly PathStep[],
  report: Report,
): void {
  const { length } = known;
  let before = 0;
  checkSurveyEnds(run, known, path, report);
  entries(run["survey"]).forEach((reading, i) => {
    const along = lengthOf(reading["along"]);
    if (along === undefined) return;
    const here = [...path, "survey", i, "along"];
    if (along > length + 1e-9)
      report(
        fitProblem(
          here,
          reading["along"],
          `The run is only ${writeFound(run["length"])} long.`,
          "Correct one of the two.",
        ),
      );
    else if (i > 0 && along <= before)
      report(
        fitProblem(
          here,
          reading["along"],
          "Each distance is more than the one before.",
          "Put the readings in order from the start of the run.",
        ),
      );
    before = along;
  });
}

/**
 * A survey that begins at 0 begins with no fall (but at a source, where falls count from the ground under it); one
 * that reaches the end says the run's fall a second time.
 */
function checkSurveyEnds(
  run: Entry,
  known: { readonly length: number; readonly startsAtSource: boolean },
  path: readonly PathStep[],
  report: Report,
): void {
  const { length, startsAtSource } = known;
  const readings = entries(run["survey"]);
  readings.forEach((reading, i) => {
    const [along, fall] = [lengthOf(reading["along"]), lengthOf(reading["fall"])];
    if (along === undefined || fall === undefined) return;
    const here = [...path, "survey", i, "fall"];
    if (along === 0 && !startsAtSource && Math.abs(fall) > 1e-6)
      report(
        fitProblem(
          here,
          reading["fall"],
          "At the start of a run its fall is 0.",
          "Measure falls from there.",
        ),
      );
    const whole = lengthOf(run["fall"]);
    if (whole === undefined || Math.abs(along - length) > 1e-6 || Math.abs(fall - whole) <= 1e-3) return;
    report({
      code: "twoWays",
      path: writePath(here),
      found: writeFound(reading["fall"]),
      allowed: `At its end the run falls ${writeFound(run["fall"])}, as its own fall says.`,
      mend: "Correct one of the two, or leave one out.",
    });
  });
}
