import { html, noChange } from "lit";
import { guard } from "lit/directives/guard.js";
import { type Board, refusalFor, shownOn } from "./board.js";
import { drinkerChoice } from "./drinker-view.js";
import { partFigures } from "./figures-view.js";
import { momentsView } from "./moments-view.js";

/**
 * Beside the drawings, under the sentence: the moment shown, the chosen part with all that can be changed, the drinker
 * looked at. While a hand drags, all this waits.
 */
export const sideView = (board: Board) =>
  board.isWaiting("panel") ? noChange : guard(shownOn(board), () => panelView(board));

function panelView(board: Board) {
  const { plan, checked, part, system, moment, shown, lookedAt, acts } = board;
  return html`<headfall-part
      .plan=${plan} .checked=${checked} .selected=${part} .system=${system} .moment=${moment} .refusal=${refusalFor(board, "headfall-part")}
    ></headfall-part>
    ${partFigures(board)} ${momentsView(shown, acts.show)}
    ${drinkerChoice(checked, checked.line.drinkers.id[lookedAt] ?? "", (drinker) =>
      acts.look(checked.line.drinkers.id.indexOf(drinker)),
    )}`;
}
