/** Data, and so longer than most files: every unit with its factor. How one is found and used is in `find-unit.ts`. */

/** What a quantity measures; each kind has its own units. */
export type QuantityKind =
  | "length"
  | "head"
  | "volume"
  | "flow"
  | "area"
  | "temperature"
  | "time"
  | "slope"
  | "speed"
  | "sunshine";

/** One unit: the value in SI is (value − zero) × times / by. */
export interface Unit {
  /** The spelling this project writes. */
  readonly symbol: string;
  /** Every spelling it reads, in lower case; the symbol in lower case is among them. */
  readonly spellings: readonly string[];
  /** Numerator of the exact factor to SI. */
  readonly times: number;
  /** Denominator of the exact factor to SI. */
  readonly by: number;
  /** Value in this unit that is 0 in SI; only temperatures have one. */
  readonly zero?: number;
  /** True where the value is an angle in degrees and SI is its tangent. */
  readonly isAngle?: true;
  /** Units of one family may follow one another: "2 ft 6 in". */
  readonly family?: "foot" | "metre" | "gallon" | "litre" | "imperial" | "clock";
  /** How the factor follows from a definition, with the key of its source. */
  readonly definition: string;
}

const SP811 = "nist-sp-811, Appendix B, from memory";
const EXACT_FOOT = `exact since 1959: 1 ft = 0.3048 m; ${SP811}`;
const US_GALLON = `exact: 1 US gal = 231 in³ = 3.785411784 L; ${SP811}`;
const IMPERIAL = `exact: 1 imperial gal = 4.54609 L; ${SP811}`;
const METRIC = `decimal multiple of the SI unit; ${SP811}`;
/** Pressures become head through conventional water of 1000 kg/m³ under g = 9.80665 m/s²: 9806.65 Pa a metre. */
const CONVENTIONAL = `conventional water, 9806.65 N/m³; ${SP811}`;

const unit = (
  symbol: string,
  others: string,
  times: number,
  by: number,
  definition: string,
  more: Partial<Pick<Unit, "family" | "zero" | "isAngle">> = {},
): Unit => ({
  symbol,
  spellings: [symbol.toLowerCase(), ...others.split(",").filter((text) => text !== "")],
  times,
  by,
  definition,
  ...more,
});

const metre = { family: "metre" } as const;
const foot = { family: "foot" } as const;

const LENGTHS: readonly Unit[] = [
  unit("m", "metre,metres,meter,meters", 1, 1, "the SI unit", metre),
  unit("cm", "centimetre,centimetres,centimeter,centimeters", 1, 100, METRIC, metre),
  unit("mm", "millimetre,millimetres,millimeter,millimeters", 1, 1000, METRIC, metre),
  unit("km", "kilometre,kilometres,kilometer,kilometers", 1000, 1, METRIC, metre),
  unit("ft", "foot,feet,'", 3048, 10_000, EXACT_FOOT, foot),
  unit("in", `inch,inches,",''`, 254, 10_000, EXACT_FOOT, foot),
  unit("yd", "yard,yards", 9144, 10_000, EXACT_FOOT, foot),
];

const PRESSURES: readonly Unit[] = [
  unit(
    "psi",
    "lb/in2,lbf/in2,psig",
    45_359_237,
    64_516_000,
    `1 lbf/in² = 0.45359237 g / 0.0254² Pa; ${CONVENTIONAL}`,
  ),
  unit("kPa", "kilopascal,kilopascals", 100_000, 980_665, CONVENTIONAL),
  unit("Pa", "pascal,pascals", 100, 980_665, CONVENTIONAL),
  unit("bar", "bars", 10_000_000, 980_665, CONVENTIONAL),
  unit("mbar", "millibar,millibars,hpa", 10_000, 980_665, CONVENTIONAL),
];

/** "mH2O" and the like: a length said to be of water is that length of head. */
const WATER_COLUMNS: readonly Unit[] = LENGTHS.filter(({ symbol }) => /^(m|cm|mm|ft|in)$/.test(symbol)).map(
  (length) => ({
    symbol: `${length.symbol}H2O`,
    spellings: [
      `${length.symbol}h2o`,
      `${length.symbol} h2o`,
      `${length.symbol} wc`,
      `${length.symbol} of water`,
    ],
    times: length.times,
    by: length.by,
    definition: CONVENTIONAL,
  }),
);

const litre = { family: "litre" } as const;
const gallon = { family: "gallon" } as const;
const imperial = { family: "imperial" } as const;

const VOLUMES: readonly Unit[] = [
  unit("L", "litre,litres,liter,liters,ltr,dm3", 1, 1000, METRIC, litre),
  unit("mL", "millilitre,millilitres,milliliter,milliliters,cc,cm3", 1, 1_000_000, METRIC, litre),
  unit("m³", "m3,cubic metre,cubic metres,cubic meter,cubic meters,cu m", 1, 1, "the SI unit", litre),
  unit("dL", "decilitre,decilitres,deciliter,deciliters", 1, 10_000, METRIC, litre),
  unit("cL", "centilitre,centilitres,centiliter,centiliters", 1, 100_000, METRIC, litre),
  unit("gal", "gallon,gallons,gals,us gal,us gallon,us gallons", 3_785_411_784, 1e12, US_GALLON, gallon),
  unit("qt", "quart,quarts,qts", 3_785_411_784, 4e12, `${US_GALLON}; 4 qt = 1 gal`, gallon),
  unit("pt", "pint,pints,pts", 3_785_411_784, 8e12, `${US_GALLON}; 8 pt = 1 gal`, gallon),
  unit("cup", "cups", 3_785_411_784, 16e12, `${US_GALLON}; 16 cups = 1 gal`, gallon),
  unit(
    "fl oz",
    "floz,fluid ounce,fluid ounces,oz,ounce,ounces",
    3_785_411_784,
    128e12,
    `${US_GALLON}; 128 fl oz = 1 gal`,
    gallon,
  ),
  unit("ft³", "ft3,cu ft,cubic foot,cubic feet", 28_316_846_592, 1e12, EXACT_FOOT),
  unit("in³", "in3,cu in,cubic inch,cubic inches", 16_387_064, 1e12, EXACT_FOOT),
  unit(
    "imp gal",
    "imperial gallon,imperial gallons,uk gal,uk gallon,uk gallons",
    454_609,
    1e8,
    IMPERIAL,
    imperial,
  ),
  unit(
    "imp pt",
    "imperial pint,imperial pints,uk pt,uk pint,uk pints",
    454_609,
    8e8,
    `${IMPERIAL}; 8 pt = 1 gal`,
    imperial,
  ),
];

const clock = { family: "clock" } as const;
const TIMES: readonly Unit[] = [
  unit("s", "sec,secs,second,seconds", 1, 1, "the SI unit", clock),
  unit("min", "mins,minute,minutes", 60, 1, `60 s; ${SP811}`, clock),
  unit("h", "hr,hrs,hour,hours", 3600, 1, `60 min; ${SP811}`, clock),
  unit("day", "d,days", 86_400, 1, `24 h; ${SP811}`, clock),
  unit("week", "wk,wks,weeks", 604_800, 1, "7 days", clock),
];

/** Abbreviations of rates, beside every volume "/" every time. */
const SHORT_RATES: Readonly<Record<string, string>> = {
  "gal/min": "gpm",
  "gal/h": "gph",
  "gal/day": "gpd",
  "L/min": "lpm",
  "L/h": "lph",
  "L/s": "lps",
  "ft³/s": "cfs",
  "ft³/min": "cfm",
};

const RATE_TIMES = TIMES.filter(({ symbol }) => symbol !== "week");
const FLOWS: readonly Unit[] = VOLUMES.flatMap((volume) =>
  RATE_TIMES.map((time) => {
    const symbol = `${volume.symbol}/${time.symbol}`;
    return unit(
      symbol,
      SHORT_RATES[symbol] ?? "",
      volume.times,
      volume.by * time.times,
      `${volume.definition}; per ${time.symbol}`,
    );
  }),
);

const AREAS: readonly Unit[] = [
  unit("m²", "m2,sq m,square metre,square metres,square meter,square meters", 1, 1, "the SI unit"),
  unit(
    "cm²",
    "cm2,sq cm,square centimetre,square centimetres,square centimeter,square centimeters",
    1,
    10_000,
    METRIC,
  ),
  unit(
    "mm²",
    "mm2,sq mm,square millimetre,square millimetres,square millimeter,square millimeters",
    1,
    1_000_000,
    METRIC,
  ),
  unit("ft²", "ft2,sq ft,square foot,square feet", 9_290_304, 1e8, EXACT_FOOT),
  unit("in²", "in2,sq in,square inch,square inches", 64_516, 1e8, EXACT_FOOT),
  unit("yd²", "yd2,sq yd,square yard,square yards", 83_612_736, 1e8, EXACT_FOOT),
];

/** SI inside this project counts temperature in degrees Celsius. */
const TEMPERATURES: readonly Unit[] = [
  unit("°C", "c,degc,deg c,degrees c,celsius,degrees celsius", 1, 1, "the project's own unit"),
  unit("°F", "f,degf,deg f,degrees f,fahrenheit,degrees fahrenheit", 5, 9, `(t − 32) 5/9; ${SP811}`, {
    zero: 32,
  }),
  unit("K", "kelvin", 1, 1, `t − 273.15; ${SP811}`, { zero: 273.15 }),
];

/** A slope is fall over level length, a plain number. */
const SLOPES: readonly Unit[] = [
  unit("%", "percent,per cent", 1, 100, "parts in a hundred"),
  unit("mm/m", "m/km,‰", 1, 1000, METRIC),
  unit("cm/m", "m/100 m", 1, 100, METRIC),
  unit("in/ft", "", 1, 12, EXACT_FOOT),
  unit("in/10 ft", "", 1, 120, EXACT_FOOT),
  unit("in/100 ft", "", 1, 1200, EXACT_FOOT),
  unit("ft/100 ft", "", 1, 100, EXACT_FOOT),
  unit("°", "deg,degree,degrees", 1, 1, `tangent of the angle; 1° = π/180; ${SP811}`, { isAngle: true }),
];

/** Of the wind. */
const SPEEDS: readonly Unit[] = [
  unit("m/s", "metres/second,meters/second", 1, 1, "the SI unit"),
  unit("km/h", "kph,kmh", 10, 36, METRIC),
  unit("mph", "mi/h,miles/hour,miles/h", 1_609_344, 3_600_000, `1 mile = 1609.344 m; ${SP811}`),
  unit("kn", "knot,knots,kt", 1852, 3600, `1 nautical mile = 1852 m; ${SP811}`),
];

/** Power of the sun on each square metre of level ground. */
const SUNSHINES: readonly Unit[] = [
  unit("W/m²", "w/m2,w/sq m", 1, 1, "the SI unit"),
  unit("kW/m²", "kw/m2,kw/sq m", 1000, 1, METRIC),
];

/**
 * Every unit by kind, commonest first, each factor exact by definition.
 *
 * @source nist-sp-811, Appendix B, from memory
 */
export const UNITS: Readonly<Record<QuantityKind, readonly Unit[]>> = {
  length: LENGTHS,
  head: [...LENGTHS, ...PRESSURES, ...WATER_COLUMNS],
  volume: VOLUMES,
  flow: FLOWS,
  area: AREAS,
  temperature: TEMPERATURES,
  time: TIMES,
  slope: SLOPES,
  speed: SPEEDS,
  sunshine: SUNSHINES,
};

/** Every kind of quantity. */
export const QUANTITY_KINDS = Object.keys(UNITS) as readonly QuantityKind[];
