import { requireBetween } from "../numerics/require-number.js";
import { ICE_POINT_KELVIN } from "./constants.js";

/** Clean liquid water at one temperature and 0.1 MPa. */
export interface Water {
  /** Temperature [°C]. */
  readonly temperatureC: number;
  /** ρ, density [kg/m³]. */
  readonly density: number;
  /** μ, dynamic viscosity [Pa s]. */
  readonly viscosityDynamic: number;
  /** ν = μ/ρ, kinematic viscosity [m²/s]. */
  readonly viscosity: number;
  /** p_v, pressure of saturated vapour, absolute [Pa]. */
  readonly vapourPressure: number;
}

/**
 * Temperatures for which this project computes water [°C]. The formulas themselves reach further
 * (density and viscosity 253.15 to 383.15 K); outside 0 to 50 °C no drinker line is filled.
 *
 * @source iapws-sr6-08, section 1, seen
 */
export const WATER_RANGE = { temperatureC: { least: 0, greatest: 50 } } as const;

// IAPWS SR6-08(2011): reference values of the 0.1 MPa isobar and Table 1's coefficients.
const GAS_CONSTANT = 461.51805; // R [J/(kg K)]
const REDUCING_TEMPERATURE = 10; // T_R [K]
const ISOBAR = 1e5; // p₀ [Pa]
const DENSITY_CONSTANT = 1.93763157e-2; // a₅
/** Terms a_i α^n_i with i = 6..10. */
const UPPER_TERMS: readonly (readonly [a: number, n: number])[] = [
  [6.74458446e3, 4],
  [-2.22521604e5, 5],
  [1.00231247e8, 7],
  [-1.63552118e9, 8],
  [8.32299658e9, 9],
];
/** Terms b_i β^m_i with i = 5..10. */
const LOWER_TERMS: readonly (readonly [b: number, m: number])[] = [
  [5.78545292e-3, 1],
  [-1.53195665e-2, 2],
  [3.11337859e-2, 3],
  [-4.23546241e-2, 4],
  [3.38713507e-2, 5],
  [-1.19946761e-2, 6],
];
/** Terms of the viscosity c t^d [1e-6 Pa s], t = T / 300 K. */
const VISCOSITY_TERMS: readonly (readonly [c: number, d: number])[] = [
  [280.68, -1.9],
  [511.45, -7.7],
  [61.131, -19.6],
  [0.45903, -40],
];

// IAPWS SR1-86(1992): critical point and the six terms a θ^e of the saturation line.
const CRITICAL_TEMPERATURE = 647.096; // T_c [K]
const CRITICAL_PRESSURE = 22.064e6; // p_c [Pa]
const SATURATION_TERMS: readonly (readonly [a: number, e: number])[] = [
  [-7.85951783, 1],
  [1.84408259, 1.5],
  [-11.7866497, 3],
  [22.6807411, 3.5],
  [-15.9618719, 4],
  [1.80122502, 7.5],
];

const sumOfPowers = (terms: readonly (readonly [factor: number, power: number])[], base: number): number =>
  terms.reduce((sum, [factor, power]) => sum + factor * base ** power, 0);

/** ρ at T [K], without the range check: the published check values lie partly outside 0 to 50 °C. */
export function densityAtKelvin(temperature: number): number {
  const alpha = REDUCING_TEMPERATURE / (593 - temperature);
  const beta = REDUCING_TEMPERATURE / (temperature - 232);
  const bracket = DENSITY_CONSTANT + sumOfPowers(UPPER_TERMS, alpha) + sumOfPowers(LOWER_TERMS, beta);
  return ISOBAR / (GAS_CONSTANT * REDUCING_TEMPERATURE * bracket);
}

/** μ at T [K], without the range check. */
export function viscosityDynamicAtKelvin(temperature: number): number {
  return 1e-6 * sumOfPowers(VISCOSITY_TERMS, temperature / 300);
}

/** p_v at T [K], without the range check. */
export function vapourPressureAtKelvin(temperature: number): number {
  const theta = 1 - temperature / CRITICAL_TEMPERATURE;
  const exponent = (CRITICAL_TEMPERATURE / temperature) * sumOfPowers(SATURATION_TERMS, theta);
  return CRITICAL_PRESSURE * Math.exp(exponent);
}

function kelvin(owner: string, temperatureC: number): number {
  requireBetween(owner, "temperatureC", temperatureC, WATER_RANGE.temperatureC);
  return temperatureC + ICE_POINT_KELVIN;
}

/**
 * Density of clean liquid water at 0.1 MPa.
 *
 *   1/ρ = (R T_R / p₀) [a₅ + Σ a_i α^n_i + Σ b_i β^m_i],   α = T_R/(593 K − T),  β = T_R/(T − 232 K)      (1)
 *
 * @param temperatureC  temperature [°C], 0 to 50
 * @returns ρ [kg/m³], greatest near 4 °C
 * @valid WATER_RANGE
 * @throws RangeError when temperatureC is outside WATER_RANGE
 * @source iapws-sr6-08, eq. (1) and Table 1, seen
 * @example densityOfWater(25)   // 997.047
 */
export function densityOfWater(temperatureC: number): number {
  return densityAtKelvin(kelvin("densityOfWater", temperatureC));
}

/**
 * Dynamic viscosity of clean liquid water at 0.1 MPa.
 *
 *   μ = 1e-6 Pa s · Σ c_i t^d_i,   t = T / 300 K                            (1)
 *
 * @param temperatureC  temperature [°C], 0 to 50
 * @returns μ [Pa s], falling as the water warms
 * @valid WATER_RANGE
 * @throws RangeError when temperatureC is outside WATER_RANGE
 * @source iapws-sr6-08, viscosity equation and its table of coefficients, seen
 * @example viscosityDynamicOfWater(25)   // 8.89997e-4
 */
export function viscosityDynamicOfWater(temperatureC: number): number {
  return viscosityDynamicAtKelvin(kelvin("viscosityDynamicOfWater", temperatureC));
}

/**
 * Kinematic viscosity of clean liquid water at 0.1 MPa.
 *
 *   ν = μ / ρ                                                               (1)
 *
 * @param temperatureC  temperature [°C], 0 to 50
 * @returns ν [m²/s]
 * @valid WATER_RANGE
 * @throws RangeError when temperatureC is outside WATER_RANGE
 * @source iapws-sr6-08, eq. (1) and the viscosity equation, seen
 * @example viscosityOfWater(20)   // 1.0034e-6
 */
export function viscosityOfWater(temperatureC: number): number {
  const temperature = kelvin("viscosityOfWater", temperatureC);
  return viscosityDynamicAtKelvin(temperature) / densityAtKelvin(temperature);
}

/**
 * Absolute pressure of water vapour over liquid water.
 *
 *   ln(p_v/p_c) = (T_c/T) Σ a_i θ^e_i,   θ = 1 − T/T_c                      (1)
 *
 * @param temperatureC  temperature [°C], 0 to 50 (at 0 °C some 0.01 K below the triple point, by extension)
 * @returns p_v [Pa]
 * @valid WATER_RANGE
 * @throws RangeError when temperatureC is outside WATER_RANGE
 * @source iapws-sr1-86, eq. (1), from memory; its check values seen
 * @example vapourPressureOfWater(20)   // 2339.2
 */
export function vapourPressureOfWater(temperatureC: number): number {
  return vapourPressureAtKelvin(kelvin("vapourPressureOfWater", temperatureC));
}

/**
 * Surface tension of clean water against its vapour or air.
 *
 *   σ = 0.2358 N/m · τ^1.256 (1 − 0.625 τ),   τ = 1 − T/T_c                 (1)
 *
 * @param temperatureC  temperature [°C], 0 to 50
 * @returns σ [N/m]
 * @valid WATER_RANGE
 * @throws RangeError when temperatureC is outside WATER_RANGE
 * @source iapws-r1-76, from memory
 * @example surfaceTensionOfWater(25)   // 0.07197
 */
export function surfaceTensionOfWater(temperatureC: number): number {
  const tau = 1 - kelvin("surfaceTensionOfWater", temperatureC) / CRITICAL_TEMPERATURE;
  return 0.2358 * tau ** 1.256 * (1 - 0.625 * tau);
}

/**
 * All that the models need of water at one temperature.
 *
 *   ρ, μ, ν = μ/ρ, p_v as in the single functions of this file              (1)
 *
 * @param temperatureC  temperature [°C], 0 to 50
 * @returns the water, in SI
 * @valid WATER_RANGE
 * @throws RangeError when temperatureC is outside WATER_RANGE
 * @source iapws-sr6-08, density and viscosity, seen; vapour pressure as vapourPressureOfWater
 * @example waterAt(20).density   // 998.207
 */
export function waterAt(temperatureC: number): Water {
  const temperature = kelvin("waterAt", temperatureC);
  const density = densityAtKelvin(temperature);
  const viscosityDynamic = viscosityDynamicAtKelvin(temperature);
  return {
    temperatureC,
    density,
    viscosityDynamic,
    viscosity: viscosityDynamic / density,
    vapourPressure: vapourPressureAtKelvin(temperature),
  };
}
