import { createHash } from "node:crypto";
import { cpSync, readFileSync, writeFileSync } from "node:fs";
import { join } from "node:path";

const MARK = '<meta name="build" content="another">';

/**
 * Copies the built page as a later one that differs by a mark in its head: in the page itself, and in what its list of
 * files to keep says of it, as a build would write both.
 */
export function writeLaterPage(from: string, folder: string): void {
  cpSync(from, folder, { recursive: true });
  const page = readFileSync(join(from, "index.html"), "utf8");
  const marked = page.replace("<head>", `<head>${MARK}`);
  const worker = readFileSync(join(from, "sw.js"), "utf8");
  const renewed = worker.replace(
    /(\{url:"index\.html",revision:")\w+(?="\})/,
    (_, before: string) => before + createHash("md5").update(marked).digest("hex"),
  );
  if (marked === page || renewed === worker) throw new Error("The later page would be no other.");
  writeFileSync(join(folder, "index.html"), marked);
  writeFileSync(join(folder, "sw.js"), renewed);
}
