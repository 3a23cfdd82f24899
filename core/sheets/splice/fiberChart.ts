import { cablesInOrder } from "../../plant/cableOrder.ts";
import type { Plant } from "../../plant/plant.ts";
import type { Draft } from "../book.ts";
import { numberRanges } from "../jobCard/terminalFacts.ts";
import { asFigure } from "../paper/marks.ts";
import type { Paper } from "../paper/paper.ts";
import { stacked } from "../paper/stacked.ts";
import { chartHeadMm, chartHeightMm, chartLegend, chartWords, drawChart } from "./fiberChartDrawing.ts";
import { type ChartPage, chartPages } from "./fiberChartRows.ts";

/** The foot of a sheet, with the meaning of the marks, and white between two charts, mm. */
const footMm = 7;
const betweenMm = 5;
const narrowestRowMm = 3.5;

/** A chart of one cable, or of some of its tubes. */
type Chart = { readonly key: string; readonly cableId: string; readonly name: string; readonly page: ChartPage };

/** The fibers of every cable: each drawn from the feed end to where it is cut, place after place; short charts share a sheet. */
export function fiberDrafts(plant: Plant, { drawing }: Paper): readonly Draft[] {
  const box = { ...drawing, bottom: drawing.bottom + footMm };
  const mostFibers = Math.floor((box.top - chartHeadMm.places - box.bottom) / narrowestRowMm);
  const charts = cablesInOrder(plant).flatMap((cable) => chartsOf(plant, cable.id, mostFibers));
  return stacked(charts, ({ page }) => chartHeightMm(page), box, betweenMm).map((rows): Draft => {
    const names = rows.map((one) => one.thing.name);
    const [key = "", ...otherKeys] = rows.map((one) => one.thing.key);
    return {
      key,
      otherKeys,
      kind: "fiber",
      title: names.length > 1 ? `Fiber charts, ${names[0]} to ${names.at(-1)}` : `Fiber chart, ${names[0]}`,
      names: names.map((name) => `Fiber chart, ${name}`),
      scale: "none",
      draw: () => ({
        marks: [
          ...rows.flatMap(({ thing, box: own }) =>
            asFigure(chartWords(thing.page), drawChart(plant, own, thing.cableId, thing.page)),
          ),
          ...chartLegend(drawing),
        ],
      }),
    };
  });
}

function chartsOf(plant: Plant, cableId: string, mostFibers: number): readonly Chart[] {
  const pages = chartPages(plant, cableId, mostFibers);
  const { name } = plant.rowOf("cable", cableId);
  return pages.map((page, index) => {
    const tubes = [...new Set(page.fibers.map((one) => one.tube))];
    const part = pages.length === 1 ? "" : `, tubes ${numberRanges(tubes)}`;
    return { key: `fiber ${cableId} ${index + 1}`, cableId, name: `${name}${part}`, page };
  });
}
