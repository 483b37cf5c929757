import { type DeviceNeeded, type PenDrinkers, writeNeedReason, writeSilences } from "@headfall/hydraulics";
import { html, nothing } from "lit";
import { forceMark } from "../kernels/birds/force-marks.js";
import { numberButton } from "../verdicts/number-button.js";
import { whoIsIn } from "./pen-entries.js";
import type { BirdsRoom } from "./room.js";

const counted = (count: number, device: string) => `${count} ${device}${count === 1 ? "" : "s"}`;
const isEnough = ({ covered }: PenDrinkers): boolean => covered >= 1 - 1e-9;
const isThere = ({ devices }: PenDrinkers): boolean => devices.some(({ birds }) => birds > 0);

/** At the head of the room: whether the drinkers are enough, and where they are not. */
export function neededAnswer({ flock }: BirdsRoom) {
  const pens = flock?.needed.filter(isThere) ?? [];
  if (pens.length === 0) return nothing;
  const short = pens.filter((pen) => !isEnough(pen));
  const silent = pens.filter((pen) => isEnough(pen) && pen.devices.some(({ isSilent }) => isSilent));
  return html`<div>
    <dt>Drinkers</dt>
    <dd>
      ${short.length === 0 ? html`<span class="large good">enough</span>` : html`<span class="large dry">too few</span>`}
      ${short.map(
        ({ pen, index, devices, isSuggestion }) =>
          html`<span class="short">${pen}: ${devices.map(
            (need, k) =>
              html`${k === 0 ? "" : "; "}${isSuggestion ? "none" : counted(need.has, need.device)},
                ${needButton(need, index, k)}`,
          )}</span>`,
      )}
      ${silent.map(({ pen }) => html`<span class="short quiet">${pen}: by reach and crowd alone; no rule or advice is known</span>`)}
    </dd>
  </div>`;
}

const needButton = ({ needed }: DeviceNeeded, pen: number, device: number) =>
  numberButton(`${needed} needed`, { of: "drinkersNeeded", pen, device });

/** How many drinkers each pen needs, and why: rules that bind, advice, two in reach, the crowd. */
export function neededView(room: BirdsRoom) {
  const { flock, plan } = room;
  const pens = flock?.needed.filter(isThere) ?? [];
  if (flock === undefined || pens.length === 0) return nothing;
  const { region } = flock;
  const taken =
    plan.region === undefined ? " (the plan does not say; change it under Weather and rules)" : "";
  return html`<section aria-labelledby="needed">
    <h3 id="needed">Drinkers needed</h3>
    <p class="quiet">${region === "none" ? "No rules, advice only." : `Rules of ${region}${taken}, and advice.`}
      <span class="hint">Press a number for every rule and advice, with its source.</span></p>
    ${pens.map((pen) => penView(pen, region, whoIsIn(plan, pen.index)))}
  </section>`;
}

function penView(pen: PenDrinkers, region: NonNullable<BirdsRoom["flock"]>["region"], who: string) {
  const { devices, isSuggestion, covered } = pen;
  return html`<div class="sheet"><h4>${pen.pen}: ${who}</h4>
    ${devices.map((need, k) => deviceView(need, pen, k, region))}
    ${
      devices.length < 2 || isSuggestion
        ? nothing
        : html`<p>Each kind is counted as if it were the only one; together they are
            ${isEnough(pen) ? "enough" : `${Math.floor(100 * covered)} % of what is needed`}.</p>`
    }
  </div>`;
}

function deviceView(
  need: DeviceNeeded,
  pen: PenDrinkers,
  k: number,
  region: NonNullable<BirdsRoom["flock"]>["region"],
) {
  const lacks = need.needed - need.has;
  const alone = pen.devices.length === 1;
  const has = pen.isSuggestion ? "None yet; of nipples, say," : `${counted(need.has, need.device)};`;
  const word =
    lacks <= 0
      ? html`<strong class="good"><span aria-hidden="true">✓</span> enough</strong>`
      : html`<strong class=${alone ? "dry" : nothing}>${alone ? html`<span aria-hidden="true">▲</span> ` : nothing}${lacks} ${alone ? "too few" : "fewer"}</strong>`;
  return html`<p class="need">${has} ${needButton(need, pen.index, k)} ${writeNeedReason(need)}. ${word}</p>
    <ul class="forces">
      ${force(need, "rule", html`Rules that bind: ${ruleWords(need)}`)}
      ${force(need, "advice", html`Advice, and rules with it: ${need.isSilent ? "none known" : need.byAdvice}`)}
      ${force(need, "inReach", html`In reach of each bird, one may fail: ${need.inReach}`)}
      ${force(need, "crowd", html`Crowd of the busiest minutes: ${need.byCrowd}`)}
      ${writeSilences(need, region).map((words) => html`<li class="quiet">${words[0]?.toUpperCase()}${words.slice(1)}.</li>`)}
    </ul>`;
}

const ruleWords = ({ byRule, ruleOfRegion }: DeviceNeeded): string =>
  byRule > 0
    ? String(byRule)
    : ruleOfRegion === "forMoreBirds"
      ? "none, they bind larger flocks only"
      : "none";

function force({ because }: DeviceNeeded, reason: keyof typeof MARKS, words: unknown) {
  const mark = html`<span class="mark" aria-hidden="true">${MARKS[reason]}</span>`;
  return because === reason
    ? html`<li>${mark}<strong>${words} – this decides</strong></li>`
    : html`<li>${mark}${words}</li>`;
}

const MARKS = { rule: forceMark(true), advice: forceMark(false), inReach: "", crowd: "" } as const;
