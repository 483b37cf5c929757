import type { UsefulLook } from "../../judge/trouble/next-look.js";
import type { Look, Sign } from "../../judge/trouble/signs.js";
import type { UnitSystem } from "../../units/quantity.js";
import { writeNames } from "../name-ranges.js";
import { writeFlow } from "../words.js";

/**
 * What to look at, as a sentence that can be done.
 *
 * @example writeLook({ look: "gives", at: "drinker", id: "line 4" })   // "Work line 4 with a finger, and see what it gives."
 */
export function writeLook({ look, at, id }: Look): string {
  switch (look) {
    case "gives":
      return `Work ${id} with a finger, and see what it gives.`;
    case "drips":
      return `Watch ${id} for a minute with no bird at it.`;
    case "night":
      return `Mark the level of ${id} at dusk, and read it at dawn before the birds drink.`;
    case "day":
      return `Mark the level of ${id}, and read it tomorrow at the same hour against its daily mark.`;
    case "water":
      return `Look into ${id}: where does its water stand?`;
    case "ground":
      if (at === "run") return `Walk along ${id} and feel the ground and the joints: is it wet somewhere?`;
      return at === "source"
        ? `Feel the ground around ${id}: is it wet?`
        : `Feel the litter under ${id}: is it wet?`;
    case "end":
      return `Open the far end of ${id} into a bucket, with no bird drinking, and see what comes.`;
    case "lid":
      return `Take the lid off ${id}, and work a drinker that gave too little.`;
  }
}

/** The same look at each of many drinkers; undefined where it is of one place only. */
export function writeLookAtEach({ look }: Look): string | undefined {
  if (look === "gives") return "Work each with a finger, and see what it gives.";
  return look === "drips" ? "Watch each for a minute with no bird at it." : undefined;
}

/**
 * With an empty vessel filled first where the look needs water.
 *
 * @example writeUsefulLook(trouble.nextLook)   // "Look into bucket: where does its water stand?"
 */
export const writeUsefulLook = ({ look, afterFilling }: UsefulLook, words = writeLook(look)): string =>
  afterFilling ? `Pour some water in, then ${words.charAt(0).toLowerCase()}${words.slice(1)}` : words;

const ANSWER_WORDS: Readonly<Record<string, Readonly<Record<string, string>>>> = {
  gives: { dry: "nothing comes", weak: "it is weak", fine: "it does well" },
  drips: { drips: "it drips", holds: "it holds" },
  night: { falls: "it falls overnight", holds: "it stands still overnight" },
  day: {
    still: "it does not fall",
    less: "it falls less than marked",
    asMarked: "it falls as marked",
    faster: "it falls faster",
  },
  water: { empty: "it is empty", low: "it is lower than thought", asThought: "it stands where it should" },
  ground: { wet: "it is wet", dry: "it is dry" },
  end: { nothing: "nothing comes", little: "little comes", plenty: "it pours" },
  lid: { helps: "the drinker gives more", noChange: "nothing changes" },
};

/**
 * An answer to a look, from its subject on: "it is weak".
 *
 * @example writeLookAnswer({ look: "gives", at: "drinker", id: "line 4" }, "dry")   // "nothing comes"
 */
export const writeLookAnswer = (look: Look, sees: string): string => ANSWER_WORDS[look.look][sees] ?? sees;

const SIGN_WORDS: Readonly<Record<string, Readonly<Record<string, string>>>> = {
  gives: { dry: "dry", weak: "weak", fine: "fine" },
  drips: { drips: "dripping", holds: "not dripping" },
  night: { falls: "falls overnight", holds: "holds overnight" },
  day: {
    still: "does not fall",
    less: "falls less than marked",
    asMarked: "falls as marked",
    faster: "falls faster than marked",
  },
  water: { empty: "found empty", low: "lower than thought", asThought: "as full as thought" },
  ground: { wet: "wet ground", dry: "dry ground" },
  end: {
    nothing: "nothing from its opened end",
    little: "little from its opened end",
    plenty: "plenty from its opened end",
  },
  lid: { helps: "better with the lid off", noChange: "no better with the lid off" },
};

/** What a sign says of its place: "dry", "falls overnight", "60 mL/min". */
export function writeSight(sign: Sign, system: UnitSystem): string {
  return sign.look === "jug" ? writeFlow(sign.flow, system) : (SIGN_WORDS[sign.look][sign.sees] ?? sign.sees);
}

/** Beyond this an answer is said to speak for one of the two. */
const SPEAKS = 0.65;

/**
 * What each answer would speak for: "nothing comes: the first; it does well: the second".
 *
 * @example writeAnswers(trouble.nextLook)   // ["it is empty: the first (over 99 %)", "it is lower than thought: it could be either", "it stands where it should: the second (98 %)"]
 */
export function writeAnswers({ look, answers }: UsefulLook): string[] {
  return answers.map(({ sees, firstShare }) => {
    const words = writeLookAnswer(look, sees);
    if (firstShare >= SPEAKS) return `${words}: the first (${percent(firstShare)})`;
    if (firstShare <= 1 - SPEAKS) return `${words}: the second (${percent(1 - firstShare)})`;
    return `${words}: it could be either`;
  });
}

/**
 * Never 0 nor 100 %: no look is as sure as that.
 *
 * @example writeChance(0.341)   // "34 %"
 */
export const percent = (share: number): string =>
  share < 0.01 ? "under 1 %" : share > 0.99 ? "over 99 %" : `${Math.round(share * 100)} %`;

/**
 * Signs by what they say: "hen line 13 to 24 dry; barrel falls overnight".
 *
 * @example writeSigns(trouble.signs, "metric")   // "line 4 dry"
 */
export function writeSigns(signs: readonly Sign[], system: UnitSystem): string {
  const bySight = new Map<string, string[]>();
  for (const sign of signs) {
    const words = writeSight(sign, system);
    bySight.set(words, [...(bySight.get(words) ?? []), sign.id]);
  }
  return [...bySight]
    .map(([words, ids]) =>
      /ground$/.test(words) ? `${words} at ${writeNames(ids)}` : `${writeNames(ids)} ${words}`,
    )
    .join("; ");
}
