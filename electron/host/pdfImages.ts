import { pictureHead } from "../../core/exchange/pictureHead.ts";
import type { ImageMark, Sheet } from "../../core/sheets/paper/displayList.ts";
import { openPainter, type Painted, type Painter, pictureSvg } from "./painter.ts";

/** Finer than an office printer prints; no picture is painted with more points across than a photo is kept with. */
const dotsPerInch = 600;
const mostAcrossPx = 1600;
const mmPerInch = 25.4;

/**
 * Puts the pictures of a set into the document, each once: a JPEG as it is, another painted, with what it lets through as its mask.
 *
 * @returns names a picture on the page at hand, by its data address
 */
export async function imageOpener(
  document: PDFKit.PDFDocument,
  sheets: readonly Sheet[],
): Promise<(href: string) => string> {
  const marks = sheets.flatMap((sheet) => sheet.marks.filter((mark) => mark.kind === "image"));
  const first = new Map(marks.map((mark) => [mark.href, mark]));
  if (first.size === 0) return () => "";
  const painter = await openPainter();
  const placed = new Map(
    [...first.values()].map((mark, index) => [
      mark.href,
      { name: `Image${index + 1}`, ref: asItIs(document, mark) ?? painted(document, painter, mark) },
    ]),
  );
  return (href) => {
    const image = placed.get(href);
    if (!image) return "";
    const onPage: Record<string, object> = Reflect.get(document.page, "xobjects");
    onPage[image.name] ??= image.ref;
    return image.name;
  };
}

/**
 * A JPEG as an image object; null where the picture is none that a PDF takes as it is.
 *
 * @source ISO 32000-1:2008, 8.9.5 image dictionaries, 7.4.8 DCTDecode
 */
function asItIs(document: PDFKit.PDFDocument, { href }: ImageMark): object | null {
  const bytes = Buffer.from(href.slice(href.indexOf(",") + 1), "base64");
  const head = pictureHead(bytes);
  if (!head?.goesIntoPdf) return null;
  const image = document.ref({
    Type: "XObject",
    Subtype: "Image",
    Width: head.widthPx,
    Height: head.heightPx,
    BitsPerComponent: 8,
    ColorSpace: head.colours === 1 ? "DeviceGray" : "DeviceRGB",
    Filter: "DCTDecode",
  });
  image.end(bytes);
  return image;
}

function painted(document: PDFKit.PDFDocument, painter: Painter, { href, boxMm }: ImageMark): object {
  const [, , width, height] = boxMm;
  const widthPx = Math.min(mostAcrossPx, Math.ceil((width / mmPerInch) * dotsPerInch));
  return embed(document, painter.points(pictureSvg(href, width, height), widthPx));
}

/**
 * A picture and its soft mask as image objects.
 *
 * @source ISO 32000-1:2008, 8.9.5 image dictionaries, 11.6.5.3 soft-mask images
 */
function embed(document: PDFKit.PDFDocument, { width, height, rgba }: Painted): object {
  const colours = Buffer.alloc(width * height * 3);
  const covers = Buffer.alloc(width * height);
  for (let point = 0; point < width * height; point += 1) {
    const cover = rgba[point * 4 + 3] ?? 0;
    covers[point] = cover;
    // the painter's colours are as much darker as they cover less
    for (let colour = 0; colour < 3 && cover > 0; colour += 1)
      colours[point * 3 + colour] = Math.round(((rgba[point * 4 + colour] ?? 0) * 255) / cover);
  }
  const size = { Type: "XObject", Subtype: "Image", Width: width, Height: height, BitsPerComponent: 8 };
  const mask = document.ref({ ...size, ColorSpace: "DeviceGray" });
  mask.end(covers);
  const image = document.ref({ ...size, ColorSpace: "DeviceRGB", SMask: mask });
  image.end(colours);
  return image;
}
