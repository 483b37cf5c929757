import { readFileSync, writeFileSync } from "node:fs";
import { expect, it } from "vitest";
import { loadCaseFiles } from "./case-file.js";
import { writeValidation } from "./write-validation.js";

const page = new URL("../../docs/reference/validation.md", import.meta.url);

it("docs/reference/validation.md is what the cases and the library say now; else run npm run validate", () => {
  const text = writeValidation(loadCaseFiles());
  if (process.env["HEADFALL_WRITE_VALIDATION"] === "yes") writeFileSync(page, text);
  expect(readFileSync(page, "utf8")).toBe(text);
});
