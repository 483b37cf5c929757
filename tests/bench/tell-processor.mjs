/** Taken in before a command (`node --import`): at its end it writes its processor time, all threads together [ms], to file 3. */
import { writeSync } from "node:fs";
import { isMainThread } from "node:worker_threads";

if (isMainThread)
  process.on("exit", () => {
    const { user, system } = process.cpuUsage();
    writeSync(3, String((user + system) / 1000));
  });
