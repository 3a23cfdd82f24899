import { mkdtempSync, writeFileSync } from "node:fs";
import { basename, join } from "node:path";

type Shell = {
  readonly openPath: (path: string) => Promise<string>;
  readonly showItemInFolder: (path: string) => void;
};

/**
 * Shows a drawing set in the system's own viewer, which prints it; where no viewer opens it, the file is shown in its folder.
 *
 * @param folder  where the file may be put, such as the system's temporary folder
 * @returns path of the file
 */
export async function showDrawn(
  shell: Shell,
  folder: string,
  drawn: { readonly fileName: string; readonly pdfBase64: string },
): Promise<string> {
  const name = basename(drawn.fileName.replaceAll("\\", "/"));
  const path = join(mkdtempSync(join(folder, "strandwright-")), name.endsWith(".pdf") ? name : `${name}.pdf`);
  writeFileSync(path, Buffer.from(drawn.pdfBase64, "base64"));
  const trouble = await shell.openPath(path);
  if (trouble !== "") shell.showItemInFolder(path);
  return path;
}
