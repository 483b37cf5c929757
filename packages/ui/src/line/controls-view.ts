import { allPipes, type Checked, type MomentName, type Plan, pipesOfFamily } from "@headfall/hydraulics";
import { html, nothing } from "lit";
import { guard } from "lit/directives/guard.js";
import type { QuantityChangedEvent } from "../fields/quantity-changed-event.js";
import { innerHeight } from "../kernels/profile-layout.js";
import { showLength } from "../kernels/shown.js";
import type { UnitSystem } from "../kernels/typed-quantity.js";
import type { LevelName, LineChange } from "../store/change.js";

export interface ControlsRequest {
  readonly plan: Plan;
  readonly checked: Checked;
  readonly system: UnitSystem;
  readonly moment: MomentName;
  /** Indices into the line's sources and runs: those on the drawing. */
  readonly source: number;
  readonly run: number;
  readonly onChange: (change: LineChange) => void;
  readonly onChooseRun: (run: number) => void;
}

/** What can be changed at once: stand, water level, pipe, drinkers at work. */
export function controlsView(request: ControlsRequest) {
  return html`${standField(request)} ${levelField(request)} ${runChoice(request)} ${pipeField(request)}
  ${atWorkFields(request)}`;
}

/** The slider's end, where nothing taller is typed [m]. */
const USUAL_STAND = 2.5;

function standField({ plan, checked, system, source, onChange }: ControlsRequest) {
  const { index, stand, id } = checked.line.sources[source]!;
  return html`<headfall-quantity
    class="field" label="Stand under the ${id}" note="From the ground to the foot of the ${id}."
    kind="length" .system=${system} .typed=${plan.sources[index]?.stand ?? ""} .value=${stand}
    .min=${0} .max=${stand <= USUAL_STAND ? USUAL_STAND : Math.ceil(stand)}
    @quantity-changed=${({ typed }: QuantityChangedEvent) => onChange({ kind: "setStand", source: index, typed })}
  ></headfall-quantity>`;
}

const LEVELS: Readonly<Record<MomentName, LevelName>> = {
  fullIdle: "full",
  fullBusiest: "full",
  lowestBusiest: "lowest",
  ordinary: "ordinary",
};
const LEVEL_LABELS: Readonly<Record<LevelName, string>> = {
  full: "Water level when full",
  lowest: "Lowest usable water level",
  ordinary: "Water level in an ordinary hour",
};

/** The level of the moment shown; each keeps its order: lowest, ordinary, full, brim. */
function levelField({ plan, checked, system, moment, source, onChange }: ControlsRequest) {
  const drawn = checked.line.sources[source]!;
  const level = LEVELS[moment];
  const { full, lowest, ordinary } = drawn.levels;
  const brim = innerHeight(drawn);
  const [min, max] = { full: [ordinary, brim], lowest: [drawn.outlet, ordinary], ordinary: [lowest, full] }[
    level
  ] as [number, number];
  return html`<headfall-quantity
    class="field" label=${LEVEL_LABELS[level]} note="Above its inside bottom; the brim is at ${showLength(brim, system)}."
    kind="length" .system=${system} .typed=${plan.sources[drawn.index]?.level?.[level] ?? ""}
    .value=${drawn.levels[level]} .min=${Math.min(min, max)} .max=${max}
    @quantity-changed=${({ typed }: QuantityChangedEvent) =>
      onChange({ kind: "setLevel", source: drawn.index, level, typed })}
  ></headfall-quantity>`;
}

function runChoice({ checked, run, onChooseRun }: ControlsRequest) {
  const { runs } = checked.line;
  if (runs.length < 2) return nothing;
  return html`<div class="field">
    <label for="run">Run to change</label>
    <select id="run" @change=${(event: Event) => onChooseRun(Number((event.target as HTMLSelectElement).value))}>
      ${runs.map(({ id }, index) => html`<option value=${index} ?selected=${index === run}>${id}</option>`)}
    </select>
  </div>`;
}

function pipeField({ checked, run, onChange }: ControlsRequest) {
  const { id, index, pipeId, pipeName } = checked.line.runs[run]!;
  const family = allPipes.find((pipe) => pipe.id === pipeId)?.family;
  const option = (pipe: { id: string; name: string }) =>
    html`<option value=${pipe.id} ?selected=${pipe.id === pipeId}>${pipe.name}</option>`;
  const options = () => html`
    ${family === undefined ? html`<option value="" selected>${pipeName}</option>` : nothing}
    ${family === undefined ? nothing : html`<optgroup label="Sizes of this pipe">${pipesOfFamily(family).map(option)}</optgroup>`}
    <optgroup label="Other pipes">${allPipes.filter((pipe) => pipe.family !== family).map(option)}</optgroup>
  `;
  return html`<div class="field">
    <label for="pipe">Pipe of the run "${id}"</label>
    <select id="pipe" @change=${(event: Event) => {
      const pipe = (event.target as HTMLSelectElement).value;
      if (pipe !== "") onChange({ kind: "setPipe", run: index, pipe });
    }}>
      ${guard([index, pipeId], options)}
    </select>
  </div>`;
}

function atWorkFields({ checked, moment, run, system, onChange }: ControlsRequest) {
  const when = moment === "ordinary" ? "ordinary" : "busiest";
  const groups = checked.line.drinkers.groups.filter((group) => group.run === run);
  return groups.map(
    (group, place) => html`<headfall-quantity
      class="field" label="Drinkers at work, ${when === "busiest" ? "busiest minutes" : "ordinary hour"}"
      note="Of the ${group.count} on the run: ${group.kindName}." kind="count" .system=${system}
      .typed=${String(group[when])} .value=${group[when]} .min=${0} .max=${group.count}
      @quantity-changed=${({ value }: QuantityChangedEvent) =>
        onChange({ kind: "setAtWork", run: checked.line.runs[run]!.index, group: place, when, count: value })}
    ></headfall-quantity>`,
  );
}
