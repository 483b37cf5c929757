import { crc32, deflateSync, inflateSync } from "node:zlib";

const SIGNATURE = Buffer.from([0x89, 0x50, 0x4e, 0x47, 0x0d, 0x0a, 0x1a, 0x0a]);

/**
 * The same picture in fewer bytes, in the 256 colours it has most of: a drawing of flat colours has few more than
 * that, and those only at the edges of letters. Rows are unfiltered, which suits flat colours.
 *
 * @param png  8 bits a channel, RGB or RGBA, opaque, not interlaced
 * @throws TypeError when it is of another kind
 */
export function packPng(png) {
  const chunks = chunksOf(png);
  const head = Buffer.from(chunks.find(({ type }) => type === "IHDR").body);
  const [width, height] = [head.readUInt32BE(0), head.readUInt32BE(4)];
  const bytes = { 2: 3, 6: 4 }[head[9]];
  if (head[8] !== 8 || bytes === undefined || head[12] !== 0)
    throw new TypeError("packPng: no plain RGB picture.");
  const packed = chunks.filter(({ type }) => type === "IDAT").map(({ body }) => body);
  const plain = unfiltered(inflateSync(Buffer.concat(packed)), width * bytes, height, bytes);
  const { rows, palette } = indexed(plain, width, height, bytes);
  head[9] = 3; // colours by their number in a palette
  return Buffer.concat([
    SIGNATURE,
    chunk("IHDR", head),
    chunk("PLTE", palette),
    chunk("IDAT", deflateSync(rows, { level: 9, memLevel: 9 })),
    chunk("IEND", Buffer.alloc(0)),
  ]);
}

/** Rows of numbers of colours, and the colours; what has no number takes that of the nearest that has. */
function indexed(plain, width, height, bytes) {
  const colours = new Uint32Array(width * height);
  const counts = new Map();
  for (let i = 0; i < colours.length; i++) {
    const at = i * bytes + Math.floor(i / width) + 1;
    const colour = (plain[at] << 16) | (plain[at + 1] << 8) | plain[at + 2];
    colours[i] = colour;
    counts.set(colour, (counts.get(colour) ?? 0) + 1);
  }
  const byCount = [...counts].sort(([one, a], [other, b]) => b - a || one - other);
  const chosen = byCount.slice(0, 256).map(([colour]) => colour);
  const numbers = new Map(byCount.map(([colour]) => [colour, nearest(chosen, colour)]));
  const rows = Buffer.alloc((width + 1) * height);
  for (let i = 0; i < colours.length; i++) rows[i + Math.floor(i / width) + 1] = numbers.get(colours[i]);
  return { rows, palette: Buffer.from(chosen.flatMap(channels)) };
}

const channels = (colour) => [colour >> 16, (colour >> 8) & 255, colour & 255];

function nearest(chosen, colour) {
  const [red, green, blue] = channels(colour);
  let best = { number: 0, distance: Number.POSITIVE_INFINITY };
  for (const [number, each] of chosen.entries()) {
    const [r, g, b] = channels(each);
    const distance = (r - red) ** 2 + (g - green) ** 2 + (b - blue) ** 2;
    if (distance < best.distance) best = { number, distance };
  }
  return best.number;
}

function chunksOf(png) {
  const chunks = [];
  for (let at = 8; at < png.length; ) {
    const length = png.readUInt32BE(at);
    chunks.push({
      type: png.toString("latin1", at + 4, at + 8),
      body: png.subarray(at + 8, at + 8 + length),
    });
    at += 12 + length;
  }
  return chunks;
}

/** Undoes the five filters of the PNG specification (W3C, section 9); each row then begins with 0, "unfiltered". */
function unfiltered(rows, stride, height, bytes) {
  const plain = Buffer.alloc((stride + 1) * height);
  for (let row = 0; row < height; row++) {
    const start = row * (stride + 1);
    const filter = rows[start];
    for (let i = 1; i <= stride; i++) {
      const left = i > bytes ? plain[start + i - bytes] : 0;
      const up = row > 0 ? plain[start - stride - 1 + i] : 0;
      const corner = i > bytes && row > 0 ? plain[start - stride - 1 + i - bytes] : 0;
      plain[start + i] = rows[start + i] + predicted(filter, left, up, corner);
    }
  }
  return plain;
}

function predicted(filter, left, up, corner) {
  if (filter === 1) return left;
  if (filter === 2) return up;
  if (filter === 3) return (left + up) >> 1;
  if (filter !== 4) return 0;
  const guess = left + up - corner;
  const [toLeft, toUp, toCorner] = [left, up, corner].map((near) => Math.abs(guess - near));
  if (toLeft <= toUp && toLeft <= toCorner) return left;
  return toUp <= toCorner ? up : corner;
}

function chunk(type, body) {
  const framed = Buffer.alloc(body.length + 12);
  framed.writeUInt32BE(body.length, 0);
  framed.write(type, 4, "latin1");
  body.copy(framed, 8);
  framed.writeUInt32BE(crc32(framed.subarray(4, body.length + 8)), body.length + 8);
  return framed;
}
