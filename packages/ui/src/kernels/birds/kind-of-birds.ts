import { type BirdKind, findBird, kindFound, type PlanBirds } from "@headfall/hydraulics";

/** The kind of a batch, if the table has it. */
export const kindOf = ({ kind }: Pick<PlanBirds, "kind">): BirdKind | undefined => kindFound(findBird(kind));

/** "30 × Laying hen". */
export const countedBirds = (birds: Pick<PlanBirds, "kind" | "count">): string =>
  `${birds.count} × ${kindOf(birds)?.name ?? birds.kind}`;
