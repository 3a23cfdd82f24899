import type { ByteReader } from "./byteReader.ts";
import type { TraceEvent, TraceFixed, TraceGeneral, TraceLink, TracePoints, TraceSupplier } from "./trace.ts";
import { distanceM } from "./trace.ts";

/** Time figures of the file, in s. */
const timeUnitS = 1e-10;
/** What an instrument writes where it knows no reflectance. */
const noReflectance = -(2 ** 31);

/** @source order of the fields: the open specification; what issue 1 lacks: from memory */
export function readGeneral(reader: ByteReader, isIssue2: boolean): TraceGeneral {
  reader.chars(2); // language
  const cableId = reader.text();
  const fiberId = reader.text();
  if (isIssue2) reader.u16(); // fiber type
  const wavelengthNm = reader.u16();
  const locationA = reader.text();
  const locationB = reader.text();
  const cableCode = reader.text();
  const condition = reader.chars(2).trim();
  reader.i32(); // user offset, time
  if (isIssue2) reader.i32(); // user offset, distance
  return {
    cableId,
    fiberId,
    wavelengthNm,
    locationA,
    locationB,
    cableCode,
    condition,
    operator: reader.text(),
    comment: reader.text(),
  };
}

/** @source the open specification */
export function readSupplier(reader: ByteReader): TraceSupplier {
  const supplier = reader.text();
  const instrument = reader.text();
  const serial = reader.text();
  reader.text(); // module
  reader.text(); // its serial number
  return { supplier, instrument, serial, software: reader.text() };
}

/** @source order: the open specification; scale of the spacing, and what issue 1 lacks: from memory, the scale checked against real files */
export function readFixed(reader: ByteReader, isIssue2: boolean): TraceFixed {
  const takenUnixS = reader.u32();
  reader.chars(2); // units the distances are shown in
  const wavelengthNm = inNm(reader.u16());
  reader.i32(); // acquisition offset, time
  if (isIssue2) reader.i32(); // acquisition offset, distance
  const pulseCount = reader.u16();
  const [pulseWidthNs = 0] = times(pulseCount, reader.u16);
  const [spacing = 0] = times(pulseCount, reader.u32);
  times(pulseCount, reader.u32); // points
  const groupIndex = reader.u32() / 100_000;
  const backscatterDb = reader.u16() / -10;
  const averageCount = reader.u32();
  if (isIssue2) reader.u16(); // averaging time
  reader.u32(); // range, time
  if (isIssue2) reader.i32(); // range, distance
  reader.i32(); // front panel offset
  reader.u16(); // noise floor
  reader.i16(); // its scale
  reader.u16(); // power offset of the first point
  return {
    takenUnixS,
    wavelengthNm,
    pulseWidthNs,
    spacingS: spacing * 1e-14,
    groupIndex,
    backscatterDb,
    averageCount,
    lossThresholdDb: reader.u16() / 1000,
    reflectanceThresholdDb: reader.u16() / -1000,
    endThresholdDb: reader.u16() / 1000,
  };
}

/**
 * Events one after the other, each handed on as it is read, so that what stands before a damage is kept; then the sums of the whole way.
 *
 * @source the open specification; signs, and what issue 1 lacks: from memory
 */
export function readEvents(
  reader: ByteReader,
  { isIssue2, groupIndex }: { readonly isIssue2: boolean; readonly groupIndex: number },
  found: (event: TraceEvent) => void,
): TraceLink {
  const count = reader.u16();
  for (let index = 0; index < count; index += 1) {
    const number = reader.u16();
    const timeS = reader.u32() * timeUnitS;
    const slopeDbPerKm = reader.i16() / 1000;
    const spliceLossDb = reader.i16() / 1000;
    const reflectance = reader.i32();
    const code = reader.chars(8);
    if (isIssue2) reader.skip(20); // ends of the neighbouring fiber, the event's own, its peak
    const comment = reader.text();
    const reflectanceDb = reflectance === noReflectance ? null : reflectance / 1000;
    found({
      number,
      timeS,
      distanceM: distanceM(timeS, groupIndex),
      spliceLossDb,
      reflectanceDb,
      slopeDbPerKm,
      code,
      comment,
    });
  }
  const totalLossDb = reader.i32() / 1000;
  reader.skip(8); // from where to where
  return { totalLossDb, returnLossDb: reader.u16() / 1000 };
}

/**
 * The first curve; where the block ends early, as much of it as is there.
 *
 * @source layout: the open specification; rule of the scale: from memory
 */
export function readPoints(
  reader: ByteReader,
  spacingM: number,
): { readonly points: TracePoints; readonly missingCount: number } {
  reader.u32(); // points of all curves together
  const curveCount = reader.u16();
  const pointCount = curveCount > 0 ? reader.u32() : 0;
  const scale = curveCount > 0 ? reader.u16() : 0;
  const keptCount = Math.min(pointCount, Math.floor(reader.leftCount() / 2));
  const levelsDb = new Float64Array(keptCount);
  for (let index = 0; index < keptCount; index += 1) levelsDb[index] = (reader.u16() * scale) / -1e6;
  return { points: { spacingM, levelsDb }, missingCount: pointCount - keptCount };
}

/** Tenths of a nanometre by the layout; some instruments write whole ones. */
function inNm(figure: number): number {
  return figure > 5000 ? figure / 10 : figure;
}

function times(count: number, read: () => number): number[] {
  return Array.from({ length: count }, read);
}
