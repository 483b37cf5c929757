import { fork } from "node:child_process";
import { once } from "node:events";

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

function answerOf(asked, message, patience) {
  return new Promise((resolve) => {
    const timer = setTimeout(() => finish(undefined), patience);
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
