import { writeNames, writeRowName } from "@headfall/hydraulics";
import { html, nothing } from "lit";
import { drinkersByVerdict, spotOfMishap } from "../kernels/mishaps/mishap-place.js";
import { upperFirst } from "../kernels/upper-first.js";
import type { HeadfallProfile } from "../profile/profile-element.js";
import { verdictWord } from "../verdicts/verdict-mark.js";
import type { MishapsRoom } from "./room.js";

const ARM = 13;

/** The line from the side with the place of the chosen mishap marked, and the verdicts it makes. */
export function drawingView(room: MishapsRoom) {
  const { mishaps, chosen, struck, layout, system, acts } = room;
  const row = chosen === undefined ? undefined : mishaps.rows[chosen];
  if (row === undefined) return nothing;
  if (struck === undefined)
    return html`<p class="quiet">No pipe leads there: nothing can be drawn of it.</p>`;
  const { path, checked } = struck;
  const spot = layout === undefined ? undefined : spotOfMishap(layout, struck);
  return html`<figure class="struck">
    <div class="drawing">
      <headfall-profile .checked=${checked} .path=${path} moment="fullBusiest" .drinker=${-1} .system=${system}
        .gradeWords=${"grade line of the plan, full and busiest"}
        @profile-drawn=${(event: Event) => acts.drawn((event.target as HeadfallProfile).layout)}></headfall-profile>
      ${
        layout === undefined || spot === undefined
          ? nothing
          : html`<svg class="place" width=${layout.width} height=${layout.height} viewBox=${`0 0 ${layout.width} ${layout.height}`} aria-hidden="true">
              <circle cx=${spot.x} cy=${spot.y} r=${ARM}></circle>
              <path d=${`M${spot.x} ${spot.y - ARM - 14}v11m-4 -5l4 5l4 -5`}></path>
            </svg>`
      }
    </div>
    <figcaption class="quiet">${upperFirst(writeRowName(row, mishaps))}${spot === undefined ? ": it has no one place." : ": where the ring is."}
      Marks are those with the mishap; the grade line and the water are those of the plan without it.</figcaption>
    <details><summary>Every drinker with it</summary><ul class="who">${drinkersByVerdict(checked).map(
      ([verdict, names]) => html`<li>${verdictWord(verdict)} <span>${writeNames(names)}</span></li>`,
    )}</ul></details>
  </figure>`;
}
