import type { PlanDifference } from "../../document/plan-differences.js";
import { writeFound } from "../../document/problem.js";
import type { Variant, VariantFigures } from "../../search/compare-variants.js";
import { type UnitSystem, writeQuantity } from "../../units/quantity.js";
import type { Paint } from "../check-text.js";
import { writeDuration } from "../durations.js";
import { writeTable } from "../text-table.js";
import { writeFlow, writeHead, writeMargin, writeMass, writeVolume } from "../words.js";

/** One figure of the comparison: its words, its value, and which way is the better one, if either is. */
export interface VariantRow {
  readonly key: keyof VariantFigures;
  readonly words: string;
  readonly better: "more" | "less" | undefined;
  /** For comparing, in SI; undefined where the variant has no such figure. */
  readonly value: (figures: VariantFigures) => number | undefined;
  readonly write: (figures: VariantFigures, system: UnitSystem, money: string | undefined) => string;
}

const figure = (
  key: keyof VariantFigures,
  words: string,
  better: VariantRow["better"],
  value: VariantRow["value"],
  write: (value: number, system: UnitSystem, money: string | undefined) => string,
  none = "-",
): VariantRow => ({
  key,
  words,
  better,
  value,
  write: (figures, system, money) => {
    const known = value(figures);
    return known === undefined ? none : write(known, system, money);
  },
});

/** So many of all its drinkers; the greatest share is the best. */
const share = (
  key: keyof VariantFigures,
  words: string,
  count: (figures: VariantFigures) => number | undefined,
): VariantRow => ({
  key,
  words,
  better: "more",
  value: (figures) => {
    const counted = count(figures);
    return counted === undefined || figures.drinkers === 0 ? undefined : counted / figures.drinkers;
  },
  write: (figures) => {
    const counted = count(figures);
    return counted === undefined ? "-" : `${counted} of ${figures.drinkers}`;
  },
});

const length = (metres: number, system: UnitSystem) => writeQuantity(metres, "length", system);
const NEVER = "not seen";

/** What is told of every variant, in this order. */
export const VARIANT_ROWS: readonly VariantRow[] = [
  share("counts", "drinkers that are good", ({ counts }) => counts.good),
  figure("counts", "starve", "less", ({ counts }) => counts.starves, String),
  figure("counts", "drip", "less", ({ counts }) => counts.drips, String),
  figure("counts", "dry", "less", ({ counts }) => counts.dry, String),
  share("sure", "verdicts that are sure", ({ sure }) => sure),
  {
    ...figure("worst", "least head to spare", "more", ({ worst }) => worst?.margin, writeMargin),
    write: ({ worst }, system) =>
      worst === undefined ? "-" : `${writeMargin(worst.margin, system)} at ${worst.drinker}`,
  },
  figure("leastFlow", "least flow, lowest and busiest", "more", ({ leastFlow }) => leastFlow, writeFlow),
  figure("idleHead", "greatest head, full and idle", undefined, ({ idleHead }) => idleHead, writeHead),
  figure("stand", "highest stand", "less", ({ stand }) => stand, length),
  figure("mass", "greatest mass on a stand", "less", ({ mass }) => mass, writeMass),
  figure("usable", "water that can be drawn", "more", ({ usable }) => usable, writeVolume),
  figure("pipe", "pipe", "less", ({ pipe }) => pipe, length),
  figure("standing", "water standing in it", "less", ({ standing }) => standing, writeVolume),
  figure(
    "price",
    "price of the pipe",
    "less",
    ({ price }) => price,
    (price, _, money) => `${price.toFixed(2)}${money === undefined ? "" : ` ${money}`}`,
  ),
  figure("draw", "drawn a day, to size on", undefined, ({ draw }) => draw, writeVolume),
  figure("lasts", "to the first dry drinker", "more", ({ lasts }) => lasts, writeDuration, NEVER),
  figure("lastsHot", "the same in the heat", "more", ({ lastsHot }) => lastsHot, writeDuration, NEVER),
];

/**
 * Which variants have the best figure of a row; none where all are alike, or no way is better.
 *
 * @example bestVariants(VARIANT_ROWS[0], variants)   // [false, false]
 */
export function bestVariants({ better, value }: VariantRow, variants: readonly Variant[]): boolean[] {
  const values = variants.map(({ figures }) => value(figures));
  const known = values.filter((one) => one !== undefined);
  const best = better === "more" ? Math.max(...known) : Math.min(...known);
  const isNear = (one: number) => Math.abs(one - best) <= 1e-9 * Math.max(1e-9, Math.abs(best));
  const isUndecided = better === undefined || known.length < 2 || known.every(isNear);
  return values.map((one) => !isUndecided && one !== undefined && isNear(one));
}

/** Variants beside each other as text for a terminal: figures first, then what each plan says differently. */
export function writeVariantsText(variants: readonly Variant[], system: UnitSystem, paint: Paint): string {
  const rows = VARIANT_ROWS.filter((row) => variants.some(({ figures }) => row.value(figures) !== undefined));
  const table = writeTable({
    columns: ["", ...variants.map((_, v) => nameOfVariant(variants, v))],
    alignRight: [false, ...variants.map(() => true)],
    rows: rows.map((row) => {
      const best = bestVariants(row, variants);
      const cells = variants.map(
        ({ figures, money }, v) => `${row.write(figures, system, money)}${best[v] ? " *" : "  "}`,
      );
      return [row.words, ...cells];
    }),
  });
  const told = variants.slice(1).map((variant, v) => {
    const lines = variant.differences.map((difference) => `  ${writeDifference(difference)}`);
    const title = paint(`${nameOfVariant(variants, v + 1)}, against ${nameOfVariant(variants, 0)}`, "title");
    return `${title}\n${lines.length === 0 ? "  says the same" : lines.join("\n")}`;
  });
  const legend = paint("* the best of the row.", "quiet");
  return `${[`${table}\n${legend}`, writeConclusion(variants), ...told].join("\n\n")}\n`;
}

/**
 * The plan's name, or its place where it has none; with its place where two have the same.
 *
 * @example nameOfVariant(variants, 1)   // "warm"
 */
export function nameOfVariant(variants: readonly { readonly name: string }[], v: number): string {
  const { name } = variants[v];
  const place = `plan ${v + 1}`;
  if (name === "") return place;
  return variants.filter((variant) => variant.name === name).length > 1 ? `${name} (${place})` : name;
}

/**
 * "sources[0].stand (barrel): 45 cm, was 60 cm"
 *
 * @example writeDifference({ path: "runs[0].pipe", part: "line", first: "3/4 in PE", other: "1 in PE" })   // "runs[0].pipe (line): \"1 in PE\", the first has \"3/4 in PE\""
 */
export function writeDifference({ path, part, first, other }: PlanDifference): string {
  const where = part === undefined ? path : `${path} (${part})`;
  if (first === undefined) return `${where}: ${writeFound(other)}, which the first does not have`;
  if (other === undefined) return `${where}: nothing, the first has ${writeFound(first)}`;
  return `${where}: ${writeFound(other)}, the first has ${writeFound(first)}`;
}

/**
 * Which of them work.
 *
 * @example writeConclusion(variants)   // "In none of them is every drinker good."
 */
export function writeConclusion(variants: readonly Variant[]): string {
  const names = variants.map((_, v) => nameOfVariant(variants, v));
  const good = names.filter((_, v) => variants[v].figures.verdict === "good");
  if (good.length === variants.length) return "Every drinker is good in all of them.";
  if (good.length === 0) return "In none of them is every drinker good.";
  return `Every drinker is good in ${good.map((name) => JSON.stringify(name)).join(" and ")} only.`;
}
