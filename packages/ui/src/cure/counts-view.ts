import { type Outcome, VERDICTS, type VerdictName, writeScene } from "@headfall/hydraulics";
import { html, nothing } from "lit";
import { VERDICT_MARKS } from "../kernels/verdict-marks.js";
import { verdictMarkAt } from "../verdicts/verdict-mark.js";

type Counts = Readonly<Record<VerdictName, number>>;

/** How many drinkers do what, worst first, each with its mark and its word. */
export function countsView(counts: Counts) {
  const shown = [...VERDICTS].reverse().filter((verdict) => counts[verdict] > 0);
  return shown.length === 0
    ? html`no drinkers`
    : html`<span class="counts">${shown.map(
        (
          verdict,
        ) => html`<span class="verdict ${verdict}"><svg class="inline-mark" viewBox="-1.2 -1.2 2.4 2.4" width="18" height="18" aria-hidden="true">${verdictMarkAt(verdict, 0, 0, 1)}</svg>
          ${writeCount(verdict, counts[verdict])}</span>`,
      )}</span>`;
}

function writeCount(verdict: VerdictName, count: number): string {
  const { word } = VERDICT_MARKS[verdict];
  return `${count} ${count > 1 && word.endsWith("s") ? word.slice(0, -1) : word}`;
}

/** The same on the plan's day, and in the first of the coming weeks that is worse. */
export function outcomeView({ counts, scenes, meets }: Outcome) {
  const failing = meets ? undefined : scenes.find((scene, k) => k > 0 && !scene.meets);
  const isGoodNow = scenes[0]?.meets ?? true;
  return html`${countsView(counts)}${failing === undefined || !isGoodNow ? nothing : html`; ${writeScene(failing)} ${countsView(failing.counts)}`}`;
}
