import { type Plan, writePlan } from "@headfall/hydraulics";

/** Hands the plan to the browser as a file to keep. */
export function savePlanFile(plan: Plan): void {
  saveText(fileNameOf(plan.name), writePlan(plan));
}

/** Hands a text to the browser as a file to keep. */
export function saveText(fileName: string, text: string): void {
  const address = URL.createObjectURL(new Blob([text], { type: "application/json" }));
  const link = document.createElement("a");
  link.href = address;
  link.download = fileName;
  link.click();
  // The browser has the address in hand once the click has been dealt with.
  setTimeout(() => URL.revokeObjectURL(address), 10_000);
}

/** "Alder Bank: hen house" becomes "alder-bank-hen-house.json". */
export function fileNameOf(name = ""): string {
  const words = name
    .normalize("NFKD")
    .toLowerCase()
    .replace(/[^a-z0-9]+/g, "-")
    .replace(/^-+|-+$/g, "")
    .slice(0, 60);
  return `${words === "" ? "line" : words}.json`;
}
