import Papa from "papaparse";
import { fiberPlace } from "../fiber/colourCode.ts";
import type { Grid } from "../geodesy/transverseMercator.ts";
import { type Route, settingsOf } from "../model/route.ts";
import { dropCutM, dropRunM } from "../plant/dropView.ts";
import type { Point } from "../plant/geometry.ts";
import { openPlant, type Plant } from "../plant/plant.ts";
import { portsOf, terminalPlace } from "../plant/terminalView.ts";
import type { UnitSystem } from "../units/unitSystem.ts";
import { type Cells, lengthCell, livingUnitCells, poleCells } from "./exportColumns.ts";
import { guardedText } from "./formulaGuard.ts";
import { gridOfRoute } from "./placeRows.ts";
import { poleJoins } from "./poleJoins.ts";
import { siteCells, siteLists } from "./siteCells.ts";

/** Lists that can be written: tables of the route, and the schedule of ports with their drops. */
export const csvLists = ["pole", "livingUnit", "terminal", "port", "fiberUse", ...siteLists] as const;

export type CsvList = (typeof csvLists)[number];

/**
 * Writes one list of a route as CSV, lengths in the route's units with the unit in the heading. Text that a spreadsheet would run
 * as a formula gets an apostrophe, which the importers take off again. All but terminals, ports and fibers read back as the same rows.
 */
export function writeCsv(route: Route, list: CsvList): string {
  const plant = openPlant(route);
  const edge = { plant, grid: gridOfRoute(route), system: settingsOf(route).unitSystem };
  const rows = rowsOf(edge, list);
  const fields = Object.keys(rows[0] ?? {});
  const data = rows.map((row) => fields.map((field) => row[field] ?? null));
  return `${Papa.unparse({ fields, data }, { escapeFormulae: guardedText, newline: "\r\n" })}\r\n`;
}

type Edge = { readonly plant: Plant; readonly grid: Grid | null; readonly system: UnitSystem };

function poleRows(edge: Edge): Cells[] {
  const { plant, system } = edge;
  const joins = poleJoins(plant.route());
  return plant.all("pole").map((id) => {
    const pole = plant.rowOf("pole", id);
    return { ...placeCells(edge, pole), ...poleCells(pole, joins.get(id) ?? "", system) };
  });
}

function rowsOf(edge: Edge, list: CsvList): Cells[] {
  const { plant, system } = edge;
  switch (list) {
    case "pole":
      return poleRows(edge);
    case "livingUnit":
      return plant.all("livingUnit").map((id) => {
        const unit = plant.rowOf("livingUnit", id);
        return { ...placeCells(edge, unit), ...livingUnitCells(unit, system) };
      });
    case "terminal":
      return plant.all("terminal").map((id) => terminalRow(edge, id));
    case "port":
      return plant.all("terminal").flatMap((id) => portRows(edge, id));
    case "fiberUse":
      return plant.all("fiberUse").map((id) => fiberRow(edge, id));
    default:
      return plant.all(list).map((id) => siteCells(plant, list, id, system));
  }
}

/** Degrees to 9 decimals, 0.1 mm, so that a place reads back to the same millimetre. */
function placeCells({ grid, system }: Edge, point: Point): Cells {
  if (!grid) return { ...lengthCell("east", point.eastM, system), ...lengthCell("north", point.northM, system) };
  const [lonDeg, latDeg] = grid.toLonLat(point);
  return { lon: Number(lonDeg.toFixed(9)), lat: Number(latDeg.toFixed(9)) };
}

function terminalRow(edge: Edge, id: string): Cells {
  const { plant, system } = edge;
  const terminal = plant.rowOf("terminal", id);
  const place = terminalPlace(plant, id);
  const ports = portsOf(plant, id);
  return {
    terminal: terminal.name,
    model: plant.rowOf("terminalModel", terminal.terminalModelId).name,
    cable: plant.rowOf("cable", terminal.cableId).name,
    pole: plant.rowOf("pole", place.poleId).tag,
    ...lengthCell("from_pole", place.fromPoleM, system),
    ...lengthCell("station", place.stationM, system),
    ...placeCells(edge, place),
    port_count: ports.length,
    used_port_count: ports.filter((port) => port.dropIds.length > 0).length,
    reserved_port_count: ports.filter((port) => port.isReserved).length,
    reserved_for: terminal.reservedFor,
    pinned: terminal.pinned,
    reason: terminal.reason,
  };
}

/** One row a drop; a spare or reserved port has one row without an address. */
function portRows({ plant, system }: Edge, terminalId: string): Cells[] {
  const terminal = plant.rowOf("terminal", terminalId).name;
  return portsOf(plant, terminalId).flatMap(({ port, leg, splitterId, dropIds, isReserved }) => {
    const splitter = splitterId === null ? null : plant.rowOf("splitter", splitterId).position;
    const drops = dropIds.length === 0 ? [null] : dropIds;
    return drops.map((dropId) => {
      const drop = dropId === null ? null : plant.rowOf("drop", dropId);
      const unit = drop && plant.rowOf("livingUnit", drop.livingUnitId);
      return {
        terminal,
        port,
        splitter,
        leg,
        address: unit?.address ?? "",
        building: unit?.building ?? "",
        ...lengthCell("drop_run", dropId === null ? null : dropRunM(plant, dropId), system),
        ...lengthCell("drop_to_cut", dropId === null ? null : dropCutM(plant, dropId), system),
        reserved: isReserved,
        drop_type: drop ? plant.rowOf("dropType", drop.dropTypeId).name : "",
        pinned: drop?.pinned ?? false,
      };
    });
  });
}

function fiberRow({ plant }: Edge, id: string): Cells {
  const use = plant.rowOf("fiberUse", id);
  const { fibersPerTube } = plant.rowOf("cableType", plant.rowOf("cable", use.cableId).cableTypeId);
  const { tube, tubeColour, fiberInTube, fiberColour } = fiberPlace(use.fiber, fibersPerTube);
  return {
    cable: plant.rowOf("cable", use.cableId).name,
    fiber: use.fiber,
    tube,
    tube_colour: tubeColour,
    fiber_in_tube: fiberInTube,
    fiber_colour: fiberColour,
    purpose: use.purpose,
    terminal: use.terminalId === null ? "" : plant.rowOf("terminal", use.terminalId).name,
    splitter: use.splitterId === null ? null : plant.rowOf("splitter", use.splitterId).position,
    closure: use.closureId === null ? "" : plant.rowOf("closure", use.closureId).name,
    lateral_cable: use.lateralCableId === null ? "" : plant.rowOf("cable", use.lateralCableId).name,
    lateral_fiber: use.lateralFiber,
    feed: use.feedId === null ? "" : plant.rowOf("feed", use.feedId).name,
  };
}
