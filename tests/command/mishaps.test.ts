import { beforeAll, expect, test } from "vitest";
import { penPlan } from "../hydraulics/judge/birds/pens.js";
import { buildCommand, headfall } from "./run-headfall.js";

beforeAll(buildCommand, 120_000);

const day = ["--day", "2026-07-04"];
const hens = (more: Record<string, unknown> = {}) =>
  JSON.stringify(penPlan({ more: { name: "Alder Bank, hens", weather: { high: "21 degC" }, ...more } }));

test("headfall mishaps tells each, the worst first, what it loses, and what guards against it", () => {
  const run = headfall(["mishaps", "-", ...day], hens());
  expect(run).toMatchObject({ status: 0, stderr: "" });
  const { stdout } = run;
  expect(stdout).toMatch(
    /^Alder Bank, hens: what any one mishap does\nEverything is full on 2026-07-04 at 07:00 when it happens; nobody looks and nobody fills by hand\.\nIf nothing goes wrong, the first bird goes without after \d+ days/,
  );
  expect(stdout).toMatch(/\n 1 {2}joint apart at barrel +at once +\d+(\.\d+)? L +\d+ min/);
  expect(stdout).toMatch(
    /\n1\. Joint apart at barrel\. \d+ L\/min pour out when full\. In a night it loses /,
  );
  expect(stdout).toMatch(/stuck open \(the worst of \d+\)/);
  expect(stdout).toContain("A second opening for air in barrel");
  expect(stdout).toContain(
    "- Look at the birds and their water every day: no computed figure replaces that.",
  );
});

test("headfall mishaps --units us writes gallons", () => {
  const { stdout } = headfall(["mishaps", "-", "--units", "us", ...day], hens());
  expect(stdout).toMatch(/\d gal\/min pour out when full/);
  expect(stdout).not.toMatch(/\d (L|mL|cm)\b/);
});

test("headfall mishaps shows twelve and says how many more; --all shows all, each with its guards", () => {
  const runs = ["left", "right", "far"].map((id) => ({
    id,
    from: "barrel",
    length: "3 m",
    fall: "40 cm",
    drinkers: { id: `${id} nipples`, kind: "nipple-side-action", count: 2 },
  }));
  const plan = hens({ runs, pens: [] });
  const some = headfall(["mishaps", "-", ...day], plan);
  const [, more] = /\n(\d+) more that do less: headfall mishaps --all\n/.exec(some.stdout) ?? [];
  expect(Number(more)).toBeGreaterThan(0);
  const all = headfall(["mishaps", "-", "--all", ...day], plan).stdout;
  expect(all).not.toContain("more that do less");
  expect(all).toMatch(new RegExp(`\\n${12 + Number(more)}\\. `));
  expect(all).toContain("The plan has no birds; even so half of its drinkers are dry after 41 days");
});

test("headfall mishaps tells of loose waterers where there is no line, and of neither says so", () => {
  const pen = {
    id: "brooder",
    birds: { kind: "pullet", count: 25, age: "10 days" },
    waterers: [{ kind: "fount-1gal" }],
  };
  const yard = { headfall: 1, name: "Alder Bank, founts", sources: [], runs: [], pens: [pen] };
  const run = headfall(["mishaps", "-", ...day], JSON.stringify(yard));
  expect(run).toMatchObject({ status: 0, stderr: "" });
  expect(run.stdout).toMatch(/nobody fills by hand\.\n\nLoose waterers\n/);
  expect(run.stdout).toMatch(/\n1 {2}brooder waterer off level, its lower edge sunk by 20 mm +25 +at once +/);
  expect(run.stdout).toContain("Turn its hole sideways, and mark the jar");
  expect(run.stdout).not.toContain("drinkers");
  const none = headfall(
    ["mishaps", "-", ...day],
    JSON.stringify({ ...yard, pens: [{ ...pen, waterers: undefined }] }),
  );
  expect(none).toMatchObject({ status: 2, stdout: "" });
  expect(none.stderr).toContain("Add a source, loose waterers to a pen, or a kit.");
});

test("headfall mishaps refuses what it does not know, and plans that are broken, with status 2", () => {
  expect(headfall(["mishaps", "-", "--days", "3"], hens())).toEqual({
    status: 2,
    stdout: "",
    stderr: "headfall: Unknown option '--days'. See: headfall help mishaps\n",
  });
  const broken = headfall(["mishaps", "-", ...day], hens({ water: "12 furlongs" }));
  expect(broken).toMatchObject({ status: 2, stdout: "" });
  expect(broken.stderr).toContain("water");
});
