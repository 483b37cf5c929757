/** Runs `headfall` in this thread as often as asked, and keeps what it has loaded; see run-headfall.ts. */
import { Readable } from "node:stream";
import { parentPort } from "node:worker_threads";

const { runHeadfall } = await import(
  new URL("../../packages/hydraulics/dist/command/run-headfall.js", import.meta.url).href
);

parentPort.on("message", async ({ words, input, answers, done }) => {
  Object.defineProperty(process, "stdin", {
    configurable: true,
    value: Readable.from(input === "" ? [] : [Buffer.from(input)]),
  });
  const written = { stdout: "", stderr: "" };
  for (const stream of ["stdout", "stderr"]) {
    process[stream].write = (text) => {
      written[stream] += text;
      return true;
    };
  }
  let status = 1;
  try {
    status = await runHeadfall(words);
  } catch (error) {
    written.stderr += `${error.stack}\n`;
  }
  answers.postMessage({ status, ...written });
  Atomics.store(done, 0, 1);
  Atomics.notify(done, 0);
});
