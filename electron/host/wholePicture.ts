import { inflateSync } from "node:zlib";
import { type PictureHead, pictureHead } from "../../core/exchange/pictureHead.ts";

/** Bytes of the points of the largest photo a packet may bring, unpacked. */
const mostPointBytes = 256_000_000;

/** The head of a photo that can be drawn on a sheet; null where the file is damaged or cut short. */
export function wholePicture(bytes: Uint8Array): PictureHead | null {
  const head = pictureHead(bytes);
  if (!head) return null;
  const isWhole = head.kind === "jpeg" ? head.goesIntoPdf : isWholePng(bytes);
  return isWhole ? head : null;
}

/**
 * Whether a PNG goes on to its end and its points can be unpacked.
 *
 * @source PNG specification, second edition, 5.3 chunk layout, 10 compression
 */
function isWholePng(bytes: Uint8Array): boolean {
  const view = new DataView(bytes.buffer, bytes.byteOffset, bytes.byteLength);
  const packed: Uint8Array[] = [];
  let at = 8;
  while (at + 12 <= bytes.length) {
    const length = view.getUint32(at);
    const kind = String.fromCharCode(...bytes.subarray(at + 4, at + 8));
    if (kind === "IEND") return unpacks(Buffer.concat(packed));
    if (kind === "IDAT") packed.push(bytes.subarray(at + 8, at + 8 + length));
    at += 12 + length;
  }
  return false;
}

function unpacks(packed: Uint8Array): boolean {
  try {
    return inflateSync(packed, { maxOutputLength: mostPointBytes }).length > 0;
  } catch {
    return false;
  }
}
