import type { LivingUnit, Pole } from "../../../core/model/tables.ts";
import { type Point, planeDistanceM, spanBearingRad } from "../../../core/plant/geometry.ts";
import type { Plant } from "../../../core/plant/plant.ts";
import { nearSpans, type SpanFoot } from "./spanFoot.ts";
import { stackRows } from "./stackRows.ts";
import { type RowStep, type StraightRow, straightRows } from "./straightRows.ts";

/** How far apart poles are drawn along a row: as they stand, or all alike. */
export type Spacing = "scale" | "even";

/** A row on the page: `eastM` runs along it, `northM` is its height. */
export type PlacedRow = StraightRow & { readonly fromM: number; readonly toM: number; readonly northM: number };

/** A stroke from a junction to where its lateral's row begins. */
type Leader = { readonly poleId: string; readonly from: Point; readonly to: Point };

/** A route with every line drawn as a straight row; metres of the page, not of the ground. */
export type Straightened = {
  readonly spacing: Spacing;
  readonly rows: readonly PlacedRow[];
  readonly leaders: readonly Leader[];
  readonly poleAt: (poleId: string) => Point;
  readonly spanEnds: (spanId: string) => { readonly from: Point; readonly to: Point };
  readonly unitAt: (unit: LivingUnit) => Point;
  /** The page's point for one of the ground: beside the span it is nearest to. */
  readonly pointAt: (ground: Point) => Point;
};

/** Nearest and farthest a living unit is drawn from its line, m. */
const [nearestM, farthestM] = [13, 60];
/** Room between the living units of one row and the next row's, m. */
const rowGapM = 22;

/** Draws a route as straight rows: cables and lines one above the other, laterals leaving at their junctions. */
export function straightened(plant: Plant, spacing: Spacing): Straightened {
  const rows = straightRows(plant);
  const evenM = spacing === "even" ? meanSpanM(plant) : null;
  const reaches = reachesOf(plant, rows, evenM);
  const levels = stackRows(reaches);
  const seats = new Map(
    rows.flatMap((row, i) => row.steps.map((step) => [step.spanId, { row: i, level: levels[i] ?? 0, step }] as const)),
  );
  const feet = unitFeet(plant, seats);
  const northOf = levelHeights(plant, seats, feet);
  const placed = rows.map((row, i) => ({
    ...row,
    fromM: reaches[i]?.fromM ?? 0,
    toM: reaches[i]?.toM ?? 0,
    northM: northOf(levels[i] ?? 0),
  }));
  const { poles, spans, leaders } = pointsOf(plant, placed, evenM);
  const sideAt = (foot: SpanFoot): Point => {
    const row = placed[seats.get(foot.spanId)?.row ?? -1];
    const ends = spans.get(foot.spanId);
    if (!row || !ends) return { eastM: 0, northM: 0 };
    const eastM = ends.from.eastM + (ends.to.eastM - ends.from.eastM) * foot.partFrac;
    return { eastM, northM: row.northM + foot.leftM * (ends.to.eastM >= ends.from.eastM ? 1 : -1) };
  };
  const loosePole = (pole: Pole): Point => ({ eastM: pole.eastM, northM: pole.northM });
  return {
    spacing,
    rows: placed,
    leaders,
    poleAt: (poleId) => poles.get(poleId) ?? loosePole(plant.rowOf("pole", poleId)),
    spanEnds: (spanId) => spans.get(spanId) ?? { from: { eastM: 0, northM: 0 }, to: { eastM: 0, northM: 0 } },
    unitAt: (unit) => {
      const foot = feet.get(unit.id);
      return foot ? sideAt(held(foot)) : unit;
    },
    pointAt: (ground) => {
      const [foot] = nearSpans(plant, ground);
      return foot ? sideAt(foot) : ground;
    },
  };
}

function meanSpanM(plant: Plant): number {
  const spans = [...plant.route().span.values()];
  return spans.reduce((sum, one) => sum + one.lengthM, 0) / Math.max(1, spans.length);
}

/** Where in the rows a span is drawn. */
type Seat = { readonly row: number; readonly level: number; readonly step: RowStep };

/** Where each row begins and ends, which row it leaves, and on which side its first span turns off. */
function reachesOf(plant: Plant, rows: readonly StraightRow[], evenM: number | null) {
  const found = new Map<string, { readonly atM: number; readonly row: number; readonly step: RowStep }>();
  return rows.map((row, i) => {
    const start = found.get(row.steps[0]?.fromPoleId ?? "");
    const fromM = start?.atM ?? 0;
    let atM = fromM;
    for (const step of row.steps) {
      if (!found.has(step.fromPoleId)) found.set(step.fromPoleId, { atM, row: i, step });
      atM += evenM ?? plant.rowOf("span", step.spanId).lengthM;
      if (!found.has(step.toPoleId)) found.set(step.toPoleId, { atM, row: i, step });
    }
    const [first] = row.steps;
    const side = start && first ? turnSide(plant, start.step, first) : -1;
    return { fromM, toM: atM, parent: start?.row ?? null, side };
  });
}

function turnSide(plant: Plant, along: RowStep, off: RowStep): 1 | -1 {
  const turn = headingRad(plant, off) - headingRad(plant, along);
  return Math.sin(turn) > 0 ? 1 : -1;
}

function headingRad(plant: Plant, { spanId, fromPoleId }: RowStep): number {
  const bearing = spanBearingRad(plant, spanId);
  return plant.rowOf("span", spanId).fromPoleId === fromPoleId ? bearing : bearing + Math.PI;
}

/** Beside which span each living unit is drawn: one of the row that serves it, else the nearest. */
function unitFeet(plant: Plant, seats: ReadonlyMap<string, Seat>): ReadonlyMap<string, SpanFoot> {
  const feet = new Map<string, SpanFoot>();
  for (const unit of plant.route().livingUnit.values()) {
    const [dropId] = plant.where("drop", "livingUnitId", unit.id);
    const terminal = dropId === undefined ? null : plant.rowOf("terminal", plant.rowOf("drop", dropId).terminalId);
    const near = nearSpans(plant, unit);
    const served = terminal && near.find((one) => seats.get(one.spanId)?.row === seats.get(terminal.spanId)?.row);
    const foot = served ?? near[0];
    if (foot) feet.set(unit.id, foot);
  }
  return feet;
}

/** A unit's foot with its distance from the line held where it can be drawn. */
function held(foot: SpanFoot): SpanFoot {
  const awayM = Math.min(farthestM, Math.max(nearestM, Math.abs(foot.leftM)));
  return { ...foot, leftM: foot.leftM < 0 ? -awayM : awayM };
}

/** Heights of the levels, so far apart that the living units of one row stay clear of the next. */
function levelHeights(
  plant: Plant,
  seats: ReadonlyMap<string, Seat>,
  feet: ReadonlyMap<string, SpanFoot>,
): (level: number) => number {
  const above = new Map<number, number>();
  const below = new Map<number, number>();
  for (const foot of feet.values()) {
    const seat = seats.get(foot.spanId);
    if (!seat) continue;
    const runsOn = plant.rowOf("span", foot.spanId).fromPoleId === seat.step.fromPoleId;
    const leftM = held(foot).leftM * (runsOn ? 1 : -1);
    const side = leftM > 0 ? above : below;
    side.set(seat.level, Math.max(side.get(seat.level) ?? 0, Math.abs(leftM)));
  }
  const stepM = (lower: number): number =>
    Math.max(nearestM, above.get(lower) ?? 0) + rowGapM + Math.max(nearestM, below.get(lower + 1) ?? 0);
  return (level) => {
    let northM = 0;
    for (let up = 0; up < level; up += 1) northM += stepM(up);
    for (let down = 0; down > level; down -= 1) northM -= stepM(down - 1);
    return northM;
  };
}

function pointsOf(plant: Plant, rows: readonly PlacedRow[], evenM: number | null) {
  const poles = new Map<string, Point>();
  const spans = new Map<string, { readonly from: Point; readonly to: Point }>();
  const leaders: Leader[] = [];
  const stand = (poleId: string, at: Point): void => {
    const first = poles.get(poleId);
    if (!first) poles.set(poleId, at);
    else if (planeDistanceM(first, at) > 0) leaders.push({ poleId, from: first, to: at });
  };
  for (const { steps, fromM, northM } of rows) {
    let eastM = fromM;
    for (const { spanId, fromPoleId, toPoleId } of steps) {
      const span = plant.rowOf("span", spanId);
      const near = { eastM, northM };
      eastM += evenM ?? span.lengthM;
      const far = { eastM, northM };
      if (steps[0]?.spanId === spanId) stand(fromPoleId, near);
      stand(toPoleId, far);
      spans.set(spanId, span.fromPoleId === fromPoleId ? { from: near, to: far } : { from: far, to: near });
    }
  }
  return { poles, spans, leaders };
}
