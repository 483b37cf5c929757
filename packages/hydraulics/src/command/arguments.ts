import { type ParseArgsConfig, parseArgs } from "node:util";
import type { UnitSystem } from "../units/quantity.js";

/** What every sub-command takes, and its own options as text. */
export interface Arguments {
  /** The first plan, and all of them. */
  readonly plan: string;
  readonly plans: readonly string[];
  readonly json: boolean;
  readonly colour: boolean;
  readonly system: UnitSystem;
  readonly own: Readonly<Record<string, string | undefined>>;
  /** Those of its own flags that were given. */
  readonly flags: ReadonlySet<string>;
}

/** Reads a sub-command's arguments (of one plan, or of more), or says in one sentence what is wrong with them. */
export function readArguments(
  args: readonly string[],
  ownOptions: readonly string[],
  ownFlags: readonly string[] = [],
  mostPlans = 1,
): Arguments | { readonly fault: string } {
  const options: ParseArgsConfig["options"] = {
    json: { type: "boolean" },
    units: { type: "string" },
    "no-colour": { type: "boolean" },
    "no-color": { type: "boolean" },
    ...Object.fromEntries(ownOptions.map((name) => [name, { type: "string" as const }])),
    ...Object.fromEntries(ownFlags.map((name) => [name, { type: "boolean" as const }])),
  };
  try {
    const { values, positionals } = parseArgs({
      args: withFrost(args, ownOptions),
      options,
      allowPositionals: true,
      strict: true,
    });
    const [plan] = positionals;
    const extra = positionals[mostPlans];
    if (plan === undefined) return { fault: "Which plan? Name a plan file, or - for standard input." };
    const atMost = mostPlans === 1 ? "One plan" : `${mostPlans} plans`;
    if (extra !== undefined) return { fault: `${atMost} at a time; what is ${JSON.stringify(extra)}?` };
    const units = values["units"] ?? "metric";
    if (units !== "metric" && units !== "us")
      return { fault: `--units is metric or us, not ${JSON.stringify(units)}.` };
    return {
      plan,
      plans: positionals,
      json: values["json"] === true,
      colour: values["no-colour"] !== true && values["no-color"] !== true,
      system: units,
      own: Object.fromEntries(ownOptions.map((name) => [name, values[name] as string | undefined])),
      flags: new Set(ownFlags.filter((name) => values[name] === true)),
    };
  } catch (error) {
    return { fault: error instanceof Error ? `${error.message.split(/\.(?:\s|$)/)[0]}.` : String(error) };
  }
}

/** Degrees of frost begin as an option does: `--low "-8 degC"` is read as it is meant. */
function withFrost(args: readonly string[], ownOptions: readonly string[]): string[] {
  const named = new Set(ownOptions.map((name) => `--${name}`));
  const read: string[] = [];
  for (const one of args) {
    const before = read.at(-1);
    if (before !== undefined && named.has(before) && /^-\.?\d/.test(one))
      read[read.length - 1] = `${before}=${one}`;
    else read.push(one);
  }
  return read;
}

/** A whole number from 0 to `most`, or a fault. */
export function readCount(
  name: string,
  typed: string | undefined,
  fallback: number,
  most: number,
): number | { readonly fault: string } {
  if (typed === undefined) return fallback;
  const value = Number(typed);
  if (/^\d+$/.test(typed) && value <= most) return value;
  return { fault: `--${name} is a whole number from 0 to ${most}, not ${JSON.stringify(typed)}.` };
}
