import { parentPort, workerData } from "node:worker_threads";
import { runJobHere } from "./jobs.ts";
import type { WorkerOrder, WorkerWord } from "./thread.ts";

const order: WorkerOrder = workerData;
const say = (word: WorkerWord): void => parentPort?.postMessage(word);

try {
  const takes = order.takes as never; // typed where the order was written, in thread.ts
  const gives = await runJobHere(
    order.name,
    takes,
    (progress) => say({ kind: "progress", progress }),
    new AbortController().signal,
  );
  say({ kind: "done", gives });
} catch (error) {
  say({ kind: "failed", words: error instanceof Error ? error.message : String(error) });
}
