import type { PaperBox } from "./paper.ts";

/** A picture as sheets draw it. */
export type Picture = {
  /** The picture itself as a data address. */
  readonly href: string;
  readonly widthPx: number;
  readonly heightPx: number;
};

/** Width and height of a picture as large as its shape lets it be in a box, mm. */
export function fittedMm({ widthPx, heightPx }: Picture, { left, right, top, bottom }: PaperBox): [number, number] {
  const perPx = Math.min((right - left) / widthPx, (top - bottom) / heightPx);
  return [widthPx * perPx, heightPx * perPx];
}
