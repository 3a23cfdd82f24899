import { fail, ok, type Result } from "../model/result.ts";
import { BlockEnd, type ByteReader, openBytes } from "./byteReader.ts";
import { traceChecksum } from "./checksum.ts";
import { readEvents, readFixed, readGeneral, readPoints, readSupplier } from "./readBlocks.ts";
import { type Damage, distanceM, type Trace, type TraceChecksum, type TraceEvent, type TracePoints } from "./trace.ts";
import { readMap, type TraceMap } from "./traceMap.ts";

/** Group index taken where the file's own cannot be read: common single-mode fiber at 1310 nm. */
const usualGroupIndex = 1.468;

/** Blocks the layout knows; all others are a maker's own. `LnkParams` is known and left unread: its layout could not be found. */
const known = ["GenParams", "SupParams", "FxdParams", "KeyEvents", "LnkParams", "DataPts", "Cksum"];

/**
 * Reads a reflectometer's file (SR-4731, issue 1 and 2). Each block by itself: one that is damaged is told in `damages`, and the others are
 * read nevertheless.
 *
 * @param bytes  the whole file
 * @returns a fault with code `not-a-trace` where the file does not begin as such a file does
 */
export function readTrace(bytes: Uint8Array): Result<Trace> {
  const map = readMap(bytes);
  if (!map)
    return fail(
      "not-a-trace",
      "This is no reflectometer file: it does not begin with the map of one.",
      "the file's first bytes",
      "Choose a file that the instrument saved in the standard layout, .sor.",
    );
  const damages: Damage[] = [...map.damages];
  const read = <T>(name: string, take: (reader: ByteReader) => T): T | null => readBlock(map, damages, name, take);

  const general = read("GenParams", (reader) => readGeneral(reader, map.isIssue2));
  const supplier = read("SupParams", readSupplier);
  const fixed = read("FxdParams", (reader) => readFixed(reader, map.isIssue2));
  const hasIndex = fixed !== null && fixed.groupIndex > 1;
  const groupIndex = hasIndex ? fixed.groupIndex : usualGroupIndex;
  if (!hasIndex)
    damages.push({ block: "FxdParams", what: `no group index could be read: distances are by ${usualGroupIndex}` });
  const events: TraceEvent[] = [];
  const link = read("KeyEvents", (reader) =>
    readEvents(reader, { isIssue2: map.isIssue2, groupIndex }, (event) => events.push(event)),
  );
  const points = read("DataPts", (reader) => pointsOf(reader, distanceM(fixed?.spacingS ?? 0, groupIndex), damages));
  const checksum = read("Cksum", (reader) => checksumOf(bytes, reader.u16()));
  return ok({
    version: map.version,
    general,
    supplier,
    fixed,
    events,
    link,
    points,
    checksum: checksum ?? { stored: null, computed: null, fits: false },
    otherBlocks: [...map.blocks.keys()].filter((name) => !known.includes(name)),
    damages,
  });
}

function readBlock<T>(map: TraceMap, damages: Damage[], name: string, take: (reader: ByteReader) => T): T | null {
  const block = map.blocks.get(name);
  if (!block) {
    if (!damages.some((one) => one.block === name)) damages.push({ block: name, what: "the file has no such block" });
    return null;
  }
  try {
    return take(openBytes(block));
  } catch (error) {
    if (!(error instanceof BlockEnd)) throw error;
    damages.push({ block: name, what: error.message });
    return null;
  }
}

function pointsOf(reader: ByteReader, spacingM: number, damages: Damage[]): TracePoints {
  const { points, missingCount } = readPoints(reader, spacingM);
  if (missingCount > 0) damages.push({ block: "DataPts", what: `${missingCount} points of the curve are missing` });
  return points;
}

/** The sum is over every byte before it. */
function checksumOf(bytes: Uint8Array, stored: number): TraceChecksum {
  const computed = traceChecksum(bytes.subarray(0, bytes.length - 2));
  return { stored, computed, fits: stored === computed };
}
