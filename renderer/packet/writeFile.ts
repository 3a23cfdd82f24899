import type { BroughtPhoto, BroughtReading, PacketFile } from "../../core/closeout/packet/packetFile.ts";
import { packetFormat, packetVersion } from "../../core/closeout/packet/packetFormat.ts";
import { subjectOf } from "../../core/closeout/subject.ts";
import { judge } from "./judge.ts";
import type { PacketState } from "./packetState.ts";
import type { PagePhoto } from "./photoKeeping.ts";

/** Everything that was put into the page as the file that goes back to the office. */
export async function packetFileOf(state: PacketState, photos: readonly PagePhoto[]): Promise<PacketFile> {
  const { sheet } = state;
  const readings: BroughtReading[] = [];
  const unread: PacketFile["unread"] = [];
  for (const asked of state.asked) {
    const typed = state.typed(asked);
    if (typed === null) continue;
    const signed = { by: typed.by || state.who(), atIso: typed.atIso };
    const judged = judge(asked, typed.text, sheet.unitSystem);
    if (judged.kind === "bad") unread.push({ label: asked.label, typed: typed.text.slice(0, 2000), ...signed });
    if (judged.kind !== "good" && judged.kind !== "far") continue;
    const { kind, subjectId, port, alongId, what, wavelengthNm, before } = asked;
    readings.push({
      kind,
      subjectId,
      port,
      alongId,
      what,
      wavelengthNm,
      before,
      sent: [...state.sent(asked)],
      after: { ...judged.content, ...signed },
    });
  }
  return {
    format: packetFormat,
    version: packetVersion,
    packetId: sheet.packetId,
    routeName: sheet.routeName,
    crew: sheet.crew,
    readings,
    unread,
    photos: await Promise.all(photos.map((one) => broughtPhoto(one, state.who()))),
  };
}

/** Remembers what a file said, so that a correction sent later is known as one. */
export function noteSent(state: PacketState, { readings }: PacketFile): void {
  for (const { after, ...read } of readings) {
    const asked = state.asked.find(
      (one) =>
        one.kind === read.kind &&
        one.subjectId === read.subjectId &&
        one.port === read.port &&
        one.alongId === read.alongId &&
        one.what === read.what &&
        one.wavelengthNm === read.wavelengthNm,
    );
    if (asked) state.noteSent(asked, after);
  }
}

async function broughtPhoto(photo: PagePhoto, who: string): Promise<BroughtPhoto> {
  const { terminalId, moment, caption, widthPx, heightPx, by, atIso, bytes } = photo;
  const said = { moment, caption, widthPx, heightPx, by: by || who, atIso };
  return { ...subjectOf("terminal", terminalId), ...said, base64: await base64Of(bytes) };
}

function base64Of(bytes: Blob): Promise<string> {
  return new Promise((resolve, reject) => {
    const reader = new FileReader();
    reader.onload = () => resolve(String(reader.result).replace(/^[^,]*,/, ""));
    reader.onerror = () => reject(reader.error);
    reader.readAsDataURL(bytes);
  });
}
