import { Unzip, unzipSync } from "fflate";
import { fail, ok, type Result } from "../../../core/model/result.ts";
import { archiveChecksums, crc32 } from "./archiveChecksums.ts";
import { unpackPieces } from "./unpackPieces.ts";

/**
 * The part of an archive that is its KML: the first at its root, else the first in a folder. Null where there is none, or where the
 * bytes are no archive.
 *
 * @source OGC 07-147r2, KML 2.2, annex on KMZ; from memory
 */
export function kmlPart(bytes: Uint8Array): string | null {
  const names: string[] = [];
  try {
    unzipSync(bytes, {
      filter({ name }) {
        if (/\.kml$/i.test(name)) names.push(name);
        return false;
      },
    });
  } catch {
    return null;
  }
  return names.find((name) => !name.includes("/")) ?? names[0] ?? null;
}

/**
 * The bytes of the KML of a KMZ archive. Refuses with "not-kmz" where there is none that can be unpacked, with "too-large" where it
 * unpacks to more than can be read: a few kilobytes can be gigabytes.
 *
 * @param name  name of the file, for messages
 * @param part  as kmlPart tells it
 * @param largestUnpackedBytes  most that it may come to
 */
export function unpackKmz(
  name: string,
  bytes: Uint8Array,
  part: string | null,
  largestUnpackedBytes: number,
): Result<Uint8Array> {
  if (part === null) return notKmz(name, "There is no KML in the archive, or it is damaged.");
  const pieces: Uint8Array[] = [];
  let unpackedBytes = 0;
  let isWhole = false;
  let checksum = 0;
  const unzip = new Unzip((entry) => {
    if (entry.name !== part || unpackedBytes > 0) return;
    entry.ondata = (fault, piece, isLast) => {
      unpackedBytes += piece?.length ?? 0;
      if (unpackedBytes > largestUnpackedBytes) return entry.terminate();
      if (piece) {
        pieces.push(piece);
        checksum = crc32(piece, checksum);
      }
      isWhole ||= isLast && !fault;
    };
    entry.start();
  });
  if (!unpackPieces(unzip, bytes, () => isWhole || unpackedBytes > largestUnpackedBytes))
    return notKmz(name, "The archive is damaged or locked by a password.");
  if (unpackedBytes > largestUnpackedBytes)
    return fail(
      "too-large",
      "The archive unpacks to more than can be read.",
      name,
      "Cut it to the area of this route.",
    );
  if (!isWhole || checksum !== archiveChecksums(bytes).get(part))
    return notKmz(name, "The archive is damaged or cut off.");
  return ok(Buffer.concat(pieces));
}

function notKmz(name: string, what: string): Result<Uint8Array> {
  return fail("not-kmz", what, name, "Save it again as KMZ, or as KML.");
}
