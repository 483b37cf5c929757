import { html } from "lit";
import { STANDING_MARKS, type standingOf } from "../kernels/yard/standing.js";

/** The mark and its words. */
export function standingView({ standing, words }: ReturnType<typeof standingOf>) {
  const { path, isFilled } = STANDING_MARKS[standing];
  return html`<span class="standing ${standing}"><svg viewBox="-1.2 -1.2 2.4 2.4" width="18" height="18" aria-hidden="true">
      <path d=${path} fill=${isFilled ? "currentColor" : "none"} stroke="currentColor" stroke-width="0.3" stroke-linejoin="round"></path>
    </svg> ${words}</span>`;
}
