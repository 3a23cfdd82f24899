import { zipSync } from "fflate";

/** A file in memory: its name, with / before what stands in a folder. */
export type NamedBytes = { readonly name: string; readonly content: Uint8Array };

/** The first moment an archive can tell, by the clock of the machine that reads it: the same files are to give the same bytes. */
const still = new Date(1980, 0, 1);

/** Files as one archive. Those that are packed as small as they get already are put in as they are. */
export function zipped(files: readonly NamedBytes[], { isPacked }: { readonly isPacked: boolean }): Uint8Array {
  const entries = Object.fromEntries(files.map(({ name, content }) => [name, content]));
  return zipSync(entries, { level: isPacked ? 0 : 6, mtime: still });
}
