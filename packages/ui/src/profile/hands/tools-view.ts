import { html, nothing } from "lit";

/** What the listed buttons do. */
export interface Tools {
  readonly isWhole: boolean;
  readonly canAdd: boolean;
  readonly isBand: boolean;
  closer(): void;
  wider(): void;
  showWhole(): void;
  addHeight(): void;
}

/** Buttons under the drawing, for all that is otherwise done by wheel, pinch, double press or keys. */
export function toolsView({ isWhole, canAdd, isBand, closer, wider, showWhole, addHeight }: Tools) {
  return html`
    ${isBand ? html`<p class="band-key">Upright: the heads each drinker sees, from lowest and busiest to full and idle. Bar across: what it needs. Arrowhead: what it holds.</p>` : nothing}
    <div class="tools" part="tools" role="group" aria-label="The drawing from the side">
      <button type="button" aria-label="Closer" @click=${closer}>+</button>
      <button type="button" aria-label="Wider" ?disabled=${isWhole} @click=${wider}>&minus;</button>
      <button type="button" ?disabled=${isWhole} @click=${showWhole}>Whole line</button>
      <button type="button" ?disabled=${!canAdd} @click=${addHeight}>Add a height</button>
    </div>`;
}
