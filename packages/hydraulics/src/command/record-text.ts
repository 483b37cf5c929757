import { createReadStream, readFileSync } from "node:fs";
import { createRequire } from "node:module";
import { LIMITS } from "../document/limits.js";
import type { Asked } from "./answer-plan.js";
import { fileFault } from "./file-fault.js";

/** Records that a package of open data ships: Seattle and New York, 2012 to 2015. */
export const EXAMPLES = { seattle: "Seattle", newyork: "New York" } as const;

/** The text of a daily record: a file named by --record, or one of open data by --example. */
export async function recordText(own: Asked["own"]): Promise<string | { readonly fault: string }> {
  const { record, example } = own;
  if (record !== undefined && example === undefined) return textOfFile(record);
  if (record === undefined && example !== undefined && Object.hasOwn(EXAMPLES, example))
    return textOfExample();
  return {
    fault: `Which record? Name a file with --record, or take an example: --example ${Object.keys(EXAMPLES).join(" or ")}.`,
  };
}

async function textOfFile(name: string): Promise<string | { readonly fault: string }> {
  try {
    const pieces: Buffer[] = [];
    let size = 0;
    for await (const piece of createReadStream(name)) {
      pieces.push(piece as Buffer);
      size += (piece as Buffer).length;
      if (size > 2 * LIMITS.textLength) break;
    }
    return Buffer.concat(pieces).toString("utf8");
  } catch (error) {
    return {
      fault: `cannot read ${name}: ${fileFault(error)}`,
    };
  }
}

function textOfExample(): string | { readonly fault: string } {
  try {
    const entry = createRequire(import.meta.url).resolve("vega-datasets");
    return readFileSync(entry.replace(/build[\\/][^\\/]*$/, "data/weather.csv"), "utf8");
  } catch {
    return {
      fault:
        "The example records are in the npm package vega-datasets, which is not installed here: npm install vega-datasets",
    };
  }
}
