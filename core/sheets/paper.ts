import type { UnitSystem } from "../units/unitSystem.ts";
import type { SheetSizeMm } from "./displayList.ts";

const mmPerInch = 25.4;

/** ANSI B laid across, 17 x 11 in. */
export const ansiB: SheetSizeMm = { width: 17 * mmPerInch, height: 11 * mmPerInch };

/** Upright pages: ANSI A, 8.5 x 11 in, and ISO 216 A4. */
export const uprightPages: Readonly<Record<UnitSystem, SheetSizeMm>> = {
  us: { width: 8.5 * mmPerInch, height: 11 * mmPerInch },
  metric: { width: 210, height: 297 },
};

/** A rectangle of paper by its edges, mm from the sheet's lower left corner. */
export type PaperBox = { readonly left: number; readonly bottom: number; readonly right: number; readonly top: number };

/** Wider at the left, where sheets are bound. */
const marginMm = { left: 18, other: 10 } as const;
export const titleBandMm = 27;

/** Inside the border, title band included. */
export const borderBox: PaperBox = {
  left: marginMm.left,
  bottom: marginMm.other,
  right: ansiB.width - marginMm.other,
  top: ansiB.height - marginMm.other,
};

/** What a sheet may draw on: inside the border, over the title band, with white all round. */
export const drawingBox: PaperBox = {
  left: borderBox.left + 7,
  bottom: borderBox.bottom + titleBandMm + 6,
  right: borderBox.right - 7,
  top: borderBox.top - 7,
};
