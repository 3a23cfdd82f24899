import type { LabelLine } from "../paper/labels.ts";
import { smallMm } from "../paper/marks.ts";

/** A figure as built, under the designed one struck through where it prints otherwise; null where nothing was designed. */
export function redlined(built: string, designed: string | null): readonly LabelLine[] {
  const line = { face: "narrow", heightMm: smallMm } as const;
  const struck = designed === null || designed === built ? [] : [{ ...line, text: designed, isStruck: true }];
  return [...struck, { ...line, text: built }];
}
