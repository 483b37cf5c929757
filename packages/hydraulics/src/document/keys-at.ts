import type * as z from "zod/mini";
import { editDistance, slipsIn } from "../tables/edit-distance.js";
import type { PathStep } from "./problem.js";

/** Which keys may stand at a place of a document, and which of them a slip of the pen was meant to be. */

type Schema = z.core.$ZodType;
type Definition = z.core.$ZodTypes["_zod"]["def"];

/** Longer words are no slip of the pen; and a hostile file of long keys costs nothing. */
const LONGEST_SLIP = 24;

/**
 * The keys an object at `steps` may have: of several ways to write it, those of the ways that go with what else it
 * says (a vessel whose shape is "box" has the keys of a box).
 *
 * @param schema    of the whole document
 * @param document  what was read
 * @param steps     where in it the object stands
 * @returns the keys, in the order of the schema; none where no object may stand
 */
export function keysAt(schema: Schema, document: unknown, steps: readonly PathStep[]): readonly string[] {
  const [step, ...rest] = steps;
  const own = objectsOf(schema, document);
  if (step === undefined)
    return [...new Set(own.flatMap((def) => (def.type === "object" ? Object.keys(def.shape) : [])))];
  const value = valueAt(document, step);
  return [
    ...new Set(own.flatMap((def) => schemaBelow(def, step)).flatMap((below) => keysAt(below, value, rest))),
  ];
}

/** Objects, lists and records a schema may be, of the ways that go with the value. */
function objectsOf(schema: Schema, value: unknown): Definition[] {
  const { def } = (schema as z.core.$ZodTypes)._zod;
  if (def.type === "optional") return objectsOf(def.innerType, value);
  if (def.type === "union") return def.options.flatMap((way) => objectsOf(way, value));
  return def.type === "object" && !goesWith(def.shape, value) ? [] : [def];
}

/** Whether no word of the value is another than the one this way asks for. */
const goesWith = (shape: Readonly<Record<string, Schema>>, value: unknown): boolean =>
  Object.entries(shape).every(([key, part]) => {
    const { def } = (part as z.core.$ZodTypes)._zod;
    const found = valueAt(value, key);
    return (
      def.type !== "literal" || found === undefined || (def.values as readonly unknown[]).includes(found)
    );
  });

function schemaBelow(def: Definition, step: PathStep): readonly Schema[] {
  if (def.type === "array") return typeof step === "number" ? [def.element] : [];
  if (def.type === "record") return [def.valueType];
  return def.type === "object" && Object.hasOwn(def.shape, step) ? [def.shape[step] as Schema] : [];
}

const valueAt = (value: unknown, step: PathStep): unknown =>
  typeof value === "object" && value !== null && Object.hasOwn(value, step)
    ? (value as Record<PathStep, unknown>)[step]
    : undefined;

/**
 * The key a slip was meant to be.
 *
 * @param key    as written
 * @param known  keys that may stand there
 * @returns the nearest with no more letters wrong than a slip has, the first of equals; nothing where none is near
 */
export function keyMeant(key: string, known: readonly string[]): string | undefined {
  if (key.length > LONGEST_SLIP) return undefined;
  const word = plain(key);
  const off = (name: string) =>
    Math.abs(name.length - word.length) > slipsIn(word)
      ? Number.POSITIVE_INFINITY
      : editDistance(plain(name), word);
  const [best] = known
    .map((name) => ({ name, off: off(name) }))
    .filter((one) => one.off <= slipsIn(word))
    .sort((one, other) => one.off - other.off);
  return best?.name;
}

/** Capitals, and signs between words, are another way to write the same key. */
const plain = (key: string): string => key.toLowerCase().replaceAll(/[ _-]/g, "");
