import { openAndShow } from "./files.ts";
import type { ImportKind } from "./importing.ts";
import { type Session, showFault } from "./session.ts";

const listEnding = /\.(csv|tsv|txt|xlsx|geojson|json)$/i;

/** Takes files dropped anywhere on the window: a list goes to the import, a route file is opened. */
export function listenForDrops(session: Session): () => void {
  const over = (event: DragEvent): void => {
    if (event.dataTransfer?.types.includes("Files")) event.preventDefault();
  };
  const drop = (event: DragEvent): void => {
    const file = event.dataTransfer?.files[0];
    if (!file) return;
    event.preventDefault();
    void takeDropped(session, file);
  };
  window.addEventListener("dragover", over);
  window.addEventListener("drop", drop);
  return () => {
    window.removeEventListener("dragover", over);
    window.removeEventListener("drop", drop);
  };
}

/** What a list most likely holds, by its file's name. */
export function kindOfName(fileName: string): ImportKind {
  if (/attach/i.test(fileName)) return "attachment";
  if (/cross/i.test(fileName)) return "crossing";
  if (/span/i.test(fileName)) return "spanPair";
  return /address|unit|house|home|premise/i.test(fileName) ? "livingUnit" : "pole";
}

async function takeDropped(session: Session, file: File): Promise<void> {
  if (/\.strand$/i.test(file.name)) return openDropped(session, file.name);
  const refusal = refusalOf(session, file.name);
  if (refusal) return showFault(session, refusal);
  session.view.setState({ dropped: file, isImportOpen: true, isStartOpen: false, sheets: null });
}

function refusalOf(session: Session, fileName: string) {
  if (!listEnding.test(fileName)) {
    const mend = "Drop a CSV, XLSX or GeoJSON list, or a route file.";
    return { code: "not-a-list", what: "That kind of file cannot be taken in.", where: fileName, mend };
  }
  if (session.store.get()) return null;
  const mend = "Open a route or start a new one, then drop the list again.";
  return { code: "no-route", what: "There is no route to take the list into.", where: fileName, mend };
}

/** A page is told a dropped file's name and not its place, so a route file is opened where the program knows it lies. */
async function openDropped(session: Session, fileName: string): Promise<void> {
  const start = await session.host.call("files.start", {});
  const known = start.ok ? start.value.recent.filter((one) => one.fileName === fileName && !one.isMissing) : [];
  const [only] = known;
  if (only && known.length === 1) {
    await openAndShow(session, session.host.call("files.openRecent", { recentId: only.recentId }));
    return;
  }
  session.view.setState({ isStartOpen: true });
  const what = "A dropped route file does not say where it lies.";
  showFault(session, { code: "no-place", what, where: fileName, mend: "Choose it in the list of folders here." });
}
