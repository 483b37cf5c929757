import type { Plan } from "@headfall/hydraulics";
import { afterEach, expect, test } from "vitest";
import { WorkerAsker } from "../../../packages/ui/src/worker/ask-worker.js";
import type { CheckOutcome } from "../../../packages/ui/src/worker/protocol.js";

const planWith = (stand: string): Plan => ({
  headfall: 1,
  sources: [{ vessel: "bucket-20l", stand }],
  runs: [{ length: "3 m", drinkers: { kind: "nipple-bucket" } }],
});
const standOf = (outcome: CheckOutcome) => (outcome.ok ? outcome.checked.line.sources[0]!.stand : undefined);
const RealWorker = globalThis.Worker;

afterEach(() => {
  globalThis.Worker = RealWorker;
});

test("WorkerAsker answers with the turn it gave out, and the same result as on the page's own thread", async () => {
  const answers: [CheckOutcome, number][] = [];
  const asker = new WorkerAsker({
    answered: ({ outcome, turn, isCoarse }) => {
      if (!isCoarse) answers.push([outcome, turn]);
    },
  });
  const turn = asker.ask(planWith("1 m"), 20);
  await expect.poll(() => answers.length).toBe(1);
  expect(answers[0]![1]).toBe(turn);
  const { checkPlan } = await import("@headfall/hydraulics");
  expect(answers[0]![0]).toEqual(checkPlan(planWith("1 m"), { samples: 20 }));
  asker.close();
});

test("WorkerAsker, while busy, keeps only the newest of the questions that follow", async () => {
  const stands: unknown[] = [];
  const asker = new WorkerAsker({ answered: ({ outcome }) => stands.push(standOf(outcome)) });
  for (const stand of ["1 m", "2 m", "3 m", "4 m"]) asker.ask(planWith(stand), 0);
  await expect.poll(() => stands.length).toBe(2);
  expect(stands).toEqual([1, 4]);
  asker.close();
});

test("WorkerAsker answers all the same where a worker cannot be started", async () => {
  globalThis.Worker = class extends EventTarget {
    postMessage(): void {
      this.dispatchEvent(new Event("error"));
    }
    terminate(): void {}
  } as unknown as typeof Worker;
  const stands: unknown[] = [];
  const asker = new WorkerAsker({ answered: ({ outcome }) => stands.push(standOf(outcome)) });
  asker.ask(planWith("2 m"), 0);
  await expect.poll(() => stands).toEqual([2]);
});

test("WorkerAsker answers coarsely first, then with all samples, then with more where these decide nothing", async () => {
  const samples: unknown[] = [];
  const asker = new WorkerAsker({
    answered: ({ outcome, isCoarse }) =>
      samples.push([isCoarse, outcome.ok ? outcome.checked.madeFrom.samples : undefined]),
  });
  asker.ask(planWith("1 m"), 200);
  await expect.poll(() => samples.at(-1)).toEqual([false, 200]);
  // How many are tried at first; the last answer has gone on from there.
  expect(samples).toEqual([
    [true, 16],
    [true, 200],
    [false, 200],
  ]);
  asker.close();
});

test("WorkerAsker tells how far long work has come, and drops it for a newer question", async () => {
  const long: Plan = {
    headfall: 1,
    sources: [{ vessel: "tote-275gal", stand: "1 m" }],
    runs: [{ length: "600 m", drinkers: { kind: "nipple-bucket", count: 2000 } }],
  };
  const shares: number[] = [];
  const answers: number[] = [];
  const asker = new WorkerAsker({
    answered: ({ turn }) => answers.push(turn),
    wentOn: ({ turn, share }) => {
      expect(turn).toBe(1);
      shares.push(share);
    },
  });
  asker.ask(long, 20_000);
  await expect.poll(() => shares.length).toBeGreaterThan(2);
  expect(shares.every((share) => share > 0 && share <= 1)).toBe(true);
  const newer = asker.ask(planWith("1 m"), 0);
  await expect.poll(() => answers.at(-1)).toBe(newer);
  asker.close();
});
