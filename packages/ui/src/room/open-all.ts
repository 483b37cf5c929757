import { html } from "lit";

/** Opens every row of a list that opens, or shuts them again. */
export const openAllButton = (isAllOpen: boolean, openAll: (isOpen: boolean) => void) =>
  html`<button type="button" @click=${() => openAll(!isAllOpen)}>${isAllOpen ? "Shut all" : "Open all"}</button>`;
