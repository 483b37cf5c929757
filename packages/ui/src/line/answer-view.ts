import { type Certainty, type Checked, VERDICTS, writeJudgement } from "@headfall/hydraulics";
import { html } from "lit";
import type { Sampling } from "../controllers/check-controller.js";
import type { UnitSystem } from "../kernels/typed-quantity.js";
import { VERDICT_MARKS } from "../kernels/verdict-marks.js";
import { verdictMarkAt } from "../verdicts/verdict-mark.js";

/** The counts, worst first, each with its mark: what the keeper came for, in one line. */
export function countsView({ counts }: Checked) {
  const worstFirst = [...VERDICTS].reverse().filter((verdict) => counts[verdict] > 0);
  return html`<h2 class="counts" part="counts">
    ${worstFirst.map(
      (verdict) => html`<span class="verdict ${verdict}"
        ><svg class="inline-mark" viewBox="-1.2 -1.2 2.4 2.4" width="20" height="20" aria-hidden="true">
          ${verdictMarkAt(verdict, 0, 0, 1)}
        </svg>
        ${writeCount(verdict, counts[verdict])}</span
      >`,
    )}
    ${worstFirst.length === 0 ? "No drinkers" : ""}
  </h2>`;
}

/**
 * The worst drinker's sentence, and in a word how sure it is. All that is said of it stands with the drinker further
 * down: up here the length hardly changes, so that nothing jumps under a dragging hand.
 */
export function answerView(checked: Checked, worst: number, sampling: Sampling, system: UnitSystem) {
  const verdict = checked.drinkers[worst];
  if (verdict === undefined && checked.line.sources.length === 0) return NO_LINE;
  if (verdict === undefined) return html`<p>This plan has no drinkers yet.</p>`;
  const rank = verdict.verdict === "good" ? "Weakest" : "Worst";
  return html`<p class="sentence" part="sentence">
    ${rank}: <strong>${verdict.drinker}</strong> ${writeJudgement(verdict, system)}
    <span class="sureness">${writeSureness(verdict.certainty, sampling)}</span>
  </p>`;
}

const NO_LINE = html`<p>This plan has no line; its founts, pans and buckets have the room Yard. To draw a line, add a vessel.</p>`;

/** Until all samples are in, a coarse answer says that it is one. */
function writeSureness({ kind }: Certainty, sampling: Sampling): string {
  if (sampling === "waiting") return "How sure? ...";
  if (sampling === "coarse") return `${SURENESS[kind]} (so far) ...`;
  if (sampling === "outdated") return "Stopped: all this is still of the plan before.";
  if (sampling !== "stopped") return SURENESS[kind];
  return kind === "notSampled" ? "How sure was not worked out." : `${SURENESS[kind]} (so far)`;
}

const SURENESS: Readonly<Record<Certainty["kind"], string>> = {
  sure: "Sure.",
  closeCall: "A close call.",
  notSampled: "",
};

function writeCount(verdict: (typeof VERDICTS)[number], count: number): string {
  const word = VERDICT_MARKS[verdict].word;
  return `${count} ${count > 1 && word.endsWith("s") ? word.slice(0, -1) : word}`;
}
