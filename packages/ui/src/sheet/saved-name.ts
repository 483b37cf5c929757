import type { Plan } from "@headfall/hydraulics";
import { fileNameOf } from "../kernels/file-name.js";

/** "Alder Bank: hen house", "drinkers", "csv" become "alder-bank-hen-house-drinkers.csv". */
export const savedName = (plan: Plan, what: string, ending: string): string =>
  fileNameOf(`${plan.name ?? "line"} ${what}`, ending);
