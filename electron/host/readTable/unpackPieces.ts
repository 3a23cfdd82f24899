import { type Unzip, UnzipInflate } from "fflate";

/** Small, since what one piece unpacks to is held at once: a thousand times as much at most. */
const pieceBytes = 16 * 1024;

/**
 * Unpacks an archive piece by piece, so that no more of it is held than its parts are told.
 *
 * @param unzip  hears the parts
 * @param isOver  asked before each piece, whether the rest is still wanted
 * @returns false where the archive is damaged or locked, so that it could not be gone through
 */
export function unpackPieces(unzip: Unzip, bytes: Uint8Array, isOver: () => boolean): boolean {
  unzip.register(UnzipInflate);
  try {
    for (let at = 0; at < bytes.length && !isOver(); at += pieceBytes)
      unzip.push(bytes.subarray(at, at + pieceBytes), at + pieceBytes >= bytes.length);
  } catch {
    return false;
  }
  return true;
}
