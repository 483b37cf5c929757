import { LIMITS, type Plan } from "@headfall/hydraulics";

/** A name nobody else has. */
export function newId(): string {
  const bytes = crypto.getRandomValues(new Uint8Array(16));
  return Array.from(bytes, (byte) => byte.toString(16).padStart(2, "0")).join("");
}

/** The plan under another name; under none when the name is empty. */
export function withName(plan: Plan, name: string): Plan {
  const { headfall, name: _, ...rest } = plan;
  return name === "" ? { headfall, ...rest } : { headfall, name, ...rest };
}

/** "Hen house" as "Hen house (copy)", then "Hen house (copy 2)" and so on; never longer than a name may be. */
export function nameFor(name: string, what: string, taken: ReadonlySet<string>): string {
  for (let count = 1; ; count++) {
    const ending = ` (${count === 1 ? what : `${what} ${count}`})`;
    const wanted = `${shortened(name === "" ? "Line" : name, LIMITS.name - ending.length)}${ending}`;
    if (!taken.has(wanted)) return wanted;
  }
}

/** Cut between signs, never inside one that is written as a pair. */
function shortened(name: string, most: number): string {
  if (name.length <= most) return name;
  let short = "";
  for (const sign of name) {
    if (short.length + sign.length > most) break;
    short += sign;
  }
  return short.trimEnd();
}
