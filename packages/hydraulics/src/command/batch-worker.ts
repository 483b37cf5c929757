import { parentPort, workerData } from "node:worker_threads";
import { type BatchAsk, lineOf, writeLine } from "./batch-line.js";
import { QUESTIONS } from "./questions.js";

const asked = workerData as BatchAsk;
const question = await QUESTIONS[asked.ask]();

parentPort?.on("message", async (one: { line: number; text: string }) => {
  const line = await lineOf(question, asked, one);
  parentPort?.postMessage({ status: line.status, text: writeLine(line) });
});
