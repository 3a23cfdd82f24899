import { colourAt } from "../../../core/fiber/colourCode.ts";
import type { FiberUse } from "../../../core/model/tables.ts";
import { hubLeg } from "../../../core/plant/feedView.ts";
import { fiberTrace, fiberUseStationM } from "../../../core/plant/fiberTrace.ts";
import { tubeOf } from "../../../core/plant/fiberView.ts";
import type { Plant } from "../../../core/plant/plant.ts";
import { computed, reference, told } from "./builders.ts";
import type { Column } from "./column.ts";
import { plainMeasure, runMeasure } from "./measures.ts";
import { splitPlace } from "./place.ts";

const feedColumn = reference({ table: "fiberUse", column: "feedId" }, "Hub output", { table: "feed", column: "name" });
const feedWrite = feedColumn.write;

/** Every fiber of every cable is a row, used or spare. */
export const fiberColumns: readonly Column[] = [
  told("cable", "Cable", (plant, id) => plant.rowOf("cable", splitPlace(id).ownerId).name, 110),
  computed("fiber", "Fiber", plainMeasure("", 0), (_, id) => splitPlace(id).number, 70),
  told("tubeColour", "Tube", (plant, id) => colourWords(place(plant, id).tube)),
  told("colour", "Colour", (plant, id) => colourWords(place(plant, id).place)),
  told("purpose", "Used for", (plant, id) => holderOf(plant, id)?.purpose ?? "spare", 100),
  told("terminal", "Terminal", (plant, id) => {
    const terminalId = holderOf(plant, id)?.terminalId ?? null;
    return terminalId === null ? "" : plant.rowOf("terminal", terminalId).name;
  }),
  told(
    "splitter",
    "Splitter",
    (plant, id) => {
      const splitterId = holderOf(plant, id)?.splitterId ?? null;
      return splitterId === null ? "" : String(plant.rowOf("splitter", splitterId).position);
    },
    80,
  ),
  {
    ...feedColumn,
    value: (plant, id) => holderOf(plant, id)?.feedId ?? null,
    write: feedWrite && {
      ...feedWrite,
      read(text, given, id) {
        const use = holderOf(given.plant, id);
        if (!use) return { ok: false, what: "Nothing uses this fiber yet: a spare fiber has no hub output." };
        return text.trim() === "" ? { ok: true, value: null } : feedWrite.read(text, given, id);
      },
      steps: (plant, id, feedId) => [
        { command: "row.set", input: { table: "fiberUse", id: holderOf(plant, id)?.id ?? "", values: { feedId } } },
      ],
    },
  },
  computed("hubLeg", "Leg at the hub", plainMeasure("", 0), (plant, id) => withUse(plant, id, hubLeg), 110),
  computed("station", "Taken out at", runMeasure, (plant, id) => withUse(plant, id, fiberUseStationM), 120),
  computed(
    "length",
    "Fiber to hub end",
    runMeasure,
    (plant, id) =>
      withUse(plant, id, (_, useId) => {
        const trace = fiberTrace(plant, useId);
        return trace.kind === "known" ? trace.fiberM : null;
      }),
    140,
  ),
];

function place(plant: Plant, id: string) {
  const { ownerId, number } = splitPlace(id);
  return tubeOf(plant, ownerId, number);
}

function colourWords(position: number): string {
  const { abbreviation, name } = colourAt(position);
  return `${position} ${abbreviation} ${name}`;
}

function holderOf(plant: Plant, id: string): FiberUse | undefined {
  const { ownerId, number } = splitPlace(id);
  const [useId] = plant.whereAll("fiberUse", { cableId: ownerId, fiber: String(number) });
  return useId === undefined ? undefined : plant.rowOf("fiberUse", useId);
}

function withUse<T>(plant: Plant, id: string, ask: (plant: Plant, useId: string) => T): T | null {
  const use = holderOf(plant, id);
  return use ? ask(plant, use.id) : null;
}
