import { beforeAll, expect, test } from "vitest";
import { buildCommand, headfall } from "./run-headfall.js";

beforeAll(buildCommand, 120_000);

const PLAN = "docs/examples/alder-bank-eighty-five-chicks.json";
const WEEKS = ["--weeks", "7"];

test("headfall year tells water, events, heights, the kit given out, what is short and what to buy", () => {
  const run = headfall(["year", PLAN, ...WEEKS]);
  expect(run.stderr).toBe("");
  expect(run.status).toBe(1);
  expect(run.stdout).toMatch(/^Alder Bank: .+: 2026-05-01 to 2026-06-18\n/);
  expect(run.stdout).toMatch(/\n2026-06-17 {2}brooder 1: 35 .+ move to grass pen, 6 weeks old\n/);
  expect(run.stdout).toMatch(
    /\nProven: no way to give it out leaves less short \(.*\); of those none puts out fewer than \d+ pieces/,
  );
  expect(run.stdout).toMatch(
    /\nWhat is short\ngrass pen, 2026-05-29 to 2026-06-09: 4 birds are without a place/,
  );
  expect(run.stdout).toMatch(/\nBuy 1 × .+: 1 piece, and no pen goes short for want of kit/);
  expect(run.stdout).toContain("For a sick bird or a broody hen: 1 × Vacuum fount, 1 US gal.");
});

test("headfall year --csv gives a row for each period and pen, --ics a calendar", () => {
  const rows = headfall(["year", PLAN, "--weeks", "2", "--csv"]).stdout.trimEnd().split("\r\n");
  expect(rows[0]).toMatch(/^week,from,to,pen,birds,age \[days\],"a day, to size on \[L\]"/);
  expect(rows).toHaveLength(1 + 3 * 4);
  expect(headfall(["year", PLAN, "--weeks", "2", "--ics"]).stdout).toMatch(
    /^BEGIN:VCALENDAR\r\n[\s\S]+END:VCALENDAR\r\n$/,
  );
});

test("headfall year refuses days and weeks that are none, with status 2, and says what a plan without kit lacks", () => {
  expect(headfall(["year", PLAN, "--from", "May"])).toMatchObject({
    status: 2,
    stderr: expect.stringContaining('--from is a day such as 2026-07-04, not "May".'),
  });
  expect(headfall(["year", PLAN, "--weeks", "0"])).toMatchObject({ status: 2 });
  const run = headfall(["year", "docs/examples/alder-bank-brooder.json", "--weeks", "2"]);
  expect(run).toMatchObject({ status: 0, stderr: "" });
  expect(run.stdout).toContain("The plan tells of none: add `kit` to have it given out to the pens.");
  expect(run.stdout).toMatch(/\nDrinkers of the line\n[\s\S]*nipple: 2 needed, 5 there/);
});
