/**
 * A short fingerprint of a text: 64-bit FNV-1a as 16 hexadecimal digits. It tells two texts apart; it proves nothing
 * against someone who wants them alike.
 *
 * @param text  any
 * @returns 16 hexadecimal digits
 * @source fowler-noll-vo, FNV-1a of 64 bits, offset basis and prime, from memory
 * @example digestOf("a")   // "af63dc4c8601ec8c"
 */
export function digestOf(text: string): string {
  let hash = 0xcbf29ce484222325n;
  for (const byte of bytesOf(text)) hash = ((hash ^ BigInt(byte)) * 0x100000001b3n) & 0xffffffffffffffffn;
  return hash.toString(16).padStart(16, "0");
}

/** The text's UTF-8 bytes, without leaning on a platform's encoder. */
function* bytesOf(text: string): Generator<number> {
  for (const sign of text) {
    const code = sign.codePointAt(0) ?? 0xfffd;
    if (code < 0x80) yield code;
    else if (code < 0x800) yield* [0xc0 | (code >> 6), 0x80 | (code & 63)];
    else if (code < 0x10000) yield* [0xe0 | (code >> 12), 0x80 | ((code >> 6) & 63), 0x80 | (code & 63)];
    else
      yield* [0xf0 | (code >> 18), 0x80 | ((code >> 12) & 63), 0x80 | ((code >> 6) & 63), 0x80 | (code & 63)];
  }
}
