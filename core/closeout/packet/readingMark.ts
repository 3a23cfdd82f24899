import { sha256 } from "@noble/hashes/sha2.js";
import { bytesToHex, utf8ToBytes } from "@noble/hashes/utils.js";
import type { SignedContent } from "./packetFile.ts";

/** Letters of a mark: 64 bits tell apart all the readings of a route there will ever be. */
const markChars = 16;

/** A short name of one very reading: what it says, who read it and when. Another reading that says the same has another. */
export function readingMark({ value, text, by, atIso }: SignedContent): string {
  return bytesToHex(sha256(utf8ToBytes(JSON.stringify([value, text, by, atIso])))).slice(0, markChars);
}
