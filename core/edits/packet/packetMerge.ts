import type { BroughtPhoto, BroughtReading, PacketFile, ReadContent } from "../../closeout/packet/packetFile.ts";
import { readingText, saysSame } from "../../closeout/packet/readingText.ts";
import { unsoundWords } from "../../closeout/packet/unsoundWords.ts";
import { readingId, subjectKey, subjectOf } from "../../closeout/subject.ts";
import { type Route, settingsOf } from "../../model/route.ts";
import type { RowChange } from "../../model/rowChange.ts";
import { subjectAstray, subjectTag } from "../subjects.ts";
import { rowEdit } from "../tableRow.ts";

/** A picture that was looked at and kept: what it says of itself without its bytes. */
export type KeptPhoto = Omit<BroughtPhoto, "base64"> & { readonly keptHash: string };

/** What of a packet was not taken in: what it said, and why not. */
export type Refused = { readonly what: string; readonly why: string };

/** What bringing a packet back does to a route. */
export type PacketMerge = {
  readonly rows: readonly RowChange[];
  /** Readings and photos that stand now. */
  readonly takenCount: number;
  readonly photoCount: number;
  /** Readings and photos that stood already, or were brought before. */
  readonly alreadyCount: number;
  /** Readings that wait beside others for a person. */
  readonly rivalCount: number;
  readonly refused: readonly Refused[];
};

/** The id under which a packet's reading waits beside the one that stands: the same however often it is brought. */
export function rivalId(id: string, packetId: string): string {
  return `${id} ${packetId}`;
}

/**
 * Merges what a crew brought into a route.
 *
 * A reading is taken where what stood when the packet was written, or what the same page brought before, stands still; nothing is to be
 * done where the same stands already; else it waits as a rival of what stands, for a person to decide. Packets of several crews give
 * the same readings and the same rivals in any order, but for which of two disagreeing crews stands until the decision: the first brought.
 *
 * @param photos  of the packet, their bytes kept
 * @param wasBrought  whether the route has had this very reading before: it was replaced or decided since
 */
export function packetMerge(
  route: Route,
  file: Omit<PacketFile, "photos">,
  photos: readonly KeptPhoto[],
  wasBrought: (entry: BroughtReading, id: string) => boolean,
): PacketMerge {
  const seen = new Set<string>();
  const refused: Refused[] = file.unread.map((one) => ({
    what: `${one.label}: ${one.typed} (${one.by})`,
    why: "The page could not read it.",
  }));
  const rows: RowChange[] = [];
  const counts = { takenCount: 0, photoCount: 0, alreadyCount: 0, rivalCount: 0 };
  for (const entry of file.readings) {
    const id = idOf(entry);
    const why = whyNot(route, entry) ?? (seen.has(id) ? "The packet tells it twice." : null);
    seen.add(id);
    if (why !== null) refused.push({ what: told(route, entry), why });
    else {
      const { row, fate } = merged(route, entry, id, file.packetId, wasBrought);
      if (fate === "older") refused.push({ what: told(route, entry), why: "The same packet brought a later one." });
      else counts[fate] += 1;
      if (row) rows.push(row);
    }
  }
  for (const photo of photos) {
    const { row, why } = photoRow(route, photo);
    if (why !== null) refused.push({ what: `Photo of ${subjectTag(route, photo)}: ${photo.caption}`, why });
    else if (row && !seen.has(row.id)) {
      seen.add(row.id);
      counts.photoCount += 1;
      rows.push(row);
    } else counts.alreadyCount += 1;
  }
  return { rows, ...counts, refused };
}

function idOf({ kind, subjectId, port, alongId, what, wavelengthNm }: BroughtReading): string {
  return readingId(subjectOf(kind, subjectId, port, alongId), what, wavelengthNm);
}

function whyNot(route: Route, entry: BroughtReading): string | null {
  const astray = subjectAstray(route, entry);
  if (astray && !astray.ok) return `${astray.fault.what} It may have been removed since the packet was written.`;
  return unsoundWords(entry.what, entry.wavelengthNm, entry.after);
}

function told(route: Route, { after, ...entry }: BroughtReading): string {
  const { unitSystem } = settingsOf(route);
  return `${entry.what} of ${subjectTag(route, entry)}: ${readingText(entry.what, after, unitSystem)} (${after.by})`;
}

type Fate = "takenCount" | "alreadyCount" | "rivalCount" | "older";

function merged(
  route: Route,
  entry: BroughtReading,
  id: string,
  packetId: string,
  wasBrought: (entry: BroughtReading, id: string) => boolean,
): { readonly row: RowChange | null; readonly fate: Fate } {
  const { before, sent, after, ...asked } = entry;
  const present = route.reading.get(id) ?? null;
  if (saysSame(present, after)) return { row: null, fate: "alreadyCount" };
  const madeOn: readonly (ReadContent | null)[] = [before, ...sent];
  if (madeOn.some((one) => saysSame(one, present)))
    return { row: rowEdit("reading", present, { id, ...asked, ...after }), fate: "takenCount" };
  const waitingId = rivalId(id, packetId);
  const waiting = route.rivalReading.get(waitingId) ?? null;
  if (saysSame(waiting, after) || wasBrought(entry, id)) return { row: null, fate: "alreadyCount" };
  if (waiting !== null && waiting.atIso > after.atIso) return { row: null, fate: "older" };
  const rival = { id: waitingId, readingId: id, ...asked, ...after, packetId };
  return { row: rowEdit("rivalReading", waiting, rival), fate: "rivalCount" };
}

function photoRow(route: Route, photo: KeptPhoto): { readonly row: RowChange | null; readonly why: string | null } {
  const astray = subjectAstray(route, photo);
  if (astray && !astray.ok)
    return { row: null, why: `${astray.fault.what} It may have been removed since the packet was written.` };
  const id = `${subjectKey(photo)} ${photo.keptHash}`;
  if (route.photo.has(id)) return { row: null, why: null };
  return { row: rowEdit("photo", null, { id, ...photo }), why: null };
}
