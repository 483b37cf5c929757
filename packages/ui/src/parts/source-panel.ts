import type { PlanSource } from "@headfall/hydraulics";
import { html, noChange, nothing } from "lit";
import { keyed } from "lit/directives/keyed.js";
import { live } from "lit/directives/live.js";
import type { TypedEntry } from "../fields/entry.js";
import { cellView, fieldView, problemView } from "../fields/entry-view.js";
import { pressForm } from "../fields/fresh-field.js";
import type { QuantityChangedEvent } from "../fields/quantity-changed-event.js";
import { readPairs } from "../fields/read-pairs.js";
import { shownStandIn } from "../fields/typing-controller.js";
import { innerHeight } from "../kernels/profile-layout.js";
import { metresOf, readMetres } from "../kernels/typed-metres.js";
import { setAt } from "../store/set-at.js";
import { sourceDoubtEntries } from "./doubt-entries.js";
import { buttonsView, type PanelRequest } from "./panel-request.js";
import { actionsOfSource } from "./part-actions.js";
import { sourceNames, workedOutSource } from "./plan-context.js";
import { nameEntry } from "./plan-entries.js";
import { outletBoreEntry, sourceLengths } from "./source-entries.js";
import { feedEntries, ventEntries } from "./source-inlets.js";
import { dimensionEntries, vesselChoice } from "./vessel-entries.js";

/** The slider's end, where nothing taller is typed [m]. */
const USUAL_STAND = 2.5;
/** Taken for the height of a vessel that has not been worked out yet [m]. */
const USUAL_BRIM = 1;

/** What a keeper sets of a barrel or tank: vessel, stand and levels first. */
export function sourcePanel(request: PanelRequest, source: number) {
  const { plan, typing } = request;
  const name = sourceNames(plan)[source]!;
  const { ground } = sourceLengths(request, source);
  const more = [
    { form: "typed" as const, ...ground },
    outletBoreEntry(request, source),
    ...ventEntries(request, source),
    ...feedEntries(request, source),
  ];
  return html`
    ${buttonsView(actionsOfSource(request, source))} ${problemView(typing, "action")}
    ${fieldView({ form: "choice", ...vesselChoice(request, source, name) }, typing)}
    <div class="pair">${dimensionEntries(request, source, name).map((entry) => fieldView(entry, typing))}</div>
    ${readingsView(request, source)}
    ${keyed(name, slidersView(request, source))}
    <details>
      <summary>More</summary>
      <div>${fieldView({ form: "typed", ...nameEntry({ kind: "source", source }, name, "the source") }, typing)}
      ${[...more, ...sourceDoubtEntries(request, source)].map((entry) => fieldView(entry, typing))}</div>
    </details>
  `;
}

/** A slide that ends at what was slid to does not become longer under the hand. */
const endOfSlide = (stand: number): number => (stand <= USUAL_STAND ? USUAL_STAND : Math.ceil(stand));

/** Stand, levels and outlet, each by slider and by typing. */
function slidersView(request: PanelRequest, source: number) {
  const { stand, full, lowest, ordinary, outlet } = sourceLengths(request, source);
  const worked = workedOutSource(request, source);
  const brim = worked === undefined ? USUAL_BRIM : innerHeight(worked);
  const standHeight = metresOf(stand.typed);
  const foot = worked?.outlet ?? 0;
  return html`
    ${slider(request, stand, standHeight, 0, endOfSlide(standHeight))}
    ${slider(request, full, worked?.levels.full ?? brim, foot, brim)}
    ${slider(request, lowest, worked?.levels.lowest ?? foot, foot, brim)}
    ${slider(request, ordinary, worked?.levels.ordinary ?? brim / 2, foot, brim)}
    ${slider(request, outlet, foot, 0, brim)}
  `;
}

/** A length by slider and by typing. While an edit is refused, the field keeps what was set. */
function slider(
  { typing, system }: PanelRequest,
  entry: TypedEntry,
  worked: number,
  min: number,
  max: number,
) {
  const isRefused = typing.problem(entry.key) !== undefined;
  const value = readMetres(entry.typed) ?? worked;
  const standIn = shownStandIn(entry, system);
  return html`<div class="field">
    <headfall-quantity
      kind="length" label=${entry.title} note=${noteOf(entry, standIn)} .system=${system} .standIn=${standIn ?? ""}
      .typed=${isRefused ? noChange : live(entry.typed ?? "")} .value=${isRefused ? noChange : live(value)}
      .min=${min} .max=${max}
      @quantity-changed=${({ typed, gesture }: QuantityChangedEvent) =>
        typing.want(entry.key, entry.change(typed === "" ? undefined : typed), gesture)}
    ></headfall-quantity>
    ${problemView(typing, entry.key)}
  </div>`;
}

function noteOf({ note, typed }: TypedEntry, standIn: string | undefined): string {
  const taken = typed === undefined && standIn !== undefined ? `${standIn} is taken for granted.` : "";
  return [note ?? "", taken].join(" ").trim();
}

type TableShape = Extract<PlanSource["vessel"], { shape: "table" }>;

/** Levels and volumes of a vessel that was measured jug by jug. */
function readingsView(request: PanelRequest, source: number) {
  const { vessel } = request.plan.sources[source]!;
  if (typeof vessel === "string" || vessel.shape !== "table") return nothing;
  return html`<fieldset>
    <legend>Levels and volumes, from the bottom to the brim</legend>
    <table class="small">
      <caption class="spoken">Levels and volumes</caption>
      <thead><tr><th scope="col">Level</th><th scope="col">Volume</th></tr></thead>
      <tbody>
        ${vessel.readings.map(
          (_, reading) => html`<tr>
          ${(["level", "volume"] as const).map((key) => html`<td>${cellView(readingEntry(request, source, vessel, reading, key), request.typing)}</td>`)}
        </tr>`,
        )}
      </tbody>
    </table>
    ${pasteReadings(request, source)}
  </fieldset>`;
}

function readingEntry(
  { plan }: PanelRequest,
  source: number,
  vessel: TableShape,
  reading: number,
  key: "level" | "volume",
) {
  const name = sourceNames(plan)[source]!;
  return {
    form: "typed" as const,
    key: `${name} reading ${reading} ${key}`,
    title: key,
    name: `${key === "level" ? "Level" : "Volume"} ${reading + 1} of ${name}`,
    kind: key === "level" ? ("length" as const) : ("volume" as const),
    typed: vessel.readings[reading]![key],
    isNeeded: true,
    change: setAt(["sources", source, "vessel", "readings", reading, key], `shape of ${name}`),
  };
}

function pasteReadings({ plan, typing, system }: PanelRequest, source: number) {
  const name = sourceNames(plan)[source]!;
  const key = `${name} readings`;
  const take = () => {
    const read = readPairs(typing.draft(key) ?? "", ["length", "volume"], system);
    if (!read.ok) return typing.complain(key, read.problem);
    const readings = read.pairs.map(({ first, second }) => ({ level: first.typed, volume: second.typed }));
    typing.want(key, setAt(["sources", source, "vessel", "readings"], `shape of ${name}`)(readings));
  };
  return html`<form @submit=${pressForm(take)}>
    <label for="readings">All of them at once, one pair a line</label>
    <textarea
      id="readings" placeholder=${system === "us" ? "6 in, 10 gal" : "15 cm, 40 L"} .value=${live(typing.draft(key) ?? "")}
      @input=${(event: Event) => typing.keep(key, (event.target as HTMLTextAreaElement).value)}
    ></textarea>
    ${problemView(typing, key)}
    <button type="submit">Take these readings</button>
  </form>`;
}
