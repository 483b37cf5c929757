import type { Problem } from "@headfall/hydraulics";
import { html, nothing } from "lit";

/** All that is wrong with a plan, at once: where, what was found, what is allowed, how to mend it. */
export function problemsView(problems: readonly Problem[]) {
  return html`<ol class="problems">
    ${problems.map(
      ({ path, line, found, allowed, mend }) => html`<li>
        <strong>${path}${line === undefined ? nothing : ` (line ${line})`}</strong>: found ${found}. ${allowed} ${mend}
      </li>`,
    )}
  </ol>`;
}
