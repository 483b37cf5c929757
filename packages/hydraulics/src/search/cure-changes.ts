import type { Change } from "./cure-answer.js";
import type { CureLines } from "./cure-lines.js";
import type { Picks } from "./cure-space.js";

/** What picks of a space change, as things to do. */
export function changesOf({ space, present }: CureLines, picks: Picks): Change[] {
  const stands = space.sources.flatMap(({ id, options }, s): Change[] => {
    const { typed, height } = options[picks[space.runs.length + s]];
    return typed === undefined
      ? []
      : [{ code: "stand", source: id, from: present.sources[s].stand, to: height }];
  });
  const pipes = space.runs.flatMap(({ id, length, options }, r): Change[] => {
    const { pipe } = options[picks[r]];
    return pipe === undefined
      ? []
      : [{ code: "pipe", run: id, length, from: present.runs[r].pipeId, to: pipe }];
  });
  return [...stands, ...pipes];
}
