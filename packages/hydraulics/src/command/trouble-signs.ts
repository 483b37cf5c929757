import { readNames } from "../document/name-list.js";
import type { Place, Sight, Sign } from "../judge/trouble/signs.js";
import { readQuantity } from "../units/quantity.js";

/** Names of a line by kind of place, as its check prints them. */
export type LineNames = Readonly<Record<Place, readonly string[]>>;

type Fault = { readonly fault: string };
type Own = Readonly<Record<string, string | undefined>>;

/** Options that list drinkers, and what is seen of each. */
const DRINKER_OPTIONS = {
  dry: { look: "gives", sees: "dry" },
  weak: { look: "gives", sees: "weak" },
  fine: { look: "gives", sees: "fine" },
  drips: { look: "drips", sees: "drips" },
  holds: { look: "drips", sees: "holds" },
} as const;

/** Words of --level, and what is seen of the source. */
const LEVEL_WORDS = {
  "falls-overnight": { look: "night", sees: "falls" },
  "holds-overnight": { look: "night", sees: "holds" },
  "does-not-fall": { look: "day", sees: "still" },
  "falls-less": { look: "day", sees: "less" },
  "falls-as-marked": { look: "day", sees: "asMarked" },
  "falls-faster": { look: "day", sees: "faster" },
  "found-empty": { look: "water", sees: "empty" },
  low: { look: "water", sees: "low" },
  "as-thought": { look: "water", sees: "asThought" },
} as const;

const END_WORDS = { nothing: "nothing", little: "little", plenty: "plenty" } as const;
const LID_WORDS = { helps: "helps", "no-change": "noChange" } as const;

export const SIGN_OPTIONS = [
  ...Object.keys(DRINKER_OPTIONS),
  ...["level", "wet", "not-wet", "jug", "end", "lid", "after-filling"],
];

/** Reads what the keeper sees from the options, or says in one sentence what is wrong with them. */
export function readSigns(own: Own, names: LineNames): readonly Sign[] | Fault {
  const parts = [
    ...Object.entries(DRINKER_OPTIONS).map(([option, sees]) =>
      drinkerSigns(option, own[option], sees, names),
    ),
    levelSigns(own["level"], names.source),
    groundSigns("wet", own["wet"], "wet", names),
    groundSigns("not-wet", own["not-wet"], "dry", names),
    namedSigns("end", own["end"], { at: "run", words: END_WORDS }, names),
    namedSigns("lid", own["lid"], { at: "source", words: LID_WORDS }, names),
    jugSigns(own["jug"], names.drinker),
  ];
  const signs: Sign[] = [];
  for (const part of parts) {
    if ("fault" in part) return part;
    signs.push(...part);
  }
  return toldTwice(signs) ?? afterFilling(own["after-filling"], signs, names.drinker);
}

/** Marks what was seen of drinkers once some water was poured into an empty source again. */
function afterFilling(
  typed: string | undefined,
  signs: readonly Sign[],
  drinkers: readonly string[],
): readonly Sign[] | Fault {
  if (typed === undefined) return signs;
  const read = readNames(typed, drinkers);
  if (!read.ok) return { fault: `--after-filling: no drinker is called ${read.found}. ${read.allowed}` };
  const isTold = (id: string) => signs.some((sign) => sign.at === "drinker" && sign.id === id);
  const untold = read.names.find((id) => !isTold(id));
  if (untold !== undefined)
    return {
      fault: `--after-filling: what was seen of ${untold} then? Tell it with --dry, --weak or --fine too.`,
    };
  return signs.map((sign) =>
    sign.at === "drinker" && read.names.includes(sign.id) ? { ...sign, afterFilling: true } : sign,
  );
}

function drinkerSigns(
  option: string,
  typed: string | undefined,
  { look, sees }: Pick<Sight, "look" | "sees">,
  names: LineNames,
): readonly Sign[] | Fault {
  if (typed === undefined) return [];
  const read = readNames(typed, names.drinker);
  if (!read.ok) return { fault: `--${option}: no drinker is called ${read.found}. ${read.allowed}` };
  return read.names.map((id) => ({ look, at: "drinker", id, sees }));
}

/** A word alone is of the one source there is; of several, each says which: "barrel: falls-overnight". */
function levelSigns(typed: string | undefined, sources: readonly string[]): readonly Sign[] | Fault {
  if (typed === undefined) return [];
  const signs: Sign[] = [];
  for (const piece of typed.split(",").map((one) => one.trim())) {
    const [, named, word] = /^(?:(.*?)\s*:\s*)?(.*)$/.exec(piece) ?? [];
    const sight = Object.hasOwn(LEVEL_WORDS, word)
      ? LEVEL_WORDS[word as keyof typeof LEVEL_WORDS]
      : undefined;
    if (sight === undefined)
      return { fault: `--level is ${Object.keys(LEVEL_WORDS).join(", ")}; not ${JSON.stringify(word)}.` };
    const source = whichSource("level", named, sources, word);
    if (typeof source !== "string") return source;
    signs.push({ at: "source", id: source, ...sight });
  }
  return signs;
}

/** The source an option names; the only one where it names none. */
export function whichSource(
  option: string,
  named: string | undefined,
  sources: readonly string[],
  word: string,
): string | Fault {
  if (named === undefined && sources.length === 1) return sources[0];
  if (named === undefined)
    return { fault: `--${option}: of which source? Write for instance "${sources[0]}: ${word}".` };
  if (sources.includes(named)) return named;
  return {
    fault: `--${option}: no source is called ${JSON.stringify(named)}. There are ${sources.join(", ")}.`,
  };
}

function groundSigns(
  option: string,
  typed: string | undefined,
  sees: "wet" | "dry",
  names: LineNames,
): readonly Sign[] | Fault {
  if (typed === undefined) return [];
  const signs: Sign[] = [];
  for (const piece of typed.split(",").map((one) => one.trim())) {
    const at = (["run", "source"] as const).find((place) => names[place].includes(piece));
    const read = at === undefined ? readNames(piece, names.drinker) : { ok: true as const, names: [piece] };
    if (!read.ok)
      return {
        fault: `--${option}: no run, source or drinker is called ${read.found}. Runs: ${names.run.slice(0, 6).join(", ")}.`,
      };
    signs.push(...read.names.map((id): Sign => ({ look: "ground", at: at ?? "drinker", id, sees })));
  }
  return signs;
}

/** Pieces like "feed: little". */
function namedSigns(
  option: "end" | "lid",
  typed: string | undefined,
  { at, words }: { readonly at: "run" | "source"; readonly words: Readonly<Record<string, string>> },
  names: LineNames,
): readonly Sign[] | Fault {
  if (typed === undefined) return [];
  const choices = Object.keys(words);
  const signs: Sign[] = [];
  for (const piece of typed.split(",").map((one) => one.trim())) {
    const [, id, word] = /^(.*?)\s*:\s*(.*)$/.exec(piece) ?? [];
    if (id === undefined || !Object.hasOwn(words, word))
      return {
        fault: `--${option} is a ${at} and ${choices.join(" or ")}, for instance "${names[at][0]}: ${choices[0]}"; not ${JSON.stringify(piece)}.`,
      };
    if (!names[at].includes(id))
      return {
        fault: `--${option}: no ${at} is called ${JSON.stringify(id)}. There are ${names[at].slice(0, 6).join(", ")}.`,
      };
    signs.push({ look: option, at, id, sees: words[word] });
  }
  return signs;
}

/** Pieces like "hen line 3: 60 mL/min" or "hen line 3: 250 mL in 4 min". */
function jugSigns(typed: string | undefined, drinkers: readonly string[]): readonly Sign[] | Fault {
  if (typed === undefined) return [];
  const signs: Sign[] = [];
  for (const piece of typed.split(/[,;]/).map((one) => one.trim())) {
    const [, name, amount] = /^(.*?)\s*:\s*(.*)$/.exec(piece) ?? [];
    const flow = amount === undefined ? undefined : readJug(amount);
    if (flow === undefined)
      return {
        fault: `--jug is a drinker and what it gives, for instance "${drinkers[0]}: 250 mL in 4 min"; not ${JSON.stringify(piece)}.`,
      };
    const read = readNames(name, drinkers);
    if (!read.ok) return { fault: `--jug: no drinker is called ${read.found}. ${read.allowed}` };
    signs.push(...read.names.map((id): Sign => ({ look: "jug", at: "drinker", id, flow })));
  }
  return signs;
}

function readJug(amount: string): number | undefined {
  const [volumeTyped, timeTyped] = amount.split(/\s+in\s+/);
  if (timeTyped === undefined) {
    const flow = readQuantity(amount, "flow");
    return flow.ok && flow.quantity.si >= 0 ? flow.quantity.si : undefined;
  }
  const [volume, time] = [readQuantity(volumeTyped, "volume"), readQuantity(timeTyped, "time")];
  if (!volume.ok || !time.ok || volume.quantity.si < 0 || time.quantity.si <= 0) return undefined;
  return volume.quantity.si / time.quantity.si;
}

/** One place cannot show two things to one look. */
function toldTwice(signs: readonly Sign[]): Fault | undefined {
  const told = new Map<string, Sign>();
  for (const sign of signs) {
    const key = `${sign.look} ${sign.at} ${sign.id}`;
    const before = told.get(key);
    if (before !== undefined) {
      const words = [before, sign].map((one) => ("sees" in one ? one.sees : "measured"));
      return { fault: `${sign.id} is told twice: ${words.join(" and ")}. Leave one out.` };
    }
    told.set(key, sign);
  }
  return undefined;
}
