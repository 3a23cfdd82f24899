import type { CableRun } from "../../core/model/tables.ts";
import type { Plant } from "../../core/plant/plant.ts";
import { boxBetween } from "./box.ts";
import { type OtherParties, ownersOnBoth } from "./otherParties.ts";
import { indexBoxes, type PlaceIndex } from "./placeIndex.ts";
import type { Places } from "./places.ts";

import { type SpanFrame, spanFrame } from "./spanFrame.ts";

type SpanEnds = ReturnType<Places["spanEnds"]>;

/** Spans made ready for drawing. */
export type SpanMarks = {
  readonly ids: readonly string[];
  readonly positionOf: ReadonlyMap<string, number>;
  /** The same object as long as neither end of a span moves. */
  readonly ends: readonly SpanEnds[];
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
export function spanMarks(
  plant: Plant,
  places: Places,
  parties: OtherParties,
  cables: ReturnType<typeof cablesBySpan>,
): SpanMarks {
  const spans = [...plant.route().span.values()];
  const figures = () => new Float64Array(spans.length);
  const [fromEastM, fromNorthM, toEastM, toNorthM, lengthM] = [figures(), figures(), figures(), figures(), figures()];
  const cableCount = new Uint8Array(spans.length);
  const ends: SpanEnds[] = [];
  const frames: SpanFrame[] = [];
  spans.forEach((span, i) => {
    const here = places.spanEnds(span.id);
    const { from, to } = here;
    fromEastM[i] = from.eastM;
    fromNorthM[i] = from.northM;
    toEastM[i] = to.eastM;
    toNorthM[i] = to.northM;
    lengthM[i] = span.lengthM;
    cableCount[i] = cables.get(span.id)?.size ?? 0;
    ends.push(here);
    frames.push(spanFrame(to.eastM - from.eastM, to.northM - from.northM));
  });
  return {
    ids: spans.map((one) => one.id),
    positionOf: new Map(spans.map((one, i) => [one.id, i])),
    ends,
    fromEastM,
    fromNorthM,
    toEastM,
    toNorthM,
    lengthM,
    frames,
    hasStrand: spans.map((one) => one.strandSectionId !== null),
    cableCount,
    otherOwners: spans.map((one) => ownersOnBoth(parties, one.fromPoleId, one.toPoleId)),
    index: indexBoxes(ends.map(({ from, to }) => boxBetween(from, to))),
  };
}

/** Cables in each span that carries one, by span. */
export function cablesBySpan(runs: ReadonlyMap<string, CableRun>): ReadonlyMap<string, ReadonlySet<string>> {
  const cables = new Map<string, Set<string>>();
  for (const { spanId, cableId } of runs.values()) {
    const here = cables.get(spanId);
    if (here) here.add(cableId);
    else cables.set(spanId, new Set([cableId]));
  }
  return cables;
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
