import { type BirdKind, findBird, type PlanBirds } from "@headfall/hydraulics";

/** The kind of a batch, if the table has it. */
export function kindOf({ kind }: Pick<PlanBirds, "kind">): BirdKind | undefined {
  const found = findBird(kind);
  return found.outcome === "found" ? found.kind : undefined;
}

/** "30 × Laying hen". */
export const countedBirds = (birds: Pick<PlanBirds, "kind" | "count">): string =>
  `${birds.count} × ${kindOf(birds)?.name ?? birds.kind}`;
