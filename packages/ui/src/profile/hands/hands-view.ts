import { nothing, svg } from "lit";
import { repeat } from "lit/directives/repeat.js";
import type { Selected } from "../../kernels/selected.js";
import { partOutline } from "../../kernels/side/part-outline.js";
import type { PlacedHandle } from "../../kernels/side/place-handles.js";
import type { RunLabel } from "../../kernels/side/run-labels.js";
import { bandView } from "./band-view.js";
import { chosenView } from "./chosen-view.js";
import { dragView, handleView } from "./handle-view.js";
import type { DrawnLine } from "./hands-host.js";
import type { Holding } from "./holding.js";
import { labelsView } from "./labels-view.js";

/** What lies over the drawing. */
export interface HandsShown extends DrawnLine {
  readonly labels: readonly RunLabel[];
  readonly placed: readonly PlacedHandle[];
  readonly holding: Holding;
  readonly selected: Selected | undefined;
  readonly shows: "moment" | "band";
}

/** All that lies over the drawing, from the least to the most urgent: labels, band, choice, handles, the one in hand. */
export function handsView(shown: HandsShown) {
  const { layout, request, system, labels, placed, holding, selected, shows } = shown;
  const { checked, path } = request;
  const held = placed.find(({ handle }) => handle.key === holding.heldKey);
  return svg`
    <g aria-hidden="true">
      ${
        request.window !== undefined && request.window[0] > 0
          ? svg`<path class="break" d="M${layout.plot.left} ${layout.plot.top}V${layout.plot.bottom}"></path>`
          : nothing
      }
      ${labelsView(labels)}
      ${shows === "band" ? bandView(layout, request, system) : nothing}
      ${chosenView(partOutline(layout, checked.line, path, selected))}
    </g>
    ${repeat(
      placed,
      ({ handle }) => handle.key,
      (one) => handleView(one, one === held, system),
    )}
    ${
      held !== undefined && holding.drag !== undefined
        ? svg`<g aria-hidden="true">${dragView(held, holding.drag, layout.width, system)}</g>`
        : nothing
    }`;
}
