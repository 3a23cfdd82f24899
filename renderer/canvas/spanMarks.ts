import type { Plant } from "../../core/plant/plant.ts";
import { boxBetween } from "./box.ts";
import { indexBoxes, type PlaceIndex } from "./placeIndex.ts";
import type { Places } from "./places.ts";
import { otherPartiesByPole } from "./poleMarks.ts";
import { type SpanFrame, spanFrame } from "./spanFrame.ts";

/** Spans made ready for drawing. */
export type SpanMarks = {
  readonly ids: readonly string[];
  readonly positionOf: ReadonlyMap<string, number>;
  readonly fromEastM: Float64Array;
  readonly fromNorthM: Float64Array;
  readonly toEastM: Float64Array;
  readonly toNorthM: Float64Array;
  readonly lengthM: Float64Array;
  readonly frames: readonly SpanFrame[];
  readonly hasStrand: readonly boolean[];
  readonly cableCount: Uint8Array;
  /** Other parties with wires on both poles: their wires run beside ours. */
  readonly otherOwners: readonly (readonly string[])[];
  readonly index: PlaceIndex;
};

/** Spans of a route in the order of their file. */
export function spanMarks(plant: Plant, places: Places): SpanMarks {
  const route = plant.route();
  const spans = [...route.span.values()];
  const ends = spans.map((one) => places.spanEnds(one.id));
  const cables = new Map<string, Set<string>>();
  for (const { spanId, cableId } of route.cableRun.values()) {
    const here = cables.get(spanId);
    if (here) here.add(cableId);
    else cables.set(spanId, new Set([cableId]));
  }
  const parties = otherPartiesByPole(plant);
  return {
    ids: spans.map((one) => one.id),
    positionOf: new Map(spans.map((one, i) => [one.id, i])),
    fromEastM: Float64Array.from(ends, ({ from }) => from.eastM),
    fromNorthM: Float64Array.from(ends, ({ from }) => from.northM),
    toEastM: Float64Array.from(ends, ({ to }) => to.eastM),
    toNorthM: Float64Array.from(ends, ({ to }) => to.northM),
    lengthM: Float64Array.from(spans, (one) => one.lengthM),
    frames: ends.map(({ from, to }) => spanFrame(to.eastM - from.eastM, to.northM - from.northM)),
    hasStrand: spans.map((one) => one.strandSectionId !== null),
    cableCount: Uint8Array.from(spans, (one) => cables.get(one.id)?.size ?? 0),
    otherOwners: spans.map((one) => inBoth(parties.get(one.fromPoleId), parties.get(one.toPoleId))),
    index: indexBoxes(ends.map(({ from, to }) => boxBetween(from, to))),
  };
}

/** A point of a span as drawn: its recorded offset scaled to the drawn chord. */
export function pointOfSpan(spans: SpanMarks, spanId: string, offsetM: number) {
  const i = spans.positionOf.get(spanId) ?? -1;
  const frame = spans.frames[i];
  if (!frame) throw new Error(`something hangs in a span that is not drawn: ${spanId}`);
  const part = offsetM / at(spans.lengthM, i);
  return {
    eastM: at(spans.fromEastM, i) + (at(spans.toEastM, i) - at(spans.fromEastM, i)) * part,
    northM: at(spans.fromNorthM, i) + (at(spans.toNorthM, i) - at(spans.fromNorthM, i)) * part,
    frame,
    position: i,
  };
}

/** The figure at a position of a typed list; positions come from the list's own index. */
export function at(figures: Float64Array | Uint8Array, position: number): number {
  return figures[position] ?? 0;
}

function inBoth(a: ReadonlySet<string> | undefined, b: ReadonlySet<string> | undefined): readonly string[] {
  if (!a || !b) return [];
  return [...a].filter((owner) => b.has(owner)).sort();
}
