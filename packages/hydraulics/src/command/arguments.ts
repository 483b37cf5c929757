import { type ParseArgsConfig, parseArgs } from "node:util";
import type { UnitSystem } from "../units/quantity.js";

/** What every sub-command takes, and its own options as text. */
export interface Arguments {
  readonly plan: string;
  readonly json: boolean;
  readonly colour: boolean;
  readonly system: UnitSystem;
  readonly own: Readonly<Record<string, string | undefined>>;
}

/** Reads a sub-command's arguments, or says in one sentence what is wrong with them. */
export function readArguments(
  args: readonly string[],
  ownOptions: readonly string[],
): Arguments | { readonly fault: string } {
  const options: ParseArgsConfig["options"] = {
    json: { type: "boolean" },
    units: { type: "string" },
    "no-colour": { type: "boolean" },
    "no-color": { type: "boolean" },
    ...Object.fromEntries(ownOptions.map((name) => [name, { type: "string" as const }])),
  };
  try {
    const { values, positionals } = parseArgs({
      args: [...args],
      options,
      allowPositionals: true,
      strict: true,
    });
    const [plan, extra] = positionals;
    if (plan === undefined) return { fault: "Which plan? Name a plan file, or - for standard input." };
    if (extra !== undefined) return { fault: `One plan at a time; what is ${JSON.stringify(extra)}?` };
    const units = values["units"] ?? "metric";
    if (units !== "metric" && units !== "us")
      return { fault: `--units is metric or us, not ${JSON.stringify(units)}.` };
    return {
      plan,
      json: values["json"] === true,
      colour: values["no-colour"] !== true && values["no-color"] !== true,
      system: units,
      own: Object.fromEntries(ownOptions.map((name) => [name, values[name] as string | undefined])),
    };
  } catch (error) {
    return { fault: error instanceof Error ? `${error.message.split(/\.(?:\s|$)/)[0]}.` : String(error) };
  }
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
