import { houseTagOf } from "../closeout/askedReadings.ts";
import type { Plant } from "../plant/plant.ts";
import { drawAsBuilt } from "./builtReading.ts";
import { freePortFix } from "./freePortFix.ts";
import { type Fix, type Rule, routeItself } from "./rule.ts";

export const builtHouseTag: Rule = {
  id: "built-house-tag",
  title: "A house carries the tag of its own terminal and port",
  compares: "The tag read at a house, against the terminal and port its drop was drawn on.",
  severity: "warning",
  basis: routeItself,
  each: "reading",
  *check(plant, id) {
    const { kind, what, subjectId: dropId, text } = plant.rowOf("reading", id);
    const drop = plant.row("drop", dropId);
    if (kind !== "drop" || what !== "houseTag" || !drop) return;
    const drawn = houseTagOf(plant, dropId);
    if (plain(text) === plain(drawn)) return;
    yield {
      subjects: [
        { table: "reading", id },
        { table: "livingUnit", id: drop.livingUnitId },
      ],
      message: `The house at ${plant.rowOf("livingUnit", drop.livingUnitId).address} is tagged ${text.trim() || "with nothing"}; its drop was drawn as ${drawn}.`,
      measured: null,
      limit: null,
      unit: "",
      fixes: taggedPortFix(plant, dropId, text),
    };
  },
};

/** What a tag says, however it was written. */
function plain(tag: string): string {
  return tag
    .trim()
    .replaceAll(/[\s.\u2013\u2014-]+/g, "-")
    .toUpperCase();
}

/** The drop to the port its tag names. */
function taggedPortFix(plant: Plant, dropId: string, text: string): readonly Fix[] {
  const [, name = "", port = ""] = /^\s*(.+?)[\s.\u2013\u2014-]+(\d+)\s*$/.exec(text) ?? [];
  const [terminalId] = plant.where("terminal", "name", name);
  return terminalId === undefined ? [] : freePortFix(plant, dropId, { terminalId, port: Number(port) }, drawAsBuilt);
}
