import { describe, expect, test } from "vitest";
import { tilesOf } from "../../../../packages/ui/src/kernels/sheet/cut-pages.js";
import { gatherMarks, MARK_ROOM } from "../../../../packages/ui/src/kernels/sheet/gather-marks.js";
import { layNotePages } from "../../../../packages/ui/src/kernels/sheet/note-pages.js";
import { paperOf } from "../../../../packages/ui/src/kernels/sheet/paper.js";
import {
  writeAboveGround,
  writeFall,
  writeMark,
} from "../../../../packages/ui/src/kernels/sheet/part-words.js";
import { leaderEnd, placeNotes } from "../../../../packages/ui/src/kernels/sheet/place-notes.js";
import { cropped, lengthOfText, wrapped } from "../../../../packages/ui/src/kernels/sheet/printed-text.js";
import { largestThatFits, onPaper, scalesOf } from "../../../../packages/ui/src/kernels/sheet/scales.js";
import { doMeet, isSeenThrough, line } from "../../../../packages/ui/src/kernels/sheet/shapes.js";

describe("paper and scales", () => {
  test("paperOf gives ISO 216 A4 and the Letter of 8 1/2 by 11 in, upright and lying", () => {
    expect(paperOf("a4", false)).toMatchObject({ width: 210, height: 297, words: "A4, upright" });
    expect(paperOf("letter", true)).toMatchObject({ width: 279.4, height: 215.9 });
  });

  test("onPaper puts 1 m at 1:20 on 50 mm, and a foot at a quarter inch to the foot on 6.35 mm", () => {
    expect(onPaper(1, { times: 20, words: "" })).toBe(50);
    const quarter = scalesOf("us").find(({ words }) => words === "1/4 in = 1 ft")!;
    expect(onPaper(0.3048, quarter)).toBeCloseTo(6.35, 12);
  });

  test.each(["metric", "us"] as const)(
    "the %s steps go from the largest drawing to the smallest",
    (system) => {
      const times = scalesOf(system).map((scale) => scale.times);
      expect(times).toEqual([...times].sort((a, b) => a - b));
    },
  );

  test("largestThatFits is the first that fits, or none", () => {
    expect(largestThatFits(scalesOf("metric"), ({ times }) => times >= 30)!.words).toBe("1:50");
    expect(largestThatFits(scalesOf("metric"), () => false)).toBeUndefined();
  });
});

describe("words", () => {
  test("writeMark is what a tape shows: millimetres, or quarter inches up to a foot", () => {
    expect([0.3, 0.056, 2.5, 0].map((each) => writeMark(each, "metric"))).toEqual([
      "30 cm",
      "56 mm",
      "2.5 m",
      "0",
    ]);
    expect([0.1, 0.3048, 0.62].map((each) => writeMark(each, "us"))).toEqual(["4 in", "1 ft", "2 ft"]);
  });

  test("writeFall and writeAboveGround say which way", () => {
    expect([0.12, -0.04, 0].map((each) => writeFall(each, "metric"))).toEqual([
      "falls 12 cm",
      "rises 40 mm",
      "level",
    ]);
    expect([0.3, -0.1, 0].map((each) => writeAboveGround(each, "metric"))).toEqual([
      "30 cm above ground",
      "10 cm below ground",
      "on the ground",
    ]);
  });

  test("wrapped keeps every word, no line longer than its room", () => {
    const text =
      "If the barrel is filled from a hose or a drinking supply, keep an air gap or a vacuum breaker.";
    const lines = wrapped(text, 2.4, 40);
    expect(lines.join(" ")).toBe(text);
    expect(lines.length).toBeGreaterThan(2);
    for (const each of lines) expect(lengthOfText(each, 2.4)).toBeLessThanOrEqual(40);
  });

  test("cropped leaves what fits and cuts the rest between signs, never inside one", () => {
    expect(cropped("short", 2.5, 40)).toBe("short");
    const cut = cropped("🐔".repeat(30), 2.5, 20);
    expect(cut).toMatch(/^(🐔)+…$/u);
    expect(lengthOfText(cut, 2.5)).toBeLessThanOrEqual(20);
  });
});

describe("placeNotes", () => {
  const bounds = { left: 0, top: 0, right: 120, bottom: 120 };
  const notes = Array.from({ length: 12 }, (_, i) => ({
    at: { x: 40 + 3 * (i % 4), y: 50 + 3 * Math.floor(i / 4) },
    lines: [`place ${i}`, "pipe 30 cm above ground"],
    weight: i,
  }));

  test("covers no note with another and keeps all within bounds", () => {
    const boxes = placeNotes(notes, [], bounds).flatMap((box) => box ?? []);
    expect(boxes.length).toBeGreaterThan(8);
    boxes.forEach((box, i) => {
      for (const other of boxes.slice(i + 1)) expect(doMeet(box, other)).toBe(false);
      expect(box.left >= 0 && box.right <= 120 && box.top >= 0 && box.bottom <= 120).toBe(true);
    });
  });

  test("leaves the lightest out when there is no room for all", () => {
    const boxes = placeNotes(notes, [], { left: 20, top: 40, right: 75, bottom: 75 });
    const placed = boxes.flatMap((box, i) => (box === undefined ? [] : [i]));
    expect(placed.length).toBeLessThan(12);
    expect(placed).toContain(11);
  });

  test("stands clear of the drawing's lines where it can", () => {
    const pipe = Array.from({ length: 61 }, (_, i) => ({ x: 2 * i, y: 47 }));
    const [box] = placeNotes([{ at: { x: 60, y: 47 }, lines: ["feed"], weight: 1 }], pipe, bounds);
    expect(box!.bottom <= 47 || box!.top >= 47).toBe(true);
  });

  test("leaderEnd is the nearest edge of the words", () => {
    expect(leaderEnd({ x: 0, y: 5 }, { left: 3, right: 9, top: 0, bottom: 4 })).toEqual({ x: 3, y: 4 });
  });
});

describe("pages", () => {
  test("tilesOf covers a drawing with overlapping parts no larger than the page", () => {
    const tiles = tilesOf({ width: 500, height: 300, strips: [] }, { width: 190, height: 250 });
    expect(tiles.map(({ name }) => name)).toEqual(["A1", "A2", "A3", "B1", "B2", "B3"]);
    expect(Math.max(...tiles.map(({ part }) => part.right))).toBe(500);
    for (const { part } of tiles) expect(part.right - part.left).toBeLessThanOrEqual(190);
  });

  test("tilesOf keeps strips whole as long as a page holds them", () => {
    const strips = [0, 100, 200].map((top) => ({ top, bottom: top + 90 }));
    const rows = tilesOf({ width: 100, height: 290, strips }, { width: 190, height: 200 }).map(({ part }) => [
      part.top,
      part.bottom,
    ]);
    expect(rows).toEqual([
      [0, 190],
      [200, 290],
    ]);
    const tall = tilesOf(
      { width: 100, height: 290, strips: [{ top: 0, bottom: 290 }] },
      { width: 190, height: 200 },
    );
    expect(tall).toHaveLength(2);
  });

  test("isSeenThrough knows a line that passes a corner without touching it", () => {
    const box = { left: 0, top: 0, right: 10, bottom: 10 };
    expect(isSeenThrough(line("pipe", [-5, 8], [8, 21]), box)).toBe(false);
    expect(isSeenThrough(line("pipe", [-5, 4], [8, 17]), box)).toBe(true);
    expect(isSeenThrough(line("pipe", [-50, 5], [50, 5]), box)).toBe(true);
    expect(isSeenThrough(line("pipe", [12, -50], [12, 50]), box)).toBe(false);
  });

  test("layNotePages keeps every text in its order, over as many pages as it takes", () => {
    const texts = Array.from(
      { length: 200 },
      (_, i) => `note number ${i} is a sentence of some length, to fill a line`,
    );
    const pages = layNotePages(texts, { width: 190, height: 230 });
    expect(pages.length).toBeGreaterThan(1);
    expect(pages[1]!.name).toBe("N2");
    const words = pages.flatMap(({ shapes }) =>
      shapes.flatMap((shape) => (shape.kind === "text" ? [shape.text] : [])),
    );
    for (const i of [0, 99, 199]) expect(words.join(" ")).toContain(`note number ${i} is`);
    for (const { shapes } of pages)
      for (const shape of shapes) expect(shape.kind === "text" && shape.y).toBeLessThan(240);
  });

  test("gatherMarks stands one mark for neighbours closer than marks are wide, and shows the worst", () => {
    const close = [0, 1, 2, MARK_ROOM].map((at, i) => ({
      at,
      verdict: i === 1 ? ("dry" as const) : ("good" as const),
    }));
    expect(gatherMarks(close)).toEqual([
      { at: 0, verdict: "dry" },
      { at: MARK_ROOM, verdict: "good" },
    ]);
  });
});
