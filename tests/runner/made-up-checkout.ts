import { cpSync, mkdirSync, mkdtempSync, realpathSync, writeFileSync } from "node:fs";
import { tmpdir } from "node:os";
import { dirname, join } from "node:path";
import { fileURLToPath } from "node:url";

const top = fileURLToPath(new URL("../..", import.meta.url));

/** A folder laid out like the checkout, with some of its real files and some made-up ones; the caller removes it. */
export function makeCheckout(real: readonly string[], madeUp: Readonly<Record<string, string>>): string {
  const folder = realpathSync(mkdtempSync(join(tmpdir(), "headfall-checkout-")));
  for (const path of real) cpSync(join(top, path), join(folder, path));
  for (const [path, text] of Object.entries(madeUp)) {
    mkdirSync(dirname(join(folder, path)), { recursive: true });
    writeFileSync(join(folder, path), text);
  }
  return folder;
}
