import { describe, expect, it } from "vitest";
import type { RunJob } from "../../../electron/host/jobs.ts";
import { jobsInThread } from "../../../electron/host/thread.ts";

/** A worker that answers with the number of its thread; the job "pdf" never ends, "svg" fails. */
const worker = new URL(`data:text/javascript,
  import { parentPort, threadId } from "node:worker_threads";
  parentPort.on("message", ({ name }) => {
    if (name === "layout") parentPort.postMessage({ kind: "done", gives: threadId });
    if (name === "svg") parentPort.postMessage({ kind: "failed", words: "no paper" });
  });`);

const unstopped = () => new AbortController().signal;
const run = (runJob: RunJob, name: "layout" | "pdf" | "svg", signal = unstopped()): Promise<unknown> =>
  runJob(name, {} as never, () => {}, signal);

describe("jobs in threads", () => {
  it("one after the other are done by one thread, also after one that failed", async () => {
    const runJob = jobsInThread(worker);
    const first = await run(runJob, "layout");
    await expect(run(runJob, "svg")).rejects.toThrow("no paper");
    expect(await run(runJob, "layout")).toBe(first);
  });

  it("two at a time have a thread each", async () => {
    const runJob = jobsInThread(worker);
    const [one, other] = await Promise.all([run(runJob, "layout"), run(runJob, "layout")]);
    expect(one).not.toBe(other);
    expect([one, other]).toContain(await run(runJob, "layout"));
  });

  it("a job that is stopped ends with its thread, and the next has another", async () => {
    const runJob = jobsInThread(worker);
    const first = await run(runJob, "layout");
    const stopping = new AbortController();
    const stopped = run(runJob, "pdf", stopping.signal);
    stopping.abort();
    await expect(stopped).rejects.toThrow("The job was stopped.");
    expect(await run(runJob, "layout")).not.toBe(first);
  });

  it("a job stopped before it began begins not", async () => {
    await expect(run(jobsInThread(worker), "layout", AbortSignal.abort())).rejects.toThrow("The job was stopped.");
  });
});
