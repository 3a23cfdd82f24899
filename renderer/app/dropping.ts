import { isPacketFile, takePackets } from "../closeout/packets/takePackets.ts";
import { bringTraces } from "../trace/bringTraces.ts";
import { setTraces } from "../trace/traceHand.ts";
import { openAndShow } from "./files.ts";
import { base64Of, type ImportKind } from "./importing.ts";
import { type Session, showFault, tell } from "./session.ts";
import { besideShown } from "./sideRoom.ts";
import { words } from "./words.ts";

const listEnding = /\.(csv|tsv|txt|xlsx|geojson|json|kml|kmz|gpx)$/i;

/** Takes files dropped anywhere on the window: a list goes to the import, a route file is opened, traces are kept. */
export function listenForDrops(session: Session): () => void {
  const over = (event: DragEvent): void => {
    if (event.dataTransfer?.types.includes("Files")) event.preventDefault();
  };
  const drop = (event: DragEvent): void => {
    const files = [...(event.dataTransfer?.files ?? [])];
    if (files.length === 0) return;
    event.preventDefault();
    void takeDropped(session, files);
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
  if (/ground|terrain/i.test(fileName)) return "groundPoint";
  if (/structure|sign/i.test(fileName)) return "structure";
  if (/guy|anchor/i.test(fileName)) return "guy";
  if (/sag/i.test(fileName)) return "wireSag";
  if (/span/i.test(fileName)) return "spanPair";
  return /address|unit|house|home|premise/i.test(fileName) ? "livingUnit" : "pole";
}

async function takeDropped(session: Session, files: readonly File[]): Promise<void> {
  const [file] = files;
  if (!file) return;
  if (session.store.get() && (await isPacketFile(file))) {
    session.view.setState(besideShown("packets"));
    return takePackets(session, files);
  }
  const traces = files.filter((one) => /\.sor$/i.test(one.name));
  if (traces.length > 0 && session.store.get()) return takeTraces(session, traces);
  if (/\.strand$/i.test(file.name)) return openDropped(session, file);
  const refusal = refusalOf(session, file.name);
  if (refusal) return showFault(session, refusal);
  session.view.setState({ dropped: file, isImportOpen: true, isStartOpen: false, sheets: null });
}

async function takeTraces(session: Session, files: readonly File[]): Promise<void> {
  setTraces(session, { isOpen: true });
  session.view.setState({ isStartOpen: false, sheets: null });
  await bringTraces(session, files);
}

function refusalOf(session: Session, fileName: string) {
  if (!listEnding.test(fileName)) {
    return { code: "not-a-list", ...words.notAList, where: fileName };
  }
  if (session.store.get()) return null;
  return { code: "no-route", ...words.noRouteForList, where: fileName };
}

/** The desktop knows where a dropped file lies; a browser hands over its bytes only, and then it may be a copy that is opened. */
async function openDropped(session: Session, file: File): Promise<void> {
  if (window.strandwrightDesktop) return window.strandwrightDesktop.openDropped(file);
  const asked = session.host.call("files.openDropped", {
    fileName: file.name,
    contentBase64: await base64Of(file),
  });
  if (!(await openAndShow(session, asked))) return;
  const opened = await asked;
  if (opened.ok && opened.value.copyFolder !== null)
    tell(session, words.droppedCopy(file.name, opened.value.copyFolder));
}
