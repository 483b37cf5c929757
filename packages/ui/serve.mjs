/**
 * Serves the built page on this computer until Ctrl-C.
 *   node packages/ui/serve.mjs [folder of a built page]
 * The port is PORT if that is set, else 4173 or the next free one.
 *
 * The start script says "exec ... || ...": a POSIX shell is replaced by this process, so that Ctrl-C reaches it alone
 * and its 0 is the answer; a shell without exec takes the second half.
 */
import { existsSync } from "node:fs";
import { join, resolve } from "node:path";
import { fileURLToPath } from "node:url";
import { preview } from "vite";

const here = fileURLToPath(new URL(".", import.meta.url));
const folder = resolve(process.argv[2] ?? join(here, "dist", "page"));

try {
  await serve();
} catch (error) {
  process.stderr.write(`${error.message}\n`);
  process.exitCode = 1;
}

async function serve() {
  if (!existsSync(join(folder, "index.html"))) {
    throw new Error(`There is no built page in ${folder}: run "npm run build" first.`);
  }
  const asked = portAsked();
  const server = await preview({
    configFile: join(here, "vite.config.ts"),
    logLevel: "error",
    build: { outDir: folder },
    preview: { host: "127.0.0.1", port: asked ?? 4173, strictPort: asked !== undefined, open: false },
  });
  let isEnding = false;
  // One Ctrl-C can arrive twice, from the terminal and passed on by npm: the second must not cut the first short.
  process.on("SIGINT", () => {
    if (isEnding) return;
    isEnding = true;
    // A browser keeps its connection open; the wish to end is not kept waiting for it.
    server.httpServer.closeAllConnections?.();
    server.close().finally(() => process.exit(0));
  });
  process.stdout.write(`Headfall is at ${server.resolvedUrls.local[0]}  (Ctrl-C ends it)\n`);
}

/** PORT as a number; undefined when it is not set. */
function portAsked() {
  const text = process.env.PORT;
  if (text === undefined || text === "") return undefined;
  const port = Number(text);
  if (!Number.isInteger(port) || port < 0 || port > 65535) {
    throw new Error(`PORT is "${text}". It is a whole number from 0 to 65535; write for instance PORT=8080.`);
  }
  return port;
}
