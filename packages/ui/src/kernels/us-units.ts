/** Units of the other system, exact by their definitions. */
export const INCH = 0.0254; // [m]
export const FOOT = 0.3048; // [m]
export const POUND = 0.45359237; // [kg]
export const US_GALLON = 231 * INCH ** 3; // [m³]
