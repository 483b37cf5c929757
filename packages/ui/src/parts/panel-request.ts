import type { MomentName } from "@headfall/hydraulics";
import { html } from "lit";
import type { TypingController } from "../fields/typing-controller.js";
import type { Selected } from "../kernels/selected.js";
import type { PlanContext } from "./plan-context.js";

/** What the panel of a part is made from. */
export interface PanelRequest extends PlanContext {
  readonly moment: MomentName;
  readonly typing: TypingController;
  choose(part: Selected | undefined): void;
}

/** A button of a panel, and what it does. */
export interface PanelAction {
  readonly words: string;
  /** Spoken where the words alone would not do. */
  readonly name?: string;
  /** Whether it is what most people come for. */
  readonly isChief?: boolean;
  press(): void;
}

/** Buttons in a row. */
export function buttonsView(actions: readonly PanelAction[]) {
  return html`<div class="buttons">
    ${actions.map(
      ({ words, name, isChief, press }) =>
        html`<button type="button" class=${isChief ? "chief" : ""} aria-label=${name ?? words} @click=${press}>${words}</button>`,
    )}
  </div>`;
}
