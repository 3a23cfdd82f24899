/** Thrown where a block ends before what it promised; `readTrace` tells it as a damage. */
export class BlockEnd extends Error {}

/** Reads little-endian figures and text one after the other, and never beyond its block. */
export type ByteReader = {
  readonly u16: () => number;
  readonly i16: () => number;
  readonly u32: () => number;
  readonly i32: () => number;
  /** So many characters, one a byte. */
  readonly chars: (count: number) => string;
  /** Up to and without the next zero byte, outer spaces taken off. */
  readonly text: () => string;
  readonly skip: (byteCount: number) => void;
  /** Bytes from the start of the block. */
  readonly position: () => number;
  readonly leftCount: () => number;
};

/** @param bytes one block, or a part of the file */
export function openBytes(bytes: Uint8Array): ByteReader {
  const view = new DataView(bytes.buffer, bytes.byteOffset, bytes.byteLength);
  let at = 0;
  const take = (byteCount: number): number => {
    if (at + byteCount > bytes.length)
      throw new BlockEnd(`it ends after ${bytes.length} bytes, in the middle of what stands at byte ${at}`);
    const start = at;
    at += byteCount;
    return start;
  };
  const chars = (count: number): string => String.fromCharCode(...bytes.subarray(take(count), at));
  return {
    u16: () => view.getUint16(take(2), true),
    i16: () => view.getInt16(take(2), true),
    u32: () => view.getUint32(take(4), true),
    i32: () => view.getInt32(take(4), true),
    chars,
    text() {
      const end = bytes.indexOf(0, at);
      if (end < 0) throw new BlockEnd(`the text at byte ${at} has no end`);
      const text = Array.from(bytes.subarray(at, end), (byte) => String.fromCharCode(byte)).join("");
      at = end + 1;
      return text.trim();
    },
    skip: (byteCount) => void take(byteCount),
    position: () => at,
    leftCount: () => bytes.length - at,
  };
}
