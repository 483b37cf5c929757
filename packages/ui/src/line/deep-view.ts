import { html, nothing } from "lit";
import { drinkersTable } from "../tables/drinkers-table.js";
import { runsTable } from "../tables/runs-table.js";
import { sourcesTable } from "../tables/sources-table.js";
import type { Board } from "./board.js";
import { drawingsShown, planTable } from "./drawings-view.js";
import { drinkerView } from "./drinker-view.js";
import { cautionsView, defaultsView, fillingView } from "./findings-view.js";

/** Below the drawings: the drinker looked at, cautions, the plan as tables, and every figure. */
export function deepView(board: Board) {
  const { plan, checked, how, lookedAt, moment, system, isWide, showsAll, acts } = board;
  return html`
    ${drinkerView(checked, lookedAt, moment, system)} ${cautionsView(checked, system)} ${fillingView(checked, system)}
    ${
      isWide
        ? html`<section class="deep" aria-labelledby="typed-plan">
            <h2 id="typed-plan">The plan as a table</h2>
            ${planTable(board)}
          </section>`
        : nothing
    }
    <section class="deep" aria-labelledby="drinkers">
      <h2 id="drinkers">Every drinker</h2>
      ${drinkersTable({
        checked,
        system,
        lookedAt,
        showsAll,
        onChoose: acts.lookClosely,
        onShowAll: acts.showAll,
      })}
    </section>
    <section class="deep" aria-labelledby="runs">
      <h2 id="runs">Every run</h2>
      ${runsTable(checked, system)}
    </section>
    <section class="deep" aria-labelledby="sources">
      <h2 id="sources">Water in store</h2>
      ${sourcesTable(checked, system)}
    </section>
    ${defaultsView(checked)}
    <section aria-labelledby="save" class="save">
      <h2 id="save">Save and print</h2>
      <headfall-save .plan=${plan} .checked=${checked} .system=${system} .drawings=${drawingsShown}></headfall-save>
    </section>
    <headfall-how .plan=${plan} .checked=${checked} .system=${system} .subject=${how} @how-closed=${acts.closeHow}></headfall-how>
  `;
}
