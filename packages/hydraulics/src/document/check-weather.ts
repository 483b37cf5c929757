import { type Entry, fitProblem, isEntry, type Report, siOf } from "./entry.js";
import type { PathStep } from "./problem.js";

/** A night that is warmer than its day was typed the wrong way round. */
export function checkWeather(document: Entry, report: Report): void {
  const { weather } = document;
  if (!isEntry(weather)) return;
  checkNight(weather, ["weather"], report);
  const { hotSpell } = weather;
  if (isEntry(hotSpell)) checkNight(hotSpell, ["weather", "hotSpell"], report);
}

function checkNight({ high, low }: Entry, path: readonly PathStep[], report: Report): void {
  const [day, night] = [siOf(high, "temperature"), siOf(low, "temperature")];
  if (day === undefined || night === undefined || night <= day) return;
  report(
    fitProblem([...path, "low"], low, "The lowest is not above the highest.", "Swap or correct the two."),
  );
}
