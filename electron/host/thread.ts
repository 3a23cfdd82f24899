import { Worker } from "node:worker_threads";
import type { JobName, Progress, RunJob } from "./jobs.ts";

/** What the worker answers with. */
export type WorkerWord =
  | { readonly kind: "progress"; readonly progress: Progress }
  | { readonly kind: "done"; readonly gives: unknown }
  | { readonly kind: "failed"; readonly words: string };

export type WorkerOrder = { readonly name: JobName; readonly takes: unknown };

/**
 * Does jobs in a worker thread of their own, one thread a job; stopping a job ends its thread at once.
 *
 * @param workerFile  the bundled worker
 */
export function jobsInThread(workerFile: URL): RunJob {
  return (name, takes, onProgress, signal) =>
    new Promise((resolve, reject) => {
      const order: WorkerOrder = { name, takes };
      const worker = new Worker(workerFile, { workerData: order });
      const stop = (): void => {
        void worker.terminate();
        reject(new DOMException("The job was stopped.", "AbortError"));
      };
      if (signal.aborted) return stop();
      signal.addEventListener("abort", stop, { once: true });
      worker.on("message", (word: WorkerWord) => {
        if (word.kind === "progress") return onProgress(word.progress);
        signal.removeEventListener("abort", stop);
        void worker.terminate();
        if (word.kind === "failed") return reject(new Error(word.words));
        resolve(word.gives as never); // the worker runs the job this call names, and a job has one type of answer
      });
      worker.on("error", reject);
    });
}
