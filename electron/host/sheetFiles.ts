import { setImmediate as nextTurn } from "node:timers/promises";
import { writeSheetDxf } from "../../core/dxf/writeSheetDxf.ts";
import type { LayerNames } from "../../core/model/layerNames.ts";
import type { DrawingSet, Sheet } from "../../core/sheets/paper/displayList.ts";
import { writeSvg } from "../../core/sheets/paper/writeSvg.ts";
import { filedFaces, openPainter } from "./painter.ts";

export type SheetFormat = "svg" | "dxf" | "png";
export type SheetFile = { readonly name: string; readonly content: string | Uint8Array };

/** Fine enough for the smallest lettering, 2 mm, to be read. */
const dotsPerInch = 200;

type Watch = {
  /** Stops the work before its next sheet; the promise is then rejected with the signal's reason. */
  readonly signal: AbortSignal;
  /** Told after each sheet how many are written. */
  readonly onSheet: (doneCount: number) => void;
};

/** A file for each sheet, named so that they lie in the order of the set. The same sheets give the same bytes. */
export async function sheetFiles(
  { sheets, layerNames }: Pick<DrawingSet, "sheets" | "layerNames">,
  format: SheetFormat,
  { signal, onSheet }: Watch,
): Promise<readonly SheetFile[]> {
  const write = await writerOf(format, layerNames);
  const files: SheetFile[] = [];
  for (const sheet of sheets) {
    signal.throwIfAborted();
    files.push({ name: `${sheet.number.padStart(3, "0")}-${sheet.kind}.${format}`, content: write(sheet) });
    onSheet(files.length);
    await nextTurn();
  }
  return files;
}

async function writerOf(format: SheetFormat, layerNames: LayerNames): Promise<(sheet: Sheet) => string | Uint8Array> {
  switch (format) {
    case "svg":
      return (sheet) => writeSvg(sheet, layerNames);
    case "dxf":
      return (sheet) => writeSheetDxf(sheet, layerNames);
    case "png": {
      const painter = await openPainter();
      return (sheet) => painter.png(writeSvg(sheet, layerNames, filedFaces), dotsPerInch);
    }
  }
}
