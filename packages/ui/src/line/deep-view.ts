import { html, noChange, nothing } from "lit";
import { guard } from "lit/directives/guard.js";
import { drinkersTable } from "../tables/drinkers-table.js";
import { runsTable } from "../tables/runs-table.js";
import { sourcesTable } from "../tables/sources-table.js";
import { type Board, shownOn } from "./board.js";
import { drawingsShown, planTable } from "./drawings-view.js";
import { drinkerView } from "./drinker-view.js";
import { cautionsView, defaultsView, fillingView } from "./findings-view.js";

/**
 * Below the drawings: the drinker looked at, cautions, the plan as tables, and every figure. All this waits while a hand
 * drags, since it looks at the drawing; how a number was got follows at once.
 */
export function deepView(board: Board) {
  const { plan, checked, system, how, acts } = board;
  const shown = shownOn(board);
  return html`
    ${board.isWaiting("below") ? noChange : guard(shown, () => belowView(board))}
    ${board.isWaiting("tables") ? noChange : guard(shown, () => tablesView(board))}
    <headfall-how .plan=${plan} .checked=${checked} .system=${system} .subject=${how} @how-closed=${acts.closeHow}></headfall-how>
  `;
}

function belowView(board: Board) {
  const { checked, system } = board;
  return html`
    ${drinkerView(board)}
    <headfall-measure .plan=${board.checkedPlan} .checked=${checked} .system=${system} .day=${board.day}
      .lookedAt=${board.lookedAt}></headfall-measure>
    ${cautionsView(checked, system)} ${fillingView(board)}
  `;
}

function tablesView(board: Board) {
  const { plan, checked, system, lookedAt, isWide, showsAll, acts } = board;
  const drinkers = {
    checked,
    system,
    lookedAt,
    showsAll,
    onChoose: acts.lookClosely,
    onShowAll: acts.showAll,
  };
  return html`
    ${isWide ? tableSection("typed-plan", "The plan as a table", planTable(board)) : nothing}
    ${tableSection("drinkers", "Every drinker", drinkersTable(drinkers))}
    ${tableSection("runs", "Every run", runsTable(checked, system))}
    ${tableSection("sources", "Water in store", sourcesTable(checked, system))} ${defaultsView(board)}
    <section aria-labelledby="save" class="save">
      <h2 id="save">Save and print</h2>
      <headfall-save .plan=${plan} .checked=${checked} .system=${system} .drawings=${drawingsShown}></headfall-save>
    </section>
  `;
}

function tableSection(id: string, title: string, table: unknown) {
  return html`<section class="deep" aria-labelledby=${id} part=${id}>
    <h2 id=${id}>${title}</h2>
    ${table}
  </section>`;
}
