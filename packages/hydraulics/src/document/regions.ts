/** Whose rules and advice on drinkers are held against the plan. */
export const REGIONS = [
  "EU",
  "Austria",
  "Germany",
  "England",
  "Wales",
  "USA",
  "Canada",
  "Australia",
  "none",
] as const;
