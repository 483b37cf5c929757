import type { Plan } from "@headfall/hydraulics";

/** What a pen is called: as the plan says, else by its number. */
export const nameOfPen = (plan: Plan, pen: number): string => plan.pens?.[pen]?.id ?? `pen ${pen + 1}`;

export const namesOfPens = (plan: Plan): readonly string[] =>
  (plan.pens ?? []).map((_, pen) => nameOfPen(plan, pen));
