import { batchesOf, type Plan } from "@headfall/hydraulics";

/**
 * The first day on which a bird of the plan is there, where none has come yet; undefined where some have, and where
 * nobody is to come.
 *
 * @param day  the day the plan is reckoned for, "2026-07-04"
 */
export function firstBirdsAfter({ pens = [] }: Plan, day: string): string | undefined {
  const days = pens.flatMap(batchesOf).map(({ arrives, hatched }) =>
    [arrives, hatched]
      .flatMap((one) => one ?? [])
      .sort()
      .at(-1),
  );
  if (days.some((first) => first === undefined || first <= day)) return undefined;
  return days.flatMap((first) => first ?? []).sort()[0];
}
