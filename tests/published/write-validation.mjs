/**
 * Writes docs/reference/validation.md and docs/images/truth from the published cases and what the library answers now:
 *   npm run validate
 * The writing itself is done by published.test.ts, in the tests' own environment, where the sources need no build.
 */
import { spawnSync } from "node:child_process";
import { mkdirSync } from "node:fs";
import { fileURLToPath } from "node:url";
import { ensureInstalled } from "../../.ci/ensure-installed.mjs";

const top = fileURLToPath(new URL("../..", import.meta.url));

ensureInstalled();
mkdirSync(new URL("../../docs/reference/", import.meta.url), { recursive: true });
const vitest = fileURLToPath(new URL("../../node_modules/vitest/vitest.mjs", import.meta.url));
const run = spawnSync(
  process.execPath,
  [vitest, "run", "--config=tests/vitest.config.ts", "--project=node", "tests/published/published.test.ts"],
  { cwd: top, stdio: "inherit", env: { ...process.env, HEADFALL_WRITE_VALIDATION: "yes" } },
);
process.exitCode = run.status ?? 1;
