import type PDFDocument from "pdfkit";
import type { LayerNames } from "../../core/model/layerNames.ts";
import type { Layer } from "../../core/sheets/paper/displayList.ts";
import { layers } from "../../core/sheets/paper/displayList.ts";

/**
 * The parts of a PDF that the library has no call for: layers, page labels and raw text. It leans on the library's own
 * fields and is kept in this one file for that reason.
 */
export type LowFont = {
  /** Name of the font in a page's resources. */
  readonly name: string;
  /** Glyphs of a text as a literal string, a character a byte; the font then embeds them. */
  readonly literal: (text: string) => string;
  readonly putOn: (document: PDFKit.PDFDocument) => void;
};

type InnerFont = {
  readonly id: string;
  readonly encode: (text: string, features: object) => readonly [readonly string[], unknown];
  readonly ref: () => object;
};

/** Kerning and ligatures off, figures of equal width: as the widths in core/sheets/paper/fontMetrics.ts were measured. */
const features = { kern: false, liga: false, frac: false, tnum: true };

/** Opens a font for raw text, from the bytes of its file. */
export function openFont(document: PDFKit.PDFDocument, bytes: Buffer): LowFont {
  document.font(bytes);
  const font: InnerFont = Reflect.get(document, "_font");
  const known = new Map<string, string>();
  const glyph = (character: string): string => {
    const bytes = known.get(character) ?? literalBytes(font.encode(character, features)[0].join(""));
    known.set(character, bytes);
    return bytes;
  };
  return {
    name: font.id,
    literal: (text) => `(${[...text].map(glyph).join("")})`,
    putOn(onDocument) {
      const fonts: Record<string, object> = Reflect.get(onDocument.page, "fonts");
      fonts[font.id] ??= font.ref();
    },
  };
}

/** Bytes told in hexadecimal as they stand in a literal string: brackets, backslash and line ends are escaped. */
function literalBytes(hex: string): string {
  const bytes = Buffer.from(hex, "hex").toString("latin1");
  return bytes
    .replace(/[()\\]/g, "\\$&")
    .replace(/\r/g, "\\r")
    .replace(/\n/g, "\\n");
}

/** Name of a layer in a page's resources. */
export function layerName(layer: Layer): string {
  return `L${layers.indexOf(layer)}`;
}

/** Makes the layers known to the document; answers with what a page must carry to use them. */
export function addLayers(
  document: PDFKit.PDFDocument,
  layerNames: LayerNames,
): (onDocument: PDFKit.PDFDocument) => void {
  const groups = layers.map((layer) => {
    const group = document.ref({ Type: "OCG", Name: new String(layerNames.get(layer) ?? layer) }); // the library writes String objects as text
    group.end(undefined);
    return group;
  });
  rootOf(document).OCProperties = { OCGs: groups, D: { Order: groups, ON: groups } };
  const properties = Object.fromEntries(layers.map((layer, index) => [layerName(layer), groups[index]]));
  return (onDocument) => {
    const resources: { data: Record<string, unknown> } = Reflect.get(onDocument.page, "resources");
    resources.data.Properties = properties;
  };
}

/** Pages are called by their sheet numbers. */
export function addPageLabels(document: PDFKit.PDFDocument, numbers: readonly string[]): void {
  const entries = numbers.flatMap((number, index) => [index, { P: new String(number) }]);
  rootOf(document).PageLabels = { Nums: entries };
}

function rootOf(document: typeof PDFDocument.prototype): Record<string, unknown> {
  const root: { data: Record<string, unknown> } = Reflect.get(document, "_root");
  return root.data;
}
