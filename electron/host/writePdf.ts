import { setImmediate as nextTurn } from "node:timers/promises";
import PDFDocument from "pdfkit";
import type { DrawingSet, Sheet } from "../../core/sheets/paper/displayList.ts";
import type { FontFace } from "../../core/sheets/paper/measureText.ts";
import { drawingFonts, readFont } from "./drawingFonts.ts";
import { addBookmarks, bookmarksOf } from "./pdfBookmarks.ts";
import { type PageNames, pdfContent } from "./pdfContent.ts";
import { imageOpener } from "./pdfImages.ts";
import { pointsPerMm } from "./pdfNumbers.ts";
import { openStructure, type Structure } from "./pdfStructure.ts";
import { addLayers, addPageLabels, type LowFont, openFont } from "./writePdfObjects.ts";

type PdfOptions = {
  /** Stops the work before its next sheet; the promise is then rejected with the signal's reason. */
  readonly signal?: AbortSignal;
  /** Told after each sheet how many are written. */
  readonly onSheet?: (doneCount: number) => void;
  /** A folder with the drawing fonts; null or left out takes them from the installed packages. */
  readonly fontFolder?: string | null;
};

/** Date printed into files of routes without a revision: the clock never enters, so that one set gives one file. */
const noDate = "2000-01-01";

/**
 * Writes a drawing set as one vector PDF: fonts embedded and cut to what is used, layers, bookmarks, page labels, links between
 * sheets, and the structure by which a sheet is read out. The same set gives the same bytes.
 */
export async function writePdf(set: DrawingSet, options: PdfOptions = {}): Promise<Uint8Array> {
  const document = openDocument(set);
  const chunks: Buffer[] = [];
  document.on("data", (chunk: Buffer) => chunks.push(chunk));
  const finished = new Promise<void>((resolve) => document.on("end", resolve));
  const fontOf = fontOpener(document, options.fontFolder ?? null);
  const imageOf = await imageOpener(document, set.sheets);
  const putLayers = addLayers(document, set.layerNames);
  const structure = openStructure(document);
  addPageLabels(
    document,
    set.sheets.map((one) => one.number),
  );
  for (const [index, sheet] of set.sheets.entries()) {
    options.signal?.throwIfAborted();
    addSheet(document, sheet, { fontOf, imageOf }, putLayers, structure);
    options.onSheet?.(index + 1);
    await nextTurn();
  }
  addBookmarks(document.outline, bookmarksOf(set.sheets));
  structure.end();
  document.end();
  await finished;
  return new Uint8Array(Buffer.concat(chunks));
}

function openDocument(set: DrawingSet): PDFKit.PDFDocument {
  const date = new Date(Date.parse(set.dateIso) || Date.parse(noDate));
  const info = {
    Title: set.title,
    Author: set.author,
    Subject: set.subject,
    Creator: "Strandwright",
    Producer: "Strandwright",
    CreationDate: date,
    ModDate: date,
  };
  return new PDFDocument({ autoFirstPage: false, pdfVersion: "1.7", info, displayTitle: true, lang: "en" });
}

function fontOpener(document: PDFKit.PDFDocument, folder: string | null): (face: FontFace) => LowFont {
  const paths = drawingFonts(folder);
  const open = new Map<FontFace, LowFont>();
  return (face) => {
    const font = open.get(face) ?? openFont(document, readFont(paths[face]));
    open.set(face, font);
    font.putOn(document);
    return font;
  };
}

function addSheet(
  document: PDFKit.PDFDocument,
  sheet: Sheet,
  names: PageNames,
  putLayers: (document: PDFKit.PDFDocument) => void,
  structure: Structure,
): void {
  const { width, height } = sheet.sizeMm;
  document.addPage({ size: [width * pointsPerMm, height * pointsPerMm], margin: 0 });
  putLayers(document);
  document.addNamedDestination(`sheet-${sheet.number}`, "Fit");
  document.addContent(pdfContent(sheet, names, structure.openSheet(sheet)));
  for (const { boxMm, to } of sheet.links) {
    const [left, bottom, boxWidth, boxHeight] = boxMm.map((one) => one * pointsPerMm);
    if (left === undefined || bottom === undefined || boxWidth === undefined || boxHeight === undefined) continue;
    const top = height * pointsPerMm - bottom - boxHeight;
    document.goTo(left, top, boxWidth, boxHeight, `sheet-${to}`, structure.link(`Sheet ${to}`));
  }
  structure.closeSheet();
}
