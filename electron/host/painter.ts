import { readFileSync } from "node:fs";
import { createRequire } from "node:module";
import { initWasm, Resvg } from "@resvg/resvg-wasm";
import type { FaceNames } from "../../core/sheets/writeSvg.ts";
import { drawingFonts, readFont } from "./drawingFonts.ts";

/** What the drawing fonts call themselves in their files: there each weight is a family of its own. */
export const filedFaces: FaceNames = {
  narrow: { family: "Barlow Condensed Medium", weight: 500 },
  narrowBold: { family: "Barlow Condensed SemiBold", weight: 600 },
  plain: { family: "IBM Plex Sans Condensed", weight: 400 },
  plainBold: { family: "IBM Plex Sans Condensed SemiBold", weight: 600 },
  symbols: { family: "DejaVu Sans", weight: 400 },
};

type Painter = {
  /** An SVG document as a PNG file on white. */
  readonly png: (svg: string, dotsPerInch: number) => Uint8Array;
};

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
  return {
    png(svg, dotsPerInch) {
      const document = new Resvg(svg, { font: { fontBuffers }, dpi: dotsPerInch, background: "#fff" });
      const image = document.render();
      const png = image.asPng();
      // what the painter holds is no memory of the program's own and would never be collected
      image.free();
      document.free();
      return png;
    },
  };
}
