import type { DrawnLayer } from "../model/drawnLayers.ts";
import { layerNamesOf } from "../model/layerNames.ts";
import type { Point } from "../plant/geometry.ts";
import type { Plant } from "../plant/plant.ts";
import type { PaperPoint } from "../sheets/paper/displayList.ts";
import { drawLabel, type LabelLine } from "../sheets/paper/labels.ts";
import { textWidthMm } from "../sheets/paper/measureText.ts";
import { cornersOf, turnedBox } from "../sheets/paper/orientedBox.ts";
import { type Candidate, openPlacer } from "../sheets/paper/placer.ts";
import { metresPerFoot } from "../units/constants.ts";
import type { DxfBlock, DxfEntity, DxfLayer, DxfPoint } from "./drawing.ts";
import { dxfMarks } from "./dxfMarks.ts";
import type { RouteBlock } from "./routeBlocks.ts";

/** Colour of each layer; the labels of a layer stand on one of the same name and -TEXT. */
const layerColours = {
  STRUCTURE: 8,
  CROSSING: 30,
  GROUND: 34,
  SPAN: 8,
  STRAND: 5,
  CABLE: 3,
  DROP: 4,
  UNIT: 9,
  GUY: 34,
  POLE: 7,
  COIL: 6,
  CLOSURE: 1,
  TERMINAL: 1,
} as const;
export type RouteLayer = keyof typeof layerColours;

/** What a company names each of them by. */
const namedBy: Readonly<Record<RouteLayer, DrawnLayer>> = {
  STRUCTURE: "structures",
  CROSSING: "crossings",
  GROUND: "ground",
  SPAN: "spans",
  STRAND: "strand",
  CABLE: "cable",
  DROP: "drops",
  UNIT: "units",
  GUY: "guys",
  POLE: "poles",
  COIL: "slack",
  CLOSURE: "closures",
  TERMINAL: "terminals",
};

const routeLayers = Object.keys(layerColours) as RouteLayer[]; // the keys of that object

/** Symbols and lettering are sized for a plot at this scale: metres of ground under a millimetre of paper. */
export const groundPerMmM = 0.5;
const farMm = 1e7;
const insideMm = 2;

/** Model space while a route is drawn into it. */
export type ModelDesk = {
  readonly plant: Plant;
  readonly line: (layer: RouteLayer, points: readonly Point[], style?: { closed?: boolean; dashed?: boolean }) => void;
  /** Puts a symbol down at a true place, turned, or mirrored so that it reaches to the left. */
  readonly symbol: (layer: RouteLayer, block: RouteBlock, at: Point, turnRad: number, mirrored?: boolean) => void;
  /** Words in the middle of a place, whatever is there. */
  readonly inside: (layer: RouteLayer, text: string, at: Point, downMm: number) => void;
  /** Asks for a label near a place; those of the lowest rank are placed first, all of them after the symbols. */
  readonly label: (rank: number, layer: RouteLayer, lines: readonly LabelLine[], at: Point, spots: Spots) => void;
  readonly finish: () => {
    readonly layers: readonly DxfLayer[];
    readonly blocks: readonly DxfBlock[];
    readonly entities: readonly DxfEntity[];
  };
};
/** Places for a label round a place of the paper. */
type Spots = (at: PaperPoint) => readonly Candidate[];

/** Opens model space in the units of the route's settings. */
export function openModelDesk(plant: Plant): ModelDesk {
  const unitsPerM = plant.settings().unitSystem === "us" ? 1 / metresPerFoot : 1;
  const unitsPerMm = groundPerMmM * unitsPerM;
  const entities: DxfEntity[] = [];
  const blocks = new Map<string, DxfBlock>();
  const wishes: { readonly rank: number; readonly put: () => void }[] = [];
  const placer = openPlacer([-farMm, -farMm, farMm, farMm]);
  const place = ({ eastM, northM }: Point): DxfPoint => [eastM * unitsPerM, northM * unitsPerM];
  const paper = ({ eastM, northM }: Point): PaperPoint => [eastM / groundPerMmM, northM / groundPerMmM];
  const names = layerNamesOf(plant.settings().layerNames);
  const shape = (layer: RouteLayer) => names.get(namedBy[layer]) ?? layer;
  const text = (layer: RouteLayer) => `${shape(layer)}-TEXT`;

  return {
    plant,
    line(layer, points, { closed = false, dashed = false } = {}) {
      entities.push({ kind: "line", layer: shape(layer), points: points.map(place), closed, dashed, width: 0 });
      points.slice(1).forEach((to, index) => {
        const from = points[index];
        if (from) placer.line(paper(from), paper(to));
      });
    },
    symbol(layer, { name, marks, box }, at, turnRad, mirrored = false) {
      if (!blocks.has(name)) {
        blocks.set(name, { name, entities: dxfMarks(marks, { layerOf: () => "0", unitsPerMm, asPrinted: false }) });
      }
      entities.push({ kind: "insert", layer: shape(layer), block: name, at: place(at), turnRad, mirrored });
      const left = mirrored ? -box.left - box.width : box.left;
      placer.block(cornersOf(turnedBox(paper(at), turnRad, left, box.bottom, box.width, box.height)));
    },
    inside(layer, words, at, downMm) {
      const [x, y] = place(at);
      const middle: DxfPoint = [x, y - downMm * unitsPerMm];
      entities.push({
        kind: "text",
        layer: text(layer),
        text: words,
        at: middle,
        height: insideMm * unitsPerMm,
        turnRad: 0,
        width: textWidthMm(words, "narrow", insideMm) * unitsPerMm,
      });
    },
    label(rank, layer, lines, at, spots) {
      const put = () => {
        const marks = drawLabel(placer, lines, paper(at), spots(paper(at))) ?? [];
        entities.push(...dxfMarks(marks, { layerOf: () => text(layer), unitsPerMm, asPrinted: false }));
      };
      wishes.push({ rank, put });
    },
    finish() {
      for (const { put } of wishes.sort((a, b) => a.rank - b.rank)) put();
      const used = new Set(entities.map((one) => one.layer));
      const named = routeLayers.flatMap((layer) => {
        const colour = layerColours[layer];
        return [
          { name: shape(layer), colour },
          { name: text(layer), colour },
        ];
      });
      return { layers: named.filter((one) => used.has(one.name)), blocks: [...blocks.values()], entities };
    },
  };
}
