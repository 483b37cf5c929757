import { spawnSync } from "node:child_process";
import { fileURLToPath } from "node:url";
import { MessageChannel, receiveMessageOnPort, Worker } from "node:worker_threads";

const top = fileURLToPath(new URL("../..", import.meta.url));

let isBuilt = false;

/** Compiles the library, so that the command under test is that of the sources; once for all files that share this one. */
export function buildCommand(): void {
  if (isBuilt) return;
  const built = spawnSync(
    process.execPath,
    ["node_modules/typescript/bin/tsc", "-b", "packages/hydraulics"],
    { cwd: top, encoding: "utf8" },
  );
  if (built.status !== 0) throw new Error(`The library does not compile:\n${built.stdout}${built.stderr}`);
  isBuilt = true;
}

/**
 * Runs `headfall` from the top of the checkout, without colour: in a thread that goes on to the next one, for half of a
 * process's time goes into beginning.
 */
export function headfall(words: readonly string[], input = ""): Told {
  const done = new Int32Array(new SharedArrayBuffer(4));
  const { port1, port2 } = new MessageChannel();
  threadOfHeadfall().postMessage({ words, input, answers: port2, done }, [port2]);
  if (Atomics.wait(done, 0, 0, 120_000) === "timed-out") throw new Error(`headfall ${words.join(" ")} hangs`);
  return receiveMessageOnPort(port1)?.message as Told;
}

/** The same as a process of its own. */
export function headfallAsProcess(words: readonly string[], input = ""): Told {
  const { status, stdout, stderr } = spawnSync(
    process.execPath,
    ["packages/hydraulics/bin/headfall.mjs", ...words],
    { cwd: top, input, encoding: "utf8", env: PLAIN },
  );
  return { status, stdout, stderr };
}

/** What a run came to. */
interface Told {
  readonly status: number | null;
  readonly stdout: string;
  readonly stderr: string;
}

const { FORCE_COLOR: _, ...environment } = process.env;
const PLAIN = { ...environment, NO_COLOR: "1" };
let thread: Worker | undefined;

function threadOfHeadfall(): Worker {
  if (thread === undefined) {
    thread = new Worker(new URL("headfall-thread.mjs", import.meta.url), { env: PLAIN });
    thread.unref();
  }
  return thread;
}

/** Runs `headfall` in a shell line, for pipes. */
export function headfallInShell(line: string) {
  const command = line.replaceAll("headfall", `"${process.execPath}" packages/hydraulics/bin/headfall.mjs`);
  const { status, stdout, stderr } = spawnSync(command, { cwd: top, shell: true, encoding: "utf8" });
  return { status, stdout, stderr };
}

export const HEN_HOUSE = "docs/examples/alder-bank-hen-house.json";
export const RAIN_BARREL = "docs/examples/alder-bank-rain-barrel.json";
export const TWO_PENS = "docs/examples/alder-bank-two-pens.json";
