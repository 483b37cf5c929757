import { readFileSync, writeFileSync } from "node:fs";

const explainedPath = new URL("./explained.json", import.meta.url);
const scorePath = new URL("./score.json", import.meta.url);
const pagePath = new URL("../../docs/method/mutation.md", import.meta.url);
const BEGIN = "<!-- written by npm run mutate -->\n";
const END = "<!-- to here -->\n";

/** By which a mutant is known again after its file has changed elsewhere. */
export const keyOf = ({ file, code, at, was, became }) =>
  [file, code, at, `${oneLine(was)} -> ${oneLine(became)}`].join(" | ");

const oneLine = (text) => text.replace(/\s+/g, " ");

/** Mutants that no test can tell from what is written, with the reason: [{ why, mutants }]. */
export const readExplained = () => JSON.parse(readFileSync(explainedPath, "utf8"));

export const readScore = () => JSON.parse(readFileSync(scorePath, "utf8"));

/** Puts the results of a run in the place of what was known of the same files. */
export function keepScore(results, { date, oneIn }) {
  const known = new Set(readExplained().flatMap(({ mutants }) => mutants));
  const score = readScore();
  for (const file of new Set(results.map((result) => result.file))) {
    const own = results.filter((result) => result.file === file);
    const count = (outcome) => own.filter((result) => result.outcome === outcome).length;
    const left = own.filter(({ outcome }) => outcome === "survived" || outcome === "not reached");
    score[file] = {
      ...{ date, oneIn, mutants: own.length, killed: count("killed"), timedOut: count("timed out") },
      ...{ explained: left.filter((one) => known.has(keyOf(one))).length, notReached: count("not reached") },
      survived: left.length,
    };
  }
  const sorted = Object.fromEntries(Object.entries(score).sort(([a], [b]) => (a < b ? -1 : 1)));
  writeFileSync(scorePath, `${JSON.stringify(sorted, null, 2)}\n`);
}

/** Writes the table of the page anew from what is kept. */
export function writePage() {
  const page = readFileSync(pagePath, "utf8");
  const [before, after] = [page.split(BEGIN)[0], page.split(END)[1]];
  writeFileSync(pagePath, `${before}${BEGIN}\n${scoreTable(readScore())}\n${END}${after}`);
}

/** The table of a page: by folder, then by file. */
export function scoreTable(score) {
  const files = Object.entries(score).map(([name, row]) => ({ name, ...row }));
  const folders = [...new Set(files.map(({ name }) => name.split("/")[0]))];
  const inFolder = (folder) => files.filter(({ name }) => name.startsWith(`${folder}/`));
  const dates = files.map(({ date }) => date).sort();
  const rows = folders.flatMap((folder) => [
    writeLine(`**${folder}**`, inFolder(folder)),
    ...inFolder(folder).map((file) => writeLine(file.name, [file])),
  ]);
  const head =
    "| file | tried | one in | noticed | of these by time | not noticed | of these explained | noticed, % | of what could be, % |";
  const between = dates[0] === dates.at(-1) ? dates[0] : `${dates[0]} to ${dates.at(-1)}`;
  return [
    `Run on ${between}:`,
    "",
    head,
    "|---|--:|--:|--:|--:|--:|--:|--:|--:|",
    writeLine("**all**", files),
    ...rows,
    "",
  ].join("\n");
}

function writeLine(name, files) {
  const sum = (key) => files.reduce((total, file) => total + file[key], 0);
  const noticed = sum("killed") + sum("timedOut");
  const oneIn = [...new Set(files.map((file) => file.oneIn))].join(", ");
  const shareOf = (all) => (all === 0 ? "–" : ((100 * noticed) / all).toFixed(1));
  const shares = [shareOf(sum("mutants")), shareOf(sum("mutants") - sum("explained"))];
  const counts = [sum("mutants"), oneIn, noticed, sum("timedOut"), sum("survived"), sum("explained")];
  return `| ${[name, ...counts, ...shares].join(" | ")} |`;
}
