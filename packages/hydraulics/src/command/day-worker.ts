import { parentPort, workerData } from "node:worker_threads";
import { type DayShare, rowsOf } from "./day-share.js";

parentPort?.postMessage(rowsOf(workerData as DayShare) ?? []);
