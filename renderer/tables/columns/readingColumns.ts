import type { AskedReading } from "../../../core/closeout/askedReadings.ts";
import { readingText } from "../../../core/closeout/packet/readingText.ts";
import { thingName } from "../../../core/closeout/thingName.ts";
import { readingWords } from "../../../core/closeout/words.ts";
import type { Row } from "../../../core/model/tables.ts";
import type { Plant } from "../../../core/plant/plant.ts";
import { drawnText } from "../../../core/sheets/packet/askedGroups.ts";
import type { UnitSystem } from "../../../core/units/unitSystem.ts";
import { againstDrawn, drawnOf } from "../../closeout/packets/againstDrawn.ts";
import { told } from "./builders.ts";
import type { Column } from "./column.ts";

const table = "reading";

/** Every reading with its own unit, for one column holds lengths, light and words. Nobody types here: who reads, signs. */
export const readingColumns: readonly Column[] = [
  told("thing", "Read of", (plant, id) => thingName(plant, plant.rowOf(table, id)), 200),
  told("what", "What", (plant, id) => whatText(plant.rowOf(table, id)), 190),
  inUnits("value", "Read", (_, reading, units) => readingText(reading.what, reading, units)),
  inUnits(
    "drawn",
    "Drawn",
    (plant, reading, unitSystem) => drawnText(reading.what, drawn(plant, reading), { unitSystem }),
    190,
  ),
  inUnits(
    "against",
    "Against the drawing",
    (plant, reading, units) => againstDrawn(reading.what, reading, drawn(plant, reading), units),
    170,
  ),
  told("by", "By", (plant, id) => plant.rowOf(table, id).by),
  told("day", "Day", (plant, id) => plant.rowOf(table, id).atIso.slice(0, 10), 110),
  told("packet", "Brought in packet", (plant, id) => packetText(plant, plant.rowOf(table, id).packetId), 170),
];

/** A column told of the whole reading: its cells hold the reading's id. */
function inUnits(
  key: string,
  heading: string,
  text: (plant: Plant, reading: Row<"reading">, units: UnitSystem) => string,
  widthPx = 120,
): Column {
  return {
    ...told(key, heading, (_, id) => id, widthPx),
    show: (id, { plant, units }) => text(plant, plant.rowOf(table, String(id)), units),
  };
}

function drawn(plant: Plant, reading: Row<"reading">): AskedReading["drawn"] {
  return drawnOf(plant, reading, reading.id);
}

function whatText({ what, wavelengthNm }: Row<"reading">): string {
  return wavelengthNm > 0 ? `${readingWords[what]} at ${wavelengthNm} nm` : readingWords[what];
}

function packetText(plant: Plant, packetId: string | null): string {
  const packet = packetId === null ? undefined : plant.row("packet", packetId);
  return packet ? `${packet.number}, ${packet.crew}` : "";
}
