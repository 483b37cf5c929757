import { type BirdFinding, writeBirdFinding } from "@headfall/hydraulics";
import { html, nothing } from "lit";
import type { BirdsRoom } from "./room.js";

/** What the check found of the birds, the dangerous first. */
export function findingsView({ flock, system }: BirdsRoom) {
  if (flock === undefined) return nothing;
  const findings = [...flock.findings].sort((a, b) => weightOf(a) - weightOf(b));
  // Of loose waterers nothing is judged here.
  if (findings.length === 0 && flock.pens.some(({ isElsewhere }) => isElsewhere)) return nothing;
  if (findings.length === 0)
    return html`<p class="sound">Nothing amiss was found with the birds at these drinkers.</p>`;
  return html`<section aria-labelledby="amiss">
    <h3 id="amiss">Worth a look</h3>
    <ul class="findings">${findings.map((finding) => html`<li>${isGrave(finding) ? html`<strong>Caution.</strong> ` : nothing}${writeBirdFinding(finding, system)}</li>`)}</ul>
  </section>`;
}

/** What no figure shows. */
export const CARE = html`<section aria-labelledby="care" class="cautions">
  <h3 id="care">Whatever the figures say</h3>
  <ul>
    <li>Chicks, poults, ducklings and quail drown in water a few centimetres deep: give them nipples or shallow cups, or fill open water with pebbles.</li>
    <li>Look at the water every day, and work a drinker at the far end. A line that was good yesterday can be blocked, frozen or airlocked today.</li>
    <li>Birds that drink much more or much less than before, pant, or look ill: ask a vet. No figure here is about health.</li>
  </ul>
</section>`;

const isGrave = ({ code }: BirdFinding): boolean => GRAVE.includes(code);
const GRAVE: readonly BirdFinding["code"][] = [
  "mayDrown",
  "noDrinkers",
  "crowdSaturates",
  "lowFlowInHeat",
  "hangsTooHigh",
];
const weightOf = (finding: BirdFinding): number => (isGrave(finding) ? 0 : 1);
