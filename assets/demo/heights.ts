import { feet } from "./place.ts";
import { planted } from "./planted.ts";
import type { Bay } from "./spans.ts";
import type { Terrain } from "./terrain.ts";
import type { Way } from "./ways.ts";

/** Height of our strand above ground by pole tag, m. */
export type StrandHeights = ReadonlyMap<string, number>;

const standardM = feet(18.5);
const roundingM = feet(0.5);
const spareM = feet(0.5);

/** Sag at 120 degF over span length for a strand finished at 1 % at 60 degF: 1.37 % at 200 ft, 1.42 % at 140 ft. */
const hotSagFrac = 0.014;
/** Sag under half an inch of ice at most, spans to 240 ft. */
const worstSagFrac = 0.021;

/** Clearances this route was built to, ft: the usual national figures over each surface. */
const builtToFt: Readonly<Record<Way["surface"], number>> = {
  road: 15.5,
  driveway: 15.5,
  rail: 23.5,
  water: 14,
  pedestrian: 9.5,
  field: 15.5,
};

/** How far below its limit a way was left on purpose, m; null on the honest ones. */
function shortM(way: Way): number | null {
  const is = (span: { from: string; to: string }) => way.bay.from.tag === span.from && way.bay.to.tag === span.to;
  if (is(planted.lowRail)) return feet(planted.lowRail.hotShortFt);
  if (is(planted.lowDriveway)) return feet(planted.lowDriveway.hotShortFt);
  return null;
}

/** Elevation of the strand over a point of a span, m. */
function strandM(bay: Bay, offsetM: number, sagFrac: number, heights: StrandHeights, ground: Terrain): number {
  const along = offsetM / bay.lengthM;
  const fromM = ground(bay.from) + (heights.get(bay.from.tag) ?? standardM);
  const toM = ground(bay.to) + (heights.get(bay.to.tag) ?? standardM);
  return fromM + (toM - fromM) * along - 4 * sagFrac * bay.lengthM * along * (1 - along);
}

/** Height of the strand at every pole: the standard, more where the spans beside it need it. */
export function strandHeights(tags: readonly string[], ways: readonly Way[], ground: Terrain): StrandHeights {
  const heights = new Map(tags.map((tag) => [tag, standardM]));
  for (const way of ways) {
    const short = shortM(way);
    const { bay } = way;
    const needM = way.surfaceM + feet(builtToFt[way.surface]) + (short === null ? spareM : -short);
    const sagFrac = short === null ? worstSagFrac : hotSagFrac;
    const points = [way.offsetM - way.widthM / 2, way.offsetM, way.offsetM + way.widthM / 2];
    const lackM = needM - Math.min(...points.map((atM) => strandM(bay, atM, sagFrac, heights, ground)));
    if (!(lackM > 0)) continue;
    const raiseM = Math.ceil(lackM / roundingM) * roundingM;
    for (const tag of [bay.from.tag, bay.to.tag]) heights.set(tag, (heights.get(tag) ?? standardM) + raiseM);
  }
  return heights;
}

/** The ways with the planted ones lifted until they are as short as planned at 120 degF. */
export function leaveShort(ways: readonly Way[], heights: StrandHeights, ground: Terrain): readonly Way[] {
  return ways.map((way) => {
    const short = shortM(way);
    if (short === null) return way;
    const aboveM = strandM(way.bay, way.offsetM, hotSagFrac, heights, ground);
    return { ...way, surfaceM: aboveM - feet(builtToFt[way.surface]) + short };
  });
}
