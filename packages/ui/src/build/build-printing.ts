import { type PaperName, paperOf } from "../kernels/sheet/paper.js";
import { Printing } from "../sheet/printing.js";
import { printStyles } from "./print.styles.js";
import { printView } from "./print-view.js";
import type { BuildRoom } from "./room.js";

/** White edge of the sheets [mm]. */
const EDGE = 14;

/** Prints the sheet for the work and the one for the coop, and nothing else of the page. */
export function printBuild(room: BuildRoom, paper: PaperName): void {
  const printing = new Printing();
  printing.put(printView(room), paperOf(paper, false), { styles: printStyles, margin: EDGE });
  addEventListener("afterprint", () => printing.takeAway(), { once: true });
  print();
}
