import { type Plan, type Problem, readPlan } from "@headfall/hydraulics";
import { LINK_MARK } from "./link-mark.js";

/** Over this, some programs that pass links on cut them off [signs]. */
export const LONG_LINK = 2000;
/** Over this, no link is offered [signs]. */
export const LONGEST_LINK = 30_000;

/** Longer ones are refused unread [signs]. */
const MOST_SIGNS = 2_000_000;
/** Whatever unpacks to more than a plan may be is dropped on the way [bytes]. */
const MOST_BYTES = 8_000_000;

/** What a link came to. */
export type LinkReading =
  | { readonly ok: true; readonly plan: Plan }
  | {
      readonly ok: false;
      readonly because: "broken" | "tooLarge" | "notAPlan";
      readonly problems: readonly Problem[];
    };

/** The plan as a link to this page. It stands behind the "#", which no browser sends to a server. */
export async function writeLink(plan: Plan, page: string): Promise<string> {
  const text = new Blob([JSON.stringify(plan)]);
  const packed = await new Response(
    text.stream().pipeThrough(new CompressionStream("deflate-raw")),
  ).arrayBuffer();
  return `${page.replace(/#.*$/s, "")}${LINK_MARK}${toBase64Url(new Uint8Array(packed))}`;
}

/** Reads a link's end as untrusted text; never throws, and never unpacks more than a plan may hold. */
export async function readLink(hash: string): Promise<LinkReading> {
  const signs = hash.slice(LINK_MARK.length);
  if (signs.length > MOST_SIGNS) return refused("tooLarge");
  const bytes = fromBase64Url(signs);
  if (bytes === undefined || bytes.length === 0) return refused("broken");
  const text = await unpacked(bytes);
  if (typeof text !== "string") return refused(text.because);
  const reading = readPlan(text);
  return reading.ok ? reading : { ok: false, because: "notAPlan", problems: reading.problems };
}

const refused = (because: "broken" | "tooLarge"): LinkReading => ({ ok: false, because, problems: [] });

async function unpacked(
  bytes: Uint8Array<ArrayBuffer>,
): Promise<string | { because: "broken" | "tooLarge" }> {
  const reader = new Blob([bytes]).stream().pipeThrough(new DecompressionStream("deflate-raw")).getReader();
  const decoder = new TextDecoder("utf-8", { fatal: true });
  let text = "";
  let size = 0;
  try {
    for (;;) {
      const { done, value } = await reader.read();
      if (done) return text + decoder.decode();
      size += value.length;
      if (size > MOST_BYTES) {
        await reader.cancel();
        return { because: "tooLarge" };
      }
      text += decoder.decode(value, { stream: true });
    }
  } catch {
    return { because: "broken" };
  }
}

function toBase64Url(bytes: Uint8Array): string {
  let signs = "";
  for (let start = 0; start < bytes.length; start += 0x8000) {
    signs += String.fromCharCode(...bytes.subarray(start, start + 0x8000));
  }
  return btoa(signs).replaceAll("+", "-").replaceAll("/", "_").replaceAll("=", "");
}

function fromBase64Url(signs: string): Uint8Array<ArrayBuffer> | undefined {
  if (!/^[\w-]*$/.test(signs)) return undefined;
  try {
    const plain = atob(signs.replaceAll("-", "+").replaceAll("_", "/"));
    return Uint8Array.from(plain, (sign) => sign.charCodeAt(0));
  } catch {
    return undefined;
  }
}
