import type { Random } from "../../packages/hydraulics/src/numerics/random.js";

/** What readers may stumble over: ends, signs, numbers, dates, units, escapes, odd letters. */
const STUMBLES: readonly string[] = [
  ..."\n \r\n \t , ; \" ' : { } [ ] \\ / . - + % # = \u0000 \ufeff \u202e \ud800 é 🐔 ½ ″".split(" "),
  ..."0 -0 1e999 -1e-999 1e308 9007199254740993 00 1. .5 1,5 1.234,5 NaN Infinity null true T M -9999".split(
    " ",
  ),
  ..."2026-02-30 31.12.2026 12/31/2026 2/29/2023 0000-01-01 9999-12-31 20260101 24:00 Jan".split(" "),
  ..."m mm cm in ft L gal degC °F PRCP TMIN TMAX date rain station __proto__ constructor toString".split(" "),
  ...[" ", "\u00a0", "//", "/*", "*/", '"":', "{}", "[]", "\\u0000", "\\ud800", "#plan="],
];

const LONGEST = 60_000;

/** A text with one to six things changed in it: signs, words, numbers, lines, pieces of another text. */
export function mutatedText(text: string, other: string, random: Random): string {
  let now = text;
  for (let k = random.integerBelow(6); k >= 0; k -= 1)
    now = CHANGES[random.integerBelow(CHANGES.length)]!(now, other, random);
  return now.slice(0, LONGEST);
}

type Change = (text: string, other: string, random: Random) => string;

const oneOf = <T>(list: readonly T[], random: Random): T => list[random.integerBelow(list.length)]!;
const place = (text: string, random: Random) => random.integerBelow(text.length + 1);
/** A piece of a text: most are short. */
function piece(text: string, random: Random): readonly [number, number] {
  const from = place(text, random);
  const most = oneOf([1, 2, 8, 64, text.length], random);
  return [from, Math.min(text.length, from + random.integerBelow(most + 1))];
}
const put = (text: string, [from, to]: readonly [number, number], between: string) =>
  text.slice(0, from) + between + text.slice(to);

/** Another in place of one of the text's numbers, words or lines. */
function swap(text: string, what: RegExp, random: Random, next: (found: string) => string): string {
  const found = [...text.slice(0, LONGEST).matchAll(what)];
  if (found.length === 0) return text;
  const { index, 0: was } = oneOf(found, random);
  return put(text, [index, index + was.length], next(was));
}

const CHANGES: readonly Change[] = [
  (text, _, random) => put(text, piece(text, random), ""),
  (text, _, random) => put(text, piece(text, random), oneOf(STUMBLES, random)),
  (text, _, random) => put(text, [place(text, random), text.length], ""),
  (text, _, random) => {
    const at = place(text, random);
    return put(text, [at, at], oneOf(STUMBLES, random));
  },
  (text, _, random) => {
    const at = place(text, random);
    return put(
      text,
      [at, at + 1],
      String.fromCharCode(random.integerBelow(oneOf([128, 256, 65_536], random))),
    );
  },
  (text, _, random) => {
    const [from, to] = piece(text, random);
    const at = place(text, random);
    return put(text, [at, at], text.slice(from, to).repeat(1 + random.integerBelow(3)));
  },
  (text, other, random) => {
    const [from, to] = piece(other, random);
    return put(text, piece(text, random), other.slice(from, to));
  },
  (text, _, random) =>
    swap(text, /-?\d+(?:\.\d+)?/g, random, (was) =>
      oneOf(
        [`${Number(was) + 1}`, `${-Number(was)}`, `${was}0`, `${Number(was) * 1e6}`, "0", "1e999"],
        random,
      ),
    ),
  (text, other, random) =>
    swap(text, /[A-Za-z]+/g, random, () =>
      oneOf(other.slice(0, LONGEST).match(/[A-Za-z]+/g) ?? ["a"], random),
    ),
  (text, _, random) => swap(text, /[^\n]*\n/g, random, (was) => oneOf(["", was + was, was.trim()], random)),
];
