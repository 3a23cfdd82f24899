import { defineQuery, type Plant } from "../plant/plant.ts";
import { rowSpanIds } from "../plant/strandRow.ts";
import { builtHeightM, builtOffsetM, builtSlackM, heightReading, offsetReading, slackReading } from "./builtFigures.ts";

/** The height read at a pole, where it stands apart from the drawn one: its reading, or none. */
export function heightReadings(plant: Plant, poleId: string): readonly string[] {
  return builtHeightM(plant, poleId) === null ? [] : [heightReading(poleId)];
}

/** The offset read of a terminal, where it stands apart from the drawn one: its reading, or none. */
export function offsetReadings(plant: Plant, terminalId: string): readonly string[] {
  return builtOffsetM(plant, terminalId) === null ? [] : [offsetReading(terminalId)];
}

/** Readings by which terminals and coils of a span hang elsewhere, or heavier, than drawn. */
export const hungReadings = defineQuery("built-hung-readings", (plant, spanId): readonly string[] =>
  plant
    .where("terminal", "spanId", spanId)
    .flatMap((id) => [...offsetReadings(plant, id), ...(builtSlackM(plant, id) === null ? [] : [slackReading(id)])]),
);

/**
 * Readings by which our line hangs otherwise than drawn in a span: heights at its poles and what hangs in it, else what hangs in the spans
 * that share its tension.
 */
export const lineReadings = defineQuery("built-line-readings", (plant, spanId): readonly string[] => {
  const { fromPoleId, toPoleId, strandSectionId } = plant.rowOf("span", spanId);
  if (strandSectionId === null) return [];
  const own = [
    ...heightReadings(plant, fromPoleId),
    ...heightReadings(plant, toPoleId),
    ...hungReadings(plant, spanId),
  ];
  return own.length > 0
    ? own
    : rowReadings(plant, rowSpanIds(plant, spanId, plant.rowOf("strandSection", strandSectionId)));
});

function rowReadings(plant: Plant, spanIds: readonly string[]): readonly string[] {
  return spanIds.length === 1 ? [] : spanIds.flatMap((id) => hungReadings(plant, id));
}
