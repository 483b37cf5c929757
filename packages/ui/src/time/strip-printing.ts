import { type Mark, writeMarkLines } from "@headfall/hydraulics";
import { html } from "lit";
import { type PaperName, paperOf } from "../kernels/sheet/paper.js";
import { layMarkStrip } from "../kernels/time/mark-strip.js";
import type { UnitSystem } from "../kernels/typed-quantity.js";
import { pageView } from "../sheet/page-view.js";
import { Printing } from "../sheet/printing.js";

/** Prints the dip-stick strip of a mark in true size, and nothing else of the page. */
export function printStrip(mark: Mark, system: UnitSystem): void {
  const printing = new Printing();
  const paper = paperOf(usualPaper(system), false);
  const strip = layMarkStrip({
    mark,
    paper,
    system,
    words: [
      ...writeMarkLines(mark, system),
      "Look at the birds and their water every day: a level that falls as it should does not show that every drinker works.",
    ],
    title: `Daily mark of ${mark.source}`,
  });
  const pages = html`${strip.pages.map((page) => pageView(page, paper, false, `Strip, piece ${page.name}`))}`;
  printing.put(pages, paper);
  addEventListener("afterprint", () => printing.takeAway(), { once: true });
  print();
}

const usualPaper = (system: UnitSystem): PaperName => (system === "us" ? "letter" : "a4");
