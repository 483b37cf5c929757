import { readdirSync } from "node:fs";
import { join } from "node:path";

const ROUNDS = 7;

/**
 * The page's own worker, asked as the page asks it. A browser slows down only the page's own thread: the times of the
 * worker are taken at full speed and multiplied.
 */
export async function measureSamples(page, address, folder, plan, slowdown) {
  const file = readdirSync(join(folder, "assets")).find((name) => /^check-worker.*\.js$/.test(name));
  await page.goto(address);
  const { first, rounds } = await page.evaluate(askRepeatedly, {
    url: new URL(`assets/${file}`, address).href,
    plan,
    rounds: ROUNDS,
  });
  const least = (key) => slowdown * Math.min(...rounds.map((each) => each[key]));
  return {
    "coarse ms": least("coarse"),
    "200 samples ms": least("whole"),
    "coarse, worker new": slowdown * first.coarse,
    "200 samples, worker new": slowdown * first.whole,
  };
}

async function askRepeatedly({ url, plan, rounds }) {
  const worker = new Worker(url, { type: "module" });
  const ask = (turn) =>
    new Promise((resolve) => {
      const start = performance.now();
      let coarse;
      let whole;
      worker.onmessage = ({ data }) => {
        if (data.turn !== turn || data.outcome === undefined) return;
        const took = performance.now() - start;
        if (data.outcome.checked.madeFrom.samples < 200) coarse = took;
        else if (data.outcome.checked.madeFrom.samples === 200) whole ??= took;
        if (!data.isCoarse) resolve({ coarse, whole, settled: took });
      };
      worker.postMessage({ turn, plan, samples: 200 });
    });
  const first = await ask(1);
  const all = [];
  for (let turn = 2; turn < rounds + 2; turn += 1) all.push(await ask(turn));
  worker.terminate();
  return { first, rounds: all };
}
