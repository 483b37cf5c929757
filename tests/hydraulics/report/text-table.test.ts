import { expect, test } from "vitest";
import { writeTable } from "../../../packages/hydraulics/src/report/text-table.js";

test("writeTable sets columns two spaces apart, titles of two parts on two lines, no line ending in spaces", () => {
  const table = writeTable({
    columns: ["run", "head, full", "why"],
    alignRight: [false, true, false],
    rows: [
      ["feed", "9 cm", "level"],
      ["hen line", "120 cm", ""],
    ],
  });
  expect(table).toBe(
    ["            head", "run         full  why", "feed        9 cm  level", "hen line  120 cm"].join("\n"),
  );
});

test("writeTable gives colours no width, and an emoji one sign", () => {
  const table = writeTable({
    columns: ["a", "b"],
    alignRight: [false, false],
    rows: [
      ["\u001b[32mgood\u001b[39m", "x"],
      ["🐔", "y"],
    ],
  });
  expect(table.split("\n")).toEqual(["a     b", "\u001b[32mgood\u001b[39m  x", "🐔     y"]);
});
