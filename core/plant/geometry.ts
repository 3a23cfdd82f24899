import type { Pole } from "../model/tables.ts";
import { defineQuery, type Plant } from "./plant.ts";

export type Point = { readonly eastM: number; readonly northM: number };

/** Horizontal distance on the route's grid, m. */
export function planeDistanceM(a: Point, b: Point): number {
  return Math.hypot(b.eastM - a.eastM, b.northM - a.northM);
}

/** The two poles of a span. */
export const spanEnds = defineQuery("span-ends", (plant, spanId): { readonly from: Pole; readonly to: Pole } => {
  const span = plant.rowOf("span", spanId);
  return { from: plant.rowOf("pole", span.fromPoleId), to: plant.rowOf("pole", span.toPoleId) };
});

/** Ids of the spans that meet at a pole, sorted. */
export const spansAtPole = defineQuery("spans-at-pole", (plant, poleId): readonly string[] =>
  [...plant.where("span", "fromPoleId", poleId), ...plant.where("span", "toPoleId", poleId)].sort(),
);

/**
 * A point along a span in plan.
 *
 * @param offsetM  from the span's first pole along its recorded length, m; the drawn chord is scaled to that length
 */
export function pointOnSpan(plant: Plant, spanId: string, offsetM: number): Point {
  const { from, to } = spanEnds(plant, spanId);
  const part = offsetM / plant.rowOf("span", spanId).lengthM;
  return { eastM: from.eastM + (to.eastM - from.eastM) * part, northM: from.northM + (to.northM - from.northM) * part };
}

/** Direction of a span from its first pole, rad, counter-clockwise from east. */
export function spanBearingRad(plant: Plant, spanId: string): number {
  const { from, to } = spanEnds(plant, spanId);
  return Math.atan2(to.northM - from.northM, to.eastM - from.eastM);
}

/** The pole at the other end of a span. */
export function farPoleId(plant: Plant, spanId: string, poleId: string): string {
  const span = plant.rowOf("span", spanId);
  return span.fromPoleId === poleId ? span.toPoleId : span.fromPoleId;
}

/**
 * Deflection of the line at a pole between two spans, rad: 0 straight on, pi doubling back.
 */
export function lineAngleRad(plant: Plant, poleId: string, spanId: string, nextSpanId: string): number {
  const inward = outwardRad(plant, poleId, spanId) + Math.PI;
  const turn = outwardRad(plant, poleId, nextSpanId) - inward;
  return Math.abs(Math.atan2(Math.sin(turn), Math.cos(turn)));
}

/** Direction in which a span leaves one of its poles, rad, counter-clockwise from east. */
export function outwardRad(plant: Plant, poleId: string, spanId: string): number {
  const bearing = spanBearingRad(plant, spanId);
  return plant.rowOf("span", spanId).fromPoleId === poleId ? bearing : bearing + Math.PI;
}

type Segment = { readonly from: Point; readonly to: Point };

/** Whether two segments cross in plan; touching at an end is no crossing. */
export function segmentsCross(a: Segment, b: Segment): boolean {
  const sidesOf = (line: Segment, other: Segment) => side(line, other.from) * side(line, other.to);
  return sidesOf(a, b) < 0 && sidesOf(b, a) < 0;
}

/** Which side of a line a point lies on: positive to the left, 0 on it. */
function side({ from, to }: Segment, point: Point): number {
  return Math.sign(
    (to.eastM - from.eastM) * (point.northM - from.northM) - (to.northM - from.northM) * (point.eastM - from.eastM),
  );
}
