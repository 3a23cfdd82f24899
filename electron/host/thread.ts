import { Worker } from "node:worker_threads";
import type { Progress } from "./drawingProgress.ts";
import { type JobName, keepsItsBest, type RunJob } from "./jobs.ts";

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

/** How long a thread with nothing to do is kept: what the last job compiled makes the next one quick to start. */
const restMs = 300_000;

/**
 * Does jobs in worker threads, one job a thread at a time. A thread rests when its job is done and takes the next; it keeps nothing of
 * the last job but warm code. Stopping a job ends its thread at once; one that keeps its best is told, and answers with that.
 *
 * @param workerFile  the bundled worker
 */
export function jobsInThread(workerFile: URL): RunJob {
  /** The thread that rests, and how to wake it. */
  let resting: { readonly wake: () => Worker } | null = null;
  const rest = (worker: Worker): void => {
    if (resting) return void worker.terminate();
    const end = (): void => {
      resting = null;
      void worker.terminate();
    };
    const over = setTimeout(end, restMs).unref();
    const wake = (): Worker => {
      resting = null;
      clearTimeout(over);
      worker.off("error", end);
      worker.ref();
      return worker;
    };
    worker.on("error", end);
    worker.unref();
    resting = { wake };
  };
  return (name, takes, onProgress, signal) =>
    new Promise((resolve, reject) => {
      if (signal.aborted) return reject(stoppedError());
      const stopFlag = new SharedArrayBuffer(4);
      const order: WorkerOrder = { name, takes, stopFlag };
      const worker = resting?.wake() ?? new Worker(workerFile);
      let graceOver: NodeJS.Timeout | undefined;
      const end = (): void => {
        void worker.terminate();
        reject(stoppedError());
      };
      const stop = (): void => {
        Atomics.store(new Int32Array(stopFlag), 0, 1);
        if (keepsItsBest.includes(name)) graceOver = setTimeout(end, graceMs);
        else end();
      };
      const hear = (word: WorkerWord): void => {
        if (word.kind === "progress") {
          onProgress(word.progress);
          return;
        }
        signal.removeEventListener("abort", stop);
        clearTimeout(graceOver);
        worker.off("message", hear).off("error", reject);
        rest(worker);
        if (word.kind === "failed") reject(new Error(word.words));
        else resolve(word.gives as never); // the worker runs the job this call names, and a job has one type of answer
      };
      signal.addEventListener("abort", stop, { once: true });
      worker.on("message", hear).on("error", reject);
      worker.postMessage(order);
    });
}

function stoppedError(): DOMException {
  return new DOMException("The job was stopped.", "AbortError");
}
