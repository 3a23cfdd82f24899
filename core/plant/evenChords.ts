import { type Point, planeDistanceM } from "./geometry.ts";

/** A place along a line of points: the stretch it lies on, and how far along that. */
type OnLine = { readonly stretch: number; readonly partFrac: number };

/** Turns of halving the interval of the chord: more than a double can tell apart. */
const halvingCount = 80;

/**
 * Points along a bent line from its first to its last, each as far from the one before as all others: poles moved along their
 * own line until all its spans are equally long.
 *
 * The chord is found by halving: the longer it is, the shorter is what it leaves before the last point.
 *
 * @param line  n x [east, north], m, n >= 2, no two neighbours in one place
 * @returns as many points as the line has, first and last unmoved; null where the line turns back on itself too sharply
 */
export function evenChords(line: readonly Point[]): readonly Point[] | null {
  const last = line.at(-1);
  if (!last || line.length < 2) return null;
  const lengthM = line.slice(1).reduce((sum, to, i) => sum + planeDistanceM(line[i] ?? to, to), 0);
  let [shortM, longM] = [0, lengthM / (line.length - 1)];
  for (let turn = 0; turn < halvingCount; turn += 1) {
    const chordM = (shortM + longM) / 2;
    const stepped = stepAlong(line, chordM);
    const end = stepped?.at(-1);
    if (end && planeDistanceM(end, last) >= chordM) shortM = chordM;
    else longM = chordM;
  }
  const inner = stepAlong(line, shortM);
  const end = inner?.at(-1);
  if (!inner || !end || Math.abs(planeDistanceM(end, last) - shortM) > 1e-6) return null;
  return [...inner, last];
}

/** Points from the first on at one chord from each other, all but the last; null where the line ends before. */
function stepAlong(line: readonly Point[], chordM: number): readonly Point[] | null {
  const [first] = line;
  if (!first) return null;
  const points: Point[] = [first];
  let at: OnLine = { stretch: 0, partFrac: 0 };
  for (let step = 1; step < line.length - 1; step += 1) {
    const next = nextOnLine(line, at, points.at(-1) ?? first, chordM);
    if (!next) return null;
    at = next;
    points.push(pointAt(line, next));
  }
  return points;
}

/** The first place after another where the line leaves a circle about a point. */
function nextOnLine(line: readonly Point[], after: OnLine, centre: Point, radiusM: number): OnLine | null {
  for (let stretch = after.stretch; stretch < line.length - 1; stretch += 1) {
    const [from, to] = [line[stretch], line[stretch + 1]];
    if (!from || !to) return null;
    const [runE, runN] = [to.eastM - from.eastM, to.northM - from.northM];
    const [outE, outN] = [from.eastM - centre.eastM, from.northM - centre.northM];
    // |from + part run - centre| = radius, the way out of the circle
    const a = runE * runE + runN * runN;
    const b = outE * runE + outN * runN;
    const c = outE * outE + outN * outN - radiusM * radiusM;
    const root = b * b - a * c;
    const partFrac = root < 0 ? Number.NaN : (Math.sqrt(root) - b) / a;
    const leastFrac = stretch === after.stretch ? after.partFrac : 0;
    if (partFrac >= leastFrac && partFrac <= 1) return { stretch, partFrac };
  }
  return null;
}

function pointAt(line: readonly Point[], { stretch, partFrac }: OnLine): Point {
  const from = line[stretch] ?? { eastM: 0, northM: 0 };
  const to = line[stretch + 1] ?? from;
  return {
    eastM: from.eastM + (to.eastM - from.eastM) * partFrac,
    northM: from.northM + (to.northM - from.northM) * partFrac,
  };
}
