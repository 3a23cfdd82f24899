import { apartM, bearingRadOf, type Point, step } from "./place.ts";
import type { LineName, Stake } from "./poleLine.ts";

/** Two neighbouring poles of one line, or a corner pole and the first pole of a lateral. */
export type Bay = {
  readonly from: Stake;
  readonly to: Stake;
  readonly line: LineName;
  readonly lengthM: number;
  readonly bearingRad: number;
  /** Distance along the line from its start to the first pole, m. */
  readonly startM: number;
};

/** The spans of the demo, line by line from the feed end. */
export function baysOf(stakes: readonly Stake[]): readonly Bay[] {
  const byTag = new Map(stakes.map((stake) => [stake.tag, stake]));
  const bays: Bay[] = [];
  let startM = 0;
  stakes.forEach((to, at) => {
    if (to.order === 1) startM = 0;
    const from = to.order === 1 ? byTag.get(to.from) : stakes[at - 1];
    if (!from) return;
    const lengthM = apartM(from, to);
    bays.push({ from, to, line: to.line, lengthM, bearingRad: bearingRadOf(from, to), startM });
    startM += lengthM;
  });
  return bays;
}

/** The span between two tags. */
export function bayBetween(bays: readonly Bay[], from: string, to: string): Bay {
  const bay = bays.find((candidate) => candidate.from.tag === from && candidate.to.tag === to);
  if (!bay) throw new Error(`no span between ${from} and ${to}`);
  return bay;
}

/** A point beside a span: so far along it, so far to its right. */
export function beside(bay: Bay, alongM: number, rightM: number): Point {
  return step(bay.from, bay.bearingRad, alongM, rightM);
}

/** Distance of a point from a span's line between its poles, m. */
export function offBayM(bay: Bay, point: Point): number {
  const eastM = point.eastM - bay.from.eastM;
  const northM = point.northM - bay.from.northM;
  const alongM = eastM * Math.sin(bay.bearingRad) + northM * Math.cos(bay.bearingRad);
  return apartM(beside(bay, Math.min(Math.max(alongM, 0), bay.lengthM), 0), point);
}
