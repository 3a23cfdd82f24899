import { fail, ok, type Result } from "../../core/model/result.ts";
import type { RunJob } from "./jobs.ts";
import type { Session } from "./session.ts";

/** A living unit the layout could not serve, by its address. */
export type Unserved = { readonly livingUnitId: string; readonly address: string; readonly reason: string };

/**
 * Strings strand and cable where the route has none, then hangs terminals and gives out fibers and ports.
 *
 * @param hubTag  tag of the pole the cable comes from; empty for the first pole of the main line
 */
export async function layOutRoute(
  session: Session,
  runJob: RunJob,
  hubTag: string,
): Promise<Result<{ readonly unserved: readonly Unserved[] }>> {
  const strung = stringLine(session, hubTag);
  if (!strung.ok) return strung;
  const laidOut = await runJob("layout", { route: session.route() }, () => {}, new AbortController().signal);
  if (!laidOut.ok) return laidOut;
  const taken = session.take("Lay out terminals", laidOut.value.rows);
  if (!taken.ok) return taken;
  const unserved = laidOut.value.unserved.map(({ livingUnitId, reason }) => ({
    livingUnitId,
    address: session.route().livingUnit.get(livingUnitId)?.address ?? livingUnitId,
    reason,
  }));
  return ok({ unserved });
}

function stringLine(session: Session, hubTag: string): Result<unknown> {
  const route = session.route();
  if (route.cable.size > 0) return ok(null);
  const hub = [...route.pole.values()].find((pole) => pole.tag === hubTag);
  if (hubTag !== "" && !hub) {
    return fail(
      "no-such-pole",
      "There is no pole with that tag.",
      hubTag,
      "Name the pole the cable comes from by its tag.",
    );
  }
  const { strandTypeId, opticalClassId } = session.plant.settings();
  return session.run("line.string", { strandTypeId, opticalClassId, cableTypeId: "", hubPoleId: hub?.id ?? "" });
}
