import type { Plan } from "@headfall/hydraulics";

/** Hands a text or picture to the browser as a file to keep. */
export function saveFile(name: string, content: Blob): void {
  const address = URL.createObjectURL(content);
  const link = document.createElement("a");
  link.href = address;
  link.download = name;
  link.click();
  // The browser has the address in hand once the click has been dealt with.
  setTimeout(() => URL.revokeObjectURL(address), 10_000);
}

/** "Alder Bank: hen house", "drinkers", "csv" become "alder-bank-hen-house-drinkers.csv". */
export function savedName(plan: Plan, what: string, ending: string): string {
  const words = `${plan.name ?? "line"} ${what}`
    .normalize("NFKD")
    .toLowerCase()
    .replace(/[^a-z0-9]+/g, "-")
    .replace(/^-+|-+$/g, "");
  return `${words.slice(0, 80).replace(/-+$/, "")}.${ending}`;
}
