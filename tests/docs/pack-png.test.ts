import { crc32, deflateSync, inflateSync } from "node:zlib";
import { expect, test } from "vitest";
import { packPng } from "../../docs/images/pack-png.mjs";

const SIGNATURE = Buffer.from("\x89PNG\r\n\x1a\n", "latin1");

function chunk(type: string, body: Buffer): Buffer {
  const named = Buffer.concat([Buffer.from(type, "latin1"), body]);
  const ends = Buffer.alloc(8);
  ends.writeUInt32BE(body.length, 0);
  ends.writeUInt32BE(crc32(named), 4);
  return Buffer.concat([ends.subarray(0, 4), named, ends.subarray(4)]);
}

function headOf(width: number, height: number, colour: number): Buffer {
  const head = Buffer.from([0, 0, 0, 0, 0, 0, 0, 0, 8, colour, 0, 0, 0]);
  head.writeUInt32BE(width, 0);
  head.writeUInt32BE(height, 4);
  return head;
}

const pngOf = (width: number, rows: number[][], colour = 2) =>
  Buffer.concat([
    SIGNATURE,
    chunk("IHDR", headOf(width, rows.length, colour)),
    chunk("IDAT", deflateSync(Buffer.from(rows.flat()))),
    chunk("IEND", Buffer.alloc(0)),
  ]);

/** Chunks by their type, each with its checksum found right. */
function chunksOf(png: Buffer): Map<string, Buffer> {
  expect(png.subarray(0, 8)).toEqual(SIGNATURE);
  const chunks = new Map<string, Buffer>();
  for (let at = 8; at < png.length; ) {
    const length = png.readUInt32BE(at);
    const named = png.subarray(at + 4, at + 8 + length);
    expect(png.readUInt32BE(at + 8 + length)).toBe(crc32(named));
    chunks.set(named.toString("latin1", 0, 4), named.subarray(4));
    at += 12 + length;
  }
  return chunks;
}

test("packPng gives each of the five kinds of row its own colours back, by their numbers", () => {
  // Two pixels, (10, 20, 30) and (40, 50, 60), in every row: plain, then as differences from left, up, mean, and guess.
  const png = pngOf(2, [
    [0, 10, 20, 30, 40, 50, 60],
    [1, 10, 20, 30, 30, 30, 30],
    [2, 0, 0, 0, 0, 0, 0],
    [3, 5, 10, 15, 15, 15, 15],
    [4, 0, 0, 0, 0, 0, 0],
  ]);
  const chunks = chunksOf(packPng(png));
  expect(chunks.get("IHDR")).toEqual(headOf(2, 5, 3));
  expect([...chunks.get("PLTE")!]).toEqual([10, 20, 30, 40, 50, 60]);
  expect([...inflateSync(chunks.get("IDAT")!)]).toEqual([0, 0, 1, 0, 0, 1, 0, 0, 1, 0, 0, 1, 0, 0, 1]);
});

test("packPng of more than 256 colours keeps those there are most of, and gives the others the nearest", () => {
  const greys = Array.from({ length: 256 }, (_, value) => [value, value, value, value, value, value]).flat();
  const row = [0, ...greys, 100, 100, 101];
  const chunks = chunksOf(packPng(pngOf(513, [row])));
  expect(chunks.get("PLTE")!).toHaveLength(768);
  const numbers = inflateSync(chunks.get("IDAT")!);
  expect(numbers[513]).toBe(numbers[1 + 2 * 100]);
});

test("packPng refuses a picture of another kind", () => {
  expect(() => packPng(pngOf(1, [[0, 0]], 0))).toThrow("no plain RGB picture");
});
