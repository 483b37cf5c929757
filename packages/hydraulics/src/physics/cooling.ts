import { requireFinite, requireNotNegative, requirePositive } from "../numerics/require-number.js";

/**
 * ρ c, heat that a cubic metre of water takes up for each degree [J/(m³ K)]: 1000 kg/m³ and 4190 J/(kg K), near
 * enough from 0 to 50 °C.
 *
 * @source ashrae-fundamentals-2009, ch. 23, from memory
 */
export const HEAT_OF_WATER = 4.19e6;

/**
 * h, heat that still air takes from a square metre of wet wall for each degree, radiation counted [W/(m² K)]: about
 * 5.8 by free convection at a half-inch pipe and 4.6 by radiation.
 *
 * @source cengel-convection, natural convection of gases 2 to 25, seen
 */
export const STILL_AIR_FILM = 10;

/**
 * k, of closed-cell foam lagging [W/(m K)].
 *
 * @source common-practice, pipe lagging, from memory
 */
export const LAGGING_CONDUCTIVITY = 0.036;

/**
 * Heat that moving air takes from a wall.
 *
 *   h = 5.7 + 3.8 v, not below that of still air                            (1)
 *
 * @param wind  v, speed of the air [m/s], ≥ 0
 * @returns h [W/(m² K)]
 * @valid up to 5 m/s; beyond it a little small, which the bands of this project cover
 * @throws RangeError when wind is not finite and ≥ 0
 * @source mcadams-1954, flat plates in air, from memory
 * @example filmOfWind(5)   // 24.7
 */
export function filmOfWind(wind: number): number {
  requireNotNegative("filmOfWind", { wind });
  return Math.max(STILL_AIR_FILM, 5.7 + 3.8 * wind);
}

/** A pipe as the air sees it. Lengths [m]. */
export interface PipeInAir {
  /** D₂, outside the wall. */
  readonly outside: number;
  /** Thickness of the lagging; 0 for none. */
  readonly lagging: number;
  /** h, see filmOfWind [W/(m² K)]; Infinity leaves the film out. */
  readonly film: number;
}

/**
 * Heat that each metre of pipe loses for each degree that its water is warmer than the air.
 *
 *   1/U = 1/(π D₃ h) + ln(D₃/D₂)/(2 π k),  D₃ = D₂ + 2 s                    (1)
 *
 * @param pipe             outside D₂ [m], lagging s [m], film h [W/(m² K)]
 * @param conductivity     k of the lagging [W/(m K)]; that of foam unless given
 * @returns U [W/(m K)]; the wall is left out, which errs on the cautious side
 * @valid round pipe far from the ground
 * @throws RangeError when outside, film or conductivity is not positive, or lagging below 0
 * @source ashrae-fundamentals-2009, ch. 23, from memory
 * @example conductanceOfPipe({ outside: 0.02667, lagging: 0.013, film: 10 })   // 0.27679
 */
export function conductanceOfPipe(pipe: PipeInAir, conductivity: number = LAGGING_CONDUCTIVITY): number {
  const { outside, lagging, film } = pipe;
  requirePositive("conductanceOfPipe", { "pipe.outside": outside, conductivity });
  requireNotNegative("conductanceOfPipe", { "pipe.lagging": lagging });
  if (!(film > 0)) throw new RangeError(`conductanceOfPipe: pipe.film is ${film}; it must be above 0`);
  const covered = outside + 2 * lagging;
  const throughFilm = 1 / (Math.PI * covered * film);
  const throughLagging = Math.log(covered / outside) / (2 * Math.PI * conductivity);
  return 1 / (throughFilm + throughLagging);
}

/** Water that cools (or warms) towards the air around it. Temperatures [°C]. */
export interface Cooling {
  /** C, heat it gives for each degree [J/K]; for a pipe, of a metre [J/(m K)]. */
  readonly capacity: number;
  /** U A, heat it loses for each degree above the air [W/K]; for a pipe, of a metre [W/(m K)]. */
  readonly conductance: number;
  readonly from: number;
  readonly air: number;
}

/**
 * Time for well-mixed water to cool to a temperature.
 *
 *   t = C/(U A) ln[(t_i − t_a)/(t_f − t_a)]                                 (1)
 *
 * @param cooling  capacity C [J/K], conductance U A [W/K], from t_i, air t_a [°C]
 * @param to       t_f [°C]
 * @returns t [s]; 0 where it is as cold already, Infinity where the air is too warm
 * @valid one temperature throughout; no ice
 * @throws RangeError when capacity or conductance is not positive, or a temperature not finite
 * @source ashrae-fundamentals-2009, ch. 23, eq. 1, from memory
 * @example timeToCool({ capacity: 79191, conductance: 4.2, from: 10, air: -10 }, 0)   // 13069
 */
export function timeToCool(cooling: Cooling, to: number): number {
  const { capacity, conductance, from, air } = cooling;
  requirePositive("timeToCool", { "cooling.capacity": capacity, "cooling.conductance": conductance });
  requireFinite("timeToCool", { "cooling.from": from, "cooling.air": air, to });
  if (from <= to) return 0;
  if (air >= to) return Number.POSITIVE_INFINITY;
  return (capacity / conductance) * Math.log((from - air) / (to - air));
}

/**
 * Flow through a pipe in frost that keeps its far end above a temperature.
 *
 *   q = U L (t_m − t_a) / [ρ c (t_in − t_out)],  t_m = (t_in + t_out)/2     (1)
 *
 * @param pipe   conductance U [W/(m K)], length L [m]
 * @param water  enters and leaves [°C], air t_a [°C]
 * @returns q [m³/s]; 0 where the air is not colder
 * @valid a drop of a few degrees along the pipe
 * @throws RangeError when conductance or length is not positive, or the water does not cool on its way
 * @source closed-form, heat lost is heat carried in
 * @example flowThatHolds({ conductance: 0.8379, length: 10 }, { enters: 4, leaves: 1, air: -10 })   // 8.332e-6
 */
export function flowThatHolds(
  pipe: { readonly conductance: number; readonly length: number },
  water: { readonly enters: number; readonly leaves: number; readonly air: number },
): number {
  const { conductance, length } = pipe;
  const { enters, leaves, air } = water;
  requirePositive("flowThatHolds", { "pipe.conductance": conductance, "pipe.length": length });
  requirePositive("flowThatHolds", { "water.enters - water.leaves": enters - leaves });
  requireFinite("flowThatHolds", { "water.air": air });
  const lost = conductance * length * Math.max(0, (enters + leaves) / 2 - air);
  return lost / (HEAT_OF_WATER * (enters - leaves));
}
