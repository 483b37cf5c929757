/**
 * Where what is measured is written: rows on standard output, and all of it as JSON. A run of some parts takes the place
 * of those parts alone, so that a table of every bar can be made up from runs of the same machine.
 */
import { mkdirSync, readFileSync, writeFileSync } from "node:fs";
import { cpus, loadavg } from "node:os";
import { fileURLToPath } from "node:url";

const FOLDER = fileURLToPath(new URL("../../node_modules/.cache", import.meta.url));
const FILE = `${FOLDER}/headfall-bench.json`;

/** What was measured before on this very machine: {machine, parts}, each part with its day, load, rows and bars. */
export function openBook() {
  const machine = `${cpus()[0].model}, ${cpus().length} cores, node ${process.version}`;
  const empty = { machine, parts: {} };
  try {
    const book = JSON.parse(readFileSync(FILE, "utf8"));
    return book.machine === machine && book.parts !== undefined ? book : empty;
  } catch {
    return empty;
  }
}

/**
 * One part of the bench, begun: `row(what, cells)` prints a row and keeps it, `measured(bar, value, more)` keeps what
 * was measured of a bar (bars.mjs) and figures that stand beside it.
 */
export function openPart(book, name) {
  const load = loadavg()[0];
  const part = { day: new Date().toISOString().slice(0, 10), load: [load, load], rows: [], bars: {} };
  const keep = () => {
    part.load[1] = loadavg()[0];
    // Another part may have been measured meanwhile.
    Object.assign(book.parts, openBook().parts, { [name]: part });
    mkdirSync(FOLDER, { recursive: true });
    writeFileSync(FILE, `${JSON.stringify(book, null, 2)}\n`);
  };
  return {
    row(what, cells) {
      part.rows.push({ what, ...cells });
      console.log(`${what.padEnd(62)} ${writeCells(cells)}`);
    },
    measured(bar, value, more = {}) {
      part.bars[bar] = { value, ...more };
    },
    keep,
  };
}

export const writeCells = (cells) =>
  Object.entries(cells)
    .map(([key, value]) => `${key} ${writeFigure(value)}`)
    .join("   ");

/** Three figures, without a power of ten. */
export const writeFigure = (value) =>
  typeof value === "number" && Number.isFinite(value) && Math.abs(value) < 1e6
    ? String(Number(value.toPrecision(3)))
    : String(value);
