import { html, nothing } from "lit";
import type { Board, BoardView, Tool } from "./board.js";

/** Undo and redo, each with the name of the step it means. */
function undoView({ store, acts }: Board) {
  const button = (word: string, words: string | undefined, act: () => void) =>
    html`<button ?disabled=${words === undefined} title=${words === undefined ? nothing : `${word}: ${words}`}
      aria-label=${words === undefined ? word : `${word}: ${words}`} @click=${act}>${word}</button>`;
  return html`<div class="undo" role="group" aria-label="Steps" part="steps">
    ${button("Undo", store.canUndo?.words, acts.undo)} ${button("Redo", store.canRedo?.words, acts.redo)}
  </div>`;
}

const VIEWS: readonly { view: BoardView; label: string }[] = [
  { view: "above", label: "Above" },
  { view: "side", label: "Side" },
  { view: "table", label: "Table" },
];

/** Over the drawings: the switch between views, or the tools where all views are shown; and the steps. */
export function barView(board: Board) {
  return html`${board.isWide ? toolsView(board) : viewsView(board)} ${undoView(board)}`;
}

/** Under the drawing from above, where only one view is shown: by the thumb. */
export function toolsBelow(board: Board) {
  return !board.isWide && board.view === "above" ? toolsView(board) : nothing;
}

/** Turns from one view of the plan to another, where there is room for one only. */
function viewsView({ view, acts }: Board) {
  return html`<div class="views" role="group" aria-label="The plan from" part="views">
    ${VIEWS.map(
      ({ view: each, label }) =>
        html`<button aria-pressed=${each === view ? "true" : "false"} @click=${() => acts.turnTo(each)}>${label}</button>`,
    )}
  </div>`;
}

const TOOLS: readonly { tool: Tool; label: string }[] = [
  { tool: "hand", label: "Choose and move" },
  { tool: "run", label: "Draw a run" },
  { tool: "drinkers", label: "Put drinkers" },
];

function toolsView({ tool: chosen, acts }: Board) {
  return html`<div class="tools" role="group" aria-label="What the hand does" part="tools">
    ${TOOLS.map(
      ({ tool, label }) =>
        html`<button aria-pressed=${tool === chosen ? "true" : "false"} @click=${() => acts.take(tool)}>${label}</button>`,
    )}
  </div>`;
}
