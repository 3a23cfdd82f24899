import type { Align, Face, Mark } from "./displayList.ts";
import { shortenText } from "./fitText.ts";
import { type Lettering, smallMm, words } from "./marks.ts";
import { textWidthMm } from "./measureText.ts";

/** From the base line of a label down to that of its value, mm. */
const labelMm = 4;

/** A value under what it is, from the left end of the label's base line. */
export function labelled(label: string, value: string, x: number, y: number, widthMm: number): readonly Mark[] {
  return [
    note(label, x, y, { heightMm: smallMm, grey: 0.35 }),
    fitted(value, x, y - labelMm, widthMm, [{ face: "plainBold", heightMm: 2.3 }, ...smallFaces]),
  ];
}

type Lettered = { readonly face: Face; readonly heightMm: number };

/** What a text that is too long for its cell is lettered in. */
export const smallFaces: readonly Lettered[] = [
  { face: "narrowBold", heightMm: 2.3 },
  { face: "narrow", heightMm: smallMm },
];

/** A text in the first lettering it fits in, cut where it fits in none. */
export function fitted(
  text: string,
  x: number,
  y: number,
  widthMm: number,
  letterings: readonly Lettered[],
  align: Align = "left",
): Mark {
  const fits = letterings.find((one) => textWidthMm(text, one.face, one.heightMm) <= widthMm);
  const { face, heightMm } = fits ?? { face: "narrow", heightMm: smallMm };
  return note(shortenText(text, face, heightMm, widthMm), x, y, { face, heightMm, align });
}

/** A text of the title block. */
export function note(text: string, x: number, y: number, lettering: Lettering): Mark {
  return words(text, [x, y], { layer: "frame", ...lettering });
}
