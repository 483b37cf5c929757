import { html, noChange, nothing } from "lit";
import type { Drawing } from "../controllers/drag-pace.js";
import type { DrinkerChosenEvent } from "../profile/drinker-chosen-event.js";
import type { SavedDrawing } from "../sheet/saved-drawing.js";
import { type Board, refusalFor } from "./board.js";

/** The drawings: both where there is room, else the one turned to. While a hand drags on one, the other waits. */
export function drawingsView(board: Board) {
  const { isWide, view } = board;
  const refused = refusalFor(board, "drawing");
  return html`${refused === "" ? nothing : html`<p class="problem" role="alert">${refused}</p>`}
  ${isWide || view === "above" ? unlessWaiting(board, "above", aboveView) : nothing}
  ${isWide || view === "side" ? unlessWaiting(board, "side", fromTheSideView) : nothing}
  ${!isWide && view === "table" ? planTable(board) : nothing}`;
}

const unlessWaiting = (board: Board, drawing: Drawing, view: (board: Board) => unknown) =>
  board.isWaiting(drawing) ? noChange : view(board);

/** The plan as tables, every figure in them to be typed anew. */
export function planTable(board: Board) {
  const { plan, checked, part, system } = board;
  return html`<headfall-plan-table
    .plan=${plan} .checked=${checked} .selected=${part} .system=${system} .refusal=${refusalFor(board, "headfall-plan-table")}
  ></headfall-plan-table>`;
}

function aboveView({ plan, checked, part, system, moment, tool }: Board) {
  return html`<div class="drawing" part="above">
    <headfall-above
      .plan=${plan} .checked=${checked} .selected=${part} .system=${system} .moment=${moment} .tool=${tool}
    ></headfall-above>
  </div>`;
}

function fromTheSideView({ plan, checked, path, part, shown, moment, lookedAt, system, acts }: Board) {
  return html`<div class="drawing" part="side">
    <headfall-profile
      .checked=${checked} .path=${path} .moment=${moment} .drinker=${lookedAt} .system=${system}
      @drinker-chosen=${(event: DrinkerChosenEvent) => acts.look(event.drinker)}
    ></headfall-profile>
    <headfall-profile-hands
      .plan=${plan} .selected=${part} .shows=${shown === "bothEnds" ? "band" : "moment"}
      @drinker-chosen=${(event: DrinkerChosenEvent) => acts.look(event.drinker)}
    ></headfall-profile-hands>
  </div>`;
}

/** The drawings on the screen now, for pictures of them; found where the views above have put them. */
export function drawingsShown(this: HTMLElement): readonly SavedDrawing[] {
  const stage = (this.getRootNode() as ShadowRoot).querySelector(".stage");
  return DRAWINGS.flatMap(({ element, name }) => {
    const svg = stage?.querySelector(element)?.shadowRoot?.querySelector<SVGSVGElement>("svg[part~=drawing]");
    return svg == null ? [] : [{ name, svg }];
  });
}

const DRAWINGS = [
  { element: "headfall-above", name: "From above" },
  { element: "headfall-profile", name: "From the side" },
] as const;
