/** The prime of FNV-1a at 64 bits is 2^40 and this. */
const PRIME_BESIDES = 0x1b3;
const HALF = 2 ** 32;

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
  // In two halves of 32 bits: numbers of 64 are ten times slower, and every check of a plan makes a digest.
  let [high, low] = [0xcbf29ce4, 0x84222325];
  for (const byte of bytesOf(text)) {
    const mixed = (low ^ byte) >>> 0;
    const product = mixed * PRIME_BESIDES;
    high = (Math.imul(high, PRIME_BESIDES) + (mixed << 8) + Math.floor(product / HALF)) >>> 0;
    low = product >>> 0;
  }
  return [high, low].map((half) => half.toString(16).padStart(8, "0")).join("");
}

/** The text's UTF-8 bytes, without leaning on a platform's encoder. */
function bytesOf(text: string): number[] {
  const bytes: number[] = [];
  for (let at = 0; at < text.length; at += 1) {
    const code = text.codePointAt(at) as number;
    if (code < 0x80) bytes.push(code);
    else if (code < 0x800) bytes.push(0xc0 | (code >> 6), 0x80 | (code & 63));
    else if (code < 0x10000) bytes.push(0xe0 | (code >> 12), 0x80 | ((code >> 6) & 63), 0x80 | (code & 63));
    else {
      // Two units of the text make one sign.
      at += 1;
      bytes.push(0xf0 | (code >> 18), 0x80 | ((code >> 12) & 63));
      bytes.push(0x80 | ((code >> 6) & 63), 0x80 | (code & 63));
    }
  }
  return bytes;
}
