import { html } from "lit";
import { problemsView } from "../line/problems-view.js";
import { type Refusal, readFiles } from "../storage/read-plan-files.js";
import type { Desk, Page } from "./desk.js";

/** Adds the plans in the files to the list, opens the first, and tells which files were refused and why. */
export async function openFiles(desk: Desk, page: Page, files: readonly File[]): Promise<void> {
  page.untell("refused");
  page.untell("opened");
  const { plans, refusals } = await readFiles(files);
  const [first, ...others] = plans;
  await desk.addAll(others);
  if (first !== undefined) await desk.openNew(first);
  if (others.length > 0) {
    const words = `${plans.length} plans were added to your list; the first of them is open.`;
    page.tell({ key: "opened", words, acts: [] });
  }
  if (refusals.length > 0) refuse(page, refusals);
}

function refuse(page: Page, refusals: readonly Refusal[]): void {
  const body = html`${refusals.map(
    ({
      name,
      problems,
    }) => html`<h2>"${name}" could not be opened: ${problems.length} ${problems.length === 1 ? "problem" : "problems"}</h2>
      ${problemsView(problems)}`,
  )}`;
  page.tell({ key: "refused", words: "Your plans are unharmed.", body, isUrgent: true, acts: [] });
}
