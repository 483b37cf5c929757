import type { FrontAnswer } from "@headfall/hydraulics";
import { html, nothing } from "lit";
import { frontView } from "./front-view.js";
import { CHANGED, lookingView } from "./looking-view.js";
import type { CureRoom, TradedRoom } from "./room.js";

/** What more, or less, would cost: looked for only when it is wanted. */
export function tradeView(room: CureRoom, trying: string | undefined, traded: TradedRoom | undefined) {
  const { acts } = room;
  return html`<section aria-labelledby="trade"><h3 id="trade">What more would cost</h3>
    <p>Head to spare against cost, and height of the stand against pipe: of sizes and stands that work, those that nothing beats in both.</p>
    ${
      trying === undefined
        ? html`<div class="buttons"><button type="button" @click=${acts.trade}>${traded === undefined ? "Show the trade-offs" : "Show them again"}</button></div>`
        : lookingView("Looking for trade-offs", trying, acts.cancelTrade)
    }
    ${traded === undefined ? nothing : html`${isOld(traded) ? CHANGED : nothing}${frontView(traded)}`}
  </section>`;
}

/** Whether the plan has become another one, and none of these. */
function isOld({ plan, of, front, isTaken }: TradedRoom): boolean {
  return of !== plan && !pointsOf(front).some((point) => isTaken(point.plan));
}

const pointsOf = ({ costAgainstMargin, heightAgainstSize }: FrontAnswer) => [
  ...costAgainstMargin,
  ...heightAgainstSize,
];
