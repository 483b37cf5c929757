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
    .replace(/\bthree[\s-]quarters?\b/g, "3/4")
    .replace(/\bhalf\b/g, "1/2")
    .replace(/\bquarter\b/g, "1/4")
    .replace(/\bone[\s-]+inch\b/g, "1 in")
    .replace(/copper[\s-]tub(?:e|ing)[\s-]sizes?/g, "cts")
    .replace(/(\d)\s*([¼⅜½⅝¾])/g, (_, whole, part) => `${whole}-${FRACTIONS[part]}`)
    .replace(/[¼⅜½⅝¾]/g, (part) => FRACTIONS[part]!)
    .replace(/\b([12])[\s-]+(\d\/\d)/g, "$1-$2")
    .replace(/''|["”″]|\binch(es)?\b/g, " in ")
    .replace(/\d+(\.\d+)?\s*(psi|ft|feet|foot|m|met(er|re)s?)\b/g, " ")
    .replace(/(^|\s)\.(\d)/g, "$10.$2");
}

/** Each names the make in its one group, which is then not taken for the size. */
const MAKES: readonly [RegExp, (named: string) => string | undefined][] = [
  [/\bsch(?:ed(?:ule)?)?\.?[\s-]*(40|80)\b/d, (number) => `sch${number}`],
  [/\bsidr[\s-]*(\d+(?:\.\d+)?)/d, (number) => `sidr${number}`],
  [/\b(?:s?dr)[\s-]*(\d+(?:\.\d+)?)/d, (number) => `sdr${number}`],
  [/\bpn[\s-]*(\d+(?:\.\d+)?)/d, (number) => `pn${number}`],
  [/\b(?:class|cl)[\s-]*(\d+)\b/d, (number) => CLASSES[number]],
  [/\btype[\s-]*([klm])\b/d, (letter) => letter],
  [/\bcopper[\s-]+([klm])\b/d, (letter) => letter],
  [/\b([klm])[\s-]+copper\b/d, (letter) => letter],
  [/\b(cts)\b/d, (name) => name],
  // "PVC 40 1/2": beside a fraction of an inch, 40 is a schedule and not a size.
  [/^(?=.*pvc)(?=.*\d\/\d).*?(?<![\d/.-])(40|80)\b(?!\s*mm)/d, (number) => `sch${number}`],
];

function readMake(text: string): { make: string | undefined; rest: string } {
  for (const [pattern, make] of MAKES) {
    const found = pattern.exec(text);
    if (found === null) continue;
    const [start, end] = found.indices![1]!;
    return { make: make(found[1]!) ?? "unknown", rest: `${text.slice(0, start)} ${text.slice(end)}` };
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
