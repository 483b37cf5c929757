import { html, nothing } from "lit";
import type { Board, BoardView } from "./board.js";

/** Undo and redo, each with the name of the step it means. */
export function undoView({ store, acts }: Board) {
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

/** Turns from one view of the plan to another, where there is room for one only. */
export function viewsView({ view, isWide, acts }: Board) {
  if (isWide) return nothing;
  return html`<div class="views" role="group" aria-label="The plan from" part="views">
    ${VIEWS.map(
      ({ view: each, label }) =>
        html`<button aria-pressed=${each === view ? "true" : "false"} @click=${() => acts.turnTo(each)}>${label}</button>`,
    )}
  </div>`;
}
