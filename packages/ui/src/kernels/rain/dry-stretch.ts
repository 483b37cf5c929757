/** The stretch of a record through which an endless vessel would be drawn down the deepest. */
export interface DryStretch {
  /** First and last day, by their place in the record; the last may come round the record's end. */
  readonly from: number;
  readonly to: number;
  readonly days: number;
  /** Drawn and come in on those days [m³]: their difference is the size that never fails. */
  readonly drawn: number;
  readonly cameIn: number;
}

/**
 * Where the size that never fails comes from: the days of the sequent peak, the record gone through twice.
 *
 * @returns undefined where the vessel is never drawn down
 */
export function deepestStretch(inflow: ArrayLike<number>, demand: ArrayLike<number>): DryStretch | undefined {
  const count = inflow.length;
  let [behind, drawn, cameIn, begun] = [0, 0, 0, 0];
  let found: DryStretch | undefined;
  let peak = 0;
  for (let step = 0; step < 2 * count; step += 1) {
    const t = step % count;
    if (behind === 0) [begun, drawn, cameIn] = [step, 0, 0];
    drawn += demand[t]!;
    cameIn += inflow[t]!;
    behind = Math.max(0, behind + demand[t]! - inflow[t]!);
    if (behind <= peak) continue;
    peak = behind;
    found = { from: begun % count, to: t, days: step - begun + 1, drawn, cameIn };
  }
  return found;
}
