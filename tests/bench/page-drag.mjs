/** How far a handle is dragged to and fro [px], and in how many steps: so that snapped places change at most of them. */
export const TURN = { reach: 30, steps: 20 };

/**
 * Drags a handle to and fro, a step a frame, and tells how long frames were and how long the page's thread worked for
 * each: from the move of the pointer to the end of the frame's drawing, and by kind of work on the average. Frames
 * count that come right after the plan has changed, since a drawing may follow a frame later.
 */
export async function measureDrag(page, selector, steps) {
  const handle = await placeOf(page, selector);
  const session = await page.context().newCDPSession(page);
  await openClock(session);
  await page.mouse.move(handle.x, handle.y);
  await page.mouse.down();
  await dragBy(page, handle, 20);
  await page.evaluate(watchFrames);
  const before = await workOf(session);
  const from = await page.evaluate(() => performance.now());
  await dragBy(page, handle, steps);
  const to = await page.evaluate(() => performance.now());
  const after = await workOf(session);
  const seen = await page.evaluate(() => window.seenFrames);
  const tasks = seen.tasks.filter(({ start }) => start >= from && start < to).map(({ duration }) => duration);
  await page.mouse.up();
  if (seen.plans < steps / 2)
    throw new Error(`${selector}: only ${seen.plans} of ${steps} steps made another plan.`);
  const each = (key) => ((after[key] - before[key]) * 1000) / seen.plans;
  return {
    "work median ms": shareOf(seen.work, 0.5),
    "work 95 % ms": shareOf(seen.work, 0.95),
    "tasks over 50 ms": tasks.length,
    "longest task ms": Math.max(0, ...tasks),
    "frame median ms": shareOf(seen.frames, 0.5),
    "frame 95 % ms": shareOf(seen.frames, 0.95),
    "script a step ms": each("ScriptDuration"),
    "style and layout a step ms": each("RecalcStyleDuration") + each("LayoutDuration"),
    "all tasks a step ms": each("TaskDuration"),
  };
}

export async function placeOf(page, selector) {
  const handle = page.locator(selector).first();
  await handle.evaluate((element) => element.scrollIntoView({ block: "center" }));
  await page.waitForTimeout(500);
  const { x, y, width, height } = await handle.boundingBox();
  return { x: x + width / 2, y: y + height / 2 };
}

async function dragBy(page, { x, y }, steps) {
  for (let k = 1; k <= steps; k += 1) {
    await page.mouse.move(x, y - TURN.reach * Math.sin((2 * Math.PI * k) / TURN.steps));
  }
}

/** Work by kind is told in the processor's time of the page's thread: what else the machine does is not in it. */
const openClock = (session) => session.send("Performance.enable", { timeDomain: "threadTicks" });

/** How the heap grows over as many steps, and over as many again: a leak grows both times. */
export async function measureHeap(page, selector, steps) {
  const handle = await placeOf(page, selector);
  const session = await page.context().newCDPSession(page);
  await openClock(session);
  await page.mouse.move(handle.x, handle.y);
  await page.mouse.down();
  const heap = [];
  for (let k = 0; k < 3; k += 1) {
    await dragBy(page, handle, k === 0 ? 100 : steps);
    await session.send("HeapProfiler.collectGarbage");
    heap.push((await workOf(session)).JSHeapUsedSize / 1000);
  }
  await page.mouse.up();
  return { "heap grown kB": heap[1] - heap[0], "and then": heap[2] - heap[1] };
}

/** No garbage is collected for it: that would throw compiled code away, and the next steps would make it anew. */
async function workOf(session) {
  const { metrics } = await session.send("Performance.getMetrics");
  return Object.fromEntries(metrics.map(({ name, value }) => [name, value]));
}

/** On the page: notes the length of each frame, what was worked for it, and tasks that were long. */
function watchFrames() {
  const seen = { frames: [], work: [], tasks: [], plans: 0 };
  window.seenFrames = seen;
  new PerformanceObserver((list) =>
    seen.tasks.push(...list.getEntries().map(({ startTime, duration }) => ({ start: startTime, duration }))),
  ).observe({ type: "longtask" });
  let lately = 0;
  const changed = () => {
    seen.plans += 1;
    lately = 2;
  };
  document.addEventListener("plan-changed", changed, true);
  let begun;
  const begin = () => {
    begun ??= performance.now();
  };
  window.addEventListener("pointermove", begin, true);
  const channel = new MessageChannel();
  channel.port1.onmessage = () => {
    if (lately > 0 && begun !== undefined) seen.work.push(performance.now() - begun);
    lately -= 1;
    begun = undefined;
  };
  let last;
  const tick = (now) => {
    begin();
    if (lately > 0 && last !== undefined) seen.frames.push(now - last);
    last = now;
    // Comes after this frame has been drawn.
    channel.port2.postMessage(undefined);
    requestAnimationFrame(tick);
  };
  requestAnimationFrame(tick);
}

function shareOf(list, share) {
  const sorted = [...list].sort((a, b) => a - b);
  return sorted[Math.floor(share * (sorted.length - 1))];
}
