import type { Plant } from "../plant/plant.ts";
import type { Book, Drawn } from "./book.ts";
import type { Mark, PaperPoint, SheetLink } from "./paper/displayList.ts";
import { northArrow, scaleBar } from "./paper/furniture.ts";
import { area, circle, rectangle, stroke, words } from "./paper/marks.ts";
import { textWidthMm } from "./paper/measureText.ts";
import { boundsOf } from "./paper/orientedBox.ts";
import { clippedTo, type PaperBox } from "./paper/paper.ts";
import { openPlacer, type Placer } from "./paper/placer.ts";
import { scaleToFit } from "./paper/scale.ts";
import { alongStep } from "./plan/stripStep.ts";
import type { Strip } from "./plan/strips.ts";
import { toGround, toPaper, type View } from "./plan/view.ts";

const footMm = 15;
const numberHeightMm = 2.6;
/** Paper a strip's outline keeps round its line, mm on the strip's own sheet. */
const outlineMm = 38;

/** The whole route with the outline and number of every plan sheet, north up. */
export function keyMap(plant: Plant, cut: readonly Strip[], book: Book, box: PaperBox): Required<Drawn> {
  const view = mapView(plant, box);
  if (!view) return { marks: [words("No poles yet", [box.left, box.top - 6])], links: [] };
  const placer = openPlacer([box.left, box.bottom + footMm, box.right, box.top]);
  const shown = cut.filter((strip) => book.numberOf(strip.key) !== undefined);
  const marks: Mark[] = [...unitDots(plant, view, box), ...outlines(shown, view, box), ...line(plant, view, placer)];
  const links: SheetLink[] = [];
  for (const strip of shown)
    marks.push(...sheetNumber(plant, strip, book.numberOf(strip.key) ?? "", view, placer, links));
  const system = plant.settings().unitSystem;
  marks.push(
    ...northArrow([box.right - 7, box.bottom + 6], 0),
    ...scaleBar([box.left + 2, box.bottom + 1], view.scale, system),
    words(view.scale.text, [box.left + 2, box.bottom + 6.4], { heightMm: 2 }),
  );
  return { marks, links };
}

function mapView(plant: Plant, box: PaperBox): View | null {
  const poles = [...plant.route().pole.values()];
  if (poles.length === 0) return null;
  const [west, south, east, north] = boundsOf(poles.map((one) => [one.eastM, one.northM] as const));
  const widthMm = box.right - box.left - 24;
  const heightMm = box.top - box.bottom - footMm - 12;
  const scale = scaleToFit(plant.settings().unitSystem, east - west, north - south, widthMm, heightMm);
  return {
    scale,
    turnRad: 0,
    ground: { eastM: (west + east) / 2, northM: (south + north) / 2 },
    paper: [(box.left + box.right) / 2, (box.bottom + footMm + box.top) / 2],
  };
}

function unitDots(plant: Plant, view: View, { left, bottom, right, top }: PaperBox): readonly Mark[] {
  return plant
    .all("livingUnit")
    .map((id) => toPaper(view, plant.rowOf("livingUnit", id)))
    .filter(([x, y]) => x > left && x < right && y > bottom && y < top)
    .map((at) => circle("units", null, at, 0.28, 0.45));
}

function outlines(shown: readonly Strip[], view: View, box: PaperBox): readonly Mark[] {
  return shown.map((strip) => area("frame", "thin", clippedTo(outlineOf(strip, view), box)));
}

function outlineOf(strip: Strip, view: View): readonly PaperPoint[] {
  const [left, bottom, right, top] = strip.lineBounds;
  const corners: readonly PaperPoint[] = [
    [left, bottom - outlineMm],
    [right, bottom - outlineMm],
    [right, top + outlineMm],
    [left, top + outlineMm],
  ];
  return corners.map((one) => toPaper(view, toGround(strip.view, one)));
}

function line(plant: Plant, view: View, placer: Placer): readonly Mark[] {
  const spans = plant.all("span").map((id) => plant.rowOf("span", id));
  const lines = spans.map((span): readonly [PaperPoint, PaperPoint] => [
    toPaper(view, plant.rowOf("pole", span.fromPoleId)),
    toPaper(view, plant.rowOf("pole", span.toPoleId)),
  ]);
  for (const [from, to] of lines) placer.line(from, to, 4);
  const poles = plant.all("pole").map((id) => circle("poles", null, toPaper(view, plant.rowOf("pole", id)), 0.55, 0));
  return [...lines.map((one) => stroke("strand", "bold", one)), ...poles];
}

function sheetNumber(
  plant: Plant,
  strip: Strip,
  number: string,
  view: View,
  placer: Placer,
  links: SheetLink[],
): readonly Mark[] {
  const middleStep = strip.steps[Math.floor(strip.steps.length / 2)];
  if (!middleStep) return [];
  const anchor = toPaper(view, alongStep(plant, middleStep, (middleStep.startFrac + middleStep.endFrac) / 2));
  const width = textWidthMm(number, "narrowBold", numberHeightMm) + 2.4;
  const height = numberHeightMm + 2.2;
  const candidates = [5, 7, 9, 12].flatMap((radius) =>
    Array.from({ length: 16 }, (_, step) => {
      const turn = (step * Math.PI) / 8 + Math.PI / 2;
      return {
        centre: [anchor[0] + radius * Math.cos(turn), anchor[1] + radius * Math.sin(turn)] as const,
        turnRad: 0,
        cost: radius,
      };
    }),
  );
  const placed = placer.place({ width, height, anchor, candidates });
  if (!placed) return [];
  const [x, y] = placed.box.centre;
  const corner: PaperPoint = [x - width / 2, y - height / 2];
  links.push({ boxMm: [...corner, width, height], to: strip.key });
  return [
    rectangle("text", "thin", corner, width, height, { fill: 1 }),
    words(number, [x, y - numberHeightMm / 2], { face: "narrowBold", heightMm: numberHeightMm, align: "middle" }),
  ];
}
