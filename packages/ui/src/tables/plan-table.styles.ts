import { css } from "lit";

export const planTableStyles = css`
  :host { display: block; background: var(--_paper); }
  section { margin: 0 0 1.5rem; }
  caption { color: var(--_ink); font-size: 1.05rem; font-weight: 700; }
  td input[type="text"] { width: 5.4rem; padding: 0 0.4rem; }
  th input.name { width: 7.5rem; padding: 0 0.4rem; font-weight: 400; }
  th .problem { white-space: normal; max-width: 16rem; font-weight: 400; }
  td select { width: 7.5rem; padding: 0 0.2rem; }
  td select.long { width: 11rem; }
  th, td { padding: 0.2rem 0.25rem; text-align: left; }
  td.actions button { padding: 0 0.4rem; }
  td .problem { white-space: normal; max-width: 16rem; }
  td input.name[type="text"] { min-width: 20rem; }
  .also { margin-top: 0.2rem; white-space: normal; font-size: 0.8rem; line-height: 1.2; }
  .also > span { display: block; color: var(--_quiet); }
  .actions { white-space: nowrap; }
  .line { display: flex; flex-wrap: wrap; align-items: end; gap: 0 0.6rem; }
  .line > .field { flex: 0 1 13rem; }
  .line > .field > :is(input, select) { width: 100%; }
  .line > button { margin-bottom: 0.6rem; }
  .line > .problem { flex: 1 0 100%; }
  .pages { display: flex; flex-wrap: wrap; align-items: center; gap: 0.6rem; margin: 0.4rem 0; }
  @media (max-width: 640px) {
    /* Smaller letters would make some browsers zoom in on the field. */
    .cards :is(input, select) { font-size: 1rem; }
    .cards tr { grid-template-columns: repeat(2, minmax(0, 1fr)); }
    .cards .wide { grid-column: 1 / -1; }
    :is(td, th) :is(input[type="text"], input.name[type="text"], select, select.long) { width: 100%; min-width: 0; }
    .cards td.actions { display: flex; flex-wrap: wrap; gap: 0.4rem; padding: 0.3rem 0; }
    .cards td.actions button { width: auto; flex: 1; }
    .cards td .problem { max-width: none; }
  }
`;
