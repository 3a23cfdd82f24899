import type { Plant } from "../../plant/plant.ts";
import type { PaperPoint } from "../paper/displayList.ts";
import { type LabelDesk, openLabelDesk } from "../paper/labelDesk.ts";
import type { Paper, PaperBox } from "../paper/paper.ts";
import { heightScales, paperMm, planScales, type Scale } from "../paper/scale.ts";
import type { Need } from "../paper/shelves.ts";
import { tableMm } from "../paper/tableCells.ts";
import { heightRange, type ProfileRow, type RowPaper } from "./profileRows.ts";
import { isNarrow } from "./profileTable.ts";

/** Paper over the chart for its heading, under it for its bands, and at the sheet's foot for the key, mm. */
const headMm = 11;
export const bandMm = 4.7;
export const bandCount = 3;
const tableGapMm = 5;
const footMm = { wide: 9, narrow: 24 } as const;
const sideMm = 15;
/** White inside the chart: at its ends, over the poles, and under the ground for the names of crossings. */
const insideMm = { end: 8, top: 4, bottom: 10 } as const;
/** Heights are drawn this many times larger than lengths. */
const exaggeration = { least: 3, most: 10 } as const;

/** Where a profile's chart lies in its part of a sheet. */
function chartBox({ left, bottom, right, top }: PaperBox): PaperBox {
  return { left: left + sideMm, right: right - sideMm, top: top - headMm, bottom: bottom + bandCount * bandMm };
}

type SheetOfRows = Pick<RowPaper, "drawing" | "rowLines">;

/** What the profiles of a sheet share over the table of all their spans. */
export function profileBox(paper: SheetOfRows, spanCount: number): PaperBox {
  return { ...paper.drawing, bottom: tableBox(paper, spanCount).top + tableGapMm };
}

/** Where the table of a sheet's spans stands: as low on the sheet as it is long. */
export function tableBox({ drawing, rowLines }: SheetOfRows, spanCount: number): PaperBox {
  const bottom = drawing.bottom + (isNarrow(drawing) ? footMm.narrow : footMm.wide);
  return { ...drawing, bottom, top: bottom + tableMm(spanCount, rowLines) };
}

/**
 * The scales that a set's profiles may be drawn at and the paper a row may take: across as the plan; up some times larger, largest
 * drawing first.
 *
 * @param plan  the plan's scale; a coarser one is taken where the longest span would leave the sheet
 * @param rowLines  of the table of spans; two where designed figures are struck over those built
 * @source engineer's scales for heights, 3 to 10 times larger: common practice, no source
 */
export function rowPapers(plant: Plant, { drawing }: Paper, plan: Scale, rowLines: 1 | 2 = 1): readonly RowPaper[] {
  const system = plant.settings().unitSystem;
  const { left, right } = chartBox(drawing);
  const widthMm = right - left - 2 * insideMm.end;
  const longestM = plant.all("span").reduce((most, id) => Math.max(most, plant.rowOf("span", id).lengthM), 0);
  const across =
    planScales(system).find((one) => one.denominator >= plan.denominator && paperMm(longestM, one) <= widthMm) ?? plan;
  return heightScales(system)
    .filter(({ denominator }) => {
      const times = across.denominator / denominator;
      return times >= exaggeration.least && times <= exaggeration.most;
    })
    .map((up) => ({
      drawing,
      rowLines,
      across,
      up,
      widthMm,
      heightMm: (spanCount) => roomMm(profileBox({ drawing, rowLines }, spanCount)),
    }));
}

/** Paper for heights in the chart of a part of a sheet, mm. */
function roomMm(box: PaperBox): number {
  const { top, bottom } = chartBox(box);
  return top - bottom - insideMm.top - insideMm.bottom;
}

/** Narrowest part of a sheet with room for its heading, mm. */
const leastWidthMm = 125;

/** The part of a sheet that a row needs, mm; one that goes on at an end takes the whole width, so that the next lies under it. */
export function profileNeed(row: ProfileRow, paper: RowPaper): Need<ProfileRow> {
  const { drawing, across, up } = paper;
  const wholeMm = drawing.right - drawing.left;
  const whole = profileBox(paper, row.steps.length);
  const [low, high] = heightRange(row);
  const width = paperMm(row.endM - row.startM, across) + 2 * (insideMm.end + sideMm);
  const height = paperMm(high - low, up) + insideMm.top + insideMm.bottom + headMm + bandCount * bandMm;
  return {
    thing: row,
    width: row.before === null && row.after === null ? Math.min(wholeMm, Math.max(leastWidthMm, width)) : wholeMm,
    height: Math.min(whole.top - whole.bottom, height),
  };
}

/** A profile being drawn. */
export type ProfileDesk = LabelDesk & {
  readonly plant: Plant;
  /** The design, where the route is drawn as built; null where it is drawn as designed. */
  readonly designed: Plant | null;
  readonly row: ProfileRow;
  /** Its part of the sheet. */
  readonly part: PaperBox;
  readonly chart: PaperBox;
  readonly across: Scale;
  readonly up: Scale;
  readonly at: (stationM: number, elevationM: number) => PaperPoint;
};

/** An empty chart for a row, its heights in the middle of it; a row too steep for the set's scale takes a coarser one. */
export function openProfileDesk(
  plant: Plant,
  row: ProfileRow,
  { across, up: usual }: RowPaper,
  part: PaperBox,
  designed: Plant | null = null,
): ProfileDesk {
  const chart = chartBox(part);
  const [low, high] = heightRange(row);
  const room = roomMm(part);
  const up =
    heightScales(plant.settings().unitSystem).find(
      (one) => one.denominator >= usual.denominator && paperMm(high - low, one) <= room,
    ) ?? usual;
  const baseMm = chart.bottom + insideMm.bottom + Math.max(0, room - paperMm(high - low, up)) / 2;
  const bands = chart.bottom - bandCount * bandMm;
  return {
    ...openLabelDesk({ ...chart, left: part.left, right: part.right, bottom: bands }),
    plant,
    designed,
    row,
    part,
    chart,
    across,
    up,
    at: (stationM, elevationM) => [
      chart.left + insideMm.end + paperMm(stationM - row.startM, across),
      baseMm + paperMm(elevationM - low, up),
    ],
  };
}
