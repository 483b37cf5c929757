import type { CaseFile } from "./case-file.js";
import { PICTURES } from "./pictures/all-pictures.js";
import { compareFiles } from "./report/compared.js";
import { equationsRunIn } from "./report/equations.js";
import { writeSummary } from "./report/summary.js";
import { writeSource } from "./report/write-cases.js";
import { writeNetworks } from "./report/write-networks.js";
import { writeNotCovered } from "./report/write-not-covered.js";

const HEADING = `# Published figures and what the library makes of them

Written by \`npm run validate\` from the cases under \`tests/published/\`; not to be edited by hand. \`npm test\` holds every
figure to its tolerance, and this page to the cases. How to run each check: [Truth](../method/truth.md).

- **Seen**: the figure was read at the source. **From memory**: it was not. **Worked out**: a rule or a row is cited, the
  figure was reckoned from it by hand.
- **Difference**: ours less the printed one, as a share of the printed one. Each case says below how much is allowed, and why.
- A figure in ~~strokes~~ is a slip of the source: the library must refuse it, and meets the right figure in the row above.
`;

/** The validation report: all of it at a glance, tables as pictures, whole networks, what is not covered, then case by case. */
export function writeValidation(files: readonly { readonly file: CaseFile }[]): string {
  const { result: compared, ran } = equationsRunIn(() => compareFiles(files));
  const slips = compared.filter(({ one }) => one.slip !== undefined).length;
  return `${[
    HEADING,
    "## At a glance",
    `${writeSummary(compared)}`,
    `${slips} cases hold slips of their source. A great difference is a source that rounds, a rule of thumb, or a flock of another
day; none is hidden by a mean.`,
    "## Whole tables as pictures",
    ...PICTURES.map(({ name, says }) => `![${says}](../images/truth/${name}.svg)`),
    "## Whole networks",
    writeNetworks(),
    "## What is not covered",
    writeNotCovered(compared, ran),
    "## The cases",
    ...files.map(({ file }) =>
      writeSource(
        file,
        compared.filter(({ source }) => source === file.source),
      ),
    ),
  ].join("\n\n")}\n`;
}
