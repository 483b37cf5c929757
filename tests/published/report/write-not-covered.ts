import { readFileSync } from "node:fs";
import { type Compared, tableRow } from "./compared.js";
import { listEquations, namesInOracle } from "./equations.js";
import { originOf } from "./summary.js";

interface NotCovered {
  readonly methods: readonly string[];
  readonly leftOut: readonly {
    readonly source: string;
    readonly where: string;
    readonly what: string;
    readonly why: string;
  }[];
}

/** Cases read at a source that numbers nothing: a web page, a talk, an abstract. */
function writePlaces(compared: readonly Compared[]): string {
  const told = compared.filter((each) => originOf(each) === "seen" && !/\d/.test(each.one.page));
  const ids = told.map(({ one }) => one.id).join(", ");
  return `${told.length} cases were read at pages that number nothing (web pages, an abstract), so that their place is told in words: ${ids}.`;
}

/** What no published figure and no other implementation was held against, as far as that can be counted; then by hand. */
export function writeNotCovered(compared: readonly Compared[], ran: ReadonlySet<string>): string {
  const equations = listEquations();
  const inOracle = namesInOracle();
  const unmet = equations.filter(({ file, name }) => !ran.has(`${file} ${name}`));
  const asked = unmet.filter(({ name }) => inOracle.has(name));
  const neither = unmet.filter(({ name }) => !inOracle.has(name));
  const { methods, leftOut } = JSON.parse(
    readFileSync(new URL("../not-covered.json", import.meta.url), "utf8"),
  ) as NotCovered;
  return `Of ${equations.length} numbered equations of physics and birds, ${equations.length - unmet.length} run in at least one case below (counted as the cases run). ${asked.length} more
are put to another implementation (scipy, fluids, or brute force). ${writeNeither(neither)}

Beyond single equations:

${methods.map((method) => `- ${method}`).join("\n")}

${writePlaces(compared)}

Worked examples that were looked at and are not here:

${[
  tableRow(["source", "where", "what", "why not"]),
  "|---|---|---|---|",
  ...leftOut.map(({ source, where, what, why }) => tableRow([`\`${source}\``, where, what, why])),
].join("\n")}`;
}

function writeNeither(equations: readonly { readonly file: string; readonly name: string }[]): string {
  if (equations.length === 0) return "None has our own laws and worked examples alone.";
  return `Those that have our own laws and worked examples alone are ${equations.length} (one that only wraps another which ran stands here too):

${writeByFile(equations)}`;
}

function writeByFile(equations: readonly { readonly file: string; readonly name: string }[]): string {
  const files = [...new Set(equations.map(({ file }) => file))];
  const namesOf = (file: string) =>
    equations.filter((one) => one.file === file).map(({ name }) => `\`${name}\``);
  return files.map((file) => `- ${file}: ${namesOf(file).join(", ")}`).join("\n");
}
