import { html, nothing } from "lit";
import { showVolume } from "../kernels/shown.js";
import { numberButton } from "../verdicts/number-button.js";
import { neededAnswer } from "./needed-view.js";
import { type BirdsRoom, weekName } from "./room.js";

/** At the head of the room: what the birds drink now, on a hot day, and at most in the coming weeks. */
export function answerView(room: BirdsRoom) {
  const { flock, system, hotWeeks, weeks } = room;
  if (flock === undefined) return nothing;
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

function mostOf(weeks: BirdsRoom["weeks"]) {
  return weeks.reduce<BirdsRoom["weeks"][number] | undefined>(
    (most, week) => (most === undefined || week.intakeSize > most.intakeSize * 1.005 ? week : most),
    undefined,
  );
}
