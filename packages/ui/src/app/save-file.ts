import { type Plan, writePlan } from "@headfall/hydraulics";
import { fileNameOf } from "../kernels/file-name.js";
import { saveFile } from "../storage/save-file.js";

/** Hands the plan to the browser as a file to keep. */
export function savePlanFile(plan: Plan): void {
  saveText(planFileName(plan.name), writePlan(plan));
}

/** Hands a text to the browser as a file to keep. */
export function saveText(fileName: string, text: string): void {
  saveFile(fileName, new Blob([text], { type: "application/json" }));
}

/** "Alder Bank: hen house" becomes "alder-bank-hen-house.json". */
export const planFileName = (name = ""): string => fileNameOf(name, "json");
