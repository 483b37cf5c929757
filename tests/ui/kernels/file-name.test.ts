import * as fc from "fast-check";
import { expect, test } from "vitest";
import { fileNameOf } from "../../../packages/ui/src/kernels/file-name.js";

test("fileNameOf writes words in small letters, without accents, joined by hyphens", () => {
  expect(fileNameOf("Alder Bank: hen house", "json")).toBe("alder-bank-hen-house.json");
  expect(fileNameOf("  Élevage n° 2 – été ", "csv")).toBe("elevage-n-2-ete.csv");
});

test("fileNameOf calls what has no letter to keep a line", () => {
  expect(["", "…", "鶏小屋"].map((words) => fileNameOf(words, "json"))).toEqual(Array(3).fill("line.json"));
});

test("fileNameOf gives a short name of letters, figures and single hyphens for any words", () => {
  fc.assert(
    fc.property(fc.string({ unit: "grapheme", maxLength: 200 }), (words) => {
      const name = fileNameOf(words, "svg");
      expect(name).toMatch(/^[a-z0-9]+(-[a-z0-9]+)*\.svg$/);
      expect(name.length).toBeLessThanOrEqual(84);
    }),
  );
});
