import { writeClock } from "@headfall/hydraulics";
import { html, nothing } from "lit";
import { DAY_SECONDS } from "../kernels/day/day-index.js";
import { layDayMarks } from "../kernels/day/day-marks.js";
import type { HeadfallProfile } from "../profile/profile-element.js";
import { birdAt, marksView } from "./marks-view.js";
import { SPEEDS } from "./player.js";
import { birdsWord, type PlayedRoom, sumOf } from "./room.js";

/** The day on the drawing, with what it is played by. */
export function playView(room: PlayedRoom) {
  return html`<section aria-labelledby="played">
    <h3 id="played">The day at the drinkers</h3>
    ${drawingView(room)} ${barView(room)} ${nowView(room)}
  </section>`;
}

function drawingView(room: PlayedRoom) {
  const { checked, ways, way, system, acts } = room;
  const path = ways[way]?.path;
  if (checked === undefined || path === undefined) return nothing;
  return html`${ways.length < 2 ? nothing : wayChoice(room)}
    <div class="drawing">
      <headfall-profile .checked=${checked} .path=${path} moment="ordinary" .gradeWords=${"grade line of an ordinary hour"} .drinker=${-1} .system=${system}
        @profile-drawn=${(event: Event) => acts.drawn((event.target as HeadfallProfile).layout)}></headfall-profile>
      ${marksView(room)}
    </div>
    <ul class="key" aria-label="Marks of the birds">
      <li>${keyBird(false)} drinking, with their number if more than one</li>
      <li>${keyBird(true)} waiting for a place</li>
      <li><svg viewBox="0 0 30 16" width="30" height="16" aria-hidden="true"><path class="surface" d="M2 8H28"></path></svg> water in the source now</li>
    </ul>
    <p class="quiet">Birds and the broken line across the source go with the day. The grade line and the water drawn filled are those of an ordinary hour, the verdicts those of the line.</p>`;
}

const keyBird = (isWaiting: boolean) =>
  html`<svg viewBox="0 0 20 20" width="20" height="20" aria-hidden="true">${birdAt(10, 10, isWaiting)}</svg>`;

function wayChoice({ ways, way, acts, index, result }: PlayedRoom) {
  const pensAt = (drinkers: readonly number[]) =>
    result.pens.flatMap(({ pen }, p) =>
      index.drinkersOfPen[p]!.some((d) => drinkers.includes(d)) ? [pen] : [],
    );
  const named = ({ name, path }: PlayedRoom["ways"][number]) => {
    const pens = pensAt(path.drinkers);
    return pens.length === 0 ? name : `${name} (${pens.join(", ")})`;
  };
  return html`<label class="choice">Drawn as far as
    <select @change=${(event: Event) => acts.lookAlong(Number((event.target as HTMLSelectElement).value))}>
      ${ways.map((each, k) => html`<option value=${k} ?selected=${k === way}>${named(each)}</option>`)}
    </select></label>`;
}

function barView({ moment, isPlaying, rate, acts, result }: PlayedRoom) {
  const [busiest] = [...result.pens].sort((a, b) => b.mostAtOnce - a.mostAtOnce);
  return html`<div class="bar">
    <button type="button" class="chief" @click=${acts.playOrPause}>${isPlaying ? "Pause" : "Play"}</button>
    <input type="range" aria-label="Time of day" min="0" max=${DAY_SECONDS} step="60" .value=${String(Math.round(moment.time / 60) * 60)}
      aria-valuetext=${`${clockOf(moment.time)}, ${sumOf(moment.drinking)} drink, ${sumOf(moment.waiting)} wait`}
      @input=${(event: Event) => acts.seek(Number((event.target as HTMLInputElement).value))} />
    <label class="choice">Speed
      <select @change=${(event: Event) => acts.speed(Number((event.target as HTMLSelectElement).value))}>
        ${SPEEDS.map((speed) => html`<option value=${speed.rate} ?selected=${speed.rate === rate}>${speed.words}</option>`)}
      </select></label>
    ${
      busiest === undefined || busiest.mostAtOnce === 0
        ? nothing
        : html`<button type="button" @click=${() => {
            acts.lookAlong(undefined);
            acts.seek(busiest.mostAt);
          }}>Go to the busiest moment</button>`
    }
  </div>`;
}

/** The end of the day is 24:00, not the midnight it began with. */
const clockOf = (time: number): string => (time >= DAY_SECONDS ? "24:00" : writeClock(time));

/** The moment in words, drinkers off the drawing counted. */
function nowView(room: PlayedRoom) {
  const { moment, result, layout, index } = room;
  const busy = moment.at.filter((birds) => birds > 0).length;
  const drink = sumOf(moment.drinking);
  const away = layout === undefined ? undefined : layDayMarks(layout, index, moment).elsewhere;
  const waiting = result.pens.flatMap(({ pen }, p) => {
    const birds = moment.waiting[p] ?? 0;
    return birds === 0 ? [] : [`${birdsWord(birds)} of ${pen} ${birds === 1 ? "waits" : "wait"}`];
  });
  return html`<p class="now"><strong class="clock">${clockOf(moment.time)}</strong>
    ${drink === 0 ? "Nobody drinks." : `${birdsWord(drink)} ${drink === 1 ? "drinks" : "drink"} at ${busy} of ${moment.at.length} drinkers.`}
    ${waiting.length === 0 ? "Nobody waits." : `${waiting.join("; ")}.`}
    ${away !== undefined && away.drinking > 0 ? `Of those that drink, ${away.drinking} are not on this drawing.` : nothing}</p>`;
}
