import { readFileSync } from "node:fs";
import { expect, test } from "vitest";
import { readPlan } from "../../../packages/hydraulics/src/index.js";
import { checkedPlan } from "../../../packages/ui/checked-plan.js";

const path = "docs/examples/alder-bank-hen-house.json";

test("a plan that comes with the page is what the library reads in its file", async () => {
  const text = readFileSync(path, "utf8");
  const reading = readPlan(text);
  expect(reading.ok && reading.plan).toEqual(await checkedPlan(path, text));
});

test("a faulty one fails the build with its name and every problem", async () => {
  const text = '{"headfall": 1, "sources": [{"stand": "3 bananas"}], "runs": [{"length": "12 furlongs"}]}';
  const failing = checkedPlan("docs/examples/made-up.json", text);
  await expect(failing).rejects.toThrow(
    /^docs\/examples\/made-up\.json is no plan:\n(.|\n)*sources\[0\]\.stand.*3 bananas(.|\n)*runs\[0\]\.length.*12 furlongs/,
  );
});
