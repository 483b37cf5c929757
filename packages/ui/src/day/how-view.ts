import { BEHAVIOUR, SHORT_BELOW, TAKEN_IN } from "@headfall/hydraulics";
import { html, nothing } from "lit";
import { showVolume } from "../kernels/shown.js";
import { numberButton } from "../verdicts/number-button.js";
import type { DayRoom } from "./room.js";

const percent = (share: number): string => `${Math.round(share * 100)} %`;

/** The rules a day goes by, with their figures. */
export function howView(room: DayRoom) {
  const { result, checked } = room;
  const { solver } = result;
  const batches = (checked?.flock?.pens ?? []).flatMap(({ pen, batches: each }) =>
    each.map((batch) => ({ pen, ...batch })),
  );
  return html`<section aria-labelledby="how-day"><h3 id="how-day">How it was got</h3>
    <details><summary>The rules of a simulated day</summary>
      <ul>
        <li>Each bird is followed by itself from midnight to midnight. Chance is drawn from the number of the day: day ${result.seed} of this plan is the same on every machine.</li>
        ${batches.map(
          ({ pen, kindName, bouts, boutVolume }) =>
            html`<li>${kindName} of ${pen}: about ${Number(bouts.toPrecision(2))} bouts a day of ${showVolume(boutVolume, room.system)} or so, at random along the hours they drink in.</li>`,
        )}
        <li>What a day takes, all birds together, as a rule: ${numberButton("where it comes from", { of: "flockIntake", which: result.figure, hot: room.hot })}. One bird wants more or less than the next: ${percent(BEHAVIOUR.spread)} of it either way is usual.</li>
        <li>A bout makes up what a bird is behind, and one bout ahead; it is ${BEHAVIOUR.least} to ${BEHAVIOUR.most} usual ones.</li>
        <li>A bird takes a free place at random. With every place taken it waits ${BEHAVIOUR.patience} s, then goes and comes back after ${Math.round(BEHAVIOUR.retry / 60)} minutes on average. The first to come is the first to drink.</li>
        <li>Of what a worked trigger passes a bird takes in ${percent(TAKEN_IN.share)} (${percent(TAKEN_IN.least)} to ${percent(TAKEN_IN.most)} are possible), never more than it can swallow. Birds round one float drinker share what it lets in.</li>
        <li>A bird that got less than ${percent(SHORT_BELOW)} of what it wanted came short.</li>
        <li>Whenever the drinkers at work changed, the line was solved for those at work: ${solver.solves} different sets, asked for ${solver.asked} times.${solver.unsolved > 0 ? html` <strong>${solver.unsolved} sets could not be solved and gave nothing.</strong>` : nothing}</li>
        <li>Patience, spread and what is taken in are common practice, from memory: nothing published says how these birds behave.</li>
      </ul>
    </details></section>`;
}
