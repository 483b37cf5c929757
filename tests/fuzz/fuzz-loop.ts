import { type Random, randomFrom } from "../../packages/hydraulics/src/numerics/random.js";
import { mutatedText } from "./mutate-text.js";
import { READERS } from "./readers.js";

/** A text takes no more of a processor than this [ms], and leaves no more behind [bytes]. */
const SLOW = 1000;
const HUGE = 400_000_000;

declare global {
  /** Counters of the branches taken; see count-branches.mjs. Without them nothing is learnt on the way. */
  var __branches: Uint32Array | undefined;
}

export interface FuzzAsked {
  readonly reader: string;
  readonly seed: number;
  readonly beginWith: readonly string[];
  /** Until when, by the clock [ms], or after so many texts, it stops. */
  readonly until?: number;
  readonly texts?: number;
  readonly tellFound: (found: { readonly text: string; readonly faults: readonly string[] }) => void;
}

export interface Fuzzed {
  readonly texts: number;
  /** Texts that took a branch, or took it more often, than any before. */
  readonly kept: readonly string[];
  /** Branches taken at all. */
  readonly branches: number;
  readonly found: number;
}

/**
 * Gives a reader texts changed at random from those it began with. A text that reaches branches none before it
 * reached is kept, and is itself changed; so the texts go ever further into the reader.
 */
export async function fuzz(asked: FuzzAsked): Promise<Fuzzed> {
  const { until = Number.POSITIVE_INFINITY, texts = Number.POSITIVE_INFINITY } = asked;
  const random = randomFrom(asked.seed);
  const reached = new Reached();
  const kept: string[] = [];
  const told = new Set<string>();
  let done = 0;
  for (; done < texts && Date.now() < until; done += 1) {
    const isFirst = done < asked.beginWith.length;
    const text = isFirst ? asked.beginWith[done]! : nextText(kept, asked.beginWith, random);
    globalThis.__branches?.fill(0);
    const faults = await faultsOfReading(asked.reader, text);
    if (reached.isMore() || isFirst) kept.push(text);
    const kind = kindOf(faults);
    if (faults.length === 0 || told.has(kind)) continue;
    told.add(kind);
    asked.tellFound({ text: await smallest(asked.reader, text, kind), faults });
  }
  return { texts: done, kept, branches: reached.branches(), found: told.size };
}

/** Texts kept last are changed more often: they went furthest. */
function nextText(kept: readonly string[], beginWith: readonly string[], random: Random): string {
  const from = kept.length > 0 ? kept : beginWith;
  const recent = Math.max(0, from.length - 1 - random.integerBelow(Math.min(from.length, 20)));
  const index = random.uniform() < 0.5 ? recent : random.integerBelow(from.length);
  return mutatedText(from[index]!, from[random.integerBelow(from.length)]!, random);
}

/** What is wrong with how a reader took a text: thrown, slow, large, or told by the reader's own laws. */
export async function faultsOfReading(reader: string, text: string): Promise<string[]> {
  const before = process.cpuUsage();
  const held = process.memoryUsage().heapUsed;
  const faults = await thrown(() => READERS[reader]!(text));
  const { user, system } = process.cpuUsage(before);
  const took = (user + system) / 1000;
  return [
    ...faults,
    ...(took > SLOW ? [`slow: ${Math.round(took)} ms for ${text.length} signs`] : []),
    ...(process.memoryUsage().heapUsed - held > HUGE ? ["huge: more than 400 MB"] : []),
  ];
}

async function thrown(read: () => string[] | Promise<string[]>): Promise<string[]> {
  try {
    return await read();
  } catch (error) {
    const stack = error instanceof Error ? (error.stack ?? error.message) : String(error);
    return [`throws ${stack.split("\n").slice(0, 3).join(" | ")}`];
  }
}

/** Faults alike but for their numbers are one. */
const kindOf = (faults: readonly string[]) => (faults[0] ?? "").replace(/\d+/g, "0").slice(0, 60);

/** The text with as much taken out as can be while its fault stays. */
async function smallest(reader: string, text: string, kind: string): Promise<string> {
  let now = text;
  for (let size = now.length >> 1; size >= 1; size >>= 1) {
    for (let from = 0; from < now.length && now.length < 20_000; ) {
      const less = now.slice(0, from) + now.slice(from + size);
      if (kindOf(await faultsOfReading(reader, less)) === kind) now = less;
      else from += size;
    }
  }
  return now;
}

/** The most often that each branch was taken, in steps of doubling. */
class Reached {
  readonly #most = new Uint8Array(globalThis.__branches?.length ?? 0);

  isMore(): boolean {
    let isMore = false;
    globalThis.__branches?.forEach((times, branch) => {
      const step = 32 - Math.clz32(times);
      if (step <= this.#most[branch]!) return;
      this.#most[branch] = step;
      isMore = true;
    });
    return isMore;
  }

  branches(): number {
    return this.#most.filter((step) => step > 0).length;
  }
}
