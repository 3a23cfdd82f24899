import type { BroughtReading, PacketFile } from "../../closeout/packet/packetFile.ts";
import { readingMark } from "../../closeout/packet/readingMark.ts";
import { readingText, saysSame } from "../../closeout/packet/readingText.ts";
import { unsoundWords } from "../../closeout/packet/unsoundWords.ts";
import { readingId, subjectOf } from "../../closeout/subject.ts";
import { type Route, settingsOf } from "../../model/route.ts";
import type { RowChange } from "../../model/rowChange.ts";
import type { Row } from "../../model/tables.ts";
import { acceptedOf } from "../acceptedOf.ts";
import { sameRow } from "../sameRow.ts";
import { subjectAstray, subjectTag } from "../subjects.ts";
import { rowEdit } from "../tableRow.ts";
import { type KeptPhoto, mergedPhotos, type Refused } from "./photoMerge.ts";
import { marksText, type ReadOfThing, rivalId, withBrought } from "./readOfThing.ts";

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

/**
 * Merges what a crew brought into a route.
 *
 * A reading is taken where what stood when the packet was written, or what the same page brought before, stands still. Where another crew
 * reads otherwise neither stands any longer: both wait for a person. Packets of several crews give the same rows in any order.
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
  const counts = { takenCount: 0, alreadyCount: 0, rivalCount: 0 };
  const waiting = new Map<string, Row<"rivalReading">[]>();
  for (const one of route.rivalReading.values())
    waiting.set(one.readingId, [...(waiting.get(one.readingId) ?? []), one]);
  for (const entry of file.readings) {
    const id = idOf(entry);
    const why = whyNot(route, entry) ?? (seen.has(id) ? "The packet tells it twice." : null);
    seen.add(id);
    if (why !== null) refused.push({ what: told(route, entry), why });
    else {
      const now = { standing: route.reading.get(id) ?? null, rivals: waiting.get(id) ?? [] };
      const brought = rivalOf(entry, id, file.packetId);
      const isHere = isThere(now, brought);
      const next = !isHere && wasBrought(entry, id) ? now : withBrought(now, brought);
      rows.push(...editsBetween(route, now, next));
      if (!isHere && next !== now && !isThere(next, brought))
        refused.push({ what: told(route, entry), why: "A later reading was made on it." });
      else counts[fateOf(now, next, brought)] += 1;
    }
  }
  const pictures = mergedPhotos(route, photos);
  return {
    rows: [...rows, ...pictures.rows],
    ...counts,
    photoCount: pictures.photoCount,
    alreadyCount: counts.alreadyCount + pictures.alreadyCount,
    refused: [...refused, ...pictures.refused],
  };
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

function rivalOf(entry: BroughtReading, readingId: string, packetId: string): Row<"rivalReading"> {
  const { before, sent, after, ...asked } = entry;
  const mark = readingMark(after);
  // a page written again carries what came in since; what was typed into it before was not made on that
  const known = [...(before ? [before] : []), ...sent].filter((one) => one.atIso < after.atIso);
  const madeOn = marksText(known.map(readingMark));
  return { id: rivalId(readingId, packetId, mark), readingId, ...asked, ...after, packetId, madeOn };
}

/** Whether the very reading stands or waits. */
function isThere({ standing, rivals }: ReadOfThing, brought: Row<"rivalReading">): boolean {
  const stands = standing?.packetId === brought.packetId && readingMark(standing) === readingMark(brought);
  return stands || rivals.some((one) => one.id === brought.id);
}

function fateOf(
  now: ReadOfThing,
  next: ReadOfThing,
  brought: Row<"rivalReading">,
): "takenCount" | "alreadyCount" | "rivalCount" {
  if (saysSame(now.standing, brought) || next === now || isThere(now, brought)) return "alreadyCount";
  return saysSame(next.standing, brought) ? "takenCount" : "rivalCount";
}

function editsBetween(route: Route, now: ReadOfThing, next: ReadOfThing): readonly RowChange[] {
  const rivalsNow = new Map(now.rivals.map((one) => [one.id, one]));
  const rivalsNext = new Map(next.rivals.map((one) => [one.id, one]));
  const ids = [...new Set([...rivalsNow.keys(), ...rivalsNext.keys()])];
  const edits = [
    rowEdit("reading", now.standing, next.standing),
    ...ids.map((id) => rowEdit("rivalReading", rivalsNow.get(id) ?? null, rivalsNext.get(id) ?? null)),
  ].filter((one) => !sameRow(one.before, one.after));
  const isOther = now.standing !== null && !saysSame(now.standing, next.standing);
  return isOther ? [...edits, ...acceptedOf(route, now.standing.id)] : edits;
}
