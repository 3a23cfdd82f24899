import type { LoadFactor } from "../model/tables.ts";
import { spanName } from "../plant/names.ts";
import type { Plant } from "../plant/plant.ts";
import type { Subject } from "../rules/rule.ts";
import { attachmentWords, crossingName } from "./tradeWords.ts";

const loadWords: Readonly<Record<LoadFactor["load"], string>> = {
  vertical: "weight",
  wind: "wind",
  windAtCrossing: "wind at crossings",
  tension: "strand where it turns",
  deadEnd: "strand where it ends",
};

/** The row a figure is read from, as people name it. */
export function subjectWords(plant: Plant, { table, id }: Subject): string {
  switch (table) {
    case "pole":
      return `pole ${plant.rowOf(table, id).tag}`;
    case "span":
      return `span ${spanName(plant, id)}`;
    case "attachment": {
      const { owner, kind, poleId } = plant.rowOf(table, id);
      const what = [owner, attachmentWords[kind]].filter((one) => one !== "").join(" ");
      return `${what}, pole ${plant.rowOf("pole", poleId).tag}`;
    }
    case "crossing": {
      const { surface, name } = plant.rowOf(table, id);
      return crossingName(surface, name);
    }
    case "livingUnit":
      return plant.rowOf(table, id).address;
    case "drop":
      return `drop to ${plant.rowOf("livingUnit", plant.rowOf(table, id).livingUnitId).address}`;
    case "guy":
      return `guy at pole ${plant.rowOf("pole", plant.rowOf(table, id).poleId).tag}`;
    case "loadFactor": {
      const { load, strengthSetId } = plant.rowOf(table, id);
      return `load factor, ${loadWords[load]}, of ${plant.rowOf("strengthSet", strengthSetId).name}`;
    }
    case "extremeWind":
    case "extremeIce":
    case "windFactor":
      return plant.rowOf(table, id).name;
    case "settings":
      return "the route's settings";
    default: {
      const row = plant.row(table, id);
      const kind = table.replace(/([A-Z])/g, " $1").toLowerCase();
      return row && "name" in row && row.name !== "" ? `${kind} ${row.name}` : kind;
    }
  }
}
