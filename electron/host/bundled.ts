import type { SheetFile } from "./sheetFiles.ts";
import { zipped } from "./zipped.ts";

/** What a window hands over at once. */
export type Bundle = { readonly fileName: string; readonly content: Uint8Array };

/** A single picture under a name of its own, several as an archive. */
export function bundled(name: string, files: readonly SheetFile[]): Bundle {
  const [only] = files;
  if (only && files.length === 1) return { fileName: `${name} ${only.name}`, content: bytesOf(only) };
  const content = zipped(
    files.map((one) => ({ name: one.name, content: bytesOf(one) })),
    { isPacked: true },
  );
  return { fileName: `${name} sheets.zip`, content };
}

function bytesOf({ content }: SheetFile): Uint8Array {
  return typeof content === "string" ? new TextEncoder().encode(content) : content;
}
