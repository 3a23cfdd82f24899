import type { Reply } from "../../core/contract/contract.ts";
import type { Result } from "../../core/model/result.ts";
import type { PaperName } from "../../core/sheets/paper/paper.ts";
import { actionWords } from "./actions/words.ts";
import { follow, followSteps } from "./followJob.ts";
import { fileOf, handOver } from "./handOver.ts";
import { openRouteOf, type Session, tell } from "./session.ts";
import { words } from "./words.ts";

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
  handOver(reply.fileName, await fileOf(reply.pdfBase64, "application/pdf"));
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
  handOver(reply.fileName, await fileOf(reply.contentBase64, type));
  tell(session, words.picturesSaved(reply.fileName));
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
  const { sheets, drawnId, revision } = reply;
  session.view.setState({
    sheets,
    sheetsOf: { drawnId, route, revision, revisionId, paper, isWhole: only === null },
    isSettingsOpen: false,
  });
}

/** What stands on a sheet of the preview. */
export function readSheet(session: Session, number: string): Promise<Result<Reply<"draw.sheet">>> {
  const { routeId } = openRouteOf(session);
  const drawnId = session.view.getState().sheetsOf?.drawnId ?? "";
  return session.host.call("draw.sheet", { routeId, drawnId, number });
}

/**
 * Reads sheets of the preview to be printed, one after the other.
 *
 * @param take  is given each
 * @returns false where it was cancelled, or a sheet is no longer there
 */
export function readSheets(
  session: Session,
  numbers: readonly string[],
  take: (svg: string) => void,
): Promise<boolean> {
  return followSteps(session, words.printing, numbers.length, async (index) => {
    const sheet = await readSheet(session, numbers[index] ?? "");
    if (sheet.ok) take(sheet.value.svg);
    return sheet;
  });
}
