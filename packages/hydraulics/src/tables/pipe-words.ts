/** What can be read about a pipe from the words a keeper writes; anything not said is left out. */
export interface PipeWords {
  /** Nominal size as the tables write it: "1-1/4", "25". */
  readonly size?: string;
  readonly unit?: "in" | "mm";
  /** Start of the ids of all families of the material. */
  readonly material?: "pvc" | "pvcu" | "pe" | "pex" | "copper" | "hose" | "drip";
  /** End of the family's id: "sch40", "sdr11", "pn10", or a letter for copper. */
  readonly make?: string;
  /** A material is named that no table holds. */
  readonly isForeign: boolean;
}

const FRACTIONS: Readonly<Record<string, string>> = {
  "¼": "1/4",
  "⅜": "3/8",
  "½": "1/2",
  "⅝": "5/8",
  "¾": "3/4",
};

const DECIMALS: Readonly<Record<string, string>> = {
  "0.25": "1/4",
  "0.375": "3/8",
  "0.5": "1/2",
  "0.625": "5/8",
  "0.75": "3/4",
  "1.25": "1-1/4",
  "1.5": "1-1/2",
};

/** Pressure class of the SDR series: psi by name, ratio in the family's id (ASTM D2241, from memory). */
const CLASSES: Readonly<Record<string, string>> = { "160": "sdr26", "200": "sdr21", "315": "sdr13.5" };

/** Lower case, one way of writing fractions and inches, no lengths and no pressures. */
function plain(words: string): string {
  return words
    .toLowerCase()
    .replace(/copper[\s-]tub(?:e|ing)[\s-]sizes?/g, "cts")
    .replace(/(\d)\s*([¼⅜½⅝¾])/g, (_, whole, part) => `${whole}-${FRACTIONS[part]}`)
    .replace(/[¼⅜½⅝¾]/g, (part) => FRACTIONS[part]!)
    .replace(/\b([12])[\s-]+(\d\/\d)/g, "$1-$2")
    .replace(/''|["”″]|\binch(es)?\b/g, " in ")
    .replace(/\d+(\.\d+)?\s*(psi|ft|feet|foot|m|met(er|re)s?)\b/g, " ")
    .replace(/(^|\s)\.(\d)/g, "$10.$2");
}

/** Make and the words without it, so that its number is not taken for the size. */
function readMake(text: string): { make: string | undefined; rest: string } {
  const patterns: readonly [RegExp, (number: string) => string | undefined][] = [
    [/\bsch(?:ed(?:ule)?)?\.?[\s-]*(40|80)\b/, (number) => `sch${number}`],
    [/\bsidr[\s-]*(\d+(?:\.\d+)?)/, (number) => `sidr${number}`],
    [/\b(?:s?dr)[\s-]*(\d+(?:\.\d+)?)/, (number) => `sdr${number}`],
    [/\bpn[\s-]*(\d+(?:\.\d+)?)/, (number) => `pn${number}`],
    [/\b(?:class|cl)[\s-]*(\d+)\b/, (number) => CLASSES[number]],
    [/\btype[\s-]*([klm])\b/, (letter) => letter],
    [/\bcopper[\s-]+([klm])\b/, (letter) => letter],
    [/\b([klm])[\s-]+copper\b/, (letter) => letter],
    [/\b(cts)\b/, (name) => name],
  ];
  for (const [pattern, make] of patterns) {
    const found = pattern.exec(text);
    if (found === null) continue;
    const rest = text.replace(/copper/.test(found[0]) ? new RegExp(`\\b${found[1]}\\b`) : found[0], " ");
    return { make: make(found[1]!) ?? "unknown", rest };
  }
  return { make: undefined, rest: text };
}

function readSize(text: string): { size?: string; unit?: "in" | "mm" } {
  const asNominal = (number: string) => DECIMALS[number] ?? number;
  const millimetres = /(\d+(?:\.\d+)?)\s*(?:mm\b|millimet)/.exec(text);
  if (millimetres !== null) return { size: millimetres[1]!, unit: "mm" };
  const inches = /(\d-\d\/\d|\d\/\d|\d+(?:\.\d+)?)\s*in\b/.exec(text);
  if (inches !== null) return { size: asNominal(inches[1]!), unit: "in" };
  const bare = /(?:^|[\s,-])(\d-\d\/\d|\d\/\d|\d+(?:\.\d+)?)(?=$|[\s,])/.exec(text);
  if (bare === null) return {};
  const size = asNominal(bare[1]!);
  return { size, unit: Number(size) >= 10 ? "mm" : "in" };
}

/** The first that fits is meant: a drip tube is of polyethylene, a PVC hose is a hose. */
const MATERIALS: readonly [RegExp, NonNullable<PipeWords["material"]>][] = [
  [/hose/, "hose"],
  [/drip|micro[\s-]*tub/, "drip"],
  [/\bu-?pvc|pvc-?u/, "pvcu"],
  [/pvc/, "pvc"],
  [/\bpex\b/, "pex"],
  [/copper/, "copper"],
  [/\bpe\b|\bpoly|\b[hml]dpe\b/, "pe"],
];

/** Reads size, material and make from words such as "1/2 in PVC schedule 40". Never throws. */
export function readPipeWords(words: string): PipeWords {
  const { make, rest } = readMake(plain(words));
  const material = MATERIALS.find(([pattern]) => pattern.test(rest))?.[1];
  return {
    ...readSize(rest),
    ...(material === undefined ? {} : { material }),
    ...(make === undefined ? {} : { make }),
    isForeign: /cpvc|steel|galvan|\biron\b|\babs\b/.test(rest),
  };
}
