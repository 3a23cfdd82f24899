import { applyChange } from "../../core/edits/change.ts";
import { findCommand } from "../../core/edits/register.ts";
import { fail, ok, type Result } from "../../core/model/result.ts";
import type { RowChange } from "../../core/model/rowChange.ts";
import type { RunJob } from "./jobs.ts";
import type { Session } from "./session.ts";

/** A living unit the layout could not serve, by its address. */
type Unserved = { readonly livingUnitId: string; readonly address: string; readonly reason: string };

/** What the layout left undone. */
export type LeftUndone = {
  readonly unserved: readonly Unserved[];
  /** Spans without strand, by the tags of their poles: no line reaches them from the pole the cable comes from. */
  readonly unstrung: readonly { readonly fromTag: string; readonly toTag: string }[];
};

/**
 * Strings strand and cable where the route has none, then hangs terminals and gives out fibers and ports. Both are worked out
 * before either is taken.
 *
 * @param hubTag  tag of the pole the cable comes from; empty for the first pole of the main line
 */
export async function layOutRoute(session: Session, runJob: RunJob, hubTag: string): Promise<Result<LeftUndone>> {
  if (session.route().livingUnit.size === 0)
    return fail("no-units", "The route has nobody to serve.", session.fileName, "Bring in living units first.");
  const strung = stringLine(session, hubTag);
  if (!strung.ok) return strung;
  const onto = applyChange(session.route(), strung.value);
  if (!onto.ok) return onto;
  const laidOut = await runJob("layout", { route: onto.value }, () => {}, new AbortController().signal);
  if (!laidOut.ok) return laidOut;
  for (const { label, rows } of [strung.value, { label: "Lay out terminals", rows: laidOut.value.rows }]) {
    const taken = session.take(label, rows);
    if (!taken.ok) return taken;
  }
  const route = session.route();
  const unserved = laidOut.value.unserved.map(({ livingUnitId, reason }) => ({
    livingUnitId,
    address: route.livingUnit.get(livingUnitId)?.address ?? livingUnitId,
    reason,
  }));
  const tag = (poleId: string): string => route.pole.get(poleId)?.tag ?? poleId;
  const unstrung = [...route.span.values()]
    .filter((span) => span.strandSectionId === null)
    .map((span) => ({ fromTag: tag(span.fromPoleId), toTag: tag(span.toPoleId) }));
  return ok({ unserved, unstrung });
}

type Asked = { readonly label: string; readonly rows: readonly RowChange[] };

function stringLine(session: Session, hubTag: string): Result<Asked> {
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
  if (route.cable.size > 0) return ok({ label: "", rows: [] });
  const command = findCommand("line.string");
  if (!command) throw new Error("the edit that strings the line is not registered");
  const { strandTypeId, opticalClassId } = session.plant.settings();
  return command.ask(route, { strandTypeId, opticalClassId, cableTypeId: "", hubPoleId: hub?.id ?? "" });
}
