import { runHeadfall } from "./run-headfall.js";

// A reader that goes away early (head, less) is no fault.
process.stdout.on("error", (error: NodeJS.ErrnoException) => {
  if (error.code === "EPIPE") process.exit(0);
  throw error;
});

process.exitCode = await runHeadfall(process.argv.slice(2));
