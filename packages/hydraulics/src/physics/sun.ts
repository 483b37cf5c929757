import {
  requireBetween,
  requireFinite,
  requireNotNegative,
  requirePositive,
} from "../numerics/require-number.js";

const DAY = 86_400;

/** The clear sun of a day. */
export interface SunnyDay {
  /** At its highest, on level ground [W/m²]. */
  readonly peak: number;
  /** When the light begins [s after midnight]. */
  readonly dawn: number;
  /** How long it lasts [s]. */
  readonly light: number;
}

/**
 * Sun on level ground through a clear day.
 *
 *   G = G_max sin[π (t − dawn)/light]                                       (1)
 *
 * @param sun   peak G_max [W/m²], dawn and light [s]
 * @param time  t [s after midnight]
 * @returns G [W/m²]; 0 at night
 * @valid a day without cloud; the half sine is a common shape, no source
 * @throws RangeError when peak is below 0 or light not positive
 * @source common-practice, half sine from dawn to dusk, from memory
 * @example sunAt({ peak: 900, dawn: 21600, light: 43200 }, 43200)   // 900
 */
export function sunAt(sun: SunnyDay, time: number): number {
  const { peak, dawn, light } = sun;
  requireNotNegative("sunAt", { "sun.peak": peak });
  requirePositive("sunAt", { "sun.light": light });
  requireFinite("sunAt", { "sun.dawn": dawn, time });
  const since = (((time - dawn) % DAY) + DAY) % DAY;
  return since >= light ? 0 : peak * Math.sin((Math.PI * since) / light);
}

/**
 * How much warmer than the air still water in a sunny pipe comes to be: sun on its breadth, air all around.
 *
 *   Δt = a G/(π h)                                                          (1)
 *
 * @param pipe.absorptance  a, share of the sun that its colour takes [-], 0 to 1
 * @param pipe.film         h, see filmOfWind [W/(m² K)], > 0
 * @param sun               G, on the pipe [W/m²], ≥ 0
 * @returns Δt [K]; the same for every size of pipe, lagged or not
 * @valid pipe that lies across the sun; one along it takes less
 * @throws RangeError when absorptance is outside 0 to 1, film not positive or sun below 0
 * @source closed-form, sun taken is heat given to the air
 * @example sunRiseOfPipe({ absorptance: 0.9, film: 12 }, 900)   // 21.486
 */
export function sunRiseOfPipe(
  pipe: { readonly absorptance: number; readonly film: number },
  sun: number,
): number {
  requireBetween("sunRiseOfPipe", "pipe.absorptance", pipe.absorptance, { least: 0, greatest: 1 });
  requirePositive("sunRiseOfPipe", { "pipe.film": pipe.film });
  requireNotNegative("sunRiseOfPipe", { sun });
  return (pipe.absorptance * sun) / (Math.PI * pipe.film);
}

/**
 * Share of the sun on level ground that a standing vessel's side sees through a day, over its silhouette.
 *
 * @source common-practice, half of it, from memory
 */
const SIDE_SEES = 0.5;

/**
 * How much warmer than the air a sunny vessel's water would come to be if the sun stood still.
 *
 *   Δt = a f G A_s/(h A)                                                    (1)
 *
 * @param vessel  absorptance a [-], film h [W/(m² K)], silhouette A_s [m²], wall A [m²]
 * @param sun     G, on level ground [W/m²]
 * @returns Δt [K]
 * @valid a rough figure: f, the share of the sun that a side sees through a day, is one half
 * @throws RangeError when a size is not positive, absorptance outside 0 to 1 or sun below 0
 * @source closed-form, sun taken is heat given to the air
 * @example sunRiseOfVessel({ absorptance: 0.7, film: 12, silhouette: 0.521, wall: 2.1 }, 900)   // 6.5125
 */
export function sunRiseOfVessel(
  vessel: {
    readonly absorptance: number;
    readonly film: number;
    readonly silhouette: number;
    readonly wall: number;
  },
  sun: number,
): number {
  const { absorptance, film, silhouette, wall } = vessel;
  requireBetween("sunRiseOfVessel", "vessel.absorptance", absorptance, { least: 0, greatest: 1 });
  requirePositive("sunRiseOfVessel", {
    "vessel.film": film,
    "vessel.silhouette": silhouette,
    "vessel.wall": wall,
  });
  requireNotNegative("sunRiseOfVessel", { sun });
  return (absorptance * SIDE_SEES * sun * silhouette) / (film * wall);
}

/**
 * Temperature of water that follows its surroundings late, where day follows like day.
 *
 *   T′ = (E − T)/τ, E straight from step to step:
 *   T_k+1 = T_k + m (E_k − T_k) + (E_k+1 − E_k) (1 − m/x),  m = 1 − e^(−x),  x = δ/τ   (1)
 *   T_0 such that the day ends as it began                                            (2)
 *
 * @param towards       E, what the water tends to, at equal steps through a day [°C]
 * @param timeConstant  τ [s], ≥ 0
 * @returns T at the same steps [°C]
 * @valid well-mixed, still water
 * @throws RangeError when timeConstant is not finite and ≥ 0
 * @source closed-form, linear equation with a straight forcing
 * @example throughDay([10, 20, 30, 20], 0)[2]   // 30
 */
export function throughDay(towards: readonly number[], timeConstant: number): number[] {
  requireNotNegative("throughDay", { timeConstant });
  const count = towards.length;
  if (timeConstant === 0 || count === 0) return [...towards];
  const step = DAY / count;
  const taken = -Math.expm1(-step / timeConstant);
  const ahead = shareOfRise(step / timeConstant, taken);
  const next = (before: number, k: number) => {
    const [e, after] = [towards[k]!, towards[(k + 1) % count]!];
    return before + taken * (e - before) + (after - e) * ahead;
  };
  let end = 0;
  for (let k = 0; k < count; k += 1) end = next(end, k);
  const water = [end / -Math.expm1(-DAY / timeConstant)];
  for (let k = 0; k < count - 1; k += 1) water.push(next(water[k]!, k));
  return water;
}

/** Below this the difference that follows is lost in rounding, and its series is right to the last digit. */
const SHORT_STEP = 1e-4;

/** 1 − m/x: how much of a step's even rise the water takes on. */
const shareOfRise = (x: number, taken: number): number =>
  x < SHORT_STEP ? x / 2 - (x * x) / 6 + (x * x * x) / 24 : 1 - taken / x;
