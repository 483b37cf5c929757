/**
 * g, standard acceleration of free fall [m/s²]; exact by definition.
 *
 * @source nist-sp-811, Appendix B.8, from memory
 */
export const GRAVITY = 9.80665;

/**
 * p₀, standard atmosphere [Pa]; exact by definition.
 *
 * @source nist-sp-811, Appendix B.8, from memory
 */
export const STANDARD_ATMOSPHERE = 101325;

/**
 * 0 °C on the kelvin scale [K]; exact by definition.
 *
 * @source nist-sp-811, Appendix B.8, from memory
 */
export const ICE_POINT_KELVIN = 273.15;
