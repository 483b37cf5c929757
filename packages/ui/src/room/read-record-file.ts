import { LIMITS, type Problem } from "@headfall/hydraulics";

export type RecordText =
  | { readonly ok: true; readonly text: string }
  | { readonly ok: false; readonly problems: readonly Problem[] };

/** A file larger than this is refused unread: a record has far fewer characters. */
const MOST_BYTES = 2 * LIMITS.textLength;

const KINDS = {
  packed: [0x1f, 0x8b],
  zip: [0x50, 0x4b],
  utf16: [0xff, 0xfe],
} as const;

/** The text of a file of days; stations are published packed (.gz) too, and sheets save in two kinds of text. */
export async function readRecordFile(file: File): Promise<RecordText> {
  if (file.size > MOST_BYTES) return tooLarge(file.name);
  const start = new Uint8Array(await file.slice(0, 2).arrayBuffer());
  const is = (kind: keyof typeof KINDS) => KINDS[kind].every((byte, k) => start[k] === byte);
  if (is("zip"))
    return refused(
      file.name,
      "a spreadsheet or a zip",
      "A record is a file of text.",
      "Save the sheet as CSV, or unpack the zip, and open that.",
    );
  if (is("packed")) return unpacked(file);
  return {
    ok: true,
    text: new TextDecoder(is("utf16") ? "utf-16le" : "utf-8").decode(await file.arrayBuffer()),
  };
}

/** Stops as soon as there is more than any record has. */
async function unpacked(file: File): Promise<RecordText> {
  const decoder = new TextDecoder();
  let text = "";
  try {
    const reader = file.stream().pipeThrough(new DecompressionStream("gzip")).getReader();
    for (let piece = await reader.read(); !piece.done; piece = await reader.read()) {
      text += decoder.decode(piece.value, { stream: true });
      if (text.length <= MOST_BYTES) continue;
      await reader.cancel();
      return tooLarge(file.name);
    }
  } catch {
    return refused(
      file.name,
      "a packed file that is cut or damaged",
      "A packed record can be unpacked whole.",
      "Take the file anew.",
    );
  }
  return { ok: true, text: text + decoder.decode() };
}

const tooLarge = (name: string): RecordText =>
  refused(
    name,
    `more than ${Math.round(MOST_BYTES / 1e6)} MB`,
    `A record has at most ${LIMITS.textLength / 1e6} million characters.`,
    "Cut it to the station and the years you want.",
    "tooLarge",
  );

const refused = (
  path: string,
  found: string,
  allowed: string,
  mend: string,
  code: Problem["code"] = "notText",
): RecordText => ({ ok: false, problems: [{ code, path, found, allowed, mend }] });
