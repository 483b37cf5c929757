/**
 * Units as they are printed, where a keyboard's spelling of them stands in words of ours: °C, m², W/m². Fields read both.
 *
 * @example unitSigns("900 W/m2 at 21 degC")   // "900 W/m² at 21 °C"
 */
export const unitSigns = (text: string): string =>
  text
    .replace(
      /\b(mm|cm|m|in|ft|yd)([23])(?![\w.])/g,
      (_, unit: string, power: string) => `${unit}${power === "2" ? "²" : "³"}`,
    )
    .replace(/\bdeg ?([CF])\b/g, "°$1");
