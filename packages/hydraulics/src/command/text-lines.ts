/** A line of a stream of bytes, without its end. */
export interface TextLine {
  /** Counted from 1. */
  readonly line: number;
  /** Its text as UTF-8, no more than its first `most` bytes. */
  readonly text: string;
  /** Where the next line begins, in bytes; undefined when the stream ended before the line did. */
  readonly next: number | undefined;
}

const LINE_FEED = 10;

/**
 * The lines of a stream, one after the other, holding no more of it than a piece and one line's first bytes.
 *
 * @param most  bytes kept of a line, however long it is
 */
export async function* linesOf(stream: AsyncIterable<Buffer>, most: number): AsyncGenerator<TextLine> {
  let kept: Buffer[] = [];
  let size = 0;
  let line = 1;
  let offset = 0;
  const keep = (bytes: Buffer) => {
    // A copy: a piece of the stream must not be held for the few bytes of it that are wanted.
    if (size < most && bytes.length > 0) kept.push(Buffer.from(bytes.subarray(0, most - size)));
    size += bytes.length;
  };
  const take = (next: number | undefined): TextLine => {
    const text = Buffer.concat(kept).toString("utf8");
    kept = [];
    size = 0;
    return { line: line++, text, next };
  };
  for await (const piece of stream) {
    let from = 0;
    for (let at = piece.indexOf(LINE_FEED); at >= 0; at = piece.indexOf(LINE_FEED, from)) {
      keep(piece.subarray(from, at));
      from = at + 1;
      yield take(offset + from);
    }
    keep(piece.subarray(from));
    offset += piece.length;
  }
  if (size > 0) yield take(undefined);
}
