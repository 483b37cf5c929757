import { html } from "lit";
import type { Selected } from "../../kernels/selected.js";
import type { AboveTool } from "../states/hand.js";

const HINTS: Readonly<Record<AboveTool, string>> = {
  hand: "Press a part to choose it, drag it to move it.",
  run: "Press where the run starts, draw, let go.",
  drinkers: "Press on a run: drinkers are hung there.",
};

/** What can be done with a part that is chosen, in the hand tool. */
const CHOSEN_HINTS: Readonly<Record<Selected["kind"], string>> = {
  source: "Drag the source to move it.",
  joint: "Drag it to move it, or onto another to join them.",
  run: "Drag the run to bend it; hold it to branch off.",
  drinkers: "Drag the drinkers along their run.",
};

/** What a press does now, in one line; a plan without pipe invites to draw. */
export function hintFor(tool: AboveTool, isEmpty: boolean, selected: Selected | undefined): string {
  if (isEmpty && tool === "run") return "Press at the source, draw to where the birds drink, let go.";
  if (isEmpty) return "No pipe yet. Draw it: from the source to where the birds drink.";
  return tool === "hand" && selected !== undefined ? CHOSEN_HINTS[selected.kind] : HINTS[tool];
}

export interface ZoomWishes {
  readonly zoom: (factor: number) => void;
  readonly fit: () => void;
}

/** Buttons on the drawing, in reach of a thumb. */
export function zoomButtons({ zoom, fit }: ZoomWishes) {
  const sign = (path: string) =>
    html`<svg viewBox="0 0 20 20" width="20" height="20" aria-hidden="true"><path d=${path}></path></svg>`;
  return html`<div class="buttons" part="buttons" role="group" aria-label="View">
    <button type="button" aria-label="Closer" title="Closer (+)" @click=${() => zoom(1.4)}>${sign("M10 3V17M3 10H17")}</button>
    <button type="button" aria-label="Further away" title="Further away (-)" @click=${() => zoom(1 / 1.4)}>${sign("M3 10H17")}</button>
    <button type="button" aria-label="Show the whole plan" title="Show the whole plan (0)" @click=${fit}
      >${sign("M3 7V3H7M13 3H17V7M17 13V17H13M7 17H3V13M7 10H13M10 7V13")}</button>
  </div>`;
}

/** What the keys do, for those who use them. */
export const KEYS_SPOKEN =
  "Tab walks through the parts, Enter chooses one. Arrows move what is chosen, with Shift ten times as far; with nothing chosen they move the view. R draws a run from what is chosen, N hangs drinkers on a chosen run, D duplicates, Delete deletes, plus and minus enlarge and shrink, 0 shows the whole plan, Escape lets go.";
