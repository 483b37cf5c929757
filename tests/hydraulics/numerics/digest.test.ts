import fc from "fast-check";
import { expect, it } from "vitest";
import { digestOf } from "../../../packages/hydraulics/src/numerics/digest.js";

/** The definition, byte by byte of the platform's own encoder. */
function byDefinition(text: string): string {
  let hash = 0xcbf29ce484222325n;
  for (const byte of new TextEncoder().encode(text))
    hash = BigInt.asUintN(64, (hash ^ BigInt(byte)) * 0x100000001b3n);
  return hash.toString(16).padStart(16, "0");
}

// Published check values of FNV-1a (from memory).
it.each([
  ["", "cbf29ce484222325"],
  ["a", "af63dc4c8601ec8c"],
  ["foobar", "85944171f73967e8"],
])("digestOf(%j) is the published %s", (text, expected) => {
  expect(digestOf(text)).toBe(expected);
});

it.each(["\u007f\u0080", "\u07ff\u0800", "ä€", "\uffff\u{10000}", "🐔\u{10ffff}"])(
  "digestOf takes the bytes of %j as any encoder writes them",
  (text) => {
    expect(digestOf(text)).toBe(byDefinition(text));
  },
);

/** Signs of one to four bytes; halves of a pair are none. */
const sign = fc
  .oneof(...[0x7f, 0x7ff, 0xffff, 0x10ffff].map((max) => fc.nat(max)))
  .map((code) => (code >= 0xd800 && code < 0xe000 ? "?" : String.fromCodePoint(code)));

it("digestOf is by definition that of any text, always sixteen digits", () => {
  fc.assert(
    fc.property(fc.array(sign, { maxLength: 12 }), (signs) => {
      const text = signs.join("");
      expect(digestOf(text)).toBe(byDefinition(text));
      expect(digestOf(text)).toHaveLength(16);
    }),
    { numRuns: 300 },
  );
});
