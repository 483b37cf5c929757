import type { Plugin } from "vite";

/** Which argument of each function of the plan's schema, and of the list of units, is a description. */
const DESCRIPTION_OF: Readonly<Record<string, number>> = {
  clock: 0,
  count: 2,
  date: 0,
  describe: 1,
  drinkersAtWork: 0,
  longText: 1,
  name: 0,
  place: 0,
  quantity: 2,
  share: 0,
  text: 1,
  unit: 4,
};

/** The files that hold them. */
const DESCRIBED = /[\\/](?:document[\\/][a-z-]*schema(?:-parts)?|units[\\/]unit-list)\.[jt]s$/;

/** A piece of code as the parser gives it. */
interface Piece {
  readonly type: string;
  readonly start: number;
  readonly end: number;
  readonly [key: string]: unknown;
}

/**
 * Leaves the descriptions of the plan's keys and how units are defined out of a build: they are for the documents, which are made from the
 * sources, and no message of the reader quotes them. Nothing else of the schema is touched.
 */
export function withoutDescriptions(): Plugin {
  return {
    name: "headfall-without-descriptions",
    apply: "build",
    enforce: "post",
    transform(code, id) {
      if (!DESCRIBED.test(id.replace(/\?.*$/, ""))) return undefined;
      const cuts = descriptionsIn(this.parse(code) as unknown as Piece);
      return cuts.length === 0 ? undefined : { code: emptied(code, cuts), map: null };
    },
  };
}

/** Texts given as descriptions, in the order of the code. */
export function descriptionsIn(program: Piece): Piece[] {
  const found: Piece[] = [];
  const look = (piece: Piece) => {
    if (piece.type === "CallExpression") {
      const callee = piece["callee"] as Piece;
      const at = callee.type === "Identifier" ? DESCRIPTION_OF[callee["name"] as string] : undefined;
      const given = at === undefined ? undefined : (piece["arguments"] as readonly Piece[])[at];
      if (given !== undefined && isText(given)) found.push(given);
    }
    for (const value of Object.values(piece)) {
      for (const one of Array.isArray(value) ? value : [value]) if (isPiece(one)) look(one);
    }
  };
  look(program);
  return found.sort((a, b) => a.start - b.start);
}

const isPiece = (value: unknown): value is Piece =>
  typeof value === "object" && value !== null && typeof (value as { type?: unknown }).type === "string";

const isText = ({ type, ...piece }: Piece) =>
  type === "TemplateLiteral" || (type === "Literal" && typeof piece["value"] === "string");

function emptied(code: string, cuts: readonly Piece[]): string {
  let text = "";
  let from = 0;
  for (const { start, end } of cuts) {
    text += `${code.slice(from, start)}""`;
    from = end;
  }
  return text + code.slice(from);
}
