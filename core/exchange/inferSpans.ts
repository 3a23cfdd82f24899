import { linesOfForest } from "./linesOfForest.ts";
import { nearPairs } from "./nearPairs.ts";
import { measuredSpanM, type NewSpan, type SpanPole } from "./spanPole.ts";

/** Spans guessed from where poles stand, and the line and order each pole got. */
export type InferredSpans = {
  readonly spans: readonly NewSpan[];
  readonly places: ReadonlyMap<string, { readonly line: string; readonly order: number }>;
  /** Tags of poles that no other pole is near enough to. */
  readonly alone: readonly string[];
  /** Tags of poles that stand within 2 m of one that was joined: a stub or a brace, not a pole of the line. */
  readonly beside: readonly string[];
};

const neighbourCount = 8;
const besideM = 2;
const mostSpansAtPole = 4;
/** Two spans leave a pole at least this far apart: a smaller angle is a neighbouring line, not a branch. */
const leastAngleRad = Math.PI / 4;

/**
 * Guesses the spans between poles that came without an order: shortest first, never closing a loop, none longer than `maxSpanM`,
 * at most four at a pole and none within 45 degrees of another. Of poles within 2 m of each other only the first is joined. Every
 * span is a guess and is put up for review.
 *
 * Each group of joined poles is then read as lines: the longest run is one, what branches off it the next, and so on.
 *
 * @param all poles; their tags differ
 * @param maxSpanM longest span to join, m, > 0
 * @param firstLine number given to the first line; lines are named `Line 1`, `Line 2`
 */
export function inferSpans(all: readonly SpanPole[], maxSpanM: number, firstLine = 1): InferredSpans {
  if (!(maxSpanM > 0)) throw new RangeError(`maxSpanM must be more than 0, not ${maxSpanM}`);
  const { poles, beside } = withoutStubs(all);
  const joined: (readonly [number, number])[] = [];
  const bearings: number[][] = poles.map(() => []);
  const groupOf = disjointGroups(poles.length);
  for (const { from, to } of nearPairs(poles, maxSpanM, neighbourCount)) {
    const [a, b] = [poles[from], poles[to]];
    if (!a || !b || groupOf.find(from) === groupOf.find(to)) continue;
    const bearing = Math.atan2(b.northM - a.northM, b.eastM - a.eastM);
    if (!isFree(bearings[from], bearing) || !isFree(bearings[to], bearing + Math.PI)) continue;
    groupOf.join(from, to);
    bearings[from]?.push(bearing);
    bearings[to]?.push(bearing + Math.PI);
    joined.push([from, to]);
  }
  return { ...named(poles, linesOfForest(poles, joined), firstLine), beside };
}

function withoutStubs(all: readonly SpanPole[]): { poles: SpanPole[]; beside: string[] } {
  const beside = new Set<number>();
  const close = nearPairs(all, besideM, neighbourCount).sort((a, b) => a.from - b.from || a.to - b.to);
  for (const { from, to } of close) if (!beside.has(from)) beside.add(to);
  return {
    poles: all.filter((_, index) => !beside.has(index)),
    beside: all.filter((_, index) => beside.has(index)).map(({ tag }) => tag),
  };
}

function isFree(taken: readonly number[] | undefined, bearing: number): boolean {
  if (!taken || taken.length >= mostSpansAtPole) return false;
  return taken.every(
    (other) => Math.abs(Math.atan2(Math.sin(bearing - other), Math.cos(bearing - other))) >= leastAngleRad,
  );
}

/** Turns runs of poles into spans that lead along them, and numbers the poles of each. */
function named(
  poles: readonly SpanPole[],
  lines: readonly (readonly number[])[],
  firstLine: number,
): Omit<InferredSpans, "beside"> {
  const places = new Map<string, { line: string; order: number }>();
  const spans: NewSpan[] = [];
  const alone: string[] = [];
  let number = firstLine;
  for (const run of lines) {
    const along = run.flatMap((index) => poles[index] ?? []);
    const lone = along.length === 1 ? along[0] : undefined;
    if (lone) {
      alone.push(lone.tag);
      continue;
    }
    const line = `Line ${number}`;
    number += 1;
    const own = along.filter((pole) => !places.has(pole.tag));
    for (const [index, pole] of own.entries()) places.set(pole.tag, { line, order: index + 1 });
    for (const [index, to] of along.slice(1).entries()) spans.push(inferred(along[index] ?? to, to));
  }
  return { spans, places, alone };
}

function inferred(from: SpanPole, to: SpanPole): NewSpan {
  const review = "Inferred from where the poles stand.";
  return { fromTag: from.tag, toTag: to.tag, lengthM: measuredSpanM(from, to), origin: "inferred", note: "", review };
}

function disjointGroups(count: number): { find: (index: number) => number; join: (a: number, b: number) => void } {
  const parent = Array.from({ length: count }, (_, index) => index);
  const find = (index: number): number => {
    let at = index;
    for (let up = parent[at]; up !== undefined && up !== at; up = parent[at]) {
      parent[at] = parent[up] ?? up;
      at = up;
    }
    return at;
  };
  return {
    find,
    join(a, b) {
      parent[find(a)] = find(b);
    },
  };
}
