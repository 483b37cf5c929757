import { sourceNames } from "@headfall/hydraulics";
import { html, nothing } from "lit";
import { fieldView, problemView } from "../fields/entry-view.js";
import { type FreshField, freshView, pressForm, readFresh } from "../fields/fresh-field.js";
import type { TypingController } from "../fields/typing-controller.js";
import { ROOF_CHOICES, roofChange, roofEntries } from "./roof-entries.js";
import type { RainSaid } from "./room.js";

const AREA: FreshField = { key: "roof fresh area", title: "Area, seen from above", kind: "area", usual: "" };
const FLUSH: FreshField = {
  key: "roof fresh flush",
  title: "First flush a diverter keeps",
  kind: "volume",
  usual: "0 L",
};
const KIND = "roof fresh kind";

/** The roof over a vessel: its fields, or a form to put one up. */
export function roofView(said: RainSaid) {
  const { plan, source, acts } = said;
  const names = sourceNames(plan);
  const name = names[source] ?? "";
  const open = plan.sources.flatMap(({ feed }, index) => (feed === undefined ? [index] : []));
  const roof = plan.sources[source]?.roof;
  return html`<fieldset><legend tabindex="-1">Roof over ${name}</legend>
    ${
      open.length < 2
        ? nothing
        : html`<div class="field"><label for="rain-source">Vessel the rain fills</label>
            <select id="rain-source" @change=${(event: Event) => acts.choose(Number((event.target as HTMLSelectElement).value))}>
              ${open.map((index) => html`<option value=${index} ?selected=${index === source}>${names[index]}${plan.sources[index]?.roof === undefined ? "" : ", has a roof"}</option>`)}
            </select></div>`
    }
    ${roof === undefined ? freshRoof(said, name) : roofThere(said, name)}
  </fieldset>`;
}

function roofThere({ plan, source, typing }: RainSaid, name: string) {
  const [area, kind, flush, ...rare] = roofEntries(plan, source, name);
  return html`
    ${[area!, kind!, flush!].map((entry) => fieldView(entry, typing))}
    <details><summary>More of the roof</summary>
      ${rare.map((entry) => fieldView(entry, typing))}
      <div class="buttons"><button type="button" @click=${() => typing.want("roof away", roofChange(source, name, undefined))}>Take the roof away</button></div>
      ${problemView(typing, "roof away")}
    </details>`;
}

function freshRoof({ typing, source, system }: RainSaid, name: string) {
  const put = () => putRoof(typing, source, name);
  return html`<form novalidate @submit=${pressForm(put)}>
    <p>No roof fills it yet.</p>
    ${freshView(AREA, typing)}
    <p class="note quiet">Its footprint, not along the slope: a roof of ${system === "us" ? "6 by 8 ft has 48 ft²" : "2 by 3 m has 6 m²"}.</p>
    <div class="field"><label for="roof-kind">Surface</label>
      <select id="roof-kind" class="long" @change=${(event: Event) => typing.keep(KIND, (event.target as HTMLSelectElement).value)}>
        ${ROOF_CHOICES.map(({ value, words }) => html`<option value=${value} ?selected=${value === (typing.draft(KIND) ?? "")}>${words}</option>`)}
      </select></div>
    ${freshView(FLUSH, typing)}
    <div class="buttons"><button class="chief">Put up this roof</button></div>
  </form>`;
}

/** One edit, to be undone in one. */
async function putRoof(typing: TypingController, source: number, name: string): Promise<void> {
  if ((typing.draft(AREA.key) ?? "").trim() === "")
    return typing.complain(AREA.key, "How large is it? Write for instance 6 m² or 60 ft².");
  const [area, flush] = [await readFresh(AREA, typing), await readFresh(FLUSH, typing)];
  if (area === undefined || flush === undefined) return;
  const kind = typing.draft(KIND) ?? "";
  const roof = {
    area: area.typed,
    ...(kind === "" ? {} : { kind }),
    ...(flush.value > 0 ? { firstFlush: flush.typed } : {}),
  };
  typing.want(AREA.key, roofChange(source, name, roof), undefined, [KIND, FLUSH.key]);
}
