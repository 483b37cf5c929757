import { nothing, svg } from "lit";
import { pathOf } from "../../kernels/path-of.js";
import type { PartOutline } from "../../kernels/side/part-outline.js";

/** The outline of the chosen part. */
export function chosenView(outline: PartOutline | undefined) {
  switch (outline?.kind) {
    case undefined:
      return nothing;
    case "way":
      return svg`<path class="outline under" d=${pathOf(outline.spots)}></path>`;
    case "rings":
      return outline.spots.map(({ x, y }) => svg`<circle class="outline" cx=${x} cy=${y} r="11"></circle>`);
    case "box": {
      const { left, right, top, bottom } = outline;
      return svg`<rect class="outline" x=${left} y=${top} width=${right - left} height=${bottom - top} rx="6"></rect>`;
    }
  }
}
