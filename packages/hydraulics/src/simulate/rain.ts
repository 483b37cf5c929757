/** How a day's rain and a day's draw are put in order: drawn before the rain of the day comes in, or after. */
export type RainConvention = "drawnFirst" | "rainFirst";

/** A vessel under a roof, day by day [m³]. */
export interface RainBalance {
  readonly convention: RainConvention;
  /** By day: what birds got, what was in the vessel at its end, what ran over. */
  readonly given: Float64Array;
  readonly stored: Float64Array;
  readonly over: Float64Array;
  /** 1 on days when birds got less than they wanted. */
  readonly short: Uint8Array;
  readonly shortDays: number;
  /** start + in = given + over + end [m³]. */
  readonly sums: {
    readonly start: number;
    readonly in: number;
    readonly given: number;
    readonly over: number;
    readonly end: number;
    readonly wanted: number;
  };
}

/** Less than a millilitre missing is no shortage [m³]. */
const MILLILITRE = 1e-6;

/**
 * Daily balance of a vessel under a roof. Drawn first, the yield comes after spillage and is understated; rain first,
 * it comes before and is overstated: the truth lies between.
 *
 *   drawn first:  Y = min(D, V),      V' = min(V + Q − Y, S − Y)                                          (1)
 *   rain first:   Y = min(D, V + Q),  V' = min(V + Q − Y, S)                                              (2)
 *
 * @param days.inflow    Q, by day [m³]
 * @param days.demand    D, by day [m³]
 * @param days.capacity  S, that can be used [m³]
 * @param days.start     V at the beginning [m³]
 * @param convention     "drawnFirst" or "rainFirst"
 * @returns the balance; what came in and was there is what was given, ran over, and is left
 * @valid daily steps; too coarse for a vessel that holds less than a day or two of what is drawn
 * @source jenkins-1978, after Fewkes 1999, release rules, seen
 * @example balanceRain({ inflow: [0.01, 0], demand: [0.004, 0.004], capacity: 0.04, start: 0.02 }, "drawnFirst").sums.end   // 0.022
 */
export function balanceRain(
  days: {
    readonly inflow: ArrayLike<number>;
    readonly demand: ArrayLike<number>;
    readonly capacity: number;
    readonly start: number;
  },
  convention: RainConvention,
): RainBalance {
  const { inflow, demand, capacity, start } = days;
  const count = inflow.length;
  const [given, stored, over] = [new Float64Array(count), new Float64Array(count), new Float64Array(count)];
  const short = new Uint8Array(count);
  const sums = { in: 0, given: 0, over: 0, wanted: 0 };
  let volume = Math.min(start, capacity);
  let shortDays = 0;
  for (let t = 0; t < count; t += 1) {
    const [rain, wanted] = [inflow[t], demand[t]];
    const drawn = Math.min(wanted, convention === "drawnFirst" ? volume : volume + rain);
    const room = convention === "drawnFirst" ? capacity - drawn : capacity;
    const spilled = Math.max(0, volume + rain - drawn - room);
    volume = volume + rain - drawn - spilled;
    given[t] = drawn;
    stored[t] = volume;
    over[t] = spilled;
    if (wanted - drawn > MILLILITRE) {
      short[t] = 1;
      shortDays += 1;
    }
    sums.in += rain;
    sums.given += drawn;
    sums.over += spilled;
    sums.wanted += wanted;
  }
  return {
    convention,
    given,
    stored,
    over,
    short,
    shortDays,
    sums: { start: Math.min(start, capacity), ...sums, end: volume },
  };
}

/**
 * The size that never fails, by the sequent peak: the deepest the vessel would be drawn down if it were endless.
 *
 *   K' = max(0, K + D − Q),  S = max K, through the record twice                                          (1)
 *
 * The second pass counts a dry season that runs from the end of the record into its beginning.
 *
 * @param inflow  Q, by day [m³]
 * @param demand  D, by day [m³]
 * @returns S [m³]; undefined when more is drawn than comes in over the whole record, so that no size lasts
 * @valid vessels that begin full; rain of a day can be drawn on that day
 * @source rippl-1883, mass curve; two passes derived
 * @example sequentPeak([6, 10, 9, 5, 4, 0], [7, 0, 7, 8, 4, 8])   // 12
 */
export function sequentPeak(inflow: ArrayLike<number>, demand: ArrayLike<number>): number | undefined {
  let [total, peak, behind] = [0, 0, 0];
  for (let t = 0; t < inflow.length; t += 1) total += inflow[t] - demand[t];
  if (total < -MILLILITRE) return undefined;
  for (let pass = 0; pass < 2; pass += 1) {
    for (let t = 0; t < inflow.length; t += 1) {
      behind = Math.max(0, behind + demand[t] - inflow[t]);
      peak = Math.max(peak, behind);
    }
  }
  return peak;
}

/** What a roof lets into a vessel, by day [m³]. */
export interface RoofRun {
  /** Seen from above [m²]. */
  readonly area: number;
  /** Share that runs off [-]. */
  readonly runoff: number;
  /** Rain that only wets the roof on a wet day [m]. */
  readonly wetting: number;
  /** Kept back of each wet spell [m³]: the diverter empties itself on dry days. */
  readonly firstFlush: number;
}

/**
 * Rain into the vessel, day by day.
 *
 *   Q = c A max(0, P − w), less what the diverter keeps of each run of wet days                           (1)
 *
 * @param roof  A, c, w and the diverter
 * @param rain  P, by day [m]
 * @returns Q, by day [m³]
 * @valid daily rain; c and w from tables are averages
 * @source enhealth-2011, App. B, seen
 * @example runOff({ area: 10, runoff: 0.8, wetting: 0.0005, firstFlush: 0 }, [0.0105])[0]   // 0.08
 */
export function runOff(roof: RoofRun, rain: ArrayLike<number>): Float64Array {
  const inflow = new Float64Array(rain.length);
  let left = roof.firstFlush;
  for (let t = 0; t < rain.length; t += 1) {
    if (rain[t] <= 0) {
      left = roof.firstFlush;
      continue;
    }
    const runs = roof.runoff * roof.area * Math.max(0, rain[t] - roof.wetting);
    const kept = Math.min(left, runs);
    left -= kept;
    inflow[t] = runs - kept;
  }
  return inflow;
}
