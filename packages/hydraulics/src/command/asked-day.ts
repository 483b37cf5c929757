import { readDay } from "../units/day.js";

/** The machine's own date, "2026-07-04". */
export function today(): string {
  const now = new Date();
  const two = (value: number) => String(value).padStart(2, "0");
  return `${now.getFullYear()}-${two(now.getMonth() + 1)}-${two(now.getDate())}`;
}

/** The day a sub-command is asked about: what `--day` says, else today; or a fault. A plan that names a day goes before either. */
export function readAskedDay(typed: string | undefined): string | { readonly fault: string } {
  if (typed === undefined) return today();
  if (readDay(typed) !== undefined) return typed;
  return { fault: `--day is a day such as 2026-07-04, not ${JSON.stringify(typed)}.` };
}
