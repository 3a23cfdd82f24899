import { Worker } from "node:worker_threads";
import { type JobName, keepsItsBest, type Progress, type RunJob } from "./jobs.ts";

/** What the worker answers with. */
export type WorkerWord =
  | { readonly kind: "progress"; readonly progress: Progress }
  | { readonly kind: "done"; readonly gives: unknown }
  | { readonly kind: "failed"; readonly words: string };

export type WorkerOrder = {
  readonly name: JobName;
  readonly takes: unknown;
  /** Memory both threads see: raised, the job is to end with what it has. */
  readonly stopFlag: SharedArrayBuffer;
};

/** How long a job that keeps its best may take to end before its thread is ended without it; it looks at the flag every 50 ms or so. */
const graceMs = 10_000;

/** Whether a job was told to end. */
export function isRaised(stopFlag: SharedArrayBuffer): boolean {
  return Atomics.load(new Int32Array(stopFlag), 0) !== 0;
}

/**
 * Does jobs in a worker thread of their own, one thread a job. Stopping a job ends its thread at once; one that keeps its best is told,
 * and answers with that.
 *
 * @param workerFile  the bundled worker
 */
export function jobsInThread(workerFile: URL): RunJob {
  return (name, takes, onProgress, signal) =>
    new Promise((resolve, reject) => {
      const stopFlag = new SharedArrayBuffer(4);
      const order: WorkerOrder = { name, takes, stopFlag };
      const worker = new Worker(workerFile, { workerData: order });
      let graceOver: NodeJS.Timeout | undefined;
      const end = (): void => {
        void worker.terminate();
        reject(new DOMException("The job was stopped.", "AbortError"));
      };
      const stop = (): void => {
        Atomics.store(new Int32Array(stopFlag), 0, 1);
        if (keepsItsBest.includes(name)) graceOver = setTimeout(end, graceMs);
        else end();
      };
      if (signal.aborted) return end();
      signal.addEventListener("abort", stop, { once: true });
      worker.on("message", (word: WorkerWord) => {
        if (word.kind === "progress") return onProgress(word.progress);
        signal.removeEventListener("abort", stop);
        clearTimeout(graceOver);
        void worker.terminate();
        if (word.kind === "failed") return reject(new Error(word.words));
        resolve(word.gives as never); // the worker runs the job this call names, and a job has one type of answer
      });
      worker.on("error", reject);
    });
}
