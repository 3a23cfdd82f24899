import { parentPort } from "node:worker_threads";
import { handedOver, runJob } from "./jobs.ts";
import { isRaised, type WorkerOrder, type WorkerWord } from "./thread.ts";

const say = (word: WorkerWord, away: ArrayBuffer[] = []): void => parentPort?.postMessage(word, away);

parentPort?.on("message", async (order: WorkerOrder) => {
  try {
    const takes = order.takes as never; // typed where the order was written, in thread.ts
    const gives = await runJob(order.name, takes, (progress) => say({ kind: "progress", progress }), {
      signal: new AbortController().signal,
      isStopped: () => isRaised(order.stopFlag),
    });
    say({ kind: "done", gives }, handedOver(order.name, gives));
  } catch (error) {
    say({ kind: "failed", words: error instanceof Error ? error.message : String(error) });
  }
});
