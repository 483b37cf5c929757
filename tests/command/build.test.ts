import { readFileSync } from "node:fs";
import { beforeAll, expect, test } from "vitest";
import { buildCommand, headfall } from "./run-headfall.js";

beforeAll(buildCommand, 120_000);

const EXAMPLE = "docs/examples/alder-bank-to-build.json";
const plan = JSON.parse(readFileSync(new URL(`../../${EXAMPLE}`, import.meta.url), "utf8"));

test("headfall build tells parts, cuts, holes, heights, order, tests, loads and the sheet for the coop", () => {
  const run = headfall(["build", EXAMPLE]);
  expect(run).toMatchObject({ status: 0, stderr: "" });
  for (const part of [
    "Parts",
    "Cut: PVC Schedule 40, 1/2 in",
    "Holes and threads",
    "Heights to mark",
    "In this order",
  ])
    expect(run.stdout).toContain(`\n\n${part}\n`);
  expect(run.stdout).toMatch(
    /\n1\. Set the stand of drum .*\n2\. Drill drum .*\n3\. Lay feed from drum to tee/,
  );
  expect(run.stdout).toMatch(
    /long line 20 \(farthest.*\): \d+ mL in \d+ s; between \d+ mL and \d+ mL is as it should be/,
  );
  expect(run.stdout).toContain("- Call Vet for poultry, 555 0178, weak or dying birds: at once\n");
  expect(run.stdout).toContain("Local codes and licensed practice decide.");
});

test("headfall build --units us: feet, inches to a sixteenth, pounds, mph", () => {
  const { stdout } = headfall(["build", EXAMPLE, "--units", "us"]);
  expect(stdout).toContain("New stick, 20 ft: long line 1 of 2, 20 ft");
  expect(stdout).toMatch(/On its 4 bare feet it presses [\d,]+ lb\/ft²; .* 2,000 lb\/ft²/);
  expect(stdout).toMatch(/Empty it tips from a wind of \d+ mph/);
});

test("headfall build --json: the bill adds up from the plan's prices", () => {
  const { parts, pipes, price } = JSON.parse(headfall(["build", EXAMPLE, "--json"]).stdout);
  const ofPart = (id: string) => parts.find((part: { id: string }) => part.id === id);
  expect(ofPart("elbow-90 1/2 in")).toMatchObject({ count: 3, price: 0.9, basis: "typed" });
  expect(ofPart("nipple-side-action")).toMatchObject({ count: 20, price: 2.4 });
  // 20 ft of half-inch and 10 ft of three-quarter, at the prices of 10 ft.
  expect(pipes.map((pipe: { price: number }) => pipe.price)).toEqual([
    expect.closeTo(5.6, 9),
    expect.closeTo(8.4, 9),
  ]);
  const sum = 35 + 14 + 1.1 + 2 * 0.6 + 8.5 + 5 * 0.9 + 3 + 22 * 2.4 + 2 * 1.1 + 5.6 + 8.4;
  expect(price).toMatchObject({ sum: expect.closeTo(sum, 9), money: "EUR" });
});

test("headfall build --csv: parts as a table, and no name runs as a formula", () => {
  const named = { ...plan, sources: [{ ...plan.sources[0], id: "=HYPERLINK(1)" }] };
  named.runs = plan.runs.map((run: { from?: string }) =>
    run.from === "drum" ? { ...run, from: "=HYPERLINK(1)" } : run,
  );
  const { stdout, status } = headfall(["build", "-", "--csv"], JSON.stringify(named));
  expect(status).toBe(0);
  expect(stdout).toMatch(
    /^part,name,size,count,length each \[m\],for,why,price each \[EUR\],price \[EUR\]\r\n/,
  );
  expect(stdout).toContain(",'=HYPERLINK(1),");
  expect(stdout).not.toContain(",=");
  expect(stdout).toContain(
    '\r\npvc-sch40-1/2,"PVC Schedule 40, 1/2 in",,1,6.096,long line,to buy,8.4,8.4\r\n',
  );
});

test("headfall build refuses a cut that is no cut", () => {
  expect(headfall(["build", EXAMPLE, "--kerf", "3 cm"])).toMatchObject({
    status: 2,
    stderr: expect.stringContaining("--kerf is the width of a cut, from 0 to 20 mm."),
  });
});

test("headfall build --paper: two sheets for a browser, of that size, in which no name is taken for a mark", () => {
  const named = { ...plan, name: "<script>alert(1)</script>", contacts: [{ who: '"><img src=x>' }] };
  const { stdout, status } = headfall(["build", "-", "--paper", "letter"], JSON.stringify(named));
  expect(status).toBe(0);
  expect(stdout).toMatch(/^<!doctype html>\n<html lang="en">/);
  expect(stdout).toContain("@page { size: 8.5in 11in;");
  expect(stdout).not.toMatch(/<script|<img|https?:/);
  expect(stdout).toContain("&quot;&gt;&lt;img src=x&gt;");
  expect(stdout.match(/<main/g)?.length).toBe(2);
  expect(headfall(["build", EXAMPLE, "--paper", "a3"]).stderr).toContain(
    '--paper is a4 or letter, not "a3".',
  );
});
