import type { paperNames } from "../../model/paperNames.ts";
import type { Settings } from "../../model/tables.ts";
import type { UnitSystem } from "../../units/unitSystem.ts";
import type { PaperPoint, SheetSizeMm } from "./displayList.ts";

const mmPerInch = 25.4;

export type PaperName = (typeof paperNames)[number];

/**
 * Width and height of each paper laid across, mm.
 *
 * @source ASME Y14.1 as reprinted in drafting references, seen: A 8.5 x 11, B 11 x 17, C 17 x 22, D 22 x 34 in; ISO 216 A series
 */
const acrossMm: Readonly<Record<PaperName, SheetSizeMm>> = {
  "ANSI A": { width: 11 * mmPerInch, height: 8.5 * mmPerInch },
  "ANSI B": { width: 17 * mmPerInch, height: 11 * mmPerInch },
  "ANSI C": { width: 22 * mmPerInch, height: 17 * mmPerInch },
  "ANSI D": { width: 34 * mmPerInch, height: 22 * mmPerInch },
  A4: { width: 297, height: 210 },
  A3: { width: 420, height: 297 },
  A2: { width: 594, height: 420 },
  A1: { width: 841, height: 594 },
};

/** Upright pages: ANSI A, 8.5 x 11 in, and ISO 216 A4. */
export const uprightPages: Readonly<Record<UnitSystem, SheetSizeMm>> = {
  us: { width: 8.5 * mmPerInch, height: 11 * mmPerInch },
  metric: { width: 210, height: 297 },
};

/** A rectangle of paper by its edges, mm from the sheet's lower left corner. */
export type PaperBox = { readonly left: number; readonly bottom: number; readonly right: number; readonly top: number };

/** The paper of a set and where its sheets may be drawn on. */
export type Paper = {
  readonly name: PaperName;
  readonly sizeMm: SheetSizeMm;
  /** Inside the border, title band included. */
  readonly border: PaperBox;
  /** What a sheet may draw on: inside the border, over the title band, with white all round. */
  readonly drawing: PaperBox;
};

/** Wider at the left, where sheets are bound. */
const marginMm = { left: 18, other: 10 } as const;
export const titleBandMm = 27;
const whiteMm = { side: 7, bottom: 6 } as const;

/** The paper of this name with its border and drawing space. */
export function paperOf(name: PaperName): Paper {
  const sizeMm = acrossMm[name];
  const border: PaperBox = {
    left: marginMm.left,
    bottom: marginMm.other,
    right: sizeMm.width - marginMm.other,
    top: sizeMm.height - marginMm.other,
  };
  const drawing: PaperBox = {
    left: border.left + whiteMm.side,
    bottom: border.bottom + titleBandMm + whiteMm.bottom,
    right: border.right - whiteMm.side,
    top: border.top - whiteMm.side,
  };
  return { name, sizeMm, border, drawing };
}

/**
 * The paper a set is drawn on where nobody asks for another: the company's own, or what an office printer of the country takes at
 * most.
 */
export function companysPaper({ paper, unitSystem }: Pick<Settings, "paper" | "unitSystem">): PaperName {
  if (paper !== "usual") return paper;
  return unitSystem === "us" ? "ANSI B" : "A3";
}

/** How many columns of at least this width stand side by side in a box; one at least. */
export function columnsAbreast({ left, right }: PaperBox, leastMm: number, gutterMm: number): number {
  return Math.max(1, Math.floor((right - left + gutterMm) / (leastMm + gutterMm)));
}

/** A box cut into columns of the same width, left to right. */
export function columnBoxes(box: PaperBox, count: number, gutterMm: number): readonly PaperBox[] {
  const width = (box.right - box.left - gutterMm * (count - 1)) / count;
  return Array.from({ length: count }, (_, index) => {
    const left = box.left + index * (width + gutterMm);
    return { ...box, left, right: left + width };
  });
}

/** What of a convex outline lies in a box, corner by corner. */
export function clippedTo(
  outline: readonly PaperPoint[],
  { left, bottom, right, top }: PaperBox,
): readonly PaperPoint[] {
  const inside: readonly ((point: PaperPoint) => number)[] = [
    ([x]) => x - left,
    ([x]) => right - x,
    ([, y]) => y - bottom,
    ([, y]) => top - y,
  ];
  return inside.reduce<readonly PaperPoint[]>(
    (points, depth) =>
      points.flatMap((point, index) => {
        const before = points.at(index - 1) ?? point;
        const [from, to] = [depth(before), depth(point)];
        const part = from / (from - to);
        const crossing: PaperPoint = [
          before[0] + (point[0] - before[0]) * part,
          before[1] + (point[1] - before[1]) * part,
        ];
        return [...(from < 0 !== to < 0 ? [crossing] : []), ...(to < 0 ? [] : [point])];
      }),
    outline,
  );
}
