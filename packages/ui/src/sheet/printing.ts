import { type CSSResult, render, type TemplateResult } from "lit";
import type { Paper } from "../kernels/sheet/paper.js";
import { tokens } from "../styles/tokens.js";
import { pageStyles } from "./page.styles.js";

/** How pages look that are no drawings, and the white edge the printer keeps around them [mm]. */
export interface PrintLook {
  readonly styles?: CSSResult;
  readonly margin?: number;
}

const HOLDER = "headfall-printed";

/** While it is put, a print of the document is these pages and nothing else. */
export class Printing {
  #holder: HTMLElement | undefined;
  #rules: CSSStyleSheet | undefined;

  /** Puts pages beside all else that the document holds; only the printer sees them. */
  put(pages: TemplateResult, paper: Paper, { styles = pageStyles, margin = 0 }: PrintLook = {}): void {
    this.takeAway();
    const holder = document.createElement("div");
    holder.className = HOLDER;
    const root = holder.attachShadow({ mode: "open" });
    root.adoptedStyleSheets = [tokens, styles].flatMap(({ styleSheet }) => styleSheet ?? []);
    render(pages, root);
    document.body.append(holder);
    const rules = new CSSStyleSheet();
    rules.replaceSync(rulesFor(paper, margin));
    document.adoptedStyleSheets = [...document.adoptedStyleSheets, rules];
    this.#holder = holder;
    this.#rules = rules;
  }

  /** Takes the pages away; the document prints as it did before. */
  takeAway(): void {
    this.#holder?.remove();
    document.adoptedStyleSheets = document.adoptedStyleSheets.filter((sheet) => sheet !== this.#rules);
    this.#holder = undefined;
    this.#rules = undefined;
  }
}

/**
 * The size of paper by its measures, since names of papers mean other sizes here and there. What the document shows
 * otherwise is hidden by strong rules, a dialog over it included.
 */
const rulesFor = ({ width, height }: Paper, margin: number): string => `
  @page { size: ${width}mm ${height}mm; margin: ${margin === 0 ? "0" : `${margin}mm`}; }
  @media screen { .${HOLDER} { display: none; } }
  @media print {
    html, body { display: block !important; margin: 0 !important; padding: 0 !important; border: 0 !important;
      min-height: 0 !important; height: auto !important; max-width: none !important; width: auto !important;
      overflow: visible !important; background: #fff !important; }
    body > :not(.${HOLDER}) { display: none !important; }
    .${HOLDER} { display: block; color-scheme: light; }
  }
`;
