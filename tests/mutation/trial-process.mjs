import { fork } from "node:child_process";
import { once } from "node:events";
import { readFileSync } from "node:fs";

/**
 * A process that runs tests, and another in its place when it gives no answer: what a mutant makes of a loop is not known.
 *
 * @param asked.bundle  address of the file that holds the tests
 * @param asked.count   how many mutants are in it
 * @param asked.folder  where the tests are run
 */
export async function startTrials({ bundle, count, folder }) {
  let current = await startProcess();
  return { ask, stop: () => current.kill("SIGKILL") };

  async function startProcess() {
    const started = fork(new URL("./mutation-worker.mjs", import.meta.url), [bundle, String(count)], {
      cwd: folder,
      // Answers of other programs are taken from the record; long properties are tried on their first cases.
      env: { ...process.env, HEADFALL_PYTHON: "no-python", HEADFALL_MOST_CASES: "40", CI: "" },
    });
    await once(started, "message");
    return started;
  }

  /** Sends a message and gives the answer; undefined where none came in this time [ms]. */
  async function ask(message, patience) {
    const answer = await answerOf(current, message, patience);
    if (answer === undefined) {
      current.kill("SIGKILL");
      current = await startProcess();
    }
    return answer;
  }
}

/** A process that has had less of the processor is waited for longer, but never longer than so many times [-]. */
const MOST_WAITS = 20;

function answerOf(asked, message, patience) {
  return new Promise((resolve) => {
    const begun = processorTime(asked.pid);
    const latest = performance.now() + MOST_WAITS * patience;
    let timer = setTimeout(look, patience);
    function look() {
      const left = patience - (processorTime(asked.pid) - begun);
      if (left > 0 && performance.now() < latest) timer = setTimeout(look, Math.max(1000, left));
      else finish(undefined);
    }
    const onExit = () => finish(undefined);
    function finish(answer) {
      clearTimeout(timer);
      asked.off("message", finish);
      asked.off("exit", onExit);
      resolve(answer);
    }
    asked.once("message", finish);
    asked.once("exit", onExit);
    asked.send(message);
  });
}

/** Time of the processor that a process has had [ms], which a busy machine does not stretch; not a number where the system does not tell. */
function processorTime(pid) {
  try {
    const fields = readFileSync(`/proc/${pid}/stat`, "utf8").split(") ").at(-1).split(" ");
    return 10 * (Number(fields[11]) + Number(fields[12]));
  } catch {
    return Number.NaN;
  }
}
