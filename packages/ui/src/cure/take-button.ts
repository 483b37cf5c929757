import type { Plan } from "@headfall/hydraulics";
import { html } from "lit";
import type { TakingRoom } from "./room.js";

/**
 * Makes the plan in hand what was found. Once that is done it stays where it is, so that the keyboard does too.
 *
 * @param what  what the step is called in the plan's history
 * @param name  which of several it is, spoken
 */
export function takeButton({ of, isTaken, acts }: TakingRoom, found: Plan, what: string, name: string) {
  const isDone = isTaken(found);
  return html`<div class="buttons"><button type="button" class=${isDone ? "done" : "chief"} aria-disabled=${isDone ? "true" : "false"}
    @click=${() => (isDone ? undefined : acts.take(of, found, what))}>${isDone ? "Done: the plan is so now" : "Do it"}<span class="spoken">, ${name}</span></button></div>`;
}
