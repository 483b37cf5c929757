/**
 * What dragging leaves on the page's heap. The heap as a whole goes up and down by half a megabyte as code is compiled and
 * dropped again, so what the page itself keeps is told apart from that: a snapshot now and then, its bytes by kind.
 */

import { openWide, withBuiltPage } from "./page-bars.mjs";
import { placeOf, TURN } from "./page-drag.mjs";
import { slopeOf } from "./time.mjs";

const WIDTH = 1280;
/** Steps within one press of the hand; then it lets go, and a new edit begins: one more to undo. */
const STEPS_OF_PRESS = 100;
/** How far from where it began a press lets go, down and up by turns [px]. */
const APART = 20;
/** Steps between two looks at the heap. */
const STEPS = 1000;
/** Rest before a look: until the plan is saved and sampled, and all that waited for the hand has followed [ms]. */
const REST_MS = 3000;
/** Looks before the first that counts: until then caches fill. */
const LOOKS_BEFORE = 1;
/** No further look after this, or the page would be dragged for an hour where the machine is busy [s]. */
const MOST_SECONDS = 240;
const HANDLE = { view: "side", selector: ".handle.stand .hit" };

/** Kinds of things on the heap, as the browser's snapshots call them, by whose they are. */
const KINDS = {
  kept: [
    ...["object", "array", "closure", "string", "concatenated string", "sliced string"],
    ...["number", "bigint", "symbol", "regexp"],
  ],
  "compiled code": ["code", "hidden", "object shape"],
  "the browser's own": ["native", "synthetic"],
};
const OWNERS = new Map(Object.entries(KINDS).flatMap(([owner, kinds]) => kinds.map((kind) => [kind, owner])));

/**
 * @param bench    where rows and measured bars go (book.mjs)
 * @param most     thousands of steps, if they can be made in time
 * @param seconds  how long steps are made [s]
 */
export async function measureLongDrags({ row, measured }, { most = 12, seconds = MOST_SECONDS } = {}) {
  await withBuiltPage(async (browser, address) => {
    const page = await openWide(browser, address, WIDTH, HANDLE.view, 1);
    const session = await page.context().newCDPSession(page);
    await session.send("Performance.enable");
    await session.send("HeapProfiler.enable");
    const end = performance.now() + 1000 * seconds;
    const seen = [];
    const stand = await page.evaluate(() => document.querySelector("headfall-line").plan.sources[0].stand);
    const isInTime = () => seen.length < LOOKS_BEFORE + 2 || performance.now() < end;
    for (let thousands = 1; thousands <= most && isInTime(); thousands += 1) {
      for (let steps = 0; steps < STEPS; steps += STEPS_OF_PRESS) await dragOnce(page, steps);
      await page.evaluate(putStand, stand);
      await page.waitForTimeout(REST_MS);
      const sizes = await sizesOf(session);
      seen.push([thousands, sizes]);
      console.log(`  ${1000 * thousands} steps: ${Math.round(sizes.kept)} kB kept`);
    }
    tellGrowth(seen.slice(LOOKS_BEFORE - 1), row, measured);
    await page.context().close();
  });
}

function tellGrowth(seen, row, measured) {
  const slope = (key) => slopeOf(seen.map(([thousands, sizes]) => [thousands, sizes[key]]));
  const [[from, first], [to, last]] = [seen[0], seen.at(-1)];
  row(`dragging the stand from the side, from ${1000 * from} steps to ${1000 * to}`, {
    "kept at first [kB]": first.kept,
    "at last": last.kept,
    "more a thousand steps": slope("kept"),
    "compiled code": slope("compiled code"),
    "the browser's own": slope("the browser's own"),
    nodes: slope("nodes"),
    listeners: slope("listeners"),
  });
  measured("leak of drags", Math.max(0, slope("kept")), {
    steps: 1000 * (to - from),
    "with compiled code": slope("kept") + slope("compiled code"),
  });
}

/**
 * One press: steps of the pointer to and fro, each in a frame of its own, and an end apart from where it began. The
 * steps are made on the page, for a hand waits for no answer.
 */
async function dragOnce(page, before) {
  const { x, y } = await placeOf(page, HANDLE.selector);
  const end = y + ((before / STEPS_OF_PRESS) % 2 === 0 ? APART : -APART);
  const places = Array.from(
    { length: STEPS_OF_PRESS },
    (_, k) => y - TURN.reach * Math.sin((2 * Math.PI * (k + 1)) / TURN.steps),
  );
  await page.mouse.move(x, y);
  await page.mouse.down();
  await page.locator(HANDLE.selector).first().evaluate(moveThrough, { x, places });
  await page.mouse.move(x, end);
  await page.mouse.up();
}

/** On the page: the pointer that is down moves through these places, a frame for each. */
async function moveThrough(element, { x, places }) {
  const drawing = element.ownerSVGElement;
  const nextFrame = () => new Promise((done) => requestAnimationFrame(done));
  const how = {
    pointerId: 1,
    pointerType: "mouse",
    isPrimary: true,
    buttons: 1,
    bubbles: true,
    composed: true,
  };
  for (const clientY of places) {
    await nextFrame();
    drawing.dispatchEvent(new PointerEvent("pointermove", { ...how, clientX: x, clientY }));
  }
  await nextFrame();
}

/** On the page: the stand as it was at first, one edit more, so that each look sees the same plan with the same verdicts. */
function putStand(value) {
  const change = { kind: "set", path: ["sources", 0, "stand"], value, what: "stand" };
  document.querySelector("headfall-line").store.edit(change, "metric");
}

/** Kilobytes on the heap after a collection by whose they are, nodes and listeners. */
async function sizesOf(session) {
  for (let k = 0; k < 2; k += 1) await session.send("HeapProfiler.collectGarbage");
  const { metrics } = await session.send("Performance.getMetrics");
  const of = (name) => metrics.find((metric) => metric.name === name).value;
  return { ...sumByOwner(await snapshotOf(session)), nodes: of("Nodes"), listeners: of("JSEventListeners") };
}

async function snapshotOf(session) {
  const chunks = [];
  const take = ({ chunk }) => chunks.push(chunk);
  session.on("HeapProfiler.addHeapSnapshotChunk", take);
  await session.send("HeapProfiler.takeHeapSnapshot", { reportProgress: false });
  session.off("HeapProfiler.addHeapSnapshotChunk", take);
  return JSON.parse(chunks.join(""));
}

function sumByOwner({ snapshot, nodes }) {
  const { node_fields: fields, node_types: types } = snapshot.meta;
  const [kind, size] = ["type", "self_size"].map((name) => fields.indexOf(name));
  const sums = Object.fromEntries(Object.keys(KINDS).map((owner) => [owner, 0]));
  for (let at = 0; at < nodes.length; at += fields.length) {
    const owner = OWNERS.get(types[kind][nodes[at + kind]]);
    if (owner === undefined) throw new Error(`Snapshots know a new kind: ${types[kind][nodes[at + kind]]}.`);
    sums[owner] += nodes[at + size] / 1000;
  }
  return sums;
}
