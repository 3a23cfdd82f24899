import type { Reply } from "../../core/contract/contract.ts";
import type { Variant } from "../../core/edits/variantSteps.ts";
import type { Result } from "../../core/model/result.ts";
import type { PaperName } from "../../core/sheets/paper.ts";
import { gapText } from "../../core/units/gapText.ts";
import { whatIfWords } from "../layout/whatIfWords.ts";
import { actionWords } from "./actions/words.ts";
import { carryOut, showEdit } from "./edits.ts";
import { bytesOf, handOver } from "./handOver.ts";
import { openRouteOf, type Session, showFault, tell } from "./session.ts";
import { besideShown } from "./sideRoom.ts";
import { words } from "./words.ts";

/** Strings the line where there is none, and lays out terminals, fibers and ports over the route; pinned decisions stand. */
export async function layOut(session: Session): Promise<void> {
  const { routeId } = openRouteOf(session);
  const { layoutTimeS } = session.view.getState();
  const limit = layoutTimeS === null ? {} : { timeLimitS: layoutTimeS };
  const ask = (jobId: string) => session.host.call("layout.run", { routeId, jobId, ...limit });
  const reply = await follow(session, actionWords.layOut, ask, words.keepBest);
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
  const reply = await follow(session, whatIfWords.title, ask, words.keepBest);
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

/**
 * Draws the set, of the revision and on the paper of the preview where one is shown, and hands the PDF to the person as a download.
 *
 * @param sheets  numbers of the sheets wanted; null draws the whole set
 */
export async function drawSet(session: Session, sheets: readonly string[] | null = null): Promise<void> {
  const { routeId } = openRouteOf(session);
  const { sheets: shown, sheetsOf } = session.view.getState();
  const { revisionId = null, paper = null } = (shown === null ? null : sheetsOf) ?? {};
  const drawn = asked({ revisionId, only: sheets, paper });
  const reply = await follow(session, actionWords.drawSet, (jobId) =>
    session.host.call("draw.pdf", { routeId, jobId, ...drawn }),
  );
  if (!reply) return;
  if (window.strandwrightDesktop) {
    await window.strandwrightDesktop.showDrawn(reply);
    return tell(session, words.setInViewer(reply.fileName));
  }
  handOver(reply.fileName, new Blob([bytesOf(reply.pdfBase64)], { type: "application/pdf" }));
  tell(session, words.setSaved(reply.fileName));
}

/** Hands sheets of the preview to the person as PNG: one as a picture, several as an archive of them. */
export async function saveSheetPictures(session: Session, sheets: readonly string[]): Promise<void> {
  const { routeId } = openRouteOf(session);
  const { revisionId = null, paper = null } = session.view.getState().sheetsOf ?? {};
  const reply = await follow(session, words.savingPictures, (jobId) =>
    session.host.call("draw.pictures", { routeId, jobId, ...asked({ revisionId, only: sheets, paper }) }),
  );
  if (!reply) return;
  const type = reply.fileName.endsWith(".zip") ? "application/zip" : "image/png";
  handOver(reply.fileName, new Blob([bytesOf(reply.contentBase64)], { type }));
  tell(session, words.picturesSaved(reply.fileName));
}

/** Hands all that is delivered of a closed-out route to the person as one archive. */
export async function deliver(session: Session): Promise<void> {
  const { routeId } = openRouteOf(session);
  const reply = await follow(session, actionWords.deliver, (jobId) =>
    session.host.call("deliver.make", { routeId, jobId }),
  );
  if (!reply) return;
  handOver(reply.fileName, new Blob([bytesOf(reply.contentBase64)], { type: "application/zip" }));
  tell(session, words.delivered(reply.fileName));
}

/** What is drawn: null stands for the route as it stands, the whole set, the company's paper. */
type ToDraw = {
  /** The revision as it was issued. */
  readonly revisionId: string | null;
  /** Numbers, kinds or keys of the sheets. */
  readonly only: readonly string[] | null;
  readonly paper: PaperName | null;
};

function asked({ revisionId, only, paper }: ToDraw) {
  return {
    ...(revisionId === null ? {} : { revisionId }),
    ...(only === null ? {} : { sheets: only }),
    ...(paper === null ? {} : { paper }),
  };
}

/** Shows the sheets as they will print, in place of the diagram. */
export async function previewSheets(session: Session, wanted: Partial<ToDraw> = {}): Promise<void> {
  const { revisionId = null, only = null, paper = null } = wanted;
  const { routeId, route } = openRouteOf(session);
  const reply = await follow(session, actionWords.previewSheets, (jobId) =>
    session.host.call("draw.sheets", { routeId, jobId, ...asked({ revisionId, only, paper }) }),
  );
  if (!reply) return;
  const { sheets, revision } = reply;
  session.view.setState({
    sheets,
    sheetsOf: { route, revision, revisionId, paper, isWhole: only === null },
    isSettingsOpen: false,
  });
}

/** Asks the host to stop the work under way: a layout keeps the best so far, all else leaves the file as it was. */
export async function cancelJob(session: Session): Promise<void> {
  const { job } = session.view.getState();
  if (!job) return;
  session.view.setState({ job: { ...job, isCancelling: true } });
  await session.host.call("job.cancel", { jobId: job.jobId });
}

async function follow<T>(
  session: Session,
  name: string,
  ask: (jobId: string) => Promise<Result<T>>,
  stop: string = words.cancel,
): Promise<T | null> {
  if (session.view.getState().job) return null;
  const jobId = crypto.randomUUID();
  session.view.setState({
    fault: null,
    job: { jobId, name, doneCount: 0, totalCount: 0, words: "", isCancelling: false, stop },
  });
  const reply = await ask(jobId);
  const isCancelled = session.view.getState().job?.isCancelling ?? false;
  session.view.setState({ job: null });
  if (reply.ok) return reply.value;
  if (isCancelled) tell(session, words.stopped(name));
  else showFault(session, reply.fault);
  return null;
}
