import type { EditReply, Reply, Request } from "../../core/contract/contract.ts";
import { findCommand } from "../../core/edits/register.ts";
import { runSteps } from "../../core/edits/runSteps.ts";
import { type Variant, variantSteps } from "../../core/edits/variantSteps.ts";
import { poleRun } from "../../core/layout/poleRun.ts";
import { routeWith } from "../../core/layout/rowSet.ts";
import { type Layout, runLayout } from "../../core/layout/runLayout.ts";
import { fail, ok, type Result, refused } from "../../core/model/result.ts";
import type { RowChange } from "../../core/model/rowChange.ts";
import { layoutDigest } from "../../core/plant/layoutDigest.ts";
import { openPlant } from "../../core/plant/plant.ts";
import type { RunJob, Trial } from "./jobs.ts";
import type { LayoutWishes } from "./layOutRoute.ts";
import type { Session } from "./session.ts";

/** A trial as the host keeps it until the next one. */
export type KeptTrial = {
  readonly trialId: string;
  readonly variant: Variant;
  /** Edits of standards and prices, ahead of the layout's own. */
  readonly standards: readonly RowChange[];
  readonly trial: Trial;
};

/** Lays a route out under other standards, prices or models and changes nothing. */
export async function tryLayout(
  session: Session,
  runJob: RunJob,
  { variant, jobId }: Pick<Request<"layout.try">, "variant" | "jobId">,
  { limits = {}, onProgress = () => {}, signal = new AbortController().signal }: LayoutWishes,
): Promise<Result<{ readonly kept: KeptTrial; readonly reply: Reply<"layout.try"> }>> {
  const route = session.route();
  const unknown = [...(variant.modelIds ?? []), ...Object.keys(variant.modelCosts ?? {})].find(
    (id) => !route.terminalModel.has(id),
  );
  if (unknown !== undefined)
    return fail("missing-row", "The catalogue has no such terminal model.", unknown, "Choose one of the catalogue.");
  const done = runSteps(findCommand, route, variantSteps(route, variant));
  const [fault] = done.refused.values();
  if (fault) return refused(fault);
  const takes = { route, other: routeWith(route, done.rows), modelIds: variant.modelIds ?? null, limits };
  const tried = await runJob("trial", takes, onProgress, signal);
  if (!tried.ok) return tried;
  const { present, other, layout } = tried.value;
  const kept = { trialId: jobId, variant, standards: done.rows, trial: tried.value };
  return ok({
    kept,
    reply: { trialId: jobId, present, other, ended: layout.summary.ended, leftOut: leftOutOf(layout) },
  });
}

function leftOutOf({ unserved }: Layout): Reply<"layout.try">["leftOut"] {
  const byReason = new Map<string, { kind: (typeof unserved)[number]["kind"]; reason: string; count: number }>();
  for (const { kind, reason } of unserved) {
    const same = byReason.get(reason);
    byReason.set(reason, { kind, reason, count: (same?.count ?? 0) + 1 });
  }
  return [...byReason.values()].sort((a, b) => b.count - a.count);
}

/** The terminals and drops a trial has otherwise than the route it was tried on. */
export function shownRows({ trial }: KeptTrial): readonly RowChange[] {
  return trial.layout.rows.filter(({ table }) => table === "terminal" || table === "drop");
}

/** Takes a trial into the route as one edit: whole, with its standards and prices, or its terminals along a run of poles alone. */
export function takeTrial(session: Session, kept: KeptTrial, poleIds: readonly string[] | null): Result<EditReply> {
  if (poleIds === null) return session.take("Take the other layout", wholeRows(session, kept));
  const route = session.route();
  const plant = openPlant(route);
  const missing = poleIds.find((id) => !route.pole.has(id));
  if (missing !== undefined)
    return fail("missing-row", "There is no such pole.", missing, "Choose poles that are there.");
  const run = poleRun(plant, poleIds);
  const mixed = runLayout(route, { mix: { other: kept.trial.layout.placed, poleIds: run } });
  if (!mixed.ok) return mixed;
  const label = `Take the other layout along ${run.length} ${run.length === 1 ? "pole" : "poles"}`;
  return session.take(label, mixed.value.rows);
}

/** The trial's rows; models left out of it leave the catalogue where nothing hangs of them, so that its bound holds. */
function wholeRows(session: Session, { variant, standards, trial }: KeptTrial): readonly RowChange[] {
  const rows = [...standards, ...trial.layout.rows];
  if (!variant.modelIds) return rows;
  const after = routeWith(session.route(), rows);
  const hung = new Set([...after.terminal.values()].map((one) => one.terminalModelId));
  const leftOut = [...after.terminalModel.values()].filter((one) => !variant.modelIds?.includes(one.id));
  const gone = leftOut
    .filter((one) => !hung.has(one.id))
    .map((one): RowChange => {
      const before = session.route().terminalModel.get(one.id) ?? one;
      return { table: "terminalModel", id: one.id, before, after: null };
    });
  const others = rows.filter((row) => !gone.some((one) => one.table === row.table && one.id === row.id));
  const digest = layoutDigest(routeWith(after, gone));
  const isWhole = gone.length === leftOut.length;
  return [
    ...others.map((row): RowChange => {
      if (row.table !== "layoutRecord" || row.after === null) return row;
      return { ...row, after: isWhole ? { ...row.after, digest } : row.before };
    }),
    ...gone,
  ];
}
