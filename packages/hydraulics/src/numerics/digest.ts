/** The prime of FNV-1a at 64 bits is 2^40 and this. */
const PRIME_BESIDES = 0x1b3;

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
  // In two halves of 32 bits, and nothing kept on the way: every check of a plan makes a digest, a hundred while a hand drags.
  let [high, low] = [0xcbf29ce4 | 0, 0x84222325 | 0];
  for (let at = 0; at < text.length; at += 1) {
    const code = text.codePointAt(at) as number;
    // Two units of the text make one sign.
    if (code > 0xffff) at += 1;
    let bytes = utf8Of(code);
    do {
      const mixed = low ^ (bytes & 0xff);
      const first = (mixed & 0xffff) * PRIME_BESIDES;
      const second = (mixed >>> 16) * PRIME_BESIDES + (first >>> 16);
      high = (Math.imul(high, PRIME_BESIDES) + (mixed << 8) + (second >>> 16)) | 0;
      low = (second << 16) | (first & 0xffff);
      bytes >>>= 8;
    } while (bytes !== 0);
  }
  return [high, low].map((half) => (half >>> 0).toString(16).padStart(8, "0")).join("");
}

/** The one to four UTF-8 bytes of a sign in one number, the first byte lowest, without leaning on a platform's encoder. */
function utf8Of(code: number): number {
  if (code < 0x80) return code;
  const last = 0x80 | (code & 63);
  if (code < 0x800) return 0xc0 | (code >> 6) | (last << 8);
  const third = 0x80 | ((code >> 6) & 63);
  if (code < 0x10000) return 0xe0 | (code >> 12) | (third << 8) | (last << 16);
  return 0xf0 | (code >> 18) | ((0x80 | ((code >> 12) & 63)) << 8) | (third << 16) | (last << 24);
}
