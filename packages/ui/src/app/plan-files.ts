import { type Plan, type Problem, readPlan, writePlan } from "@headfall/hydraulics";

/** What came of opening a file: a plan, or all that is wrong with it. */
export type OpenedFile =
  | { readonly ok: true; readonly name: string; readonly plan: Plan }
  | { readonly ok: false; readonly name: string; readonly problems: readonly Problem[] };

/** Larger files are refused unread: no plan comes near it, and reading it would stall the page. */
const MOST_BYTES = 8_000_000;

/** Reads a plan from a file the user chose or dropped. Nothing else is touched. */
export async function openPlanFile(file: File): Promise<OpenedFile> {
  if (file.size > MOST_BYTES) return { ok: false, name: file.name, problems: [tooLarge(file.size)] };
  const read = readPlan(await file.text());
  return read.ok
    ? { ok: true, name: file.name, plan: read.plan }
    : { ok: false, name: file.name, problems: read.problems };
}

const tooLarge = (size: number): Problem => ({
  code: "tooLarge",
  path: "the file",
  found: `${Math.round(size / 1e6)} MB`,
  allowed: "A plan file is at most 8 MB.",
  mend: "Check that this is a plan file.",
});

/** Hands the plan to the browser as a file to keep. */
export function savePlanFile(plan: Plan): void {
  const address = URL.createObjectURL(new Blob([writePlan(plan)], { type: "application/json" }));
  const link = document.createElement("a");
  link.href = address;
  link.download = fileNameOf(plan);
  link.click();
  // The browser has the address in hand once the click has been dealt with.
  setTimeout(() => URL.revokeObjectURL(address), 10_000);
}

/** "Alder Bank: hen house" becomes "alder-bank-hen-house.json". */
export function fileNameOf(plan: Plan): string {
  const words = (plan.name ?? "")
    .normalize("NFKD")
    .toLowerCase()
    .replace(/[^a-z0-9]+/g, "-")
    .replace(/^-+|-+$/g, "")
    .slice(0, 60);
  return `${words === "" ? "line" : words}.json`;
}
