import type { Plant } from "../plant/plant.ts";
import type { PaperPoint } from "./displayList.ts";
import { type LabelDesk, openLabelDesk } from "./labelDesk.ts";
import type { Paper, PaperBox } from "./paper.ts";
import { heightRange, type ProfileRow, type RowPaper } from "./profileRows.ts";
import { isNarrow } from "./profileTable.ts";
import { heightScales, paperMm, planScales, type Scale } from "./scale.ts";
import { tableMm } from "./table.ts";

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

/** Where a profile's chart lies on its sheet. */
function chartBox(drawing: PaperBox, spanCount: number): PaperBox {
  const table = tableBox(drawing, spanCount);
  return {
    left: drawing.left + sideMm,
    right: drawing.right - sideMm,
    top: drawing.top - headMm,
    bottom: table.top + tableGapMm + bandCount * bandMm,
  };
}

/** Where the table of a profile's spans stands: as low on the sheet as it is long. */
export function tableBox(drawing: PaperBox, spanCount: number): PaperBox {
  const bottom = drawing.bottom + (isNarrow(drawing) ? footMm.narrow : footMm.wide);
  return { ...drawing, bottom, top: bottom + tableMm(spanCount) };
}

/**
 * The scales that a set's profiles may be drawn at and the paper a row may take: across as the plan; up some times larger, largest
 * drawing first.
 *
 * @param plan  the plan's scale; a coarser one is taken where the longest span would leave the sheet
 * @source engineer's scales for heights, 3 to 10 times larger: common practice, no source
 */
export function rowPapers(plant: Plant, { drawing }: Paper, plan: Scale): readonly RowPaper[] {
  const system = plant.settings().unitSystem;
  const { left, right } = chartBox(drawing, 1);
  const widthMm = right - left - 2 * insideMm.end;
  const longestM = plant.all("span").reduce((most, id) => Math.max(most, plant.rowOf("span", id).lengthM), 0);
  const across =
    planScales(system).find((one) => one.denominator >= plan.denominator && paperMm(longestM, one) <= widthMm) ?? plan;
  return heightScales(system)
    .filter(({ denominator }) => {
      const times = across.denominator / denominator;
      return times >= exaggeration.least && times <= exaggeration.most;
    })
    .map((up) => ({ drawing, across, up, widthMm, heightMm: (spanCount) => roomMm(drawing, spanCount) }));
}

function roomMm(drawing: PaperBox, spanCount: number): number {
  const { top, bottom } = chartBox(drawing, spanCount);
  return top - bottom - insideMm.top - insideMm.bottom;
}

/** A profile being drawn. */
export type ProfileDesk = LabelDesk & {
  readonly plant: Plant;
  readonly row: ProfileRow;
  readonly drawing: PaperBox;
  readonly chart: PaperBox;
  readonly across: Scale;
  readonly up: Scale;
  readonly at: (stationM: number, elevationM: number) => PaperPoint;
};

/** An empty chart for a row, its heights in the middle of it; a row too steep for the set's scale takes a coarser one. */
export function openProfileDesk(plant: Plant, row: ProfileRow, { drawing, across, up: usual }: RowPaper): ProfileDesk {
  const chart = chartBox(drawing, row.steps.length);
  const [low, high] = heightRange(row);
  const room = roomMm(drawing, row.steps.length);
  const up =
    heightScales(plant.settings().unitSystem).find(
      (one) => one.denominator >= usual.denominator && paperMm(high - low, one) <= room,
    ) ?? usual;
  const baseMm = chart.bottom + insideMm.bottom + Math.max(0, room - paperMm(high - low, up)) / 2;
  const bands = chart.bottom - bandCount * bandMm;
  return {
    ...openLabelDesk({ ...chart, left: drawing.left, right: drawing.right, bottom: bands }),
    plant,
    row,
    drawing,
    chart,
    across,
    up,
    at: (stationM, elevationM) => [
      chart.left + insideMm.end + paperMm(stationM - row.startM, across),
      baseMm + paperMm(elevationM - low, up),
    ],
  };
}
