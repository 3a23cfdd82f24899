import { dropEnds, dropRunM } from "../plant/dropView.ts";
import { pointOnSpan, spanEnds } from "../plant/geometry.ts";
import type { Plant } from "../plant/plant.ts";
import { portsOf, terminalPlace } from "../plant/terminalView.ts";
import type { UnitSystem } from "../units/unitSystem.ts";
import { type Cells, lengthCell, livingUnitCells, poleCells } from "./exportColumns.ts";
import { siteCells } from "./siteCells.ts";
import { type Shape, siteShape } from "./siteShapes.ts";

/** Tables that have a place on the ground, in the order they are written. */
export const placedTables = [
  "pole",
  "span",
  "terminal",
  "slack",
  "closure",
  "crossing",
  "groundPoint",
  "structure",
  "guy",
  "livingUnit",
  "drop",
  "dropCrossing",
] as const;

export type PlacedTable = (typeof placedTables)[number];

/** What rows are written from; `joins` as poleJoins gives them. */
export type PlacedSource = { readonly plant: Plant; readonly joins: ReadonlyMap<string, string> };

/** Where a row is, and its figures under headings its own import knows. */
export type PlacedContent = { readonly shape: Shape; readonly cells: Cells };

/** What is written of one row of a table that has a place. */
export function placedContent(
  { plant, joins }: PlacedSource,
  table: PlacedTable,
  id: string,
  system: UnitSystem,
): PlacedContent {
  switch (table) {
    case "pole": {
      const pole = plant.rowOf("pole", id);
      return { shape: { at: pole }, cells: poleCells(pole, joins.get(id) ?? "", system) };
    }
    case "livingUnit": {
      const unit = plant.rowOf("livingUnit", id);
      return { shape: { at: unit }, cells: livingUnitCells(unit, system) };
    }
    case "span":
      return spanContent(plant, id, system);
    case "terminal":
      return terminalContent(plant, id, system);
    case "drop":
      return dropContent(plant, id, system);
    case "slack": {
      const { kind, storedM, cableId, spanId, offsetM } = plant.rowOf("slack", id);
      const cells = { kind, ...lengthCell("stored", storedM, system), cable: plant.rowOf("cable", cableId).name };
      return { shape: { at: pointOnSpan(plant, spanId, offsetM) }, cells };
    }
    case "closure": {
      const { name, cableId, spanId, offsetM, note } = plant.rowOf("closure", id);
      return {
        shape: { at: pointOnSpan(plant, spanId, offsetM) },
        cells: { name, cable: plant.rowOf("cable", cableId).name, note },
      };
    }
    case "crossing":
    case "groundPoint":
    case "structure":
    case "guy":
    case "dropCrossing":
      return { shape: siteShape(plant, table, id), cells: siteCells(plant, table, id, system) };
  }
}

function spanContent(plant: Plant, id: string, system: UnitSystem): PlacedContent {
  const { lengthM, origin, note } = plant.rowOf("span", id);
  const { from, to } = spanEnds(plant, id);
  const cells = { from_pole: from.tag, to_pole: to.tag, ...lengthCell("length", lengthM, system), origin, note };
  return { shape: { along: [from, to] }, cells };
}

function terminalContent(plant: Plant, id: string, system: UnitSystem): PlacedContent {
  const { name, terminalModelId, pinned, reason } = plant.rowOf("terminal", id);
  const place = terminalPlace(plant, id);
  const ports = portsOf(plant, id);
  const cells = {
    name,
    model: plant.rowOf("terminalModel", terminalModelId).name,
    pole: plant.rowOf("pole", place.poleId).tag,
    ...lengthCell("from_pole", place.fromPoleM, system),
    port_count: ports.length,
    used_port_count: ports.filter((port) => port.dropIds.length > 0).length,
    reserved_port_count: ports.filter((port) => port.isReserved).length,
    pinned,
    reason,
  };
  return { shape: { at: place }, cells };
}

function dropContent(plant: Plant, id: string, system: UnitSystem): PlacedContent {
  const { terminalId, port, livingUnitId } = plant.rowOf("drop", id);
  const { from, to } = dropEnds(plant, id);
  const cells = {
    terminal: plant.rowOf("terminal", terminalId).name,
    port,
    address: plant.rowOf("livingUnit", livingUnitId).address,
    ...lengthCell("run", dropRunM(plant, id), system),
  };
  return { shape: { along: [from, to] }, cells };
}
