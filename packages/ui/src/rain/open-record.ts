import { UNFETCHED_EXAMPLE } from "../room/unfetched.js";
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
  if (text === undefined) rain.refuse(name, [UNFETCHED_EXAMPLE]);
  else rain.open({ name, text, options });
}
