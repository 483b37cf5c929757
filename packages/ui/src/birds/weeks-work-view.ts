import { writeProblem } from "@headfall/hydraulics";
import { html, nothing } from "lit";
import type { WeeksController } from "./weeks-controller.js";

/** How far the judging of the coming weeks has come, or why there is none. */
export function weeksWork(work: WeeksController) {
  const { weeks, problems, progress, isOld, isStopped } = work;
  const before = weeks.length === 0 ? "" : " What is shown of them is of the plan before that change.";
  if (problems.length > 0)
    return html`<p class="problem" role="alert">The coming weeks cannot be judged: ${problems.map(writeProblem).join(" ")}${before}</p>`;
  if (isStopped)
    return html`<p class="work">The coming weeks were not judged.${before}
      <button type="button" @click=${() => work.goOn()}>Judge the coming weeks</button></p>`;
  // What comes at once needs no word; later ones only when it takes a while.
  if (!isOld || (progress === undefined && weeks.length > 0)) return nothing;
  return html`<div class="work" role="group" aria-label="Judging the coming weeks">
    <span>Judging the coming weeks ...</span>
    <progress max="1" .value=${progress ?? 0} aria-label="Weeks judged"></progress>
    <button type="button" @click=${() => work.stop()}>Cancel</button>
  </div>`;
}
