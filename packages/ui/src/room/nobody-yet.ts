import type { Plan } from "@headfall/hydraulics";
import { html, nothing } from "lit";
import type { TypingController } from "../fields/typing-controller.js";
import { firstBirdsAfter } from "../kernels/birds/first-birds.js";
import { wholeDates } from "../styles/whole-dates.js";
import { DAY_KEY, dayChange } from "./day-entry.js";

/** Says that the birds of a plan are yet to come on the day it is reckoned for, and offers the day they are there. */
export function nobodyYetView(plan: Plan, today: string | undefined, typing: TypingController) {
  const day = plan.day ?? today;
  const first = day === undefined ? undefined : firstBirdsAfter(plan, day);
  if (day === undefined || first === undefined) return nothing;
  return html`<p class="yet"><strong>${wholeDates(`On ${day} no bird is there yet; the first come on ${first}.`)}</strong>
    <button type="button" class="chief" @click=${() => typing.want(DAY_KEY, dayChange(first))}>${wholeDates(`Reckon for ${first}`)}</button></p>`;
}
