import {
  type RainQuestion,
  type RainReadingOptions,
  writeDay,
  writeProblem,
  writeRain,
  writeRainFinding,
} from "@headfall/hydraulics";
import { html, nothing } from "lit";
import { wettestIn } from "../kernels/rain/unit-evidence.js";
import { wholeDates } from "../styles/whole-dates.js";
import type { RainSaid } from "./room.js";

/** More places than this are chosen from a list. */
const MOST_BUTTONS = 4;

/** The record of rain: where it is from, what is asked of a new one, what is wrong with it. */
export function recordView(said: RainSaid) {
  const { rain, acts } = said;
  const { asked, faulty, isReading } = rain;
  return html`<fieldset><legend tabindex="-1">Record of rain</legend>
    ${recordThere(said)}
    ${isReading ? html`<p role="status">Reading the record ...</p>` : nothing}
    ${asked === undefined ? nothing : questionView(asked.opened.name, asked.question, acts)}
    ${
      faulty === undefined
        ? nothing
        : html`<div class="problem" role="alert"><p><strong>"${faulty.name}" could not be read.</strong>${rain.record === undefined ? "" : " The record before it stays."}</p>
            <ul>${faulty.problems.map((problem) => html`<li>${wholeDates(writeProblem(problem))}</li>`)}</ul></div>`
    }
    ${rain.record === undefined ? choiceView(said) : html`<details><summary>Another record</summary>${choiceView(said)}</details>`}
  </fieldset>`;
}

function choiceView({ examples, acts }: RainSaid) {
  return html`<div class="field"><label for="rain-file">Your own: days and rain</label>
      <input id="rain-file" type="file" accept=".csv,.dly,.txt,.tsv,.gz,text/*" aria-describedby="rain-file-note"
        @change=${(event: Event) => fileChosen(event, acts.openFile)} />
      <p class="note quiet" id="rain-file-note">A station file of the open GHCN-Daily collection (fixed columns, lines or table; packed too), or a table of dates and rain. It is read here, sent nowhere, and not kept with the plan.</p></div>
    ${
      examples.length === 0
        ? nothing
        : html`<p class="label">Or an example</p>
            <div class="buttons">${examples.map((example) => html`<button type="button" @click=${() => acts.openExample(example)}>${example.name}</button>`)}</div>
            ${[...new Set(examples.map((example) => example.from))].map((words) => html`<p class="note quiet">${words}</p>`)}`
    }`;
}

function recordThere({ rain: { record, from }, system, examples }: RainSaid) {
  if (record === undefined) return html`<p>None yet: the longer, and the nearer to you, the better.</p>`;
  const { firstDay, rain, findings, air } = record;
  const wettest = rain.reduce((most, one) => Math.max(most, one), 0);
  return html`<p><strong>${from}</strong>: ${rain.length} days, ${wholeDates(`${writeDay(firstDay)} to ${writeDay(firstDay + rain.length - 1)}`)}; wettest ${writeRain(wettest, system)}.
      ${air === undefined ? "It has no temperatures." : "It has temperatures."}</p>
    ${findings.length === 0 ? nothing : html`<ul>${findings.slice(0, 12).map((finding) => html`<li>${wholeDates(writeRainFinding(finding, system))}</li>`)}</ul>`}
    ${examples.filter(({ name }) => name === from).map((example) => html`<p class="note quiet">${example.from}</p>`)}
    ${findings.length > 12 ? html`<p>And ${findings.length - 12} more of the kind.</p>` : nothing}`;
}

function questionView(name: string, question: RainQuestion, acts: RainSaid["acts"]) {
  return html`<div class="asked" role="group" aria-labelledby="rain-asked">
    <p id="rain-asked" tabindex="-1"><strong>${wholeDates(wordsOf(question, name))}</strong></p>
    ${question.ask === "place" && question.choices.length > MOST_BUTTONS ? placeList(question.choices, acts) : choicesOf(question, acts)}
    <div class="buttons"><button type="button" @click=${acts.leave}>Not this file</button></div>
  </div>`;
}

function wordsOf(question: RainQuestion, name: string): string {
  switch (question.ask) {
    case "unit":
      return `Which unit is the rain of "${name}" in? The file does not say. The most in a day is ${question.mostInDay}; one of its lines: ${question.example}`;
    case "dates":
      return `Is ${question.example} in "${name}" written day first or month first? No date in it tells.`;
    case "place":
      return `"${name}" is of several places. Which one?`;
  }
}

function choicesOf(question: RainQuestion, acts: RainSaid["acts"]) {
  const button = (words: string, options: RainReadingOptions, evidence = "") =>
    html`<li><button type="button" @click=${() => acts.answer(options)}>${words}</button>${evidence === "" ? nothing : html` <span class="quiet">${wholeDates(evidence)}</span>`}</li>`;
  const items =
    question.ask === "unit"
      ? question.choices.map((unit) => button(unit, { unit }, wettestIn(unit, question.mostInDay).words))
      : question.ask === "dates"
        ? question.choices.map((dates) =>
            button(
              dates === "day first" ? "Day first" : "Month first",
              { dates },
              datedAs(question.example, dates),
            ),
          )
        : question.choices.map((place) => button(place, { place }));
  return html`<ul class="choices">${items}</ul>`;
}

/** An open date read in one order. */
function datedAs(example: string, order: "day first" | "month first"): string {
  const [one = "", other = "", year = ""] = example.split(/[-/.]/);
  const [day, month] = order === "day first" ? [one, other] : [other, one];
  return `${year}-${month.padStart(2, "0")}-${day.padStart(2, "0")}`;
}

function placeList(choices: readonly string[], acts: RainSaid["acts"]) {
  const chosen = (event: Event) => {
    const { value } = event.target as HTMLSelectElement;
    if (value !== "") acts.answer({ place: value });
  };
  return html`<div class="field"><label for="rain-place">Place</label>
    <select id="rain-place" class="long" @change=${chosen}><option value="">Choose ...</option>${choices.map((place) => html`<option value=${place}>${place}</option>`)}</select></div>`;
}

function fileChosen(event: Event, open: (file: File) => void): void {
  const input = event.target as HTMLInputElement;
  const [file] = input.files ?? [];
  // The same file may be opened again once it was mended.
  input.value = "";
  if (file !== undefined) open(file);
}
