import { allowances } from "./allowances.generated.js";

export type { Allowance } from "./row-types.js";

/** Every rule and every advice that gives a number. */
export const allAllowances = allowances;
