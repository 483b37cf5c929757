import type { Page } from "playwright";
import { expect, test } from "vitest";
import { DESKTOP, visitSketch } from "./sketch-page.js";

const RUNS = 1000;
const DRINKERS = 20_000;

/** A long main of five hundred pieces, and from each joint a branch with forty nipples. */
function largeYard(): object {
  const pieces = RUNS / 2;
  const joint = (piece: number) => (piece === 0 ? "tank" : `j${piece}`);
  return {
    headfall: 1,
    name: "Large yard",
    sources: [{ id: "tank", vessel: "tote-1000l", stand: "1 m" }],
    runs: Array.from({ length: pieces }, (_, piece) => [
      {
        id: `main ${piece + 1}`,
        from: joint(piece),
        to: joint(piece + 1),
        length: "2 m",
        fall: "1 cm",
        pipe: "pvc-sch40-2",
      },
      {
        id: `branch ${piece + 1}`,
        from: joint(piece + 1),
        length: "10 m",
        drinkers: { kind: "nipple-side-action", count: DRINKERS / pieces, busiest: 1 },
      },
    ]).flat(),
  };
}

/** From the hand's next press until the frame that shows the plan it has changed [ms], as the page itself sees it. */
function timePress(page: Page): Promise<number> {
  return page.evaluate(
    () =>
      new Promise<number>((answered) => {
        let pressedAt = 0;
        const noted = ({ timeStamp }: Event) => (pressedAt = timeStamp);
        addEventListener("pointerdown", noted, { capture: true, once: true });
        const shown = () =>
          requestAnimationFrame(() => setTimeout(() => answered(performance.now() - pressedAt)));
        addEventListener("plan-changed", shown, { once: true });
      }),
  );
}

test("a plan of 1,000 runs and 20,000 drinkers is checked with progress and a Stop, and goes on being edited", async ({
  annotate,
}) => {
  await visitSketch(async (sketch) => {
    const { page } = sketch;
    await sketch.line.open("large.json", JSON.stringify(largeYard()));
    // By their places: finding them by role walks through 20,000 drinkers each time, and holds the page up itself.
    const progress = page.locator("headfall-line .progress");
    const stop = progress.locator("button", { hasText: "Stop" });
    await stop.waitFor({ timeout: 40_000 });
    // Waited for: an answer that comes just then takes the bar away until the next one is under way.
    await progress.locator("progress").waitFor();
    const counted = async () =>
      [...(await sketch.line.counts()).matchAll(/\d+/g)].reduce((sum, [n]) => sum + Number(n), 0);
    await expect.poll(counted, { timeout: 45_000 }).toBe(DRINKERS);
    const stand = page.locator("headfall-part headfall-quantity[label=Stand] input[type=text]");
    await stand.fill("1.2 m");
    await stand.press("Enter");
    await expect.poll(async () => (await sketch.plan()).sources[0]!.stand).toBe("1.2 m");
    const undo = page.locator("headfall-line .undo button").first();
    await expect.poll(() => undo.isEnabled()).toBe(true);
    const redo = page.locator("headfall-line .undo button").last();
    const answers: number[] = [];
    for (const [button, stands] of [
      [undo, "1 m"],
      [redo, "1.2 m"],
      [undo, "1 m"],
    ] as const) {
      const waited = timePress(page);
      await button.click();
      answers.push(await waited);
      expect((await sketch.plan()).sources[0]!.stand).toBe(stands);
    }
    const answered = answers.sort((one, other) => one - other)[1]!;
    // Told, not judged: how long it takes is the machine's, that it comes while the long work goes on is ours.
    await annotate(
      `a press on Undo or Redo was answered after ${Math.round(answered)} ms, the middle one of three`,
    );
    await stop.click();
    await stop.waitFor({ state: "detached" });
    // Stopped before the verdicts, before a coarse answer or after it; of an end by itself it would say none of these.
    await expect
      .poll(() => page.locator("headfall-line .sureness").first().textContent())
      .toMatch(
        /^(Stopped: all this is still of the plan before\.|How sure was not worked out\.|.*\(so far\))$/,
      );
    expect(await counted()).toBe(DRINKERS);
    await stand.fill("80 cm");
    await stand.press("Enter");
    await expect.poll(async () => (await sketch.plan()).sources[0]!.stand).toBe("80 cm");
  }, DESKTOP);
}, 120_000);
