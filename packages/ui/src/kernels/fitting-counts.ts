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
