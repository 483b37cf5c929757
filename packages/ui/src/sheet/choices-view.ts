import type { Checked } from "@headfall/hydraulics";
import { html, nothing } from "lit";
import type { Sheet } from "../kernels/sheet/lay-sheet.js";
import { type SheetScale, scalesOf } from "../kernels/sheet/scales.js";
import { inFull } from "../kernels/sheet/title-block.js";
import type { UnitSystem } from "../kernels/typed-quantity.js";
import type { SheetChoices } from "./sheet-choices.js";

/** What the fields of the view are drawn from. */
export interface ChoicesRequest {
  readonly choices: SheetChoices;
  readonly sheet: Sheet | undefined;
  readonly checked: Checked | undefined;
  readonly system: UnitSystem;
  readonly choose: (change: Partial<SheetChoices>) => void;
}

/** The fields in which one says what is printed and how. */
export function choicesView(request: ChoicesRequest) {
  const { choices, system, choose } = request;
  const paper = choices.paper ?? (system === "us" ? "letter" : "a4");
  return html`
    ${radios("Drawing", choices.drawing, { above: "From above", side: "From the side" }, (drawing) => choose({ drawing }))}
    ${choices.drawing === "side" ? wayField(request) : nothing}
    ${radios("Paper", paper, { a4: "A4", letter: "Letter" }, (each) => choose({ paper: each }))}
    ${radios(
      "The page is",
      choices.isLying ? "lying" : "upright",
      { upright: "Upright", lying: "Lying" },
      (lie) => choose({ isLying: lie === "lying" }),
    )}
    ${scaleField("scale", choices.drawing === "side" ? "Scale of lengths" : "Scale", request, choices.scale, request.sheet?.scale)}
    ${
      choices.drawing === "side"
        ? scaleField(
            "heightScale",
            "Scale of heights",
            request,
            choices.heightScale,
            request.sheet?.heightScale,
          )
        : nothing
    }
    ${radios(
      "Ink",
      choices.isColour ? "colour" : "mono",
      { colour: "Colour", mono: "Black and white" },
      (ink) => choose({ isColour: ink === "colour" }),
    )}`;
}

function radios<Name extends string>(
  legend: string,
  chosen: Name,
  labels: Readonly<Record<Name, string>>,
  choose: (name: Name) => void,
) {
  return html`<fieldset>
    <legend>${legend}</legend>
    <div class="choices">
      ${(Object.keys(labels) as Name[]).map(
        (name) => html`<label
          ><input type="radio" name=${legend} value=${name} .checked=${name === chosen} @change=${() => choose(name)} />${labels[name]}</label
        >`,
      )}
    </div>
  </fieldset>`;
}

function scaleField(
  name: "scale" | "heightScale",
  label: string,
  { system, choose }: ChoicesRequest,
  chosen: number | undefined,
  taken: SheetScale | undefined,
) {
  const largest = `Largest that fits${chosen === undefined && taken !== undefined ? `: ${inFull(taken)}` : ""}`;
  return html`<div class="field">
    <label for=${name}>${label}</label>
    <select id=${name} @change=${(event: Event) => choose({ [name]: numberOf(event) })}>
      <option value="" .selected=${chosen === undefined}>${largest}</option>
      ${scalesOf(system).map(
        (scale) =>
          html`<option value=${scale.times} .selected=${scale.times === chosen}>${inFull(scale)}</option>`,
      )}
    </select>
  </div>`;
}

/** Which branch: every one, or the way to the drinkers of one run. */
function wayField({ checked, choices, choose }: ChoicesRequest) {
  if (checked === undefined) return nothing;
  const runs = [...new Set(checked.line.drinkers.run)];
  if (runs.length < 2) return nothing;
  return html`<div class="field">
    <label for="way">Way drawn</label>
    <select id="way" @change=${(event: Event) => choose({ run: numberOf(event) })}>
      <option value="" .selected=${choices.run === undefined}>Every branch</option>
      ${runs.map(
        (run) =>
          html`<option value=${run} .selected=${run === choices.run}>To the drinkers of ${checked.line.runs[run]?.id}</option>`,
      )}
    </select>
  </div>`;
}

function numberOf(event: Event): number | undefined {
  const { value } = event.target as HTMLSelectElement;
  return value === "" ? undefined : Number(value);
}
