import { dateOf, readDay, writeDay, writeRain } from "@headfall/hydraulics";
import { html, nothing, svg } from "lit";
import { MONTH_NAMES } from "../kernels/month-names.js";
import { dayAtSpot, layRainCalendar, squareOf } from "../kernels/rain/rain-calendar.js";
import { monthSums, nextShortDay } from "../kernels/rain/rain-months.js";
import { monthsOf, type RainYear } from "../kernels/rain/rain-years.js";
import { showVolume } from "../kernels/shown.js";
import { wholeDates } from "../styles/whole-dates.js";
import { type RainRoom, YEARS_SHOWN } from "./room.js";

/** A square a day, some years at once; what one day was like; the same as tables. */
export function calendarView(room: RainRoom) {
  const { years, firstYear } = room;
  const shown = years.slice(firstYear, firstYear + YEARS_SHOWN);
  return html`<section aria-labelledby="calendar">
    <h3 id="calendar">Rain calendar</h3>
    ${years.length > YEARS_SHOWN ? turnView(room) : nothing}
    ${KEY}
    <div class="years">${shown.map((year) => yearView(room, year))}</div>
    ${dayView(room)} ${monthTable(room, shown)}
  </section>`;
}

function turnView({ years, firstYear, acts }: RainRoom) {
  const last = Math.min(years.length, firstYear + YEARS_SHOWN) - 1;
  return html`<div class="buttons">
    <button type="button" ?disabled=${firstYear === 0} @click=${() => acts.showYears(firstYear - YEARS_SHOWN)}>Earlier</button>
    <label class="choice">Years from
      <select @change=${(event: Event) => acts.showYears(Number((event.target as HTMLSelectElement).value))}>
        ${years.map(({ year }, index) => html`<option value=${index} ?selected=${index === firstYear}>${year}</option>`)}
      </select></label>
    <button type="button" ?disabled=${last >= years.length - 1} @click=${() => acts.showYears(firstYear + YEARS_SHOWN)}>Later</button>
  </div>`;
}

function yearView({ record, supply, run, day, acts }: RainRoom, year: RainYear) {
  const days = {
    firstDay: record.firstDay,
    usable: supply.usable,
    stored: run.balance.stored,
    over: run.balance.over,
    short: run.balance.short,
    missing: record.missing,
  };
  const laid = layRainCalendar(days, year);
  const short = run.balance.short.subarray(year.from, year.to).reduce((sum, one) => sum + one, 0);
  const chosen = day >= year.from && day < year.to ? squareOf(record.firstDay + day) : undefined;
  const pressed = (event: MouseEvent) => {
    const box = (event.currentTarget as SVGElement).getBoundingClientRect();
    const scale = laid.width / box.width;
    const spot = { x: (event.clientX - box.left) * scale, y: (event.clientY - box.top) * scale };
    const at = dayAtSpot(record, year, spot);
    if (at !== undefined) acts.lookAt(at);
  };
  return html`<figure class="year">
    <figcaption><strong>${year.year}</strong>: ${short === 0 ? "no day short" : `${short} ${short === 1 ? "day" : "days"} short`}</figcaption>
    <svg class="calendar" viewBox="0 0 ${laid.width} ${laid.height}" role="img" @click=${pressed}
      aria-label="Calendar of ${year.year}, ${short} days short; its figures stand in the table below">
      ${laid.columns.map(({ day: number, x }) => svg`<text x=${x} y="9" text-anchor="middle">${number}</text>`)}
      ${laid.rows.map(({ month, y }) => svg`<text x="0" y=${y}>${MONTH_NAMES[month - 1]}</text>`)}
      ${marksView(laid)}
      ${chosen === undefined ? nothing : svg`<rect class="chosen" x=${chosen.x - 1} y=${chosen.y - 1} width=${chosen.side + 2} height=${chosen.side + 2}></rect>`}
    </svg>
  </figure>`;
}

const marksView = (
  laid: Pick<
    ReturnType<typeof layRainCalendar>,
    "squares" | "water" | "surface" | "over" | "missing" | "short"
  >,
) => svg`
  <path class="square" d=${laid.squares}></path><path class="water" d=${laid.water}></path>
  <path class="surface" d=${laid.surface}></path><path class="over" d=${laid.over}></path>
  <path class="unknown" d=${laid.missing}></path><path class="short" d=${laid.short}></path>`;

const SQUARE = "M1 1h9v9h-9z";
const keyed = (
  part: object,
  words: string,
) => html`<li><svg class="calendar key-mark" viewBox="0 0 11 11" aria-hidden="true">
    ${marksView({ squares: SQUARE, water: "", surface: "", over: "", missing: "", short: "", ...part })}</svg> ${words}</li>`;

const KEY = html`<ul class="key">
  ${keyed({ water: "M1 5.5h9v4.5h-9z", surface: "M1 5.5h9" }, "water left in the evening: as high as the vessel is full")}
  ${keyed({}, "empty")}
  ${keyed({ short: "M2 2l7 7M9 2l-7 7" }, "birds were short")}
  ${keyed({ water: SQUARE, over: "M1 1h9" }, "ran over")}
  ${keyed({ missing: "M3 5.5a2.5 2.5 0 1 0 5 0a2.5 2.5 0 1 0 -5 0z" }, "rain not known")}
</ul>`;

/** One day in words, chosen by its date or by its square. */
function dayView({ record, supply, run, day, system, acts }: RainRoom) {
  const { given, stored, over, short } = run.balance;
  const volume = (value: number) => showVolume(value, system);
  const date = (at: number) => writeDay(record.firstDay + at);
  const next = nextShortDay(short, day);
  const missing = record.missing[day] === 1;
  const chosen = (event: Event) => {
    const typed = readDay((event.target as HTMLInputElement).value);
    const at = typed === undefined ? -1 : typed - record.firstDay;
    if (at >= 0 && at < supply.days) acts.lookAt(at);
  };
  return html`<div class="buttons">
      <label class="choice">Day <input type="date" min=${date(0)} max=${date(supply.days - 1)} .value=${date(day)} @change=${chosen} /></label>
      ${next === undefined ? nothing : html`<button type="button" @click=${() => acts.lookAt(next)}>Next short day</button>`}
    </div>
    <p role="status"><strong>${wholeDates(date(day))}</strong>: ${missing ? "rain not known, taken as none" : `${writeRain(record.rain[day]!, system)} of rain`};
      ${volume(supply.inflow[day]!)} came in, ${volume(given[day]!)} of ${volume(supply.demand[day]!)} was drunk${over[day]! > 1e-6 ? `, ${volume(over[day]!)} ran over` : ""},
      ${volume(stored[day]!)} left in the evening.${short[day] === 1 ? html` <strong class="dry">Birds were short.</strong>` : nothing}</p>`;
}

/** The calendar's figures by month, and day by day for the month looked at. */
function monthTable(room: RainRoom, shown: readonly RainYear[]) {
  const { record, supply, run, system, day, years } = room;
  const rows = shown.flatMap((year) =>
    monthSums(record, supply, run, year).map((sums) => ({ year: year.year, ...sums })),
  );
  const year = years.find(({ from, to }) => day >= from && day < to);
  const month =
    year === undefined
      ? undefined
      : monthsOf(record.firstDay, year).find(({ from, to }) => day >= from && day < to);
  return html`<details><summary>The calendar as a table</summary>
    <div class="scroller tall" role="region" aria-label="By month" tabindex="0"><table>
      <caption>By month</caption>
      <thead><tr><th scope="col" class="words">Month</th><th scope="col">Days short</th><th scope="col">Rain</th><th scope="col">Came in</th><th scope="col">Drunk</th><th scope="col">Ran over</th><th scope="col">Least left</th><th scope="col">Not known</th></tr></thead>
      <tbody>${rows.map(
        (
          row,
        ) => html`<tr><th scope="row">${row.year} ${MONTH_NAMES[row.month - 1]}</th><td>${row.shortDays}</td><td>${writeRain(row.rain, system)}</td>
          <td>${showVolume(row.cameIn, system)}</td><td>${showVolume(row.given, system)}</td><td>${showVolume(row.over, system)}</td><td>${showVolume(row.least, system)}</td><td>${row.missing} d</td></tr>`,
      )}</tbody></table></div>
    ${year === undefined || month === undefined ? nothing : daysTable(room, `${year.year} ${MONTH_NAMES[month.month - 1]}`, month)}
  </details>`;
}

function daysTable(
  { record, supply, run, system }: RainRoom,
  title: string,
  { from, to }: { readonly from: number; readonly to: number },
) {
  const { given, stored, over, short } = run.balance;
  return html`<div class="scroller tall" role="region" aria-label="Day by day, ${title}" tabindex="0"><table>
    <caption>Day by day, ${title}: the month of the day chosen above</caption>
    <thead><tr><th scope="col" class="words">Day</th><th scope="col">Rain</th><th scope="col">Came in</th><th scope="col">Drunk</th><th scope="col">Ran over</th><th scope="col">Left</th><th scope="col">Short</th></tr></thead>
    <tbody>${Array.from({ length: to - from }, (_, k) => from + k).map(
      (
        t,
      ) => html`<tr><th scope="row">${dateOf(record.firstDay + t).day}</th><td>${record.missing[t] === 1 ? "not known" : writeRain(record.rain[t]!, system)}</td>
        <td>${showVolume(supply.inflow[t]!, system)}</td><td>${showVolume(given[t]!, system)}</td><td>${showVolume(over[t]!, system)}</td><td>${showVolume(stored[t]!, system)}</td><td>${short[t] === 1 ? "short" : "no"}</td></tr>`,
    )}</tbody></table></div>`;
}
