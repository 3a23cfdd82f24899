import type { Route } from "../../core/model/route.ts";
import type { CableRun, Span } from "../../core/model/tables.ts";
import type { Plant } from "../../core/plant/plant.ts";
import { boxBetween } from "./box.ts";
import { type OtherParties, ownersOnBoth } from "./otherParties.ts";
import { type BoundedIndex, indexBoxes, indexWithMoved, type PlaceIndex } from "./placeIndex.ts";
import type { Places } from "./places.ts";

import { type SpanFrame, spanFrame } from "./spanFrame.ts";
import type { Box } from "./viewport.ts";

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

/** Makes the spans of a route in the order of their file; after an edit only what has changed is made anew. */
export function openSpanMarks(plant: Plant) {
  let former: Drawn | null = null;
  return (places: Places, parties: OtherParties, cables: CablesBySpan): SpanMarks => {
    const from = { rows: [...plant.route().span.values()], poles: plant.route().pole, places, parties, cables };
    former = (former && redrawn(former, from)) ?? drawn(from);
    return former.marks;
  };
}

/** What spans are drawn from. */
type From = {
  readonly rows: readonly Span[];
  readonly poles: Route["pole"];
  readonly places: Places;
  readonly parties: OtherParties;
  readonly cables: CablesBySpan;
};

/** Spans with what they were drawn from, and those that have moved since their index was made. */
type Drawn = From & {
  readonly index: BoundedIndex;
  readonly moved: ReadonlyMap<number, Box>;
  readonly marks: SpanMarks;
};

function drawn(from: From): Drawn {
  const { rows, places, parties, cables } = from;
  const ends = rows.map((one) => places.spanEnds(one.id));
  const index = indexBoxes(ends.map((one) => boxBetween(one.from, one.to)));
  const marks: SpanMarks = {
    ids: rows.map((one) => one.id),
    positionOf: new Map(rows.map((one, i) => [one.id, i])),
    ends,
    ...figuresOf(rows.length),
    frames: ends.map((one) => spanFrame(one.to.eastM - one.from.eastM, one.to.northM - one.from.northM)),
    hasStrand: rows.map((one) => one.strandSectionId !== null),
    cableCount: Uint8Array.from(rows, (one) => cables.get(one.id)?.size ?? 0),
    otherOwners: rows.map((one) => ownersOnBoth(parties, one.fromPoleId, one.toPoleId)),
    index,
  };
  rows.forEach((row, i) => {
    setFigures(marks, i, row, ends[i]);
  });
  return { ...from, index, moved: new Map(), marks };
}

/** The spans of before with those that have changed drawn anew; null where rows came, went or all of them may run elsewhere. */
function redrawn(former: Drawn, from: From): Drawn | null {
  const { rows, poles, places, parties, cables } = from;
  if (former.places !== places || former.parties !== parties || former.cables !== cables) return null;
  if (former.rows.length !== rows.length || rows.some((row, i) => row.id !== former.rows[i]?.id)) return null;
  const isSamePole = (id: string) => poles.get(id) === former.poles.get(id);
  const moved = new Map(former.moved);
  const { fromEastM, fromNorthM, toEastM, toNorthM, lengthM } = former.marks;
  const [ends, frames, hasStrand] = [[...former.marks.ends], [...former.marks.frames], [...former.marks.hasStrand]];
  const otherOwners = [...former.marks.otherOwners];
  const marks: SpanMarks = {
    ...former.marks,
    ends,
    frames,
    hasStrand,
    otherOwners,
    fromEastM: fromEastM.slice(),
    fromNorthM: fromNorthM.slice(),
    toEastM: toEastM.slice(),
    toNorthM: toNorthM.slice(),
    lengthM: lengthM.slice(),
  };
  rows.forEach((row, i) => {
    if (row === former.rows[i] && isSamePole(row.fromPoleId) && isSamePole(row.toPoleId)) return;
    const here = places.spanEnds(row.id);
    ends[i] = here;
    frames[i] = spanFrame(here.to.eastM - here.from.eastM, here.to.northM - here.from.northM);
    hasStrand[i] = row.strandSectionId !== null;
    otherOwners[i] = ownersOnBoth(parties, row.fromPoleId, row.toPoleId);
    setFigures(marks, i, row, here);
    moved.set(i, boxBetween(here.from, here.to));
  });
  const index = indexWithMoved(former.index, moved);
  return index && { ...from, index: former.index, moved, marks: { ...marks, index } };
}

function figuresOf(count: number) {
  const figures = () => new Float64Array(count);
  return {
    fromEastM: figures(),
    fromNorthM: figures(),
    toEastM: figures(),
    toNorthM: figures(),
    lengthM: figures(),
  };
}

function setFigures(marks: SpanMarks, i: number, { lengthM }: Span, ends: SpanEnds | undefined): void {
  if (!ends) return;
  marks.fromEastM[i] = ends.from.eastM;
  marks.fromNorthM[i] = ends.from.northM;
  marks.toEastM[i] = ends.to.eastM;
  marks.toNorthM[i] = ends.to.northM;
  marks.lengthM[i] = lengthM;
}

export type CablesBySpan = ReadonlyMap<string, ReadonlySet<string>>;

/** Cables in each span that carries one, by span. */
export function cablesBySpan(runs: ReadonlyMap<string, CableRun>): CablesBySpan {
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
