import { fileURLToPath } from "node:url";
import type { Page } from "playwright";
import { build } from "vite";
import { browserOfTests } from "./harness.js";

const here = (path: string) => fileURLToPath(new URL(path, import.meta.url));
const HOME = "http://sheet.example/";

/** The policy of the built page; the server's header, so that nothing of the test itself slips through. */
const POLICY =
  "default-src 'self'; script-src 'self'; style-src 'self'; img-src 'self' data: blob:; object-src 'none'; base-uri 'none'; form-action 'none'";

/** A page with a heading, a sheet in a dialog as the save menu opens it, and nothing else. */
const PAGE = `<!doctype html><html lang="en"><head><meta charset="utf-8"><title>Sheet</title></head>
<body><h1>Not to be printed</h1><div id="host"></div><script type="module" src="/sheet.js"></script></body></html>`;

const ENTRY = `
import { checkPlan, readPlan } from "@headfall/hydraulics";
import { HeadfallSave } from ${JSON.stringify(here("../../../packages/ui/src/sheet/save-element.ts"))};
import { HeadfallSheet } from ${JSON.stringify(here("../../../packages/ui/src/sheet/sheet-element.ts"))};
customElements.define("headfall-sheet", HeadfallSheet);
customElements.define("headfall-save", HeadfallSave);
window.showSave = async (text) => {
  const { plan } = readPlan(text);
  const save = new HeadfallSave();
  Object.assign(save, { plan, checked: checkPlan(plan, { samples: 0 }).checked, date: "2026-11-25" });
  document.querySelector("#host").replaceChildren(save);
  await save.updateComplete;
};`;

/** Made once for all visits. */
let script: Promise<string> | undefined;

/** Opens that page under the policy of the built one, and closes the browser afterwards. */
export async function visitSheet(visit: (page: Page) => Promise<void>): Promise<void> {
  script ??= bundled();
  const body = await script;
  const context = await (await browserOfTests()).newContext();
  try {
    const page = await context.newPage();
    const faults: string[] = [];
    page.on("pageerror", ({ message }) => faults.push(message));
    page.on("console", (message) => {
      if (message.type() === "error") faults.push(message.text());
    });
    await page.route("**/*", (route) => {
      const path = new URL(route.request().url()).pathname;
      if (path === "/sheet.js") return route.fulfill({ contentType: "text/javascript", body });
      if (path !== "/") return route.fulfill({ status: 204, body: "" });
      return route.fulfill({
        contentType: "text/html",
        headers: { "Content-Security-Policy": POLICY },
        body: PAGE,
      });
    });
    await page.goto(HOME);
    await visit(page);
    if (faults.length > 0) throw new Error(`The page had faults:\n  ${faults.join("\n  ")}`);
  } finally {
    await context.close();
  }
}

async function bundled(): Promise<string> {
  const name = "virtual:sheet-entry";
  const result = await build({
    configFile: false,
    logLevel: "silent",
    define: { "process.env.NODE_ENV": JSON.stringify("production") },
    resolve: { alias: { "@headfall/hydraulics": here("../../../packages/hydraulics/src/index.ts") } },
    plugins: [
      {
        name: "sheet-entry",
        resolveId: (id) => (id === name ? here("./sheet-entry.js") : undefined),
        load: (id) => (id === here("./sheet-entry.js") ? ENTRY : undefined),
      },
    ],
    build: { write: false, minify: false, rollupOptions: { input: name, output: { format: "es" } } },
  });
  const [output] = Array.isArray(result) ? result : [result];
  if (output === undefined || !("output" in output)) throw new Error("The sheet was not built.");
  const chunks = output.output.filter((each) => each.type === "chunk");
  if (chunks.length !== 1) throw new Error(`The sheet was built as ${chunks.length} scripts.`);
  return chunks[0]!.code;
}
