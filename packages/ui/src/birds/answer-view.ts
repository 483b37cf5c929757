import { html, nothing } from "lit";
import { showVolume } from "../kernels/shown.js";
import { wantRoom } from "../room/no-line.js";
import { numberButton } from "../verdicts/number-button.js";
import { neededAnswer } from "./needed-view.js";
import { type BirdsRoom, weekName } from "./room.js";

/** At the head of the room: what the birds drink now, on a hot day, and at most in the coming weeks. */
export function answerView(room: BirdsRoom) {
  const { flock, system, hotWeeks, weeks, everyBird } = room;
  if (flock === undefined) return nothing;
  if (flock.pens.some(({ isElsewhere }) => isElsewhere)) return everyBirdView(everyBird, system);
  const volume = (value: number) => showVolume(value, system);
  const [hot] = hotWeeks;
  const most = mostOf(weeks);
  return html`<dl class="answer">
    <div>
      <dt>A day now</dt>
      <dd>
        <span class="large">${numberButton(volume(flock.intakeSize), { of: "flockIntake", which: "size" })}</span> to size on,
        ${numberButton(volume(flock.intakeExpect), { of: "flockIntake", which: "expect" })} to expect
      </dd>
    </div>
    ${
      hot === undefined
        ? nothing
        : html`<div>
            <dt>A hot day</dt>
            <dd><span class="large">${numberButton(volume(hot.intakeSize), { of: "flockIntake", which: "size", hot: true })}</span> to size on</dd>
          </div>`
    }
    ${
      most === undefined || most.week === 0
        ? nothing
        : html`<div>
            <dt>Most, ${weekName(most.week)}</dt>
            <dd><span class="large">${numberButton(volume(most.intakeSize), { of: "flockIntake", which: "size", week: most.week })}</span> to size on</dd>
          </div>`
    }
    ${neededAnswer(room)}
  </dl>`;
}

/** Where some drink from loose waterers, the check counts only those at the line: here all of them count. */
function everyBirdView(weeks: BirdsRoom["everyBird"], system: BirdsRoom["system"]) {
  const [now] = weeks ?? [];
  if (weeks === undefined || now === undefined) return html`<p role="status">Working it out ...</p>`;
  const volume = (value: number) => showVolume(value, system);
  const most = weeks.reduce((a, b) => (b.now.size > a.now.size * 1.005 ? b : a));
  const figure = (term: string, value: number, rest = "") =>
    html`<div><dt>${term}</dt><dd><span class="large">${volume(value)}</span> to size on${rest}</dd></div>`;
  return html`<dl class="answer">
      ${figure("A day now, every bird", now.now.size, `, ${volume(now.now.expect)} to expect`)}
      ${figure("A hot day", now.hot.size)}
      ${most === now ? nothing : figure(`Most, ${weekName(most.week)}`, most.now.size)}
    </dl>
    <p class="quiet">What each bird of its kind and age drinks in this weather, times their number, with what drinkers of
      the line spill; what is spilled at loose waterers is told in the yard. Below, only birds that drink from the line count.
      <button type="button" @click=${wantRoom("yard")}>Go to the yard</button></p>`;
}

function mostOf(weeks: BirdsRoom["weeks"]) {
  return weeks.reduce<BirdsRoom["weeks"][number] | undefined>(
    (most, week) => (most === undefined || week.intakeSize > most.intakeSize * 1.005 ? week : most),
    undefined,
  );
}
