import { readPlan } from "@headfall/hydraulics";
import "../define.js";
import exampleText from "../../../../docs/examples/alder-bank-hen-house.json?raw";
import { PlanStore } from "../store/plan-store.js";
import { controls } from "../styles/controls.js";
import { pageTokens } from "../styles/tokens.js";
import { pageStyles } from "./page.styles.js";
import { Shell } from "./shell.js";

const sheets = [pageTokens, controls, pageStyles].map((style) => style.styleSheet!);
document.adoptedStyleSheets = [...document.adoptedStyleSheets, ...sheets];

const root = document.getElementById("page")!;
const example = readPlan(exampleText);
if (!example.ok) throw new Error("The example plan that comes with the page cannot be read.");
root.replaceChildren();
new Shell(root, new PlanStore(example.plan)).start();
