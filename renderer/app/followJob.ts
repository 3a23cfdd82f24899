import { ok, type Result } from "../../core/model/result.ts";
import { type Session, showFault, tell } from "./session.ts";
import { words } from "./words.ts";

/** How long work goes with edits, and with being stopped. */
type Ways = {
  /** True for work that would be wrong after an edit; edits wait for it. */
  readonly holdsEdits?: boolean;
  /** True for work that, when it is stopped, gives the best it has; all else gives nothing then, even where it had just ended. */
  readonly keepsItsBest?: boolean;
};

/**
 * Follows work of the host that can be stopped, one at a time.
 *
 * @returns null where it was refused or stopped, or other work is under way
 */
export async function follow<T>(
  session: Session,
  name: string,
  ask: (jobId: string) => Promise<Result<T>>,
  { holdsEdits = false, keepsItsBest = false }: Ways = {},
): Promise<T | null> {
  if (session.view.getState().job) return null;
  const jobId = crypto.randomUUID();
  const stop = keepsItsBest ? words.keepBest : words.cancel;
  session.view.setState({
    fault: null,
    job: { jobId, name, doneCount: 0, totalCount: 0, words: "", isCancelling: false, holdsEdits, stop },
  });
  const reply = await ask(jobId);
  const isCancelled = session.view.getState().job?.isCancelling ?? false;
  session.view.setState({ job: null });
  if (reply.ok && (keepsItsBest || !isCancelled)) return reply.value;
  if (isCancelled) tell(session, words.stopped(name));
  else if (!reply.ok) showFault(session, reply.fault);
  return null;
}

/**
 * Does work of the window itself in steps that can be cancelled between them.
 *
 * @param step  does the step of this index
 * @returns false where a step was refused or the work cancelled
 */
export async function followSteps(
  session: Session,
  name: string,
  count: number,
  step: (index: number) => Promise<Result<unknown>>,
): Promise<boolean> {
  const isDone = await follow(session, name, async () => {
    for (let index = 0; index < count; index += 1) {
      const done = await step(index);
      if (!done.ok) return done;
      const { job } = session.view.getState();
      if (!job || job.isCancelling) break;
      const how = { doneCount: index + 1, totalCount: count, words: words.sheetOf(index + 1, count) };
      session.view.setState({ job: { ...job, ...how } });
    }
    return ok(true);
  });
  return isDone ?? false;
}

/** Asks the host to stop the work under way: a layout keeps the best so far, all else leaves the file as it was. */
export async function cancelJob(session: Session): Promise<void> {
  const { job } = session.view.getState();
  if (!job) return;
  session.view.setState({ job: { ...job, isCancelling: true } });
  await session.host.call("job.cancel", { jobId: job.jobId });
}
