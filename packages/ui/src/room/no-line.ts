import type { Plan } from "@headfall/hydraulics";
import { html, type TemplateResult } from "lit";

/** Whether a plan is a yard without a line: nothing to draw, to solve or to mend. */
export const isLineless = ({ sources, runs }: Plan): boolean => sources.length === 0 && runs.length === 0;

/**
 * What a room about the line says of a plan that has none, and where to go from there.
 *
 * @param words  what this room would tell of a line
 */
export function noLineView(words: string): TemplateResult {
  return html`<p>This plan has no line; its founts, pans and buckets have the room Yard. ${words}</p>
    <div class="buttons">
      <button type="button" class="chief" @click=${wantRoom("yard")}>Go to the yard</button>
      <button type="button" @click=${wantRoom("line")}>Draw a line</button>
    </div>`;
}

/** Asks the page for another room, from the button that was pressed. */
export const wantRoom =
  (room: string): ((event: Event) => void) =>
  ({ currentTarget }) => {
    if (currentTarget !== null) goToRoom(currentTarget, room);
  };

/** Asks the page for another room. */
export function goToRoom(from: EventTarget, room: string): void {
  from.dispatchEvent(new CustomEvent("room-wanted", { bubbles: true, composed: true, detail: { room } }));
}
