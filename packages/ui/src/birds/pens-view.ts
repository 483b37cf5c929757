import { batchesOf } from "@headfall/hydraulics";
import { html, nothing } from "lit";
import { fieldView, idOf, problemView } from "../fields/entry-view.js";
import { countedBirds } from "../kernels/birds/kind-of-birds.js";
import { groupsReached, namedGroups } from "../kernels/group-names.js";
import { nameOfPen } from "../kernels/pen-names.js";
import { dayEntry } from "../room/day-entry.js";
import { wantRoom } from "../room/no-line.js";
import type { PlanChange } from "../store/plan-change.js";
import { batchEntries, penNameEntry, whoIsIn } from "./pen-entries.js";
import type { BirdsRoom } from "./room.js";
import { hotSpellEntries, regionEntry, weatherEntries } from "./weather-entries.js";

/** What can be said of the birds: pens with their batches and drinkers, and the weather. */
export function pensView(room: BirdsRoom) {
  const { plan, typing } = room;
  const pens = plan.pens ?? [];
  return html`
    ${pens.map((_, pen) => penView(room, pen))}
    <div class="buttons">${actButton(room, pens.length === 0 ? "Add a pen of birds" : "Add a pen", "add a pen", { kind: "addPen" }, pens.length === 0)}</div>
    ${problemView(typing, "add a pen")}
    ${pens.length === 0 ? nothing : html`${fieldView(dayEntry(plan, "The day it is for", room.today), typing)} ${weatherView(room)}`}
  `;
}

/** Folded away: most plans begin without it. */
function weatherView({ plan, typing, system }: BirdsRoom) {
  const [tick, ...others] = hotSpellEntries(plan, system);
  const { high = "not said", low } = plan.weather ?? {};
  return html`<details class="weather">
    <summary>Weather and rules where they live: ${shownAir(low === undefined ? high : `${low} to ${high}`)}</summary>
    <div>
      <div class="pair">${weatherEntries(plan).map((entry) => fieldView(entry, typing))}</div>
      ${fieldView(tick!, typing)}
      ${others.length === 0 ? nothing : html`<div class="pair">${others.map((entry) => fieldView(entry, typing))}</div>`}
      ${fieldView(regionEntry(plan), typing)}
    </div>
  </details>`;
}

function actButton({ typing }: BirdsRoom, words: string, key: string, change: PlanChange, isChief = false) {
  return html`<button type="button" class=${isChief ? "chief" : ""} @click=${() => typing.want(key, change)}>${words}</button>`;
}

function penView(room: BirdsRoom, pen: number) {
  const { plan, typing } = room;
  const name = nameOfPen(plan, pen);
  const batches = batchesOf(plan.pens![pen]!);
  const act = `pen ${pen + 1} act`;
  const isOpen = room.isWide || plan.pens!.length === 1 || pen === room.newPen;
  return html`<fieldset class="pen"><legend>Pen: ${name}</legend>
    <details ?open=${isOpen}><summary>${whoIsIn(plan, pen)}</summary>
    ${fieldView({ form: "typed", ...penNameEntry(plan, pen) }, typing)}
    ${batches.map((_, batch) => batchView(room, pen, batch, batches.length))}
    ${drinkersView(room, pen)}
    <div class="buttons">
      ${actButton(room, `More birds into ${name}`, act, { kind: "addBirds", pen })}
      ${actButton(room, `Delete ${name}`, act, { kind: "deletePen", pen })}
    </div>
    ${problemView(typing, act)}
    </details>
  </fieldset>`;
}

function batchView(room: BirdsRoom, pen: number, batch: number, count: number) {
  const { plan, day, typing } = room;
  const penName = nameOfPen(plan, pen);
  const birds = batchesOf(plan.pens![pen]!)[batch]!;
  const [kind, ...others] = batchEntries({ plan, pen, penName, batch, day: plan.day ?? day });
  const title = `Birds ${batch + 1}: ${countedBirds(birds)}`;
  return html`<div class="batch" role="group" aria-label="${title}, ${penName}">
    ${count === 1 ? nothing : html`<h4>${title}</h4>`}
    ${fieldView(kind!, typing)}
    <div class="pair">${others.map((entry) => fieldView(entry, typing))}</div>
    ${
      count === 1
        ? nothing
        : html`<div class="buttons">
            ${actButton(room, `Delete birds ${batch + 1}`, `pen ${pen + 1} act`, { kind: "deleteBirds", pen, batch })}
          </div>`
    }
  </div>`;
}

/** Which groups of drinkers the pen reaches; each is one pen's. */
function drinkersView({ plan, typing }: BirdsRoom, pen: number) {
  const groups = [...new Map(namedGroups(plan).map((group) => [group.name, group])).values()];
  if (groups.length === 0 && (plan.pens![pen]!.waterers ?? []).length > 0)
    return html`<p class="note">They drink from loose waterers.
      <button type="button" @click=${wantRoom("yard")}>Go to the yard</button></p>`;
  if (groups.length === 0)
    return html`<p class="note">There are no drinkers on the line yet.
      <button type="button" @click=${wantRoom("line")}>Go to the line</button> Do they drink from founts, pans or buckets?
      <button type="button" @click=${wantRoom("yard")}>Go to the yard</button></p>`;
  const reached = groupsReached(plan);
  const others = (name: string) =>
    reached.flatMap((list, p) =>
      p !== pen && list.some((group) => group.name === name) ? [nameOfPen(plan, p)] : [],
    );
  const key = `pen ${pen + 1} drinkers`;
  return html`<div role="group" aria-labelledby=${idOf(key)}>
    <p class="label" id=${idOf(key)}>Drinkers they reach</p>
    ${groups.map(({ name }) => {
      const [other] = others(name);
      return fieldView(
        {
          form: "tick",
          key: `${key} ${name}`,
          title: other === undefined ? name : `${name} (now of ${other})`,
          name: `${nameOfPen(plan, pen)} reaches ${name}`,
          value: reached[pen]?.some((group) => group.name === name) ?? false,
          change: (reaches) => ({ kind: "reachDrinkers", pen, drinkers: name, reaches }),
        },
        typing,
      );
    })}
  </div>`;
}

const shownAir = (typed: string): string => typed.replaceAll("deg", "°");
