/**
 * Whole networks with their features mixed at random, solved by the library and by scipy with fluids:
 *   npm run oracle                              1,000 networks
 *   npm run oracle -- --cases 50                the first 50
 *   HEADFALL_RECORD=yes npm run oracle          and stores the figures for the validation report
 * Prints a table, and writes the same as JSON to node_modules/.cache/headfall-oracle.json. Ends with 1 where any differs.
 */
import { mkdirSync, writeFileSync } from "node:fs";
import { fileURLToPath } from "node:url";
import { parseArgs } from "node:util";
import { runnerImport } from "vite";

const here = (path) => fileURLToPath(new URL(path, import.meta.url));
const AT_ONCE = 50;

/** The sources are TypeScript; they are read as the tests read them. */
const load = async (path) =>
  (await runnerImport(here(path), { configFile: false, root: here("../.."), logLevel: "error" })).module;

const { values } = parseArgs({ options: { cases: { type: "string" } } });
const { askLive, record } = await load("./ask-python.ts");
const { compareNetwork, concludeNetworks, mixedNetworks, mixedQuestion, THOUSAND } =
  await load("./compare-networks.ts");
const cases = Number(values.cases ?? THOUSAND);
if (!Number.isInteger(cases) || cases < 1) throw new Error("--cases: expected a whole number from 1 on");

const found = concludeNetworks(compareAll(mixedNetworks(cases)), askLive("versions", {}));
print(found);
mkdirSync(here("../../node_modules/.cache"), { recursive: true });
writeFileSync(here("../../node_modules/.cache/headfall-oracle.json"), `${JSON.stringify(found, null, 2)}\n`);
if (process.env.HEADFALL_RECORD === "yes" && cases === THOUSAND) record("thousand-networks", found, 2);
process.exitCode = found.troubles.length === 0 ? 0 : 1;

function compareAll(networks) {
  const differences = [];
  for (let first = 0; first < networks.length; first += AT_ONCE) {
    const some = networks.slice(first, first + AT_ONCE);
    const answers = askLive("networks", mixedQuestion(some));
    differences.push(...some.map((network) => compareNetwork(network, answers[network.seed])));
    process.stderr.write(`\r${differences.length} of ${networks.length}`);
  }
  process.stderr.write("\n");
  return differences;
}

function print({ rows, spread, troubles, asked }) {
  const figures = (row) => [
    row.feature,
    ...[row.networks, row.points, row.pipes, row.drinkers].map(String),
    ...[row.head, row.middleHead, row.flow * 6e7, row.middleFlow * 6e7].map((one) => one.toExponential(1)),
  ];
  const head = ["feature", "networks", "points", "pipes", "drinkers", "head m", "middle", "mL/min", "middle"];
  const lines = [head, ...rows.map(figures)];
  const widths = head.map((_, c) => Math.max(...lines.map((line) => line[c].length)));
  for (const line of lines) {
    const cells = line.map((cell, c) => (c === 0 ? cell.padEnd(widths[c]) : cell.padStart(widths[c])));
    process.stdout.write(`${cells.join("  ")}\n`);
  }
  for (const { under, networks } of spread)
    process.stdout.write(`${networks} of ${rows[0].networks} networks: no head differs by ${under} m\n`);
  process.stdout.write(`asked: scipy ${asked.scipy}, fluids ${asked.fluids}\n`);
  for (const trouble of troubles) process.stdout.write(`${trouble}\n`);
}
