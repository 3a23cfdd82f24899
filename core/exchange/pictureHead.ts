/** What the head of a picture file tells. */
export type PictureHead = {
  readonly kind: "png" | "jpeg";
  readonly widthPx: number;
  readonly heightPx: number;
  /** True for a whole JPEG in eight bits of grey or of colour, baseline or progressive: what a PDF takes as it is. */
  readonly goesIntoPdf: boolean;
  /** Colours of a point of a JPEG: 1 grey, 3 colour, 4 printing inks; of a PNG not told, 0. */
  readonly colours: number;
};

/** The head of a PNG or JPEG file; null where it is neither, or does not tell its size. */
export function pictureHead(bytes: Uint8Array): PictureHead | null {
  const head = pngHead(bytes) ?? jpegHead(bytes);
  return head && head.widthPx >= 1 && head.heightPx >= 1 ? head : null;
}

/** @source PNG specification, second edition, 5.2 signature, 11.2.2 IHDR */
function pngHead(bytes: Uint8Array): PictureHead | null {
  const signature = [0x89, 0x50, 0x4e, 0x47, 0x0d, 0x0a, 0x1a, 0x0a];
  if (bytes.length < 24 || signature.some((one, at) => bytes[at] !== one)) return null;
  const view = new DataView(bytes.buffer, bytes.byteOffset);
  return { kind: "png", widthPx: view.getUint32(16), heightPx: view.getUint32(20), goesIntoPdf: false, colours: 0 };
}

/**
 * @source ITU-T T.81, B.1.1.3 markers, B.2.2 frame header; ISO 32000-1:2008, 7.4.8 DCTDecode takes baseline and, from PDF 1.3,
 *   progressive
 */
function jpegHead(bytes: Uint8Array): PictureHead | null {
  if (bytes[0] !== 0xff || bytes[1] !== 0xd8) return null;
  const view = new DataView(bytes.buffer, bytes.byteOffset, bytes.byteLength);
  let at = 2;
  while (at + 9 < bytes.length && bytes[at] === 0xff) {
    const marker = bytes[at + 1] ?? 0;
    const isFrame = marker >= 0xc0 && marker <= 0xcf && ![0xc4, 0xc8, 0xcc].includes(marker);
    if (isFrame) {
      const colours = bytes[at + 9] ?? 0;
      const isPlain = marker <= 0xc2 && bytes[at + 4] === 8;
      return {
        kind: "jpeg",
        widthPx: view.getUint16(at + 7),
        heightPx: view.getUint16(at + 5),
        goesIntoPdf: isPlain && (colours === 1 || colours === 3) && isWhole(bytes, at),
        colours,
      };
    }
    at += 2 + view.getUint16(at + 2);
  }
  return null;
}

/**
 * Whether a JPEG has a scan behind its frame header and an end behind that: a file cut short has none, for within a scan the signs of an
 * end never stand.
 *
 * @source ITU-T T.81, B.1.1.2 markers, B.1.1.5 entropy-coded data segments
 */
function isWhole(bytes: Uint8Array, frameAt: number): boolean {
  const view = new DataView(bytes.buffer, bytes.byteOffset, bytes.byteLength);
  let scanAt = frameAt;
  while (scanAt + 4 <= bytes.length && bytes[scanAt] === 0xff && bytes[scanAt + 1] !== 0xda)
    scanAt += 2 + view.getUint16(scanAt + 2);
  if (bytes[scanAt] !== 0xff || bytes[scanAt + 1] !== 0xda) return false;
  let endAt = bytes.length - 2;
  while (endAt > scanAt && !(bytes[endAt] === 0xff && bytes[endAt + 1] === 0xd9)) endAt -= 1;
  return endAt > scanAt;
}
