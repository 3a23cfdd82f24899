import { readFileSync } from "node:fs";
import { basename } from "node:path";
import type { BroughtPhoto, BroughtReading } from "../../core/closeout/packet/packetFile.ts";
import { pictureKind } from "../../core/closeout/packet/pictureKind.ts";
import { readingMark } from "../../core/closeout/packet/readingMark.ts";
import { saysSame } from "../../core/closeout/packet/readingText.ts";
import { readPacketFile } from "../../core/closeout/packet/readPacketFile.ts";
import type { EditReply, Reply } from "../../core/contract/contract.ts";
import { packetMerge } from "../../core/edits/packet/packetMerge.ts";
import type { KeptPhoto, Refused } from "../../core/edits/packet/photoMerge.ts";
import { rivalId } from "../../core/edits/packet/readOfThing.ts";
import { subjectTag } from "../../core/edits/subjects.ts";
import { fail, ok, type Result, refused } from "../../core/model/result.ts";
import { keepFile } from "../../db/keptFiles.ts";
import { onDisk } from "../../db/sqliteFault.ts";
import { stoodBefore } from "../../db/stoodBefore.ts";
import type { Session } from "./session.ts";
import { wholePicture } from "./wholePicture.ts";

/** What a packet came to, and the edit it was taken in by. */
export type TakenPacket = { readonly told: Reply<"packet.take">; readonly edit: EditReply };

/**
 * Takes in what a crew brings back, as one edit; what cannot be taken is told with the reason.
 *
 * Faults: bad-packet, newer-packet, no-such-packet, and those of the disk. Nothing is changed then.
 */
export function takePacket(session: Session, fileName: string, text: string): Result<TakenPacket> {
  const shut = session.shut();
  if (shut) return refused(shut);
  const read = readPacketFile(text, fileName);
  if (!read.ok) return read;
  const { photos, ...file } = read.value;
  const packet = session.route().packet.get(file.packetId);
  if (!packet)
    return fail(
      "no-such-packet",
      `The packet was not given from this route: it is of ${file.routeName}, for ${file.crew}.`,
      fileName,
      "Open the route it was given from; where giving it was undone, redo that.",
    );
  const kept = onDisk(session.file.path, () => ok(keptPhotos(session, photos)));
  if (!kept.ok) return kept;
  const merge = packetMerge(session.route(), file, kept.value.photos, (entry, id) =>
    wasBrought(session, entry, id, file.packetId),
  );
  const { rows, ...counts } = merge;
  const label = `Take in packet ${packet.number} of ${packet.crew}: ${counts.takenCount} read, ${counts.rivalCount} beside others`;
  const done = session.take(label, rows);
  if (!done.ok) return done;
  const told = {
    ...counts,
    refused: [...kept.value.refused, ...counts.refused],
    number: packet.number,
    crew: packet.crew,
  };
  return ok({ told, edit: done.value });
}

/** Takes in a packet from a file of this machine. Faults: as above. */
export function takePacketFile(session: Session, path: string): Result<TakenPacket> {
  const text = onDisk(path, () => ok(readFileSync(path, "utf8")));
  return text.ok ? takePacket(session, basename(path), text.value) : text;
}

/** Photos that can be drawn, in the size they have, their bytes kept; of the others, what they were said to be. */
function keptPhotos(
  session: Session,
  photos: readonly BroughtPhoto[],
): { readonly photos: readonly KeptPhoto[]; readonly refused: readonly Refused[] } {
  const kept: KeptPhoto[] = [];
  const refusedPhotos: Refused[] = [];
  for (const { base64, ...photo } of photos) {
    const bytes = Buffer.from(base64, "base64");
    const head = wholePicture(bytes);
    if (head) {
      const { widthPx, heightPx } = head;
      kept.push({ ...photo, widthPx, heightPx, keptHash: keepFile(session.file.db, bytes) });
      continue;
    }
    const isNone = pictureKind(bytes) === null;
    refusedPhotos.push({
      what: `Photo of ${subjectTag(session.route(), photo)}: ${photo.caption}`,
      why: isNone ? "It is neither JPEG nor PNG." : "The picture is damaged: ask the crew to send it once more.",
    });
  }
  return { photos: kept, refused: refusedPhotos };
}

/** Whether the very reading stood or waited before, and was replaced or decided since. */
function wasBrought({ file: { db } }: Session, { after }: BroughtReading, id: string, packetId: string): boolean {
  const isIt = (row: Readonly<Record<string, unknown>>): boolean =>
    row.by === after.by &&
    row.atIso === after.atIso &&
    typeof row.text === "string" &&
    (typeof row.value === "number" || row.value === null) &&
    saysSame({ value: row.value, text: row.text }, after);
  return (
    stoodBefore(db, { table: "reading", id }, isIt) ||
    stoodBefore(db, { table: "rivalReading", id: rivalId(id, packetId, readingMark(after)) }, isIt)
  );
}
