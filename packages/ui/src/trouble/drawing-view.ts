import { html, nothing, svg } from "lit";
import { ANSWER_WORDS } from "../kernels/trouble/answer-words.js";
import { runsToLookAt } from "../kernels/trouble/drinkers-by-run.js";
import { spotsTold } from "../kernels/trouble/told-drawing.js";
import type { DrinkerChosenEvent } from "../profile/drinker-chosen-event.js";
import type { HeadfallProfile } from "../profile/profile-element.js";
import type { Drawn, ToldDrawing, TroubleRoom } from "./room.js";

const RING = 13;

/** The line from the side: first what was seen, then each drinker it was seen at, by a press near it. */
export function drawingView(room: TroubleRoom, drawn: Drawn, told: ToldDrawing | undefined) {
  const { line, plan, acts } = room;
  const runs = runsToLookAt(line, plan).filter(({ drinkers }) => drinkers.length > 0);
  if (runs.length === 0) return nothing;
  const toggled = (event: Event) => acts.draw({ isUnfolded: (event.target as HTMLDetailsElement).open });
  return html`<details class="run" ?open=${drawn.isUnfolded} @toggle=${toggled}>
    <summary><span><strong>On the drawing</strong> <span class="quiet">press the drinkers</span></span></summary>
    ${
      drawn.isUnfolded
        ? html`${choiceView(
            room,
            drawn,
            runs.map(({ run }) => run),
          )} ${figureView(room, drawn, told)}`
        : nothing
    }
  </details>`;
}

function choiceView({ acts }: TroubleRoom, drawn: Drawn, runs: readonly string[]) {
  const answer = (look: Drawn["look"]) =>
    ANSWER_WORDS[look].map(
      ({ sees, words }) =>
        html`<button type="button" aria-pressed=${drawn.look === look && drawn.sees === sees ? "true" : "false"}
          @click=${() => acts.draw({ look, sees })}>${words}</button>`,
    );
  const chosen = (event: Event) => acts.draw({ run: (event.target as HTMLSelectElement).value });
  return html`<div class="row" role="group" aria-label="What a press on the drawing tells">
      <span class="label" aria-hidden="true">A press tells</span>
      <span class="answers">${answer("gives")} ${answer("drips")}</span>
    </div>
    ${
      runs.length < 2
        ? nothing
        : html`<p><label class="choice">Drawn up to
            <select @change=${chosen}>${runs.map((run) => html`<option ?selected=${run === drawn.run}>${run}</option>`)}</select></label></p>`
    }`;
}

function figureView(room: TroubleRoom, { look, sees, layout }: Drawn, told: ToldDrawing | undefined) {
  const { line, signs, system, acts } = room;
  if (told === undefined) return html`<p class="quiet">No pipe leads there: nothing can be drawn of it.</p>`;
  const pressed = (event: DrinkerChosenEvent) => {
    event.stopPropagation();
    acts.tell({ look, at: "drinker", id: line.drinkers.id[event.drinker]! }, sees);
  };
  const spots = layout === undefined ? [] : spotsTold(layout, line, signs);
  return html`<figure class="press">
    <div class="drawing">
      <headfall-profile .checked=${told.checked} .path=${told.path} moment="ordinary" .drinker=${-1} .system=${system}
        .gradeWords=${"grade line of the plan, an ordinary hour"} @drinker-chosen=${pressed}
        @profile-drawn=${(event: Event) => acts.draw({ layout: (event.target as HeadfallProfile).layout })}></headfall-profile>
      ${
        layout === undefined
          ? nothing
          : html`<svg class="rings" width=${layout.width} height=${layout.height} viewBox=${`0 0 ${layout.width} ${layout.height}`} aria-hidden="true">
              ${spots.map(({ x, y }) => svg`<circle cx=${x} cy=${y} r=${RING}></circle>`)}</svg>`
      }
    </div>
    <figcaption class="quiet">Ringed drinkers were told of, and wear the mark of what was told; the others that of the plan's check. A second
      press takes it back. With keys: the lists of the runs below.</figcaption>
  </figure>`;
}
