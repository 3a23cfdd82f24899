import { spanName } from "../plant/names.ts";
import type { Plant } from "../plant/plant.ts";
import type { Subject } from "../rules/rule.ts";
import { attachmentWords, crossingName } from "./tradeWords.ts";

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
    case "settings":
      return "the route's settings";
    default: {
      const row = plant.row(table, id);
      const kind = table.replace(/([A-Z])/g, " $1").toLowerCase();
      return row && "name" in row && row.name !== "" ? `${kind} ${row.name}` : kind;
    }
  }
}
