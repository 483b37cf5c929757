import { html, nothing } from "lit";
import { live } from "lit/directives/live.js";
import type { ChoiceEntry, Entry, PickedEntry, TickEntry, TypedEntry } from "./entry.js";
import { shownStandIn, shownText, type TypingController } from "./typing-controller.js";

/** A field with its label over it and its note and problem under it. Ids are made from the key's last word. */
export function fieldView(entry: Entry, typing: TypingController) {
  const id = idOf(entry.key);
  const note = entry.form === "typed" ? noteOf(entry, typing) : entry.note;
  const isFaulty = typing.problem(entry.key) !== undefined;
  const describedBy = [note ? `${id}-note` : "", isFaulty ? `${id}-problem` : ""].filter(Boolean).join(" ");
  const place = { id, describedBy: describedBy === "" ? nothing : describedBy } as const;
  const label = html`<label for=${id}>${entry.title}</label>`;
  const control = controlOf(entry, typing, place);
  return html`<div class=${entry.form === "tick" ? "field tick" : "field"}>
    ${entry.form === "tick" ? html`${control}${label}` : html`${label}${control}`}
    ${note ? html`<p class="note quiet" id="${id}-note">${note}</p>` : nothing}
    ${problemView(typing, entry.key, `${id}-problem`)}
  </div>`;
}

/** A field in a cell of a table: its name is spoken, its column's head is seen. */
export function cellView(entry: Entry, typing: TypingController) {
  return html`${controlOf(entry, typing)}${problemView(typing, entry.key)}`;
}

function controlOf(entry: Entry, typing: TypingController, place?: Place) {
  if (entry.form === "choice") return selectOf(entry, typing, place);
  if (entry.form === "tick") return tickOf(entry, typing, place);
  if (entry.form === "picked") return pickedOf(entry, typing, place);
  return entry.kind === "note" ? areaOf(entry, typing, place) : inputOf(entry, typing, place);
}

/** What is wrong with what was typed, or why its edit was refused. */
export function problemView(typing: TypingController, key: string, id?: string) {
  const problem = typing.problem(key);
  return problem === undefined
    ? nothing
    : html`<p class="problem" role="alert" id=${id ?? nothing}>${problem}</p>`;
}

/** An id for a key: letters and figures only. */
export const idOf = (key: string): string => `f-${key.replace(/[^A-Za-z0-9]+/g, "-")}`;

const GRANTED = "taken for granted";

/** Where a field with a label stands; a cell has none. */
interface Place {
  readonly id: string;
  readonly describedBy: string | typeof nothing;
}

function inputOf(entry: TypedEntry, typing: TypingController, place?: Place) {
  const { key } = entry;
  const standIn = shownStandIn(entry, typing.system);
  const isWords = standIn === entry.standIn && !/\d/.test(standIn ?? "");
  const placeholder =
    standIn === undefined || place === undefined || isWords
      ? standIn
      : `${standIn}, ${entry.standInFrom ?? GRANTED}`;
  const value = live(typing.draft(key) ?? shownText(entry, typing.system));
  const isFaulty = typing.problem(key) !== undefined;
  return html`<input
    type="text" autocomplete="off" spellcheck="false" enterkeyhint="done" class=${entry.kind}
    id=${place?.id ?? nothing} aria-label=${place === undefined ? entry.name : nothing}
    title=${place === undefined ? (descriptionOf(entry, typing) ?? nothing) : nothing}
    aria-describedby=${place?.describedBy ?? nothing}
    aria-invalid=${isFaulty ? "true" : nothing} placeholder=${placeholder ?? nothing} .value=${value}
    @input=${(event: Event) => typing.keep(key, textOf(event))}
    @change=${(event: Event) => typing.settle(entry, textOf(event))}
    @keydown=${(event: KeyboardEvent) => {
      if (event.key === "Escape" && typing.draft(key) !== undefined) {
        event.stopPropagation();
        typing.escape(key);
      }
    }}
  />`;
}

/** Text of several lines: Enter begins a new one. */
function areaOf(entry: TypedEntry, typing: TypingController, place?: Place) {
  const { key } = entry;
  return html`<textarea
    id=${place?.id ?? nothing} aria-label=${place === undefined ? entry.name : nothing}
    aria-describedby=${place?.describedBy ?? nothing}
    aria-invalid=${typing.problem(key) === undefined ? nothing : "true"}
    .value=${live(typing.draft(key) ?? entry.typed ?? "")}
    @input=${(event: Event) => typing.keep(key, textOf(event))}
    @change=${(event: Event) => typing.settle(entry, textOf(event))}
  ></textarea>`;
}

function tickOf(entry: TickEntry, typing: TypingController, place?: Place) {
  return html`<span class="box"><input
    type="checkbox" id=${place?.id ?? nothing} aria-label=${place === undefined ? entry.name : nothing}
    aria-describedby=${place?.describedBy ?? nothing} .checked=${live(entry.value)}
    @change=${(event: Event) => typing.want(entry.key, entry.change((event.target as HTMLInputElement).checked))}
  /></span>`;
}

/** Half a date is empty to the browser, which is no wish to take it out while the keyboard is still in the field. */
function pickedOf(entry: PickedEntry, typing: TypingController, place?: Place) {
  const settle = (event: Event) => {
    const { value, validity } = event.target as HTMLInputElement;
    const typed = value === "" ? undefined : value;
    if (typed === entry.value || validity.badInput) return;
    // A year is typed figure by figure, and each makes a date of long ago.
    if (entry.picks === "date" && typed !== undefined && typed < "1900") return;
    if (typed !== undefined || event.type === "blur") typing.want(entry.key, entry.change(typed));
  };
  return html`<input
    type=${entry.picks} id=${place?.id ?? nothing} aria-label=${place === undefined ? entry.name : nothing}
    aria-describedby=${place?.describedBy ?? nothing}
    aria-invalid=${typing.problem(entry.key) === undefined ? nothing : "true"}
    .value=${entry.value ?? ""} @change=${settle} @blur=${settle}
  />`;
}

const textOf = (event: Event) => (event.target as HTMLInputElement).value;

function noteOf(entry: TypedEntry, typing: TypingController): string | undefined {
  const asTyped = typedElsewise(entry, typing);
  return [entry.note, asTyped].filter((words) => words !== undefined).join(" ") || undefined;
}

function descriptionOf(entry: TypedEntry, typing: TypingController): string | undefined {
  if (entry.typed === undefined && entry.standIn !== undefined)
    return `Nothing typed; ${entry.standInFrom ?? GRANTED}: ${shownStandIn(entry, typing.system)}.`;
  return typedElsewise(entry, typing);
}

/** What was typed, where the field shows it in other units. */
function typedElsewise(entry: TypedEntry, typing: TypingController): string | undefined {
  if (entry.typed === undefined || entry.typed === shownText(entry, typing.system)) return undefined;
  return `Typed as ${entry.typed}.`;
}

/**
 * A choice. In a table its options are laid out only once the hand or the keyboard comes to it: a long plan has
 * thousands of them.
 */
function selectOf(entry: ChoiceEntry, typing: TypingController, place?: Place) {
  const isOpen = (place !== undefined && entry.isLazy !== true) || typing.isEntered(entry.key);
  const enter = isOpen ? nothing : () => typing.enter(entry.key);
  return html`<select
    id=${place?.id ?? nothing} aria-label=${place === undefined ? entry.name : nothing}
    aria-describedby=${place?.describedBy ?? nothing}
    aria-invalid=${typing.problem(entry.key) === undefined ? nothing : "true"}
    class=${entry.isLong ? "long" : nothing} @focus=${enter} @pointerenter=${enter}
    @change=${(event: Event) => {
      const change = entry.change(textOf(event));
      if (change !== undefined) typing.want(entry.key, change);
    }}
  >
    ${isOpen ? optionsOf(entry) : html`<option value=${entry.value} selected>${entry.words}</option>`}
  </select>`;
}

function optionsOf(entry: ChoiceEntry) {
  const option = ({ value, words }: { value: string; words: string }) =>
    html`<option value=${value} .selected=${live(value === entry.value)}>${words}</option>`;
  return entry
    .groups()
    .map(({ label, options }) =>
      label === undefined
        ? options.map(option)
        : html`<optgroup label=${label}>${options.map(option)}</optgroup>`,
    );
}
