import { strFromU8 } from "fflate";

const centralHeader = 0x02014b50;
const endOfCentral = 0x06054b50;
/** Sizes of the fixed part of the records of an archive, and most of a comment behind it, bytes. */
const sizes = { central: 46, end: 22, comment: 0xffff } as const;

/**
 * The checksum of every part of a zip archive by its name, as its directory tells them: the library that unpacks does not look at them,
 * and a bit turned on the way may change one figure of a list and nothing else. Empty where there is no directory to be read.
 *
 * @source APPNOTE.TXT of the zip format, 4.3.12 central directory, 4.3.16 its end
 */
export function archiveChecksums(bytes: Uint8Array): ReadonlyMap<string, number> {
  const view = new DataView(bytes.buffer, bytes.byteOffset, bytes.byteLength);
  const checksums = new Map<string, number>();
  const end = endAt(view);
  if (end === null) return checksums;
  const count = view.getUint16(end + 10, true);
  let at = view.getUint32(end + 16, true);
  for (let entry = 0; entry < count; entry += 1) {
    if (at + sizes.central > end || view.getUint32(at, true) !== centralHeader) break;
    const [nameLength, extraLength, commentLength] = [28, 30, 32].map((field) => view.getUint16(at + field, true));
    const nameAt = at + sizes.central;
    const isUtf8 = (view.getUint16(at + 8, true) & 0x0800) !== 0;
    const name = strFromU8(bytes.subarray(nameAt, nameAt + (nameLength ?? 0)), !isUtf8);
    checksums.set(name, view.getUint32(at + 16, true));
    at = nameAt + (nameLength ?? 0) + (extraLength ?? 0) + (commentLength ?? 0);
  }
  return checksums;
}

function endAt(view: DataView): number | null {
  const last = view.byteLength - sizes.end;
  for (let at = last; at >= 0 && at >= last - sizes.comment; at -= 1)
    if (view.getUint32(at, true) === endOfCentral) return at;
  return null;
}

const steps = Uint32Array.from({ length: 256 }, (_, byte) => {
  let step = byte;
  for (let bit = 0; bit < 8; bit += 1) step = step & 1 ? (step >>> 1) ^ 0xedb88320 : step >>> 1;
  return step;
});

/**
 * Checksum of bytes that come piece by piece.
 *
 * @param before  of the pieces before it, 0 for the first
 * @source CRC-32, polynomial 0x04C11DB7 reflected, as APPNOTE.TXT 4.4.7 names it; from memory, with the usual check "123456789" to
 * 0xCBF43926
 */
export function crc32(piece: Uint8Array, before = 0): number {
  let rest = ~before;
  for (const byte of piece) rest = (rest >>> 8) ^ (steps[(rest ^ byte) & 0xff] ?? 0);
  return ~rest >>> 0;
}
