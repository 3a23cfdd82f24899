import { fail, ok, type Result } from "../model/result.ts";
import { type Route, settingsOf } from "../model/route.ts";
import { openPlant, type Plant } from "../plant/plant.ts";
import { textWidthMm } from "../sheets/paper/measureText.ts";
import { metresPerFoot } from "../units/constants.ts";
import { fixedText } from "../units/fixedText.ts";
import { type DxfDrawing, type DxfEntity, extentsOf } from "./drawing.ts";
import { drawModelHung, drawModelUnits } from "./drawModelHung.ts";
import { drawModelLine, drawModelPoles } from "./drawModelLine.ts";
import { drawModelSite } from "./drawModelSite.ts";
import { groundPerMmM, openModelDesk } from "./modelDesk.ts";
import { writeDxf } from "./writeDxf.ts";

/**
 * A route as DXF in model space, in plan: a drawing unit is a foot or a metre by the route's units, x is east and y north on the
 * route's grid. Everything stands at its true place; symbols and lettering are sized for a plot at 1:500.
 *
 * Refuses with "nothing-to-draw" where the route has no pole.
 */
export function writeRouteDxf(route: Route): Result<string> {
  if (route.pole.size === 0) {
    return fail(
      "nothing-to-draw",
      "The route has no pole, so there is nothing to draw.",
      settingsOf(route).routeName,
      "Import poles first.",
    );
  }
  return ok(writeDxf(routeDrawing(openPlant(route))));
}

/** The drawing of a route in model space, before it is written. */
export function routeDrawing(plant: Plant): DxfDrawing {
  const desk = openModelDesk(plant);
  drawModelSite(desk);
  drawModelLine(desk);
  drawModelPoles(desk);
  drawModelUnits(desk);
  drawModelHung(desk);
  const { layers, blocks, entities } = desk.finish();
  const isUs = plant.settings().unitSystem === "us";
  const unitsPerMm = groundPerMmM / (isUs ? metresPerFoot : 1);
  return {
    unit: isUs ? "ft" : "m",
    layers,
    blocks,
    entities: [...entities, ...notes(plant, entities, unitsPerMm)],
    dash: [3 * unitsPerMm, 1.5 * unitsPerMm],
  };
}

/** Says on layer 0 what the drawing is and what its units are, under its lower left corner. */
function notes(plant: Plant, entities: readonly DxfEntity[], unitsPerMm: number): readonly DxfEntity[] {
  const { routeName, unitSystem, originLonDeg, originLatDeg, datum } = plant.settings();
  const unit = unitSystem === "us" ? "1 foot (0.3048 m)" : "1 metre";
  const origin =
    originLonDeg === null || originLatDeg === null
      ? "a local grid"
      : `the route's own grid (transverse Mercator, WGS 84, true to scale), 0,0 at latitude ${fixedText(originLatDeg, 5)} longitude ${fixedText(originLonDeg, 5)}`;
  const lines = [
    `${routeName}: 1 drawing unit = ${unit}; scale 1:1, in plan`,
    `x east, y north on ${origin}${datum === "" ? "" : `; heights on ${datum}`}`,
    "Symbols and lettering sized for a plot at 1:500. Values are design aids, to be verified in the field before construction.",
  ];
  const { low } = extentsOf(entities);
  const heightMm = 2.5;
  return lines.map((text, index) => ({
    kind: "text",
    layer: "0",
    text,
    at: [low[0] + (textWidthMm(text, "plain", heightMm) / 2) * unitsPerMm, low[1] - (10 + index * 5) * unitsPerMm],
    height: heightMm * unitsPerMm,
    turnRad: 0,
    width: textWidthMm(text, "plain", heightMm) * unitsPerMm,
  }));
}
