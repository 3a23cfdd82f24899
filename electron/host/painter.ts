import { readFileSync } from "node:fs";
import { createRequire } from "node:module";
import { initWasm, Resvg } from "@resvg/resvg-wasm";
import type { Picture } from "../../core/sheets/paper/picture.ts";
import type { FaceNames } from "../../core/sheets/paper/writeSvg.ts";
import { drawingFonts, readFont } from "./drawingFonts.ts";

/** What the drawing fonts call themselves in their files: there each weight is a family of its own. */
export const filedFaces: FaceNames = {
  narrow: { family: "Barlow Condensed Medium", weight: 500 },
  narrowBold: { family: "Barlow Condensed SemiBold", weight: 600 },
  plain: { family: "IBM Plex Sans Condensed", weight: 400 },
  plainBold: { family: "IBM Plex Sans Condensed SemiBold", weight: 600 },
  symbols: { family: "DejaVu Sans", weight: 400 },
};

export type Painter = {
  /** An SVG document as a PNG file on white. */
  readonly png: (svg: string, dotsPerInch: number) => Uint8Array;
  /** An SVG document as points of colour on nothing, this many across. */
  readonly points: (svg: string, widthPx: number) => Painted;
};

/** A picture row by row from its top, each point red, green, blue, all times how much it covers, and that: a byte each. */
export type Painted = { readonly width: number; readonly height: number; readonly rgba: Uint8Array };

let loaded: Promise<void> | null = null;

/**
 * Paints SVG documents with the drawing fonts and none of the system's, so that every machine paints the same bytes. Nothing that a
 * document points to is fetched.
 */
export async function openPainter(): Promise<Painter> {
  const { resolve } = createRequire(import.meta.url);
  loaded ??= initWasm(readFileSync(resolve("@resvg/resvg-wasm/index_bg.wasm")));
  await loaded;
  const fontBuffers = Object.values(drawingFonts(null)).map((path) => new Uint8Array(readFont(path)));
  const paint = <T>(svg: string, options: PaintOptions, take: (image: Image) => T): T => {
    const document = new Resvg(svg, { font: { fontBuffers }, ...options });
    const image = document.render();
    const taken = take(image);
    // what the painter holds is no memory of the program's own and would never be collected
    image.free();
    document.free();
    return taken;
  };
  return {
    png: (svg, dpi) => paint(svg, { dpi, background: "#fff" }, (image) => image.asPng()),
    points: (svg, widthPx) =>
      paint(svg, { fitTo: { mode: "width", value: widthPx } }, ({ width, height, pixels }) => ({
        width,
        height,
        rgba: pixels,
      })),
  };
}

/** A picture by its data address as a document of its own. */
export function pictureSvg(href: string, width: number, height: number): string {
  const size = `width="${width}" height="${height}"`;
  return `<svg xmlns="http://www.w3.org/2000/svg" ${size}><image ${size} preserveAspectRatio="none" href="${href}"/></svg>`;
}

/** A picture's bytes as a data address. */
export function dataAddress(mediaType: string, bytes: Uint8Array): string {
  return `data:${mediaType};base64,${Buffer.from(bytes).toString("base64")}`;
}

const triedPx = 200;

/** True where anything of a picture can be painted; it is tried once, small. */
export function canBePainted(painter: Painter, { href, widthPx, heightPx }: Picture): boolean {
  const frac = Math.min(1, triedPx / Math.max(widthPx, heightPx));
  const width = Math.max(1, Math.round(widthPx * frac));
  const svg = pictureSvg(href, width, Math.max(1, Math.round(heightPx * frac)));
  return painter.points(svg, width).rgba.some((one, at) => at % 4 === 3 && one > 0);
}

type Document = InstanceType<typeof Resvg>;
type Image = ReturnType<Document["render"]>;
type PaintOptions = NonNullable<ConstructorParameters<typeof Resvg>[1]>;
