import type { ImageMark } from "./displayList.ts";
import type { PaperBox } from "./paper.ts";

/** A company's picture as sheets draw it. */
export type Logo = {
  /** The picture itself as a data address. */
  readonly href: string;
  readonly widthPx: number;
  readonly heightPx: number;
};

/** A logo as large as its shape lets it be in a box, against its left side and halfway up. */
export function logoMark({ href, widthPx, heightPx }: Logo, company: string, box: PaperBox): ImageMark {
  const [room, high] = [box.right - box.left, box.top - box.bottom];
  const perPx = Math.min(room / widthPx, high / heightPx);
  const [width, height] = [widthPx * perPx, heightPx * perPx];
  return {
    kind: "image",
    layer: "frame",
    boxMm: [box.left, box.bottom + (high - height) / 2, width, height],
    href,
    told: company === "" ? "Company logo" : company,
  };
}
