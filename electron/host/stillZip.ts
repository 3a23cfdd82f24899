const centralHeader = 0x02014b50;
const endOfCentral = 0x06054b50;
/** Sizes of the fixed part of the records of an archive, bytes. */
const sizes = { central: 46, end: 22 } as const;
/** The first moment an archive can tell: 1 January 1980. */
const still = 0x0021_0000;

/**
 * A zip archive with the time of every entry set to 1 January 1980: the library that writes it puts the clock there, and the same
 * content is to give the same bytes.
 *
 * @param archive  without a comment behind it, changed in place
 * @throws RangeError where the bytes are no such archive
 * @source APPNOTE.TXT of the zip format, 4.3.7 local header, 4.3.12 central directory, 4.3.16 its end
 */
export function stillZip(archive: Uint8Array): Uint8Array {
  const view = new DataView(archive.buffer, archive.byteOffset, archive.byteLength);
  const end = archive.byteLength - sizes.end;
  if (end < 0 || view.getUint32(end, true) !== endOfCentral) throw new RangeError("no zip archive");
  const count = view.getUint16(end + 10, true);
  let at = view.getUint32(end + 16, true);
  for (let entry = 0; entry < count; entry += 1) {
    if (view.getUint32(at, true) !== centralHeader) throw new RangeError("a zip archive whose directory is broken");
    view.setUint32(at + 12, still, true);
    view.setUint32(view.getUint32(at + 42, true) + 10, still, true);
    at += sizes.central + view.getUint16(at + 28, true) + view.getUint16(at + 30, true) + view.getUint16(at + 32, true);
  }
  return archive;
}
