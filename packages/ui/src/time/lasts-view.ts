import { type LastingCase, type LastingCaseName, LEFT_OUT_WORDS, writeDuration } from "@headfall/hydraulics";
import { html, nothing } from "lit";
import { showVolume } from "../kernels/shown.js";
import { wantRoom } from "../room/no-line.js";
import { numberButton } from "../verdicts/number-button.js";
import type { TimeRoom } from "./room.js";

const COLUMNS = [
  { name: "expect", title: "To expect" },
  { name: "size", title: "To size on" },
  { name: "hot", title: "Hot spell" },
] as const satisfies readonly { name: LastingCaseName; title: string }[];

/** Where no hot spell is told, its days are as all others, and say nothing. */
const columnsOf = ({ plan }: TimeRoom) =>
  COLUMNS.filter(({ name }) => name !== "hot" || plan.weather?.hotSpell !== undefined);

const spanOf = (after: number | undefined): string => (after === undefined ? "lasts" : writeDuration(after));

/** At the head of the room: until the first bird goes without, with its range. */
export function answerView({ answer: { lasting }, plan }: TimeRoom) {
  const { alone } = lasting;
  const isHeatTold = plan.weather?.hotSpell !== undefined;
  const first = (name: LastingCaseName) => alone[name].firstWithout?.after;
  const isFilled = lasting.cases !== lasting.alone && lasting.cases.hot.firstWithout === undefined;
  return html`<dl class="answer">
    <div>
      <dt>Until the first bird goes without</dt>
      <dd><span class="large">${numberButton(spanOf(first("size")), { of: "lasts", what: "firstWithout", which: "size" })}</span> on the cautious figure,
        ${numberButton(spanOf(first("expect")), { of: "lasts", what: "firstWithout", which: "expect" })} to expect</dd>
      <dd class="quiet">From ${numberButton(spanOf(first("high")), { of: "lasts", what: "firstWithout", which: "high" })} (most drunk, ${isHeatTold ? "heat, drips" : "drips"})
        to ${numberButton(spanOf(first("low")), { of: "lasts", what: "firstWithout", which: "low" })} (least), full at the start, nobody filling.</dd>
      ${isHeatTold ? nothing : html`<dd><strong>No heat is counted in:</strong> tick “Be ready for a hot spell” and say how warm it may get.</dd>`}
    </div>
    ${isFilled ? html`<div><dt>Filled as the plan says</dt><dd><span class="large good">It keeps up</span>${isHeatTold ? ", in the hot spell too" : nothing}</dd></div>` : nothing}
  </dl>`;
}

/** How long it lasts, in a table: filled as the plan says, and left alone. */
export function lastsView(room: TimeRoom) {
  const { lasting } = room.answer;
  const isFilled = room.plan.sources.some(({ refill }) => refill !== undefined && refill !== "none");
  return html`<section aria-labelledby="lasts">
    <h3 id="lasts">How long it lasts</h3>
    ${isFilled ? casesTable(room, "Filled as the plan says", lasting.cases, false) : nothing}
    ${casesTable(room, isFilled ? "If nobody comes any more" : "Nobody fills it again", lasting.alone, true)}
    ${lasting.leavesOut.length === 0 ? nothing : html`<ul>${lasting.leavesOut.map((code) => html`<li>${code === "rain" ? RAIN : LEFT_OUT_WORDS[code]}</li>`)}</ul>`}
  </section>`;
}

const RAIN = html`Rain is not counted: these are days of a dry spell.
  <button type="button" @click=${wantRoom("rain")}>See whether the rain keeps up</button>`;

interface Row {
  readonly words: string;
  readonly what: "firstWithout" | "firstDry" | "halfDry" | "empty" | "firstDay";
  read(one: LastingCase): string;
}

function casesTable(
  room: TimeRoom,
  caption: string,
  cases: Record<LastingCaseName, LastingCase>,
  isAlone: boolean,
) {
  const columns = columnsOf(room);
  const rows: readonly Row[] = [
    { words: "First bird without", what: "firstWithout", read: (one) => spanOf(one.firstWithout?.after) },
    { words: "First drinker dry", what: "firstDry", read: (one) => spanOf(one.firstDry?.after) },
    { words: "Half of the drinkers dry", what: "halfDry", read: (one) => spanOf(one.halfDry) },
    { words: "Nothing left to draw", what: "empty", read: (one) => spanOf(one.empty) },
    {
      words: "Drawn on the first day",
      what: "firstDay",
      read: (one) => showVolume(one.firstDay, room.system),
    },
  ];
  return html`<div class="scroller" role="region" aria-label=${caption} tabindex="0">
    <table class="narrow spans">
      <caption>${caption}</caption>
      <thead><tr><td></td>${columns.map(({ title }) => html`<th scope="col">${title}</th>`)}</tr></thead>
      <tbody>
        ${rows.map(
          ({ words, what, read }) => html`<tr>
            <th scope="row">${words}</th>
            ${columns.map(({ name }) => html`<td>${isAlone ? numberButton(read(cases[name]), { of: "lasts", what, which: name }) : read(cases[name])}</td>`)}
          </tr>`,
        )}
      </tbody>
    </table>
  </div>`;
}
