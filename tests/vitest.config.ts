import { fileURLToPath } from "node:url";
import { playwright } from "@vitest/browser-playwright";
import { defineConfig } from "vitest/config";
import { BROWSER_SWITCHES, findBrowser } from "./browser/find-browser.mjs";
import { workersInOnePiece } from "./browser/workers-in-one-piece.js";
import { LONG_VISITS } from "./ui/page/long-visits.js";

const here = (path: string) => fileURLToPath(new URL(path, import.meta.url));
// Tests that need no browser run without one; the others say what is missing, in browser/require-browser.ts.
const browserPath = await findBrowser().catch(() => undefined);

/** Set to leave the longest visits out; a run of some tests by name has all of them to choose from. */
const isLeftOut = process.env.HEADFALL_LONG_VISITS === "0";

/**
 * Tests read the sources, so that a failing line is the line one edits. Three projects:
 *   node      everything that needs no browser; alone, since it keeps every core busy all the time
 *   browser   elements one by one, inside a browser
 *   page      the built page, driven from outside; with the one before, since both wait half of their time
 */
export default defineConfig({
  root: here(".."),
  resolve: {
    alias: {
      "@headfall/hydraulics": here("../packages/hydraulics/src/index.ts"),
      "@headfall/ui": here("../packages/ui/src/index.ts"),
    },
  },
  test: {
    // The library of elements says at every start that it is not built for production; that is known.
    onConsoleLog: (text) => !text.startsWith("Lit is in dev mode"),
    projects: [
      {
        extends: true,
        test: {
          name: "node",
          environment: "node",
          include: ["tests/**/*.test.ts"],
          exclude: ["tests/ui/browser/**", "tests/ui/page/**", "node_modules/**"],
          setupFiles: [here("runner/fixed-seed.ts")],
          // What is tested here keeps nothing between calls, so files can share what they import: half the time.
          isolate: false,
          maxWorkers: 2,
          testTimeout: 120_000,
          sequence: { groupOrder: 0 },
        },
      },
      {
        extends: true,
        plugins: [workersInOnePiece()],
        test: {
          name: "browser",
          // Elements are defined once for all files; what a test spies on is put back.
          isolate: false,
          restoreMocks: true,
          include: ["tests/ui/browser/**/*.test.ts"],
          globalSetup: [here("browser/require-browser.ts")],
          testTimeout: 90_000,
          retry: 1,
          expect: { poll: { timeout: 30_000 } },
          maxWorkers: 2,
          sequence: { groupOrder: 1 },
          browser: {
            enabled: true,
            headless: true,
            // One tab: what has the keyboard is one thing in a window.
            fileParallelism: false,
            screenshotFailures: false,
            instances: [{ browser: "chromium" }],
            provider: playwright({
              launchOptions: { args: BROWSER_SWITCHES, ...(browserPath && { executablePath: browserPath }) },
            }),
          },
        },
      },
      {
        extends: true,
        test: {
          name: "page",
          environment: "node",
          include: ["tests/ui/page/**/*.test.ts"],
          exclude: isLeftOut ? LONG_VISITS : [],
          globalSetup: [
            here("browser/require-browser.ts"),
            here("ui/page/built-page.ts"),
            here("ui/page/shared-browser.ts"),
          ],
          // Files share the browser and the tabs that visits have left; what a page kept is taken away between visits.
          isolate: false,
          testTimeout: 120_000,
          hookTimeout: 120_000,
          // On a machine that has other work, the page takes its time too. What passes only at the second try is named.
          retry: 1,
          expect: { poll: { timeout: 20_000 } },
          maxWorkers: 2,
          sequence: { groupOrder: 1 },
        },
      },
    ],
  },
});
