import { readRecorded } from "../../oracle/ask-python.js";
import { MIXED_BOUNDS, SAMPLE, type ThousandNetworks } from "../../oracle/compare-networks.js";
import { tableRow } from "./compared.js";

/** What `npm run oracle` found, in millimetres and millilitres a minute. */
export function writeNetworks(): string {
  const { rows, spread, asked } = readRecorded<ThousandNetworks>("thousand-networks");
  const all = rows[0]!;
  const power = (value: number) => (value === 0 ? "0" : value.toExponential(0));
  const spreads = spread.map(({ under, networks }) => `${networks} below ${power(under * 1000)} mm`);
  return `${all.networks} networks drawn by number, with ${all.points} points, ${all.pipes} pipes and ${all.drinkers} drinkers: trees and rings, one source
or two, shut taps, one-way valves, regulators, fittings by name, few drinkers at work or all. Each is solved by the
library and by a program written apart from it: another method (Newton on heads, with the sparse solver of scipy
${asked.scipy}), the laws written anew, friction and fittings held against the library fluids ${asked.fluids}.
Heads must agree to ${Number((MIXED_BOUNDS.head * 1000).toPrecision(1))} mm, flows to ${Number((MIXED_BOUNDS.flow * 6e7).toPrecision(1))} mL/min. Greatest difference of head in a network: ${spreads.join(", ")}.

${[
  tableRow([
    ...["networks with", "networks", "points", "pipes", "drinkers"],
    ...["head, greatest [mm]", "middle", "flow, greatest [mL/min]", "middle"],
  ]),
  `|---|${"--:|".repeat(8)}`,
  ...rows.map((row) =>
    tableRow([
      WORDS[row.feature] ?? row.feature,
      ...[row.networks, row.points, row.pipes, row.drinkers],
      ...[row.head * 1000, row.middleHead * 1000, row.flow * 6e7, row.middleFlow * 6e7].map(power),
    ]),
  ),
].join("\n")}

"Middle" is that of the networks' greatest differences. \`npm run oracle\` runs all of them and prints this table; \`npm
test\` runs the first ${SAMPLE}, and holds the counts above to what is drawn.`;
}

const WORDS: Readonly<Record<string, string>> = {
  all: "**all**",
  hazenWilliams: "friction by Hazen-Williams",
  darcyWeisbach: "friction by Darcy-Weisbach",
};
