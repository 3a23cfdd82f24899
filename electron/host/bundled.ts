import { zipSync } from "fflate";
import type { SheetFile } from "./sheetFiles.ts";

/** The first moment an archive can tell, by the clock of the machine that reads it: the same files are to give the same bytes. */
const still = new Date(1980, 0, 1);

/** A single file under a name of its own, several as an archive: what a window can hand over at once. */
export function bundled(name: string, files: readonly SheetFile[]): { fileName: string; content: Uint8Array } {
  const [only] = files;
  if (only && files.length === 1) return { fileName: `${name} ${only.name}`, content: bytesOf(only) };
  // pictures are packed as small as they get already
  const content = zipSync(Object.fromEntries(files.map((one) => [one.name, bytesOf(one)])), { level: 0, mtime: still });
  return { fileName: `${name} sheets.zip`, content };
}

function bytesOf({ content }: SheetFile): Uint8Array {
  return typeof content === "string" ? new TextEncoder().encode(content) : content;
}
