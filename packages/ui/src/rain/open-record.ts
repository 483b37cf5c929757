import type { RainController } from "./rain-controller.js";
import type { RainExample } from "./rain-example.js";
import { readRecordFile } from "./read-record-file.js";

/** Opens a file of the user's own. */
export async function openFile(rain: RainController, file: File): Promise<void> {
  const opening = rain.begin();
  const read = await readRecordFile(file);
  // Something else was chosen meanwhile.
  if (!rain.isNewest(opening)) return;
  if (read.ok) rain.open({ name: file.name, text: read.text, options: {} });
  else rain.refuse(file.name, read.problems);
}

/** Fetches one of the examples, and opens it. */
export async function openExample(rain: RainController, example: RainExample): Promise<void> {
  const { name, options } = example;
  const opening = rain.begin();
  const text = await example.text().catch(() => undefined);
  if (!rain.isNewest(opening)) return;
  if (text === undefined) rain.refuse(name, [UNFETCHED]);
  else rain.open({ name, text, options });
}

const UNFETCHED = {
  code: "missing",
  path: "the example",
  found: "no answer",
  allowed: "It is fetched from where this page is from.",
  mend: "Is the network there? Try again, or open a file of your own.",
} as const;
