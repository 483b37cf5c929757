import { css } from "lit";

/** Sheets for the work and for the coop: black on white, no colour carries anything, large enough to be read when wet. */
export const printStyles = css`
  main { color-scheme: light; color: #000; background: #fff; font: 11pt/1.3 Arial, Helvetica, "Liberation Sans", sans-serif; }
  main.coop { break-before: page; font-size: 13pt; line-height: 1.25; }
  h1 { font-size: 17pt; margin: 0 0 3mm; }
  .coop h1 { font-size: 22pt; margin-bottom: 0; }
  h2 { font-size: 13pt; margin: 5mm 0 1.5mm; border-bottom: 0.5mm solid #000; break-after: avoid; }
  .coop h2 { font-size: 15pt; margin-top: 3.5mm; }
  .coop td { padding-block: 0.2mm; }
  p, li, .line { margin: 0 0 1.5mm; break-inside: avoid; orphans: 2; widows: 2; }
  ul { margin: 0; padding-left: 5mm; }
  .line { display: flex; gap: 2.5mm; align-items: flex-start; }
  .box { flex: none; width: 3.6mm; height: 3.6mm; margin-top: 0.5mm; border: 0.4mm solid #000; }
  .hurts { border: 0.8mm solid #000; padding: 0 3mm 2mm; }
  .hurts h2 { margin-top: 2mm; border: 0; }
  table { border-collapse: collapse; width: 100%; }
  th, td { text-align: right; padding: 0.7mm 2mm; border-bottom: 0.2mm solid #000; }
  th:first-child, td:first-child { text-align: left; padding-left: 0; }
  tr { break-inside: avoid; }
  thead { display: table-header-group; }
  time { white-space: nowrap; }
  .call { font-size: 16pt; font-weight: 700; }
  .blank { height: 9mm; border-bottom: 0.3mm solid #000; }
`;
