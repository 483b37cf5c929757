import { type CostMeasure, type CureKind, STAND_MOST, writeQuantity } from "@headfall/hydraulics";
import { html, nothing } from "lit";
import { live } from "lit/directives/live.js";
import type { UnitSystem } from "../kernels/typed-quantity.js";
import { FOOT, INCH } from "../kernels/us-units.js";
import { pricesView } from "./prices-view.js";
import type { CureRoom } from "./room.js";

/** Heights of a stand, and head to spare, that can be chosen [m]: round figures in either system. */
const STANDS: Readonly<Record<UnitSystem, readonly number[]>> = {
  metric: [0.5, 1, STAND_MOST, 2, 3],
  us: [2 * FOOT, 3 * FOOT, 5 * FOOT, 7 * FOOT, 10 * FOOT],
};
const MARGINS: Readonly<Record<UnitSystem, readonly number[]>> = {
  metric: [0, 0.02, 0.05, 0.1, 0.2],
  us: [0, INCH, 2 * INCH, 4 * INCH, 8 * INCH],
};
const WEEKS = [0, 4, 8, 12] as const;

const MEASURES: Readonly<Record<CostMeasure, string>> = {
  money: "money",
  parts: "things to buy",
  stand: "height of the stand",
};

/** What counts, and how far to look. */
export function wantedView(room: CureRoom) {
  const { plan, wanted, system, acts } = room;
  const standMost = wanted.standMost ?? (system === "us" ? 5 * FOOT : STAND_MOST);
  const number = (event: Event) => Number((event.target as HTMLSelectElement).value);
  return html`<section class="say" aria-label="What counts">
    <details ?open=${room.isWide}><summary>What counts: ${saidOf(wanted, standMost, system)}</summary>
      ${choice(
        "cure-by",
        "As little as can be of",
        [
          { value: "", words: "what the plan suggests", isChosen: wanted.by === undefined },
          ...Object.entries(MEASURES).map(([value, words]) => ({
            value,
            words,
            isChosen: wanted.by === value,
          })),
        ],
        (event) =>
          acts.want({
            by: ((event.target as HTMLSelectElement).value || undefined) as CostMeasure | undefined,
          }),
      )}
      ${choice("cure-stand", "Highest stand", lengths(STANDS[system], standMost, system), (event) => acts.want({ standMost: number(event) }))}
      ${choice("cure-margin", "Head to spare at least", lengths(MARGINS[system], wanted.margin, system), (event) => acts.want({ margin: number(event) }))}
      ${plan.pens === undefined ? nothing : weeksChoice(room)}
      ${waysView(room)}
      ${standMost > HIGH ? html`<p class="note">A stand as high as that carries a great weight: have it designed and anchored by somebody who knows how.</p>` : nothing}
    </details>
    ${pricesView(room)}
  </section>`;
}

/** What counts as it stands, in a few words. */
function saidOf({ by, margin }: CureRoom["wanted"], standMost: number, system: UnitSystem): string {
  const length = (metres: number) => writeQuantity(metres, "length", system, 3);
  const spare = margin === 0 ? "" : `, ${length(margin)} to spare`;
  return `${by === undefined ? "cost" : MEASURES[by]}, stand to ${length(standMost)}${spare}`;
}

/** What may be done, in groups that a keeper tells apart. */
const WAYS: readonly { readonly words: string; readonly kinds: readonly CureKind[] }[] = [
  { words: "Move a stand up or down", kinds: ["stand"] },
  { words: "Lay other pipe", kinds: ["pipe"] },
  { words: "Open taps and vents, bleed air", kinds: ["tap", "vent", "bleed"] },
  { words: "A wider outlet", kinds: ["outlet"] },
  { words: "Other drinkers", kinds: ["drinkers"] },
  { words: "Fewer drinkers", kinds: ["fewerDrinkers"] },
  { words: "A further run of pipe", kinds: ["secondFeed", "feedMiddle", "split"] },
  { words: "A regulator or a header tank", kinds: ["regulator", "headerTank"] },
  { words: "The source at another place", kinds: ["moveSource"] },
  { words: "Two of these together, where none does alone", kinds: ["two"] },
];

function waysView({ wanted, acts }: CureRoom) {
  const change = (kinds: readonly CureKind[], isAllowed: boolean) =>
    acts.want({
      never: isAllowed ? wanted.never.filter((kind) => !kinds.includes(kind)) : [...wanted.never, ...kinds],
    });
  return html`<fieldset><legend>What may be done</legend>
    ${WAYS.map(
      (
        { words, kinds },
        at,
      ) => html`<div class="field tick"><span class="box"><input type="checkbox" id="way-${at}" .checked=${live(!kinds.every((kind) => wanted.never.includes(kind)))}
        @change=${(event: Event) => change(kinds, (event.target as HTMLInputElement).checked)} /></span><label for="way-${at}">${words}</label></div>`,
    )}
  </fieldset>`;
}

/** Above this a stand is no longer a matter of blocks and boards [m]; common practice, no source. */
const HIGH = 1.6;

function weeksChoice({ wanted, acts }: CureRoom) {
  const words = (weeks: number) => (weeks === 0 ? "the plan's own day only" : `${weeks} weeks ahead`);
  return choice(
    "cure-weeks",
    "It must hold",
    [
      { value: "", words: "as long as birds grow, 8 weeks", isChosen: wanted.weeks === undefined },
      ...WEEKS.map((weeks) => ({
        value: String(weeks),
        words: words(weeks),
        isChosen: wanted.weeks === weeks,
      })),
    ],
    (event) => {
      const { value } = event.target as HTMLSelectElement;
      acts.want({ weeks: value === "" ? undefined : Number(value) });
    },
  );
}

interface Option {
  readonly value: string;
  readonly words: string;
  readonly isChosen: boolean;
}

/** The round figures, and the one that is chosen where it is none of them. */
function lengths(round: readonly number[], chosen: number, system: UnitSystem): Option[] {
  const isNear = (one: number) => Math.abs(one - chosen) < 1e-6;
  const all = round.some(isNear) ? round : [...round, chosen].sort((a, b) => a - b);
  return all.map((length) => ({
    value: String(length),
    words: length === 0 ? "none" : writeQuantity(length, "length", system, 3),
    isChosen: isNear(length),
  }));
}

function choice(id: string, label: string, options: readonly Option[], change: (event: Event) => void) {
  return html`<div class="field"><label for=${id}>${label}</label>
    <select id=${id} @change=${change}>
      ${options.map(({ value, words, isChosen }) => html`<option value=${value} ?selected=${isChosen}>${words}</option>`)}
    </select></div>`;
}
