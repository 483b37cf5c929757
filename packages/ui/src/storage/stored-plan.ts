import { checkDocument, type Plan, type Problem } from "@headfall/hydraulics";

/** A plan as the browser keeps it. Times are in ms since 1970. */
export interface StoredPlan {
  readonly id: string;
  readonly name: string;
  /** The document, in the version of the page that saved it. */
  readonly plan: unknown;
  /** Counts the savings, so that two tabs notice each other. */
  readonly revision: number;
  readonly changedAt: number;
  /** Since when it lies among the deleted ones. */
  readonly deletedAt?: number;
}

interface Kept {
  readonly id: string;
  readonly name: string;
  readonly revision: number;
  readonly changedAt: number;
  readonly deletedAt: number | undefined;
}

/** A record that can be opened. An older document has been brought to the present version; the record has not. */
export interface OpenablePlan extends Kept {
  readonly kind: "openable";
  readonly plan: Plan;
}

/** A record that this page cannot open: from a newer one, or damaged. It is shown, and left as it is. */
export interface ShutPlan extends Kept {
  readonly kind: "newer" | "damaged";
  readonly problems: readonly Problem[];
  readonly record: unknown;
}

export type KeptPlan = OpenablePlan | ShutPlan;

/** Makes of a record what can be trusted of it. Never throws. */
export function readStored(id: string, record: unknown): KeptPlan {
  const found = (typeof record === "object" && record !== null ? record : {}) as Record<string, unknown>;
  const kept = {
    id,
    name: typeof found["name"] === "string" ? found["name"] : "",
    revision: numberIn(found, "revision") ?? 0,
    changedAt: numberIn(found, "changedAt") ?? 0,
    deletedAt: numberIn(found, "deletedAt"),
  };
  const reading = checkDocument(found["plan"]);
  if (reading.ok) return { kind: "openable", ...kept, name: reading.plan.name ?? "", plan: reading.plan };
  const isNewer = reading.problems.some(({ code }) => code === "versionNewer");
  return { kind: isNewer ? "newer" : "damaged", ...kept, problems: reading.problems, record };
}

function numberIn(found: Record<string, unknown>, key: string): number | undefined {
  const value = found[key];
  return typeof value === "number" && Number.isFinite(value) ? value : undefined;
}
