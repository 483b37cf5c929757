import { type Entry, entries, fitProblem, isEntry, type Report, siOf } from "./entry.js";
import type { PathStep } from "./problem.js";

/** A night that is warmer than its day was typed the wrong way round. */
export function checkWeather(document: Entry, report: Report): void {
  const { weather } = document;
  if (!isEntry(weather)) return;
  checkNight(weather, ["weather"], report);
  const { hotSpell } = weather;
  if (isEntry(hotSpell)) checkNight(hotSpell, ["weather", "hotSpell"], report);
  entries(weather["months"]).forEach((one, k) => {
    checkNight(one, ["weather", "months", k], report);
    checkHottest(one, ["weather", "months", k], report);
  });
  checkTwice(weather["months"], report);
  const { frost } = weather;
  if (isEntry(frost)) checkNight(frost, ["weather", "frost"], report);
}

function checkNight({ high, low }: Entry, path: readonly PathStep[], report: Report): void {
  const [day, night] = [siOf(high, "temperature"), siOf(low, "temperature")];
  if (day === undefined || night === undefined || night <= day) return;
  report(
    fitProblem([...path, "low"], low, "The lowest is not above the highest.", "Swap or correct the two."),
  );
}

function checkHottest({ high, hot }: Entry, path: readonly PathStep[], report: Report): void {
  const [usual, hottest] = [siOf(high, "temperature"), siOf(hot, "temperature")];
  if (usual === undefined || hottest === undefined || hottest >= usual) return;
  report(
    fitProblem(
      [...path, "hot"],
      hot,
      "The hottest days are not cooler than usual ones.",
      "Correct one of them.",
    ),
  );
}

function checkTwice(months: unknown, report: Report): void {
  const seen = new Set<unknown>();
  entries(months).forEach(({ month }, k) => {
    if (month !== undefined && seen.has(month))
      report(
        fitProblem(
          ["weather", "months", k, "month"],
          month,
          "Each month is given once.",
          "Take one of them out.",
        ),
      );
    seen.add(month);
  });
}
