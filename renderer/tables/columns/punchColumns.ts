import { thingName } from "../../../core/closeout/thingName.ts";
import { byCommand, computed, told, words } from "./builders.ts";
import type { Column, Write } from "./column.ts";
import { plainMeasure } from "./measures.ts";

const table = "punch";

const setting = (key: "what" | "assignedTo" | "dueIso"): Write["steps"] =>
  byCommand("punch.set", (_, punchId, value) => ({ punchId, [key]: value }));

const due = words({ table, column: "dueIso" }, "Due", { widthPx: 110, steps: setting("dueIso") });

/** The punch list: what is to be mended, for whom and until when is written here; it is done, and signed for, in the closeout. */
export const punchColumns: readonly Column[] = [
  computed("number", "No.", plainMeasure("", 0), (plant, id) => plant.rowOf(table, id).number, 70),
  told("thing", "Where", (plant, id) => thingName(plant, plant.rowOf(table, id)), 200),
  words({ table, column: "what" }, "What", { mayBeEmpty: false, widthPx: 280, steps: setting("what") }),
  words({ table, column: "assignedTo" }, "Assigned", { steps: setting("assignedTo") }),
  { ...due, write: due.write && { ...due.write, read: readDay } },
  told("by", "Put on the list by", (plant, id) => plant.rowOf(table, id).by, 150),
  told("day", "Put on the list", (plant, id) => plant.rowOf(table, id).atIso.slice(0, 10), 130),
  told("state", "State", (plant, id) => (plant.rowOf(table, id).doneIso === "" ? "open" : "done"), 80),
  told("doneBy", "Done by", (plant, id) => plant.rowOf(table, id).doneBy),
  told("doneDay", "Done", (plant, id) => plant.rowOf(table, id).doneIso.slice(0, 10), 110),
  told("note", "How it was mended", (plant, id) => plant.rowOf(table, id).doneNote, 220),
];

/** A day as the punch list keeps it, or none. */
function readDay(text: string): ReturnType<Write["read"]> {
  const day = text.trim();
  if (day === "") return { ok: true, value: "" };
  const atMs = /^\d{4}-\d{2}-\d{2}$/.test(day) ? Date.parse(`${day}T00:00:00Z`) : Number.NaN;
  const isDay = !Number.isNaN(atMs) && new Date(atMs).toISOString().startsWith(day);
  return isDay ? { ok: true, value: day } : { ok: false, what: "Write the day as year, month and day: 2030-05-21." };
}
