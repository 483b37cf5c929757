import { drinkerGroupsOf, type Plan } from "@headfall/hydraulics";

/** Drinkers that a plan has on its runs. */
export const drinkersIn = ({ runs }: Plan): number =>
  runs.flatMap(drinkerGroupsOf).reduce((sum, { count }) => sum + (count ?? 1), 0);
