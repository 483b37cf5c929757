import { allVessels, type Plan } from "@headfall/hydraulics";
import { html } from "lit";
import type { UnitSystem } from "../kernels/typed-quantity.js";
import { goToRoom } from "../room/no-line.js";

/** What people most often set up, in the order of size; everything else can be chosen once the plan is begun. */
const SHORT_LIST = [
  "bucket-20l",
  "bucket-5gal",
  "drum-30gal-plastic",
  "rain-barrel-50gal",
  "drum-55gal-plastic",
  "stock-tank-100gal",
  "tote-1000l",
];

/** Asks what holds the water, with one press for an answer. */
export function vesselChoice(onChoose: (vessel: string | undefined) => unknown) {
  const vessels = SHORT_LIST.flatMap((id) => allVessels.find((vessel) => vessel.id === id) ?? []);
  return html`<section class="card" aria-labelledby="vessel">
    <h2 id="vessel" tabindex="-1">What holds the water?</h2>
    <div class="acts">
      ${vessels.map(({ id, name }) => html`<button @click=${() => onChoose(id)}>${name}</button>`)}
      <button @click=${() => onChoose(undefined)}>No line: founts and pans alone</button>
    </div>
    <p class="quiet">It can be changed later, as everything can.</p>
  </section>`;
}

/** Begins a plan with a vessel, or with a fount and no line, whose place is the yard. */
export async function beginPlan(
  desk: { openNew(plan: Plan): Promise<void>; readonly units: UnitSystem },
  vessel: string | undefined,
): Promise<void> {
  await desk.openNew(vessel === undefined ? FOUNT_ALONE : beginWith(vessel, desk.units));
  if (vessel === undefined) goToRoom(document, "yard");
}

const FOUNT_ALONE: Plan = {
  headfall: 1,
  name: "My yard",
  sources: [],
  runs: [],
  pens: [{ id: "pen 1", birds: { kind: "hen", count: 6 }, drinkers: [], waterers: [{ kind: "fount-1gal" }] }],
};

/** A plan with nothing but its source: stood a little above the ground, where most stand. */
function beginWith(vessel: string, system: UnitSystem): Plan {
  const stand = system === "us" ? "18 in" : "50 cm";
  return {
    headfall: 1,
    name: "My line",
    sources: [{ vessel, stand, place: { x: "0 m", y: "0 m" } }],
    runs: [],
  };
}
