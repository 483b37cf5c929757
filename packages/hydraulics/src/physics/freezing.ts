import { requireNotNegative, requirePositive } from "../numerics/require-number.js";

/**
 * L, heat that a kilogram of water gives up as it turns to ice [J/kg].
 *
 * @source crc-handbook, enthalpy of fusion of water, from memory
 */
export const HEAT_OF_FREEZING = 334_000;

/**
 * Density of ice [kg/m³]: it takes 9 % more room than its water.
 *
 * @source crc-handbook, ice at 0 degC, from memory
 */
export const ICE_DENSITY = 917;

/**
 * k, of ice near 0 °C [W/(m K)].
 *
 * @source ashrae-refrigeration, ice at 0 degC, from memory
 */
export const ICE_CONDUCTIVITY = 2.2;

/**
 * Share of a closed vessel that stays empty so that ice has room.
 *
 * @source barrel-head-space, fill nine tenths, seen
 */
export const FROST_HEAD_SPACE = 0.1;

/** What takes the heat away: the film, and how far below 0 °C the air is. */
export interface ColdAir {
  /** h, on the surface that freezes [W/(m² K)]. */
  readonly film: number;
  /** t_a [°C]; 0 and above freezes nothing. */
  readonly air: number;
}

/**
 * Time to freeze the water of a round pipe through, once it is at 0 °C.
 *
 *   t = ρ L/(−t_a) [D/(4 h) + D²/(16 k)]                                    (1)
 *
 * @param bore  D, inside [m], > 0
 * @param cold  film h on the inside's area [W/(m² K)] (that of the outside times D₂/D), air t_a [°C]
 * @returns t [s]; Infinity where the air does not freeze
 * @valid still water that freezes from the wall inwards; slush may close a pipe sooner
 * @throws RangeError when bore or film is not positive
 * @source planck-1913, infinite cylinder, P = 1/4 and R = 1/16, from memory
 * @example timeToFreezeRound(0.02093, { film: 12.743, air: -5 })   // 28260.6
 */
export function timeToFreezeRound(bore: number, cold: ColdAir): number {
  requireCold("timeToFreezeRound", { bore }, cold);
  if (cold.air >= 0) return Number.POSITIVE_INFINITY;
  const heat = 1000 * HEAT_OF_FREEZING;
  return (heat / -cold.air) * (bore / (4 * cold.film) + bore ** 2 / (16 * ICE_CONDUCTIVITY));
}

/**
 * Least time for water at 0 °C to freeze through, however thick its ice grows.
 *
 *   t = ρ L V / (U A (−t_a))                                                (1)
 *
 * @param body  volume V [m³], conductance U A [W/K], both > 0
 * @param air   t_a [°C]
 * @returns t [s], a lower bound: ice keeps the cold out; Infinity where the air does not freeze
 * @valid any vessel
 * @throws RangeError when volume or conductance is not positive
 * @source closed-form, heat given up over heat taken away
 * @example leastTimeToFreeze({ volume: 0.0189, conductance: 4.2 }, -10)   // 150300
 */
export function leastTimeToFreeze(
  body: { readonly volume: number; readonly conductance: number },
  air: number,
): number {
  const { volume, conductance } = body;
  requirePositive("leastTimeToFreeze", { "body.volume": volume, "body.conductance": conductance });
  if (air >= 0) return Number.POSITIVE_INFINITY;
  return (1000 * HEAT_OF_FREEZING * volume) / (conductance * -air);
}

/**
 * Time for ice to grow to a thickness on water at 0 °C.
 *
 *   t = ρ_i L/(−t_a) [X/h + X²/(2 k)]                                       (1)
 *
 * @param thickness  X [m], ≥ 0
 * @param cold       film h [W/(m² K)], air t_a [°C]
 * @returns t [s]; Infinity where the air does not freeze
 * @valid still water, no snow on the ice
 * @throws RangeError when thickness is below 0 or film not positive
 * @source stefan-1891, with the film of air before the ice, from memory
 * @example timeToIce(0.003, { film: 10, air: -5 })   // 18501.98
 */
export function timeToIce(thickness: number, cold: ColdAir): number {
  requireNotNegative("timeToIce", { thickness });
  requirePositive("timeToIce", { "cold.film": cold.film });
  if (cold.air >= 0) return Number.POSITIVE_INFINITY;
  const heat = ICE_DENSITY * HEAT_OF_FREEZING;
  return (heat / -cold.air) * (thickness / cold.film + thickness ** 2 / (2 * ICE_CONDUCTIVITY));
}

/**
 * Thickness of the ice after a time of frost, the inverse of timeToIce.
 *
 *   X = k {−1/h + √[1/h² + 2 (S + X₀/h + X₀²/(2k))/k]},  S = −t_a t/(ρ_i L)   (1)
 *
 * @param ice   from X₀ [m], ≥ 0, and time t [s], ≥ 0
 * @param cold  film h [W/(m² K)], air t_a [°C]
 * @returns X [m]; X₀ where the air does not freeze
 * @valid as timeToIce
 * @throws RangeError when from or time is below 0 or film not positive
 * @source stefan-1891, with the film of air before the ice, from memory
 * @example iceAfter({ from: 0.0508, time: 86400 }, { film: 15, air: -8.3333 })   // 0.075452
 */
export function iceAfter(ice: { readonly from: number; readonly time: number }, cold: ColdAir): number {
  const { from, time } = ice;
  const { film } = cold;
  requireNotNegative("iceAfter", { "ice.from": from, "ice.time": time });
  requirePositive("iceAfter", { "cold.film": film });
  if (cold.air >= 0 || time === 0) return from;
  const k = ICE_CONDUCTIVITY;
  const grown = (-cold.air * time) / (ICE_DENSITY * HEAT_OF_FREEZING);
  const resisted = grown + from / film + from ** 2 / (2 * k);
  return k * (Math.sqrt(1 / film ** 2 + (2 * resisted) / k) - 1 / film);
}

function requireCold(owner: string, sizes: Readonly<Record<string, number>>, { film }: ColdAir): void {
  requirePositive(owner, { ...sizes, "cold.film": film });
}
