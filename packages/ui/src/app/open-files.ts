import { html } from "lit";
import { problemsView } from "../line/problems-view.js";
import type { PlanDesk } from "./plan-desk.js";
import { type Refusal, readFiles } from "./read-files.js";
import type { Shell } from "./shell.js";

/** Adds the plans in the files to the list, opens the first, and tells which files were refused and why. */
export async function openFiles(desk: PlanDesk, shell: Shell, files: readonly File[]): Promise<void> {
  shell.untell("refused");
  shell.untell("opened");
  const { plans, refusals } = await readFiles(files);
  const [first, ...others] = plans;
  await desk.addAll(others);
  if (first !== undefined) await desk.openNew(first);
  if (others.length > 0) {
    const words = `${plans.length} plans were added to your list; the first of them is open.`;
    shell.tell({ key: "opened", words, acts: [] });
  }
  if (refusals.length > 0) refuse(shell, refusals);
}

function refuse(shell: Shell, refusals: readonly Refusal[]): void {
  const body = html`${refusals.map(
    ({
      name,
      problems,
    }) => html`<h2>"${name}" could not be opened: ${problems.length} ${problems.length === 1 ? "problem" : "problems"}</h2>
      ${problemsView(problems)}`,
  )}`;
  shell.tell({ key: "refused", words: "Your plans are unharmed.", body, isUrgent: true, acts: [] });
}
