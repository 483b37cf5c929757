import { keyOfLook, type Look, type Sign, writeSigns } from "@headfall/hydraulics";
import { html, nothing } from "lit";
import { type PenToLookAt, pensToLookAt } from "../kernels/trouble/drinkers-by-pen.js";
import { type RunToLookAt, runsToLookAt, toldOf } from "../kernels/trouble/drinkers-by-run.js";
import { isFoundEmpty } from "../kernels/trouble/told-signs.js";
import { answerRow, answerRowForAll } from "./answer-row.js";
import { drawingView } from "./drawing-view.js";
import { jugView } from "./jug-view.js";
import type { Drawn, ToldDrawing, TroubleRoom } from "./room.js";
import { roveAnswers } from "./rove-answers.js";
import { standField } from "./stand-field.js";

const HOUR = 3600;
const LAST_SEEN = [
  { words: "half a day ago", seconds: 12 * HOUR },
  { words: "a day ago", seconds: 24 * HOUR },
  { words: "two days ago", seconds: 48 * HOUR },
  { words: "a week ago", seconds: 7 * 24 * HOUR },
] as const;

/** Where the keeper says what is seen, place by place. */
export function seenView(room: TroubleRoom, drawn: Drawn, told: ToldDrawing | undefined) {
  const { line, plan, signs } = room;
  return html`<section class="say" aria-labelledby="seen">
    <h3 id="seen">What you see</h3>
    <p class="quiet">Press what you saw; what you have not looked at, leave. A second press takes it back.</p>
    ${line.sources.map((source) => sourceView(room, source))}
    ${isFoundEmpty(signs) ? lastSeenView(room) : nothing}
    ${pensToLookAt(line, plan).map((pen) => penView(room, pen))}
    ${drawingView(room, drawn, told)}
    ${runsToLookAt(line, plan).map((run) => runView(room, run))}
    ${line.drinkers.count === 0 ? nothing : jugView(room)}
  </section>`;
}

function sourceView(room: TroubleRoom, { id, levels }: TroubleRoom["line"]["sources"][number]) {
  const look = (kind: "water" | "night" | "day" | "ground" | "lid"): Look => ({
    look: kind,
    at: "source",
    id,
  });
  const row = (kind: Parameters<typeof look>[0], words: string) =>
    answerRow(room, words, [look(kind)], `${words}, ${id}`);
  return html`<fieldset><legend>${id}</legend>
    ${row("water", "Water in it")} ${row("night", "Level overnight")} ${row("day", "Level in a day, against its mark")}
    ${row("ground", "Ground around it")}
    ${room.seen.get(keyOfLook(look("lid"))) === undefined && !hasTrouble(room.signs) ? nothing : row("lid", "With its lid off, a weak drinker")}
    ${standField(room, id, levels.full)}
  </fieldset>`;
}

/** A lid is only taken off for a drinker that gives too little. */
const hasTrouble = (signs: readonly Sign[]): boolean =>
  signs.some((sign) => sign.look === "jug" || (sign.look === "gives" && sign.sees !== "fine"));

function lastSeenView({ lastSeen, acts }: TroubleRoom) {
  return html`<p><label class="choice">It was last seen with water
    <select @change=${(event: Event) => acts.sayLastSeen(Number((event.target as HTMLSelectElement).value))}>
      ${LAST_SEEN.map(({ words, seconds }) => html`<option value=${seconds} ?selected=${seconds === lastSeen}>${words}</option>`)}
    </select></label></p>`;
}

/** All drinkers of a pen at once, whatever runs they hang on. */
function penView(room: TroubleRoom, { pen, drinkers }: PenToLookAt) {
  const all = (look: "gives" | "drips") => drinkers.map((id): Look => ({ look, at: "drinker", id }));
  const what = drinkers.length === 1 ? "The one drinker" : `All ${drinkers.length}`;
  const whose = /^pen\b/i.test(pen) ? pen : `pen ${pen}`;
  return answerRowForAll(room, `${what} of ${whose}`, [all("gives"), all("drips")]);
}

function runView(room: TroubleRoom, run: RunToLookAt) {
  const { drinkers, pens } = run;
  const told = toldOf(run, room.signs);
  const count = drinkers.length;
  const about = [
    count === 0 ? "no drinker" : count === 1 ? "1 drinker" : `${count} drinkers`,
    ...(pens.length === 0 ? [] : [pens.join(", ")]),
    ...(told === 0 ? [] : [`${told} told`]),
  ].join("; ");
  const isUnfolded = room.unfolded.has(run.run);
  const toggled = (event: Event) => room.acts.unfold(run.run, (event.target as HTMLDetailsElement).open);
  return html`<details class="run" ?open=${isUnfolded} @toggle=${toggled}>
    <summary><span><strong>${run.run}</strong> <span class="quiet">${about}</span></span></summary>
    ${isUnfolded ? runAnswers(room, run) : nothing}
  </details>`;
}

function runAnswers(room: TroubleRoom, { run, drinkers }: RunToLookAt) {
  const look = (kind: Look["look"], at: Look["at"], id: string): Look => ({ look: kind, at, id });
  const all = (kind: "gives" | "drips") => drinkers.map((id) => look(kind, "drinker", id));
  return html`${drinkers.length < 2 ? nothing : answerRowForAll(room, `All ${drinkers.length} of ${run}`, [all("gives"), all("drips")])}
    ${
      drinkers.length === 0
        ? nothing
        : html`<div class="list" role="group" aria-label=${`Drinkers of ${run}; arrow keys go from one to the next`} @keydown=${roveAnswers}>
            ${drinkers.map((id) => answerRow(room, id, [look("gives", "drinker", id), look("drips", "drinker", id)]))}
          </div>`
    }
    ${answerRow(room, "Ground along it", [look("ground", "run", run)], `Ground along ${run}`)}
    ${answerRow(room, "Its far end opened", [look("end", "run", run)], `Far end of ${run} opened`)}`;
}

/** What was told so far, each to be taken back. */
export function toldView({ signs, system, acts }: TroubleRoom) {
  if (signs.length === 0) return nothing;
  return html`<section aria-labelledby="told"><h3 id="told">Told so far</h3>
    <p>${writeSigns(signs, system)}.</p>
    <p class="buttons">
      ${signs.filter(({ look }) => look === "jug").map((sign) => html`<button type="button" @click=${() => acts.takeBack(sign)}>Take back: ${writeSigns([sign], system)}</button>`)}
      <button type="button" @click=${acts.clear}>Clear all</button>
      <button type="button" @click=${() => print()}>Print</button>
    </p>
  </section>`;
}
