import { editDistance } from "../tables/edit-distance.js";

export type NamesRead =
  | { readonly ok: true; readonly names: readonly string[] }
  | { readonly ok: false; readonly found: string; readonly allowed: string };

/** Names shown of a list that has many. */
const MOST_SHOWN = 4;
/** Numbers in one range. */
const MOST_IN_RANGE = 100_000;

/**
 * Reads a list of names as people type them: commas between, ranges of numbered names ("hen line 3-8"), and the common
 * part of numbered names for all of them ("hen line"). A name of the list as it stands goes before any other reading.
 *
 * @param typed  what was typed
 * @param known  all names there are, in their order
 * @returns the names, each once, in the order typed; or the first piece that is none
 */
export function readNames(typed: string, known: readonly string[]): NamesRead {
  const all = new Set(known);
  // A name may itself hold a comma.
  if (all.has(typed.trim())) return { ok: true, names: [typed.trim()] };
  const names = new Set<string>();
  for (const piece of typed.split(",").map((one) => one.trim())) {
    const read = piece === "" ? undefined : readPiece(piece, known, all);
    if (read === undefined)
      return { ok: false, found: JSON.stringify(piece), allowed: allowedNames(piece, known) };
    for (const name of read) names.add(name);
  }
  return { ok: true, names: [...names] };
}

function readPiece(
  piece: string,
  known: readonly string[],
  all: ReadonlySet<string>,
): readonly string[] | undefined {
  if (all.has(piece)) return [piece];
  if (piece.toLowerCase() === "all" && known.length > 0) return known;
  const range = /^(.*?)\s*(\d{1,7})\s*(?:-|–|to)\s*(\d{1,7})$/.exec(piece);
  if (range !== null) return readRange(range, known, all);
  const numbered = known.filter((name) => name.replace(/ \d+$/, "") === piece);
  if (numbered.length > 0) return numbered;
  const same = known.filter((name) => name.toLowerCase() === piece.toLowerCase());
  if (same.length === 1) return same;
  return /^\d+$/.test(piece) ? readRange([piece, "", piece, piece], known, all) : undefined;
}

/** Numbers alone are read where every numbered name begins alike. */
function readRange(
  [, typedBase, typedFrom, typedTo]: readonly string[],
  known: readonly string[],
  all: ReadonlySet<string>,
): string[] | undefined {
  const base = typedBase === "" ? commonBase(known) : typedBase;
  const [from, to] = [Number(typedFrom), Number(typedTo)];
  if (base === undefined || to < from || to - from > MOST_IN_RANGE) return undefined;
  const names: string[] = [];
  for (let k = from; k <= to; k += 1) {
    const name = `${base} ${k}`;
    if (!all.has(name)) return undefined;
    names.push(name);
  }
  return names;
}

function commonBase(known: readonly string[]): string | undefined {
  const bases = new Set(known.filter((name) => / \d+$/.test(name)).map((name) => name.replace(/ \d+$/, "")));
  return bases.size === 1 ? [...bases][0] : undefined;
}

function allowedNames(piece: string, known: readonly string[]): string {
  if (known.length === 0) return "There is none.";
  const shown = known.slice(0, MOST_SHOWN).join(", ");
  const more = known.length > MOST_SHOWN ? `, ... ${known[known.length - 1]}` : "";
  const nearest = known.reduce((best, name) =>
    editDistance(name.slice(0, 60), piece.slice(0, 60)) < editDistance(best.slice(0, 60), piece.slice(0, 60))
      ? name
      : best,
  );
  const near = editDistance(nearest, piece.slice(0, 60)) <= 2 ? ` Do you mean ${nearest}?` : "";
  return `There are ${shown}${more}.${near}`;
}
