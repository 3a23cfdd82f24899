import type { ImageMark } from "./paper/displayList.ts";
import type { PaperBox } from "./paper/paper.ts";
import { fittedMm, type Picture } from "./paper/picture.ts";

/** A logo as large as its shape lets it be in a box, against its left side and halfway up. */
export function logoMark(logo: Picture, company: string, box: PaperBox): ImageMark {
  const [width, height] = fittedMm(logo, box);
  return {
    kind: "image",
    layer: "frame",
    boxMm: [box.left, box.bottom + (box.top - box.bottom - height) / 2, width, height],
    href: logo.href,
    told: company === "" ? "Company logo" : company,
  };
}
