import { type LayoutDifference, layoutDifference } from "../../core/layout/layoutDifference.ts";
import { routeWith } from "../../core/layout/rowSet.ts";
import type { Route } from "../../core/model/route.ts";
import type { RowChange } from "../../core/model/rowChange.ts";
import { openRouteOf, type Session, showFault } from "../app/session.ts";

/** A trial as the diagram shows it beside the route it was tried on. */
export type ShownTrial = {
  readonly trialId: string;
  readonly route: Route;
  readonly difference: LayoutDifference;
};

/** Fetches what a trial has otherwise and puts it on the diagram, unless another was asked for meanwhile. */
export async function showTrial(
  session: Session,
  { trialId, route }: Pick<ShownTrial, "trialId" | "route">,
  isWanted: () => boolean,
): Promise<void> {
  const { routeId } = openRouteOf(session);
  const reply = await session.host.call("layout.trial", { routeId, trialId });
  if (!isWanted()) return;
  if (!reply.ok) return showFault(session, reply.fault);
  const rows = reply.value.rows as readonly RowChange[]; // the host's own rows, to be looked at and never written
  const difference = layoutDifference(route, routeWith(route, rows));
  session.view.setState({ trial: { trialId, route, difference } });
}
