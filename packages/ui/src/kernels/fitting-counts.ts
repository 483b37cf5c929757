import type { PlanFitting } from "@headfall/hydraulics";

/** One entry of a run's fittings: a kind from the table, or one of the user's own, and how many. */
export interface FittingCount {
  /** Name or id as the plan has it. */
  readonly name: string;
  readonly count: number;
  /** Loss coefficient of a fitting of the user's own. */
  readonly k?: number;
}

/** "elbow-90 x 4" as its name and count; a bare name counts once. */
export function readFitting(fitting: PlanFitting): FittingCount {
  if (typeof fitting !== "string") return { name: fitting.name, count: fitting.count ?? 1, k: fitting.k };
  const match = /^(.*?)\s*[x\u00d7]\s*(\d{1,5})$/i.exec(fitting.trim());
  return match === null ? { name: fitting.trim(), count: 1 } : { name: match[1]!, count: Number(match[2]) };
}

/** As the plan writes it. */
export function writeFitting({ name, count, k }: FittingCount): PlanFitting {
  if (k !== undefined) return { name, k, count };
  return count === 1 ? name : `${name} x ${count}`;
}

/** All fittings of a run in one line: "ball-valve; elbow-90 x 2; filter (K 12)". */
export function writeFittings(fittings: readonly PlanFitting[]): string {
  return fittings.map(readFitting).map(writtenInLine).join("; ");
}

function writtenInLine({ name, count, k }: FittingCount): string {
  const own = k === undefined ? name : `${name} (K ${k})`;
  return count === 1 ? own : `${own} x ${count}`;
}

/** The line read back: parted by semicolons, or by commas where there is none. Names are looked up by who reads the plan. */
export function readFittings(line: string): PlanFitting[] {
  const parts = line.split(line.includes(";") ? ";" : ",").map((part) => part.trim());
  return parts.filter((part) => part !== "").map(readInLine);
}

function readInLine(part: string): PlanFitting {
  const { name, count } = readFitting(part);
  const own = /^(.*?)\s*\(K\s*(\d+(?:\.\d+)?)\)$/i.exec(name);
  return writeFitting(own === null ? { name, count } : { name: own[1]!, count, k: Number(own[2]) });
}
