import { editDistance } from "./edit-distance.js";
import { type Found, nearest } from "./found.js";
import { type PipeWords, readPipeWords } from "./pipe-words.js";
import { allPipes, type PipeSize, pipeById } from "./pipes.js";

/**
 * The family taken when words leave it open, per material: what shops sell most (common practice, no
 * source). The bore of polyethylene pipe sized by its bore is the same in every family of its kind.
 */
const USUAL = [
  "pvc-sch40",
  "pvcu-metric",
  "pe-metric-sdr11",
  "pe-metric-sdr9",
  "pe-sidr15",
  "copper-l",
  "pex",
  "hose",
  "drip",
];

const isMetric = (pipe: PipeSize) =>
  pipe.family.includes("metric") || (pipe.family === "drip" && Number(pipe.nominal) >= 10);

const isOfSize = (pipe: PipeSize, asked: PipeWords) =>
  pipe.nominal === asked.size && isMetric(pipe) === (asked.unit === "mm");

function isOfMaterial(pipe: PipeSize, asked: PipeWords): boolean {
  const [head] = pipe.family.split("-");
  if (asked.material === "pvc") return head === "pvc" || head === "pvcu";
  return head === asked.material;
}

function isOfMake(pipe: PipeSize, asked: PipeWords): boolean {
  // The plain metric family is PN 16 in every size but the smallest.
  if (asked.make === "pn16") return pipe.family === "pvcu-metric" && pipe.nominal !== "16";
  if (asked.make === "cts") return pipe.family.includes("-cts-");
  return pipe.family.endsWith(`-${asked.make}`);
}

/** How much of what was asked a pipe has, for the list of near misses. */
function likeness(pipe: PipeSize, asked: PipeWords, words: string): number {
  const distance = editDistance(pipe.id, words);
  return (
    (asked.size !== undefined && isOfSize(pipe, asked) ? 4 : 0) +
    (asked.material !== undefined && isOfMaterial(pipe, asked) ? 4 : 0) +
    (asked.make !== undefined && isOfMake(pipe, asked) ? 3 : 0) +
    (distance <= 3 ? 12 - 3 * distance : 0)
  );
}

function nearPipes(asked: PipeWords, words: string): readonly PipeSize[] {
  const scored = allPipes.map((kind) => {
    const score = likeness(kind, asked, words);
    return { kind, score: score > 0 && USUAL.includes(kind.family) ? score + 1 : score };
  });
  return nearest(scored, 4);
}

/** Of several that fit the words, the one of a usual family. */
function usualOf(fitting: readonly PipeSize[]): PipeSize | undefined {
  if (fitting.length === 1) return fitting[0];
  for (const family of USUAL) {
    const usual = fitting.find((pipe) => pipe.family === family);
    if (usual !== undefined) return usual;
  }
  return undefined;
}

/**
 * The pipe meant by an id or by what people write: "PVC Sch 40 1/2", "1/2 in PVC schedule 40", "25 mm PE".
 * A size alone, or a material alone, is not enough: then the nearest few are given.
 *
 * @param words  an id or words
 * @returns the pipe, or near misses for a message
 * @example findPipe("1/2 in PVC schedule 40").kind.id   // "pvc-sch40-1/2"
 */
export function findPipe(words: string): Found<PipeSize> {
  const trimmed = words.trim().toLowerCase();
  const exact = pipeById(trimmed);
  if (exact !== undefined) return { outcome: "found", kind: exact };
  const asked = readPipeWords(trimmed);
  const isNamed =
    asked.size !== undefined && (asked.material ?? asked.make) !== undefined && !asked.isForeign;
  const fitting = allPipes.filter(
    (pipe) =>
      isOfSize(pipe, asked) &&
      (asked.material === undefined || isOfMaterial(pipe, asked)) &&
      (asked.make === undefined || isOfMake(pipe, asked)),
  );
  const kind = isNamed ? usualOf(fitting) : undefined;
  return kind === undefined
    ? { outcome: "near", near: nearPipes(asked, trimmed) }
    : { outcome: "found", kind };
}
