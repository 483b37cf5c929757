import {
  type DrinkerOutcome,
  MOMENT_WORDS,
  MOMENTS,
  type MomentName,
  type Outcome,
  writeMargin,
  writeScene,
} from "@headfall/hydraulics";
import { html, nothing } from "lit";
import { readingOf } from "../kernels/cure/cautious-reading.js";
import { showFlow, showHead } from "../kernels/shown.js";
import type { UnitSystem } from "../kernels/typed-quantity.js";
import { verdictWord } from "../verdicts/verdict-mark.js";
import { countsView } from "./counts-view.js";

/** What a cure is held against. */
export interface BeforeAndAfter {
  readonly before: Outcome;
  readonly after: Outcome;
  readonly system: UnitSystem;
  /** Whose it is, spoken. */
  readonly name: string;
}

/** Every drinker in every moment, before and after. */
export function drinkersView({ before, after, system, name }: BeforeAndAfter) {
  const was = new Map(before.drinkers.map((each) => [each.drinker, each]));
  return html`<div class="scroller" role="region" aria-label="Every drinker, ${name}" tabindex="0"><table class="cards moments">
    <caption>Each moment with its head, and its flow where birds drink, by the friction law that gives less.</caption>
    <thead><tr><th scope="col">Drinker</th><th scope="col" class="words">Before</th><th scope="col" class="words">After</th><th scope="col">To spare</th>
      ${MOMENTS.map((moment) => html`<th scope="col">${capital(MOMENT_WORDS[moment])}</th>`)}</tr></thead>
    <tbody>${after.drinkers.map((drinker) => rowView(drinker, was.get(drinker.drinker), system))}</tbody>
  </table></div>`;
}

function rowView(drinker: DrinkerOutcome, was: DrinkerOutcome | undefined, system: UnitSystem) {
  return html`<tr><th scope="row">${drinker.drinker}</th>
    <td class="words" data-head="Before">${was === undefined ? "not there" : verdictWord(was.verdict)}</td>
    <td class="words" data-head="After">${verdictWord(drinker.verdict)}</td>
    <td data-head="To spare">${writeMargin(drinker.spare, system)}</td>
    ${MOMENTS.map((moment) => html`<td data-head=${capital(MOMENT_WORDS[moment])}>${momentView(drinker, moment, system)}</td>`)}</tr>`;
}

function momentView({ moments }: DrinkerOutcome, moment: MomentName, system: UnitSystem) {
  const { head, flow } = readingOf(moments[moment]);
  return html`${showHead(head, system)}${flow > 0 ? html`<br />${showFlow(flow, system)}` : nothing}`;
}

/** The plan's day and each coming week, before and after. */
export function scenesView({ before, after, system, name }: BeforeAndAfter) {
  return html`<div class="scroller" role="region" aria-label="Every week, ${name}" tabindex="0"><table class="cards weeks">
    <thead><tr><th scope="col" class="words">When</th><th scope="col" class="words">Before</th><th scope="col" class="words">After</th><th scope="col">Least to spare</th></tr></thead>
    <tbody>${after.scenes.map(
      (scene, k) => html`<tr><th scope="row">${writeScene(scene)}</th>
        <td class="words" data-head="Before">${before.scenes[k] === undefined ? nothing : countsView(before.scenes[k].counts)}</td>
        <td class="words" data-head="After">${countsView(scene.counts)}</td>
        <td data-head="Least to spare">${scene.spare === undefined ? "" : writeMargin(scene.spare.head, system)}</td></tr>`,
    )}</tbody>
  </table></div>`;
}

const capital = (words: string): string => words.charAt(0).toUpperCase() + words.slice(1);
