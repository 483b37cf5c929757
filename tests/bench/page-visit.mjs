import { readFileSync } from "node:fs";
import { join } from "node:path";
import { gzipSync } from "node:zlib";

/** A first visit: when the verdict is painted, and what was fetched until it was known. */
export async function measureVisit(page, address, folder) {
  await page.addInitScript(watchForVerdict);
  await page.goto(address);
  await page.waitForFunction(() => window.paintedAt !== undefined);
  const { ms, paths } = await page.evaluate(() => ({ ms: window.paintedAt, paths: window.fetchedFirst }));
  const scripts = paths.filter((path) => path.endsWith(".js"));
  const zipped = (path) => gzipSync(readFileSync(join(folder, path)), { level: 9 }).length;
  const sum = (list) => list.reduce((bytes, path) => bytes + zipped(path), 0) / 1000;
  return {
    "verdict painted ms": ms,
    "kB gzip of script": sum(scripts),
    scripts: scripts.length,
    "kB gzip in all": sum(["index.html", ...paths]),
  };
}

/** On the page: what had been fetched when the first check was done, and when its verdict had been painted. */
function watchForVerdict() {
  const painted = () => {
    window.paintedAt ??= performance.now();
  };
  addEventListener(
    "line-checked",
    () => {
      window.fetchedFirst ??= performance
        .getEntriesByType("resource")
        .map(({ name }) => new URL(name).pathname);
      // The frame that shows it is over when the next one begins.
      requestAnimationFrame(() => requestAnimationFrame(painted));
    },
    true,
  );
}
