import { valueBetween } from "../numerics/value-between.js";

/** Where one device hangs for birds of an age [m above what they stand on]. */
export interface HangAt {
  readonly device: string;
  readonly ageDays: number;
  readonly height: number;
  readonly low: number;
  readonly high: number;
}

/**
 * How high a device hangs for birds of an age: straight between the rows, level beyond them. Posture decides, not the
 * ruler: too high is worse than too low, most of all in heat.
 *
 * @param points   rows of one kind of bird, by age
 * @param device   "nipple" (its pin), "cup", "bell" or "trough" (its lip)
 * @param ageDays  age [days]
 * @returns height with its range [m]; undefined where there is no row for the device
 * @valid ages of the table; older birds are as tall as its last row
 * @source keeper-nipple-heights, text, seen
 * @example hangHeight([{ device: "nipple", ageDays: 1, height: 0.1, low: 0.09, high: 0.11 }], "nipple", 1)?.height   // 0.1
 */
export function hangHeight(
  points: readonly HangAt[],
  device: string,
  ageDays: number,
): { readonly height: number; readonly low: number; readonly high: number } | undefined {
  const rows = points.filter((point) => point.device === device);
  if (rows.length === 0) return undefined;
  const ages = rows.map((row) => row.ageDays);
  const at = (figure: "height" | "low" | "high") =>
    valueBetween(
      ages,
      rows.map((row) => row[figure]),
      ageDays,
    );
  return { height: at("height"), low: at("low"), high: at("high") };
}
