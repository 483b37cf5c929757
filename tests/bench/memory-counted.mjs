/** Run by memory.mjs in a process of its own, with the collector at hand; prints what it counted as JSON. */
import { prepareLine } from "../../packages/hydraulics/dist/solve/prepare-line.js";
import { reachState, solveLine } from "../../packages/hydraulics/dist/solve/solve-line.js";
import { solveNetwork } from "../../packages/hydraulics/dist/solve/solve-network.js";
import { buildRings, buildYard } from "./networks.mjs";

const heapUsed = () => process.memoryUsage().heapUsed;

/** Bytes that a prepared line holds beside the line itself: by the typed arrays it reaches, and as the heap tells it. */
function bytesOfLine(count) {
  const { line, moment } = buildYard(count);
  gc();
  const before = process.memoryUsage();
  const prepared = prepareLine(line, "darcyWeisbach");
  reachState(prepared, moment);
  gc();
  const after = process.memoryUsage();
  const grown = after.heapUsed + after.arrayBuffers - before.heapUsed - before.arrayBuffers;
  return {
    what: `a prepared line of ${count} drinkers, with its state`,
    "bytes a drinker, arrays counted": typedBytes(prepared, typedArrays(line)) / count,
    "as the heap tells": grown / count,
    "the line itself": [...typedArrays(line)].reduce((sum, buffer) => sum + buffer.byteLength, 0) / count,
  };
}

const typedBytes = (root, known) =>
  [...typedArrays(root)].reduce((sum, buffer) => sum + (known.has(buffer) ? 0 : buffer.byteLength), 0);

/** All buffers that can be reached from a value. */
function typedArrays(root) {
  const buffers = new Set();
  const met = new Set();
  const open = [root];
  while (open.length > 0) {
    const value = open.pop();
    if (value === null || typeof value !== "object" || met.has(value)) continue;
    met.add(value);
    if (ArrayBuffer.isView(value)) buffers.add(value.buffer);
    else for (const each of value instanceof Map ? value.values() : Object.values(value)) open.push(each);
  }
  return buffers;
}

/** Bytes allocated by a solve of few steps and by one of many: the difference is that of the steps. */
function bytesOfSteps(what, { line, moment }, friction) {
  const prepared = prepareLine(line, friction);
  const { network, work } = prepared.current;
  const working = Int32Array.from(network.topology.drinker.keys()).filter(
    (d) => moment.atWork[network.topology.drinker[d]] === 1,
  );
  const demand = { rootHead: Float64Array.from(moment.sourceHead), working, draw: undefined };
  const solves = (count, isCold) => {
    let steps = 0;
    for (let k = 0; k < count; k += 1) {
      if (isCold) work.warm = false;
      steps += solveNetwork(network, demand, work).steps;
    }
    return steps / count;
  };
  const count = Math.round(1e6 / line.points.count);
  const grownBy = (solvesMade, isCold) => {
    gc();
    const before = heapUsed();
    const steps = solves(solvesMade, isCold);
    return { bytes: heapUsed() - before, steps };
  };
  const allocated = (isCold) => {
    // Often enough for the compiler to have done with it; then what more solves ask for, so that nothing else counts.
    for (let k = 0; k < 3; k += 1) solves(count, isCold);
    const [few, many] = [grownBy(count, isCold), grownBy(3 * count, isCold)];
    return { bytes: (many.bytes - few.bytes) / (2 * count), steps: many.steps };
  };
  const [warm, cold] = [allocated(false), allocated(true)];
  return {
    what,
    "bytes a solve": warm.bytes,
    "bytes a step": Math.max(0, Math.round((cold.bytes - warm.bytes) / (cold.steps - warm.steps))),
    "steps warm": warm.steps,
    cold: cold.steps,
  };
}

/** What is left on the heap by many solves of ever other moments, with their answers let go. */
function leakOfSolves(solves) {
  const { line, moment } = buildYard(60);
  const prepared = prepareLine(line, "darcyWeisbach");
  const sourceHead = Float64Array.from(moment.sourceHead);
  const run = (count) => {
    for (let k = 0; k < count; k += 1) {
      sourceHead[0] = 0.6 + 0.4 * ((k * 0.618034) % 1);
      solveLine(prepared, { ...moment, sourceHead });
    }
    gc();
    return heapUsed() / 1000;
  };
  run(5000);
  const before = run(5000);
  return { what: "warm solves with their check, one after another", solves, grown: run(solves) - before };
}

const lines = [1000, 10_000, 100_000].map(bytesOfLine);
const steps = ["hazenWilliams", "darcyWeisbach"].flatMap((friction) => [
  bytesOfSteps(`${friction}, a tree of 1,000 drinkers`, buildYard(1000), friction),
  bytesOfSteps(`${friction}, 1,000 points with 50 rings`, buildRings(1000, 50), friction),
]);
console.log(JSON.stringify({ lines, steps, leak: leakOfSolves(100_000) }));
