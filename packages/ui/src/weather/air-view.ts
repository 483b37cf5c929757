import { type AirReadingOptions, writeAirQuestion, writeDay, writeProblem } from "@headfall/hydraulics";
import { html, nothing } from "lit";
import { wholeDates } from "../styles/whole-dates.js";
import type { AirController } from "./air-controller.js";
import type { AirExample } from "./air-example.js";

/** A daily record of the air: where it is from, what is asked of a new one, what is wrong with it. */
export function airView(air: AirController, examples: readonly AirExample[]) {
  const { record, asked, faulty, isReading } = air;
  return html`<fieldset><legend tabindex="-1">Daily record of the air</legend>
    ${
      record === undefined
        ? html`<p>None yet. With one, nights of frost and hot days are told by year, and how often each part stops or is too warm.</p>`
        : html`<p><strong>${air.from}</strong>: ${record.low.length} days, ${wholeDates(`${writeDay(record.firstDay)} to ${writeDay(record.firstDay + record.low.length - 1)}`)}.</p>`
    }
    ${isReading ? html`<p role="status">Reading the record ...</p>` : nothing}
    ${asked === undefined ? nothing : questionView(air)}
    ${
      faulty === undefined
        ? nothing
        : html`<div class="problem" role="alert"><p><strong>"${faulty.name}" could not be read.</strong>${record === undefined ? "" : " The record before it stays."}</p>
            <ul>${faulty.problems.map((problem) => html`<li>${wholeDates(writeProblem(problem))}</li>`)}</ul></div>`
    }
    ${record === undefined ? choiceView(air, examples) : html`<details><summary>Another record</summary>${choiceView(air, examples)}</details>`}
  </fieldset>`;
}

function choiceView(air: AirController, examples: readonly AirExample[]) {
  return html`<div class="field"><label for="air-file">Your own: days with lowest and highest air</label>
      <input id="air-file" type="file" accept=".csv,.dly,.txt,.tsv,.gz,text/*" aria-describedby="air-file-note"
        @change=${(event: Event) => fileChosen(event, air)} />
      <p class="note quiet" id="air-file-note">A station file of the open GHCN-Daily collection with TMIN and TMAX (packed too), or a table of dates and temperatures. It is read here, sent nowhere, and not kept with the plan.</p></div>
    ${
      examples.length === 0
        ? nothing
        : html`<p class="label">Or an example</p>
            <div class="buttons">${examples.map((example) => html`<button type="button" @click=${() => air.openExample(example)}>${example.name}</button>`)}</div>
            ${[...new Set(examples.map((example) => example.from))].map((words) => html`<p class="note quiet">${words}</p>`)}`
    }`;
}

function questionView(air: AirController) {
  const { asked } = air;
  if (asked === undefined) return nothing;
  const { question } = asked;
  const options = (choice: string): AirReadingOptions => ({ [question.ask]: choice });
  return html`<div class="asked" role="group" aria-labelledby="air-asked">
    <p id="air-asked" tabindex="-1"><strong>${wholeDates(writeAirQuestion(question))}</strong></p>
    ${
      question.ask === "place" && question.choices.length > 4
        ? html`<div class="field"><label for="air-place">Place</label>
            <select id="air-place" @change=${(event: Event) => {
              const { value } = event.target as HTMLSelectElement;
              if (value !== "") air.answer({ place: value });
            }}><option value="">Choose ...</option>${question.choices.map((place) => html`<option value=${place}>${place}</option>`)}</select></div>`
        : html`<div class="buttons">${question.choices.map((choice) => html`<button type="button" @click=${() => air.answer(options(choice))}>${choice}</button>`)}</div>`
    }
    <div class="buttons"><button type="button" @click=${() => air.leave()}>Not this file</button></div>
  </div>`;
}

function fileChosen(event: Event, air: AirController): void {
  const input = event.target as HTMLInputElement;
  const [file] = input.files ?? [];
  // The same file may be opened again once it was mended.
  input.value = "";
  if (file !== undefined) void air.openFile(file);
}
