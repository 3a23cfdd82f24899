import { BlockEnd, openBytes } from "./byteReader.ts";
import type { Damage } from "./trace.ts";

/** Where the blocks of a file lie. */
export type TraceMap = {
  readonly version: string;
  /** Of 2.00 and later: blocks begin with their own name, and more fields are there. */
  readonly isIssue2: boolean;
  /** By name; the bytes after the block's own name. */
  readonly blocks: ReadonlyMap<string, Uint8Array>;
  readonly damages: readonly Damage[];
};

/** Entries a map may have: far more than any file has, so that a damaged count costs no time. */
const mostBlocks = 500;

/**
 * Reads the map a file begins with.
 *
 * @returns null where the file does not begin as such a file does
 * @source issue 2: the open specification; issue 1, which has no name before the version and none before its blocks: from memory
 */
export function readMap(bytes: Uint8Array): TraceMap | null {
  const isIssue2 = startsWith(bytes, "Map\0");
  const reader = openBytes(isIssue2 ? bytes.subarray(4) : bytes);
  try {
    const number = reader.u16();
    const mapSize = reader.u32();
    const entryCount = reader.u16() - 1;
    // Some write 2 for what others write as 200.
    const hundredths = number < 10 ? number * 100 : number;
    if (hundredths < 100 || hundredths > 999 || entryCount < 1 || entryCount > mostBlocks || mapSize > bytes.length)
      return null;
    if (!isIssue2 && hundredths >= 200) return null;
    const version = (hundredths / 100).toFixed(2);
    return { version, isIssue2, ...cutBlocks(bytes, reader, { mapSize, entryCount, isIssue2 }) };
  } catch (error) {
    if (error instanceof BlockEnd) return null;
    throw error;
  }
}

type Cut = { readonly mapSize: number; readonly entryCount: number; readonly isIssue2: boolean };

/** Blocks by walking the sizes the map tells, in order. */
function cutBlocks(bytes: Uint8Array, reader: ReturnType<typeof openBytes>, { mapSize, entryCount, isIssue2 }: Cut) {
  const blocks = new Map<string, Uint8Array>();
  const damages: Damage[] = [];
  let at = mapSize;
  for (let entry = 0; entry < entryCount; entry += 1) {
    const name = reader.text();
    reader.u16();
    const size = reader.u32();
    const block = bytes.subarray(at, at + size);
    at += size;
    if (block.length < size)
      damages.push({ block: name, what: `the file ends ${size - block.length} bytes before the block does` });
    if (block.length === 0) continue;
    if (!isIssue2) blocks.set(name, block);
    else if (startsWith(block, `${name}\0`)) blocks.set(name, block.subarray(name.length + 1));
    else damages.push({ block: name, what: "the block does not begin with its name, where the map says it lies" });
  }
  return { blocks, damages };
}

function startsWith(bytes: Uint8Array, text: string): boolean {
  return [...text].every((letter, index) => bytes[index] === letter.charCodeAt(0));
}
