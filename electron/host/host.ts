import { basename } from "node:path";
import type { EditReply, HostEvent, Request } from "../../core/contract/contract.ts";
import { fail, ok, type Result, refused } from "../../core/model/result.ts";
import { tableNames } from "../../core/model/tables.ts";
import { closeoutHandlers } from "./closeoutHandlers.ts";
import { deliveryOf } from "./delivery.ts";
import { drawHandlers } from "./drawHandlers.ts";
import { exportHandlers } from "./exportFile.ts";
import { type FilePlaces, openFileService } from "./fileHandlers.ts";
import { historyHandlers } from "./historyHandlers.ts";
import { type ChosenFile, importLabel, importReply, planFile } from "./importFile.ts";
import type { RunJob } from "./jobs.ts";
import { layOutRoute } from "./layOutRoute.ts";
import { machineHandlers } from "./machineHandlers.ts";
import { revisionHandlers } from "./revisionHandlers.ts";
import { type Call, type Handlers, serve } from "./serve.ts";
import type { Session } from "./session.ts";
import { settingsHandlers } from "./settingsHandlers.ts";
import { type KeptTrial, shownRows, takeTrial, tryLayout } from "./tryLayout.ts";
import { wayHandlers } from "./wayHandlers.ts";

/** The service behind the contract, whichever door it is reached through. */
export type Host = {
  readonly call: Call;
  readonly on: (listener: (event: HostEvent) => void) => () => void;
  /** Adds an open route; answers with the id the contract names it by. */
  readonly add: (session: Session) => string;
  readonly close: () => void;
};

export type HostOptions = {
  readonly runJob: RunJob;
  readonly report: (error: unknown) => void;
  /** Where files may be found and kept; without it only the routes the door adds are there. */
  readonly files?: FilePlaces;
};

/** A host with no route open yet. */
export function openHost({ runJob, report, files }: HostOptions): Host {
  const sessions = new Map<string, Session>();
  const jobs = new Map<string, AbortController>();
  /** The latest trial layout of each route. */
  const trials = new WeakMap<Session, KeptTrial>();
  const listeners = new Set<(event: HostEvent) => void>();
  const say = (event: HostEvent): void => {
    if (event.kind === "edited") fileService.edited(event.routeId);
    for (const listener of listeners) listener(event);
  };
  let addedCount = 0;
  const add = (session: Session): string => {
    addedCount += 1;
    const routeId = `route-${addedCount}`;
    sessions.set(routeId, session);
    fileService.opened(routeId, session);
    say({ kind: "routes" });
    return routeId;
  };
  const fileService = openFileService({ sessions, add, say }, files ?? null, runJob);

  const withRoute = async <T>(
    routeId: string,
    work: (session: Session) => Result<T> | Promise<Result<T>>,
  ): Promise<Result<T>> => {
    const session = sessions.get(routeId);
    return session ? work(session) : fail("no-such-route", "That route is not open.", routeId, "Open the file again.");
  };
  const withTrial = <T>(
    routeId: string,
    trialId: string,
    work: (session: Session, kept: KeptTrial) => Result<T>,
  ): Promise<Result<T>> =>
    withRoute(routeId, (session) => {
      const kept = trials.get(session);
      if (kept?.trialId === trialId) return work(session, kept);
      return fail("no-trial", "That trial is no longer kept.", trialId, "Try the layout again.");
    });
  /** An edit that was carried out is told to every window. */
  const told = (routeId: string, done: Result<EditReply>): Result<EditReply> => {
    if (done.ok) say({ kind: "edited", routeId, edit: done.value });
    return done;
  };
  const asJob = async <T>(
    jobId: string,
    work: (
      signal: AbortSignal,
      onProgress: (progress: { doneCount: number; totalCount: number; words: string }) => void,
    ) => Promise<T>,
  ): Promise<T | Result<never>> => {
    const control = new AbortController();
    jobs.set(jobId, control);
    try {
      return await work(control.signal, (progress) => say({ kind: "progress", jobId, ...progress }));
    } catch (error) {
      if (control.signal.aborted)
        return fail("stopped", "The work was stopped.", jobId, "Start it again when you want it.");
      throw error;
    } finally {
      jobs.delete(jobId);
    }
  };

  const handlers: Handlers = {
    "route.list": () =>
      ok({
        routes: [...sessions].map(([routeId, session]) => ({
          routeId,
          fileName: session.fileName,
          routeName: session.plant.settings().routeName,
        })),
      }),
    "route.read": ({ routeId }) =>
      withRoute(routeId, (session) =>
        ok({
          fileName: session.fileName,
          tables: Object.fromEntries(tableNames.map((name) => [name, [...session.route()[name].values()]])),
          findings: session.findings(),
          history: session.history(),
        }),
      ),
    "edit.run": ({ routeId, commandId, input, gestureId }) =>
      withRoute(routeId, (session) => told(routeId, session.run(commandId, input, gestureId))),
    "edit.undo": ({ routeId }) => withRoute(routeId, (session) => told(routeId, session.undo())),
    "edit.redo": ({ routeId }) => withRoute(routeId, (session) => told(routeId, session.redo())),
    "import.plan": (request) =>
      withRoute(request.routeId, async (session) => {
        const planned = await planFile(session.route(), chosenFile(request), request.choices);
        return planned.ok ? ok(importReply(request.choices.kind, planned.value)) : planned;
      }),
    "import.take": (request) =>
      withRoute(request.routeId, async (session) => {
        const planned = await planFile(session.route(), chosenFile(request), request.choices);
        if (!planned.ok) return planned;
        const { plan, problem } = planned.value;
        if (problem !== null) return refused(problem);
        const label = importLabel(request.choices.kind, request.fileName);
        const done = told(request.routeId, session.take(label, plan.rows));
        return done.ok ? ok(importReply(request.choices.kind, planned.value)) : done;
      }),
    "layout.run": ({ routeId, jobId, timeLimitS }) =>
      withRoute(routeId, (session) =>
        asJob(jobId, async (signal, onProgress) => {
          const laidOut = await layOutRoute(session, runJob, {
            limits: timeLimitS === undefined ? {} : { timeLimitS },
            onProgress,
            signal,
          });
          if (!laidOut.ok) return laidOut;
          told(routeId, ok(laidOut.value.edit));
          return laidOut;
        }),
      ),
    "layout.try": ({ routeId, timeLimitS, ...asked }) =>
      withRoute(routeId, (session) =>
        asJob(asked.jobId, async (signal, onProgress) => {
          const limits = timeLimitS === undefined ? {} : { timeLimitS };
          const tried = await tryLayout(session, runJob, asked, { limits, onProgress, signal });
          if (!tried.ok) return tried;
          trials.set(session, tried.value.kept);
          return ok(tried.value.reply);
        }),
      ),
    "layout.trial": ({ routeId, trialId }) =>
      withTrial(routeId, trialId, (_session, kept) => ok({ rows: shownRows(kept) })),
    "layout.take": ({ routeId, trialId, poleIds }) =>
      withTrial(routeId, trialId, (session, kept) => told(routeId, takeTrial(session, kept, poleIds ?? null))),
    ...drawHandlers({ withRoute, asJob, runJob }),
    "deliver.make": ({ routeId, jobId }) =>
      withRoute(routeId, (session) =>
        asJob(jobId, async (signal, onProgress) => {
          const files = await deliveryOf(session, runJob, { onProgress, signal });
          if (!files.ok) return files;
          const fileName = `${basename(session.fileName, ".strand")} delivery.zip`;
          const archive = await runJob("archive", { files: files.value }, onProgress, signal);
          return ok({ fileName, contentBase64: Buffer.from(archive).toString("base64") });
        }),
      ),
    ...fileService.handlers,
    ...exportHandlers({ withRoute }),
    ...machineHandlers(files?.configFolder ?? null),
    ...historyHandlers({ withRoute }),
    ...revisionHandlers({ withRoute }),
    ...closeoutHandlers({ withRoute, told, runJob }),
    ...wayHandlers({ withRoute, configFolder: files?.configFolder ?? null }),
    ...settingsHandlers({ withRoute, told, configFolder: files?.configFolder ?? null }),
    "job.cancel": ({ jobId }) => {
      const job = jobs.get(jobId);
      job?.abort();
      return ok({ cancelled: job !== undefined });
    },
  };

  return {
    call: serve(handlers, report),
    on(listener) {
      listeners.add(listener);
      return () => listeners.delete(listener);
    },
    add,
    close() {
      for (const job of jobs.values()) job.abort();
      for (const session of sessions.values()) session.close();
      sessions.clear();
    },
  };
}

function chosenFile(request: Request<"import.plan">): ChosenFile {
  return { name: request.fileName, bytes: Buffer.from(request.contentBase64, "base64") };
}
