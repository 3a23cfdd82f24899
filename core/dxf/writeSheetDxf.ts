import type { LayerNames } from "../model/layerNames.ts";
import { type Layer, layers, marksByLayer, type Sheet } from "../sheets/paper/displayList.ts";
import { dxfMarks } from "./dxfMarks.ts";
import { dxfName } from "./dxfText.ts";
import { writeDxf } from "./writeDxf.ts";

/** One sheet as DXF, a drawing unit a millimetre of its paper: lines as wide as their pens, words as wide as they print. */
export function writeSheetDxf(sheet: Sheet, layerNames: LayerNames = new Map()): string {
  const nameOf = (layer: Layer) => layerNames.get(layer) ?? dxfName(layer);
  const byLayer = marksByLayer(sheet);
  const used = layers.filter((layer) => byLayer.has(layer));
  return writeDxf({
    unit: "mm",
    layers: used.map((layer) => ({ name: nameOf(layer), colour: 7 })),
    blocks: [],
    // in the order of their layers, as they are painted
    entities: used.flatMap((layer) =>
      dxfMarks(byLayer.get(layer) ?? [], { layerOf: () => nameOf(layer), unitsPerMm: 1, asPrinted: true }),
    ),
    dash: [2.4, 1],
  });
}
