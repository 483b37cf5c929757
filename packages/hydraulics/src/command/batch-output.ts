import { once } from "node:events";
import { type FileHandle, open } from "node:fs/promises";
import { readBeginning } from "./batch-line.js";
import { linesOf } from "./text-lines.js";

/** Where a batch writes to, and what of it was written before. */
export interface BatchOutput {
  /** Number of the last line written before; 0 for none. */
  readonly last: number;
  /** The worst status among those. */
  readonly status: number;
  /** Writes, and waits until more can be taken. */
  readonly write: (text: string) => Promise<void>;
  readonly close: () => Promise<void>;
}

/** Standard output: nothing was written to it before. */
export const STANDARD_OUTPUT: BatchOutput = {
  last: 0,
  status: 0,
  write: async (text) => {
    if (!process.stdout.write(text)) await once(process.stdout, "drain");
  },
  close: async () => {},
};

/** What was written before, and how many bytes of it are whole lines. */
interface Done {
  readonly last: number;
  readonly status: number;
  readonly size: number;
}

/** Bytes of a line that say which it is. */
const BEGINNING = 80;

/**
 * A file that a batch goes on with, made if it is not there. A last line that was not written to its end is cut off.
 *
 * @returns the output, or a fault when the file holds something else than what this batch writes
 */
export async function resumeOutput(
  name: string,
  ask: string,
): Promise<BatchOutput | { readonly fault: string }> {
  const file = await open(name, "a+");
  const done = await readDone(file, name, ask);
  if ("fault" in done) {
    await file.close();
    return done;
  }
  await file.truncate(done.size);
  return {
    last: done.last,
    status: done.status,
    write: (text) => file.appendFile(text),
    close: () => file.close(),
  };
}

async function readDone(
  file: FileHandle,
  name: string,
  ask: string,
): Promise<Done | { readonly fault: string }> {
  let last = 0;
  let status = 0;
  let size = 0;
  const bytes = file.createReadStream({ start: 0, autoClose: false });
  for await (const { line, text, next } of linesOf(bytes, BEGINNING)) {
    if (next === undefined) break;
    const begun = readBeginning(text);
    if (begun === undefined || begun.line <= last || begun.ask !== ask)
      return {
        fault: `line ${line} of ${name} was not written by a batch that asks ${ask}: resume its own file, or name a new one.`,
      };
    last = begun.line;
    status = Math.max(status, begun.status);
    size = next;
  }
  return { last, status, size };
}
