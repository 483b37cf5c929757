import { expect, test } from "vitest";
import {
  isBundle,
  isProblems,
  readBundle,
  writeBundle,
} from "../../../packages/ui/src/storage/plan-bundle.js";
import { smallLine, withStand } from "../fixtures/stored-plans.js";

const read = (text: string) => {
  const bundled = readBundle(text);
  return isProblems(bundled) ? bundled : bundled.map(({ reading }) => reading);
};

test("readBundle gives back every plan that writeBundle wrote", () => {
  const plans = [smallLine, withStand(smallLine, "2 ft 6 in")];
  const text = writeBundle(plans);
  expect(isBundle(text)).toBe(true);
  expect(read(text)).toEqual(plans.map((plan) => ({ ok: true, plan })));
});

test("isBundle takes a single plan for what it is, whatever its name", () => {
  expect(isBundle(JSON.stringify({ ...smallLine, name: '{"headfall-plans":1}' }))).toBe(false);
});

test("readBundle keeps the good plans when others are faulty, and tells each fault at its own plan", () => {
  const text = writeBundle([smallLine, { headfall: 99 }, { headfall: 1, sources: [], runs: 4 }, null]);
  const [good, newer, faulty, none] = readBundle(text);
  expect(good).toMatchObject({ reading: { ok: true } });
  expect(newer).toMatchObject({ place: "plans[1]", reading: { problems: [{ code: "versionNewer" }] } });
  expect(faulty).toMatchObject({ reading: { ok: false } });
  expect(none).toMatchObject({ reading: { ok: false } });
});

test("readBundle refuses a file of a newer version, one that breaks off, and one without a list", () => {
  expect(read('{"headfall-plans": 2, "plans": []}')).toMatchObject([{ code: "versionNewer" }]);
  expect(read('{"headfall-plans": 1, "plans": [')).toMatchObject([{ code: "notJson" }]);
  expect(read('{"headfall-plans": 1}')).toMatchObject([{ code: "missing" }]);
});

test("readBundle survives nesting without end and keys that reach for a prototype", () => {
  const deep = `{"headfall-plans": 1, "plans": [${"[".repeat(100_000)}${"]".repeat(100_000)}]}`;
  expect(read(deep)).toMatchObject([expect.anything()]);
  const proto = '{"headfall-plans": 1, "plans": [{"headfall": 1, "__proto__": {"name": "x"}}]}';
  expect(read(proto)).toMatchObject([{ ok: false }]);
  expect(({} as Record<string, unknown>)["name"]).toBeUndefined();
});
