import { fileURLToPath } from "node:url";
import { build, type Plugin, type Rolldown } from "vite";

const top = fileURLToPath(new URL("../..", import.meta.url));
const WORKERS = ["check-worker", "room-worker"].map((name) => `packages/ui/src/worker/${name}.ts`);

/** What each worker comes to, by the path it is asked for; begun once, whoever asks. */
let pieces: Promise<ReadonlyMap<string, string>> | undefined;

/**
 * Serves each worker of the page in one piece, as it is shipped. File by file, every worker that a test starts would
 * ask for five hundred of them, which took half of the time of all tests of elements.
 */
export function workersInOnePiece(): Plugin {
  return {
    name: "headfall-workers-in-one-piece",
    async configureServer({ middlewares }) {
      pieces ??= bundleWorkers();
      const ready = await pieces;
      middlewares.use(({ url = "" }, response, next) => {
        const piece = url.includes("worker_file") ? ready.get(url.split("?", 1)[0]!) : undefined;
        if (piece === undefined) return next();
        // Kept by the browser, which then keeps what it compiled of it too.
        response.setHeader("Cache-Control", "max-age=3600");
        response.setHeader("Content-Type", "text/javascript").end(piece);
      });
    },
  };
}

const bundleWorkers = async () =>
  new Map(await Promise.all(WORKERS.map(async (path) => [`/${path}`, await onePieceOf(path)] as const)));

/** The worker with all that it imports. */
async function onePieceOf(path: string): Promise<string> {
  const built = await build({
    root: top,
    configFile: false,
    logLevel: "error",
    resolve: { alias: { "@headfall/hydraulics": `${top}packages/hydraulics/src/index.ts` } },
    build: {
      write: false,
      minify: false,
      target: "es2022",
      rolldownOptions: { input: `${top}${path}`, output: { codeSplitting: false } },
    },
  });
  const { output } = [built].flat()[0] as Rolldown.RolldownOutput;
  return output[0].code;
}
