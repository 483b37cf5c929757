import type { Plan } from "@headfall/hydraulics";
import "../define.js";
import example from "../../../../docs/examples/alder-bank-hen-house.json?plan";
import { PlanShelf } from "../storage/plan-shelf.js";
import { controls } from "../styles/controls.js";
import { pageTokens } from "../styles/tokens.js";
import { begin } from "./begin.js";
import { pageStyles } from "./page.styles.js";
import { Shell } from "./shell.js";

const sheets = [pageTokens, controls, pageStyles].map((style) => style.styleSheet!);
document.adoptedStyleSheets = [...document.adoptedStyleSheets, ...sheets];

// No await at the top: what is fetched later rests on this same piece, and would wait for it while it waits for that.
void open(new PlanShelf(), example);

async function open(shelf: PlanShelf, plan: Plan): Promise<void> {
  const begun = await begin(shelf);
  const root = document.getElementById("page")!;
  root.replaceChildren();
  new Shell(root, shelf, begun, plan).start();
}
