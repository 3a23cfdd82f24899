import type { Mark, PaperPoint } from "./displayList.ts";
import { strike } from "./labels.ts";
import { bodyMm, type Lettering, words } from "./marks.ts";
import { textWidthMm } from "./measureText.ts";

/** A level line of text with a stroke through it: designed, and built otherwise. */
export function struckWords(text: string, at: PaperPoint, lettering: Lettering): readonly Mark[] {
  const { face = "plain", heightMm = bodyMm, align = "left" } = lettering;
  const half = textWidthMm(text, face, heightMm) / 2;
  const aside = { left: half, middle: 0, right: -half }[align];
  return [words(text, at, lettering), strike({ text, face, heightMm }, [at[0] + aside, at[1]], 0)];
}
