import type { Structure } from "../../core/model/tables.ts";
import { outwardRad, spansAtPole } from "../../core/plant/geometry.ts";
import type { Plant } from "../../core/plant/plant.ts";
import { structureWords } from "../panels/words.ts";
import { boxBetween } from "./box.ts";
import type { HungMarks } from "./hungMarks.ts";
import { indexBoxes, indexMarks } from "./placeIndex.ts";
import type { Places } from "./places.ts";
import type { SpanFrame } from "./spanFrame.ts";
import { at, pointOfSpan, type SpanMarks } from "./spanMarks.ts";

/** A guy as drawn: from its pole to its anchor. */
export type GuyMark = {
  readonly id: string;
  readonly eastM: number;
  readonly northM: number;
  readonly anchorEastM: number;
  readonly anchorNorthM: number;
};

/** A building or sign as drawn: a stretch beside a span, or over which the span passes. */
export type StructureMark = {
  readonly id: string;
  /** Middle of the stretch on the line, m. */
  readonly eastM: number;
  readonly northM: number;
  readonly frame: SpanFrame;
  /** Which way its side lies on the page: a unit vector in pixels, y down. */
  readonly sideX: number;
  readonly sideY: number;
  /** Along the span as drawn, m. */
  readonly lengthM: number;
  /** From the line to its nearest face, m; 0 where the line passes over it. */
  readonly besideM: number;
  readonly kind: Structure["kind"];
  /** What a label says of it. */
  readonly words: string;
  /** Its top above the ground, m. */
  readonly heightM: number;
};

/** A measured point of the ground, on the line. */
export type GroundMark = {
  readonly id: string;
  readonly eastM: number;
  readonly northM: number;
  readonly frame: SpanFrame;
  readonly groundM: number;
};

/** Guys of a route; on a straightened page each keeps its angle to a span of its pole. */
export function guyMarks(plant: Plant, places: Places): HungMarks<GuyMark> {
  const marks = [...plant.route().guy.values()].map(({ id, poleId, leadM, directionRad }): GuyMark => {
    const { eastM, northM } = places.poleAt(poleId);
    const onPageRad = directionRad + turnedRad(plant, places, poleId);
    return {
      id,
      eastM,
      northM,
      anchorEastM: eastM + leadM * Math.cos(onPageRad),
      anchorNorthM: northM + leadM * Math.sin(onPageRad),
    };
  });
  const boxes = marks.map((one) => boxBetween(one, { eastM: one.anchorEastM, northM: one.anchorNorthM }));
  return { marks, positionOf: positions(marks), index: indexBoxes(boxes) };
}

/** How far the page turns a pole's surroundings from the ground, rad. */
function turnedRad(plant: Plant, places: Places, poleId: string): number {
  const [spanId] = spansAtPole(plant, poleId);
  if (!places.straight || spanId === undefined) return 0;
  const { from, to } = places.spanEnds(spanId);
  const isFirst = plant.rowOf("span", spanId).fromPoleId === poleId;
  const [here, far] = isFirst ? [from, to] : [to, from];
  return Math.atan2(far.northM - here.northM, far.eastM - here.eastM) - outwardRad(plant, poleId, spanId);
}

/** Buildings and signs over and beside the spans. */
export function structureMarks(plant: Plant, spans: SpanMarks): HungMarks<StructureMark> {
  const marks = [...plant.route().structure.values()].map((structure): StructureMark => {
    const { id, spanId, offsetM, lengthM, besideM, side, kind, name, heightM } = structure;
    const { eastM, northM, frame, position } = pointOfSpan(spans, spanId, offsetM);
    const east = at(spans.toEastM, position) - at(spans.fromEastM, position);
    const north = at(spans.toNorthM, position) - at(spans.fromNorthM, position);
    const chordM = Math.hypot(east, north) || 1;
    const toLeft = side === "left" ? 1 : -1;
    return {
      id,
      eastM,
      northM,
      frame,
      sideX: (-north / chordM) * toLeft,
      sideY: (-east / chordM) * toLeft,
      lengthM: (lengthM * chordM) / at(spans.lengthM, position),
      besideM,
      kind,
      words: name || structureWords[kind],
      heightM,
    };
  });
  return { marks, positionOf: positions(marks), index: indexMarks(marks) };
}

/** Measured points of the ground under the spans. */
export function groundMarks(plant: Plant, spans: SpanMarks): HungMarks<GroundMark> {
  const marks = [...plant.route().groundPoint.values()].map(({ id, spanId, offsetM, groundM }): GroundMark => {
    const { eastM, northM, frame } = pointOfSpan(spans, spanId, offsetM);
    return { id, eastM, northM, frame, groundM };
  });
  return { marks, positionOf: positions(marks), index: indexMarks(marks) };
}

function positions(marks: readonly { readonly id: string }[]): ReadonlyMap<string, number> {
  return new Map(marks.map(({ id }, position) => [id, position]));
}
