import type { Reply } from "../../core/contract/contract.ts";
import type { Variant } from "../../core/edits/variantSteps.ts";
import { gapText } from "../../core/units/gapText.ts";
import { whatIfWords } from "../layout/whatIfWords.ts";
import { actionWords } from "./actions/words.ts";
import { carryOut, showEdit } from "./edits.ts";
import { follow } from "./followJob.ts";
import { fileOf, handOver } from "./handOver.ts";
import { openRouteOf, type Session, tell } from "./session.ts";
import { besideShown } from "./sideRoom.ts";
import { words } from "./words.ts";

/** Strings the line where there is none, and lays out terminals, fibers and ports over the route; pinned decisions stand. */
export async function layOut(session: Session): Promise<void> {
  const { routeId } = openRouteOf(session);
  const { layoutTimeS } = session.view.getState();
  const limit = layoutTimeS === null ? {} : { timeLimitS: layoutTimeS };
  const ask = (jobId: string) => session.host.call("layout.run", { routeId, jobId, ...limit });
  const reply = await follow(session, actionWords.layOut, ask, { holdsEdits: true, keepsItsBest: true });
  if (!reply) return;
  await showEdit(session, reply.edit);
  session.view.setState(besideShown("layout"));
  const { unserved, cost, costBound, ended } = reply;
  const gap = costBound === null ? words.gapUnknown : gapText(cost, costBound);
  tell(session, words.laidOut(unserved.length, gap, ended === "stopped"));
}

/** Lays the route out otherwise and changes nothing: how both layouts come out; null where that was refused. */
export async function tryLayout(session: Session, variant: Variant): Promise<Reply<"layout.try"> | null> {
  const { routeId } = openRouteOf(session);
  const { layoutTimeS } = session.view.getState();
  const limit = layoutTimeS === null ? {} : { timeLimitS: layoutTimeS };
  const ask = (jobId: string) => session.host.call("layout.try", { routeId, jobId, variant: { ...variant }, ...limit });
  const reply = await follow(session, whatIfWords.title, ask, { holdsEdits: true, keepsItsBest: true });
  if (reply) tell(session, whatIfWords.tried(reply.other.servedCount, reply.other.unitCount));
  return reply;
}

/** Takes a trial, whole or along chosen poles; true where it was taken. */
export async function takeTrial(
  session: Session,
  trialId: string,
  poleIds: readonly string[] | null,
): Promise<boolean> {
  const { routeId, route } = openRouteOf(session);
  const isTaken = await carryOut(session, "", () =>
    session.host.call("layout.take", { routeId, trialId, ...(poleIds === null ? {} : { poleIds }) }),
  );
  const lostCount = openRouteOf(session).route.unservedUnit.size - route.unservedUnit.size;
  if (isTaken && lostCount > 0) tell(session, whatIfWords.lost(lostCount));
  return isTaken;
}

/** Hands all that is delivered of a closed-out route to the person as one archive. */
export async function deliver(session: Session): Promise<void> {
  const { routeId } = openRouteOf(session);
  const ask = (jobId: string) => session.host.call("deliver.make", { routeId, jobId });
  const reply = await follow(session, actionWords.deliver, ask, { holdsEdits: true });
  if (!reply) return;
  handOver(reply.fileName, await fileOf(reply.contentBase64, "application/zip"));
  tell(session, words.delivered(reply.fileName));
}
