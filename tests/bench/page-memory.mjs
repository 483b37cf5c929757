/** What dragging leaves on the page's heap: as many steps as a few minutes allow, the heap after a collection now and then. */

import { openWide, withBuiltPage } from "./page-bars.mjs";
import { placeOf, TURN } from "./page-drag.mjs";
import { slopeOf } from "./time.mjs";

const WIDTH = 1280;
/** Steps within one press of the hand; then it lets go, and a new edit begins. */
const STEPS_OF_PRESS = 100;
/** Presses between two looks at the heap. */
const PRESSES = 2;
const STEPS = STEPS_OF_PRESS * PRESSES;
/** No further look after this, or the page would be dragged for an hour where the machine is busy [s]. */
const MOST_SECONDS = 180;
const HANDLE = { view: "side", selector: ".handle.stand .hit" };

/**
 * @param bench    where rows and measured bars go (book.mjs)
 * @param most     thousands of steps, if they can be made in time
 * @param seconds  how long steps are made [s]
 */
export async function measureLongDrags({ row, measured }, { most = 20, seconds = MOST_SECONDS } = {}) {
  await withBuiltPage(async (browser, address) => {
    const page = await openWide(browser, address, WIDTH, HANDLE.view, 1);
    const session = await page.context().newCDPSession(page);
    await session.send("Performance.enable");
    const end = performance.now() + 1000 * seconds;
    const seen = [];
    const inTime = () => seen.length < 3 || performance.now() < end;
    for (let steps = STEPS; steps <= 1000 * most && inTime(); steps += STEPS) {
      for (let press = 0; press < PRESSES; press += 1) await dragOnce(page);
      const sizes = await sizesOf(session);
      seen.push([steps / 1000, sizes]);
      if (steps % 1000 === 0) console.log(`  ${steps} steps: heap ${Math.round(sizes.heap)} kB`);
    }
    tellGrowth(seen, row, measured);
    await page.context().close();
  });
}

/** Of the second thousand and on, where there are as many: until then caches and compiled code grow. */
function tellGrowth(all, row, measured) {
  const later = all.filter(([thousands]) => thousands >= 1);
  const seen = later.length < 3 ? all : later;
  const slope = (key) => slopeOf(seen.map(([thousands, sizes]) => [thousands, sizes[key]]));
  const [from, first] = seen[0];
  const [to, last] = seen.at(-1);
  const grown = slope("heap");
  row(`dragging the stand from the side, from ${1000 * from} steps to ${1000 * to}`, {
    "heap a thousand steps [kB]": grown,
    "at first [kB]": first.heap,
    "at last [kB]": last.heap,
    "nodes a thousand steps": slope("nodes"),
    "listeners a thousand steps": slope("listeners"),
  });
  measured("leak of drags", Math.max(0, grown), {
    steps: 1000 * (to - from),
    "listeners a thousand steps": slope("listeners"),
  });
}

/** Steps of the pointer, each a frame, to and fro. */
async function dragOnce(page) {
  const { x, y } = await placeOf(page, HANDLE.selector);
  await page.mouse.move(x, y);
  await page.mouse.down();
  for (let k = 1; k <= STEPS_OF_PRESS; k += 1)
    await page.mouse.move(x, y - TURN.reach * Math.sin((2 * Math.PI * k) / TURN.steps));
  await page.mouse.up();
}

async function sizesOf(session) {
  for (let k = 0; k < 2; k += 1) await session.send("HeapProfiler.collectGarbage");
  const { metrics } = await session.send("Performance.getMetrics");
  const of = (name) => metrics.find((metric) => metric.name === name).value;
  return { heap: of("JSHeapUsedSize") / 1000, nodes: of("Nodes"), listeners: of("JSEventListeners") };
}
