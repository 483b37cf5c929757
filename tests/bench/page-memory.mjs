/** What dragging leaves on the page's heap: many thousand steps, the heap after a collection at every thousand. */

import { openWide, withBuiltPage } from "./page-bars.mjs";
import { placeOf, TURN } from "./page-drag.mjs";
import { slopeOf } from "./time.mjs";

const WIDTH = 1280;
/** Steps within one press of the hand; then it lets go, and a new edit begins. */
const STEPS_OF_PRESS = 100;
const HANDLE = { view: "side", selector: ".handle.stand .hit" };

/**
 * @param bench   where rows and measured bars go (book.mjs)
 * @param rounds  each of so many steps; a first one more is not counted, since histories and caches fill then
 */
export async function measureLongDrags({ row, measured }, { rounds = 20, steps = 1000 } = {}) {
  await withBuiltPage(async (browser, address) => {
    const page = await openWide(browser, address, WIDTH, HANDLE.view, 1);
    const session = await page.context().newCDPSession(page);
    await session.send("Performance.enable");
    const seen = [];
    for (let round = 0; round <= rounds; round += 1) {
      await dragSteps(page, steps);
      seen.push([(round * steps) / 1000, await sizesOf(session)]);
    }
    const slope = (key) => slopeOf(seen.slice(1).map(([k, sizes]) => [k, sizes[key]]));
    const [, first] = seen[1];
    const [, last] = seen.at(-1);
    const grown = slope("heap");
    row(`dragging the stand from the side, ${rounds} times ${steps} steps after the first ${steps}`, {
      "heap a thousand steps [kB]": grown,
      "at first [kB]": first.heap,
      "at last [kB]": last.heap,
      "nodes a thousand steps": slope("nodes"),
      "listeners a thousand steps": slope("listeners"),
    });
    measured("leak of drags", Math.max(0, grown), {
      steps: rounds * steps,
      "listeners a thousand steps": slope("listeners"),
    });
    await page.context().close();
  });
}

/** Steps of the pointer, each a frame, to and fro; pressed anew now and then. */
async function dragSteps(page, steps) {
  for (let done = 0; done < steps; done += STEPS_OF_PRESS) {
    const { x, y } = await placeOf(page, HANDLE.selector);
    await page.mouse.move(x, y);
    await page.mouse.down();
    for (let k = 1; k <= STEPS_OF_PRESS; k += 1)
      await page.mouse.move(x, y - TURN.reach * Math.sin((2 * Math.PI * k) / TURN.steps));
    await page.mouse.up();
  }
}

async function sizesOf(session) {
  for (let k = 0; k < 2; k += 1) await session.send("HeapProfiler.collectGarbage");
  const { metrics } = await session.send("Performance.getMetrics");
  const of = (name) => metrics.find((metric) => metric.name === name).value;
  return { heap: of("JSHeapUsedSize") / 1000, nodes: of("Nodes"), listeners: of("JSEventListeners") };
}
