import { computed, figures, reference, words } from "./builders.ts";
import type { Column } from "./column.ts";
import { plainMeasure, runMeasure } from "./measures.ts";

const table = "feed";
const counted = plainMeasure("", 0);

export const feedColumns: readonly Column[] = [
  words({ table, column: "name" }, "Hub output", { mayBeEmpty: false }),
  reference({ table, column: "opticalClassId" }, "Light class", { table: "opticalClass", column: "name" }),
  figures({ table, column: "hubSplitCount" }, "Split at the hub", counted, { widthPx: 130 }),
  figures({ table, column: "upstreamLossDb" }, "Loss to the route", plainMeasure("dB", 2), { widthPx: 150 }),
  figures({ table, column: "upstreamM" }, "Fiber to the route", runMeasure, { widthPx: 150 }),
  computed("fibers", "Fibers lit", counted, (plant, id) => plant.where("fiberUse", "feedId", id).length),
];
