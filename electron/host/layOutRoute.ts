import type { EditReply } from "../../core/contract/contract.ts";
import { applyChange } from "../../core/edits/change.ts";
import { findCommand } from "../../core/edits/register.ts";
import type { LayoutEnding } from "../../core/model/layoutRows.ts";
import { fail, ok, type Result } from "../../core/model/result.ts";
import type { RowChange } from "../../core/model/rowChange.ts";
import type { UnservedUnit } from "../../core/model/tables.ts";
import type { Progress } from "./drawingProgress.ts";
import type { RunJob } from "./jobs.ts";
import type { LimitWishes } from "./placementWatch.ts";
import type { Session } from "./session.ts";

/** A living unit the layout could not serve, by its address. */
type Unserved = Pick<UnservedUnit, "livingUnitId" | "kind" | "reason"> & { readonly address: string };

/** What the layout did, and what it left undone. */
export type LaidOut = {
  readonly edit: EditReply;
  readonly unserved: readonly Unserved[];
  /** Terminals and drops hung anew, at catalogue prices. */
  readonly cost: number;
  /** Proven: no choice of places and terminals costs less; null where fibers ran short. */
  readonly costBound: number | null;
  readonly ended: LayoutEnding;
  /** Spans without strand, by the tags of their poles: no line reaches them from the pole the cable comes from. */
  readonly unstrung: readonly { readonly fromTag: string; readonly toTag: string }[];
};

/** Where the layout starts, and how it is watched and stopped. */
export type LayoutWishes = {
  /** Tag of the pole the cable comes from; empty for the first pole of the main line. */
  readonly hubTag?: string;
  readonly limits?: LimitWishes;
  readonly onProgress?: (progress: Progress) => void;
  readonly signal?: AbortSignal;
};

/** Strings strand and cable where the route has none, then hangs terminals and gives out fibers and ports: one edit. */
export async function layOutRoute(
  session: Session,
  runJob: RunJob,
  wishes: LayoutWishes = {},
): Promise<Result<LaidOut>> {
  if (session.route().livingUnit.size === 0)
    return fail("no-units", "The route has nobody to serve.", session.fileName, "Bring in living units first.");
  const strung = stringLine(session, wishes.hubTag ?? "");
  if (!strung.ok) return strung;
  const onto = applyChange(session.route(), { rows: strung.value });
  if (!onto.ok) return onto;
  const { limits = {}, onProgress = () => {}, signal = new AbortController().signal } = wishes;
  const laidOut = await runJob("layout", { route: onto.value, limits }, onProgress, signal);
  if (!laidOut.ok) return laidOut;
  const taken = session.take("Lay out terminals", [...strung.value, ...laidOut.value.rows]);
  if (!taken.ok) return taken;
  const route = session.route();
  const unserved = laidOut.value.unserved.map(({ livingUnitId, kind, reason }) => ({
    livingUnitId,
    kind,
    address: route.livingUnit.get(livingUnitId)?.address ?? livingUnitId,
    reason,
  }));
  const tag = (poleId: string): string => route.pole.get(poleId)?.tag ?? poleId;
  const unstrung = [...route.span.values()]
    .filter((span) => span.strandSectionId === null)
    .map((span) => ({ fromTag: tag(span.fromPoleId), toTag: tag(span.toPoleId) }));
  const { cost, costBound, ended } = laidOut.value.summary;
  return ok({ edit: taken.value, unserved, cost, costBound, ended, unstrung });
}

function stringLine(session: Session, hubTag: string): Result<readonly RowChange[]> {
  const route = session.route();
  const hub = [...route.pole.values()].find((pole) => pole.tag === hubTag);
  if (hubTag !== "" && !hub) {
    return fail(
      "no-such-pole",
      "There is no pole with that tag.",
      hubTag,
      "Name the pole the cable comes from by its tag.",
    );
  }
  if (route.cable.size > 0) return ok([]);
  const command = findCommand("line.string");
  if (!command) throw new Error("the edit that strings the line is not registered");
  const { strandTypeId, opticalClassId } = session.plant.settings();
  const asked = command.ask(route, { strandTypeId, opticalClassId, cableTypeId: "", hubPoleId: hub?.id ?? "" });
  return asked.ok ? ok(asked.value.rows) : asked;
}
