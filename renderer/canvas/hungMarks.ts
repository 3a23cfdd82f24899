import type { Row, Slack, Terminal } from "../../core/model/tables.ts";
import { defineQuery, type Plant } from "../../core/plant/plant.ts";
import { facePlan, portsOf } from "../../core/plant/terminalView.ts";
import { onFirstUse } from "./onFirstUse.ts";
import type { PlaceIndex } from "./placeIndex.ts";
import type { SpanFrame } from "./spanFrame.ts";
import { at, pointOfSpan, type SpanMarks } from "./spanMarks.ts";
import type { Box } from "./viewport.ts";

type Hung = {
  readonly id: string;
  readonly spanId: string;
  readonly eastM: number;
  readonly northM: number;
  readonly frame: SpanFrame;
  /** Along the frame: 1 where the nearer pole lies behind, -1 where it lies ahead. */
  readonly away: 1 | -1;
  /** From the nearer pole's centre line as drawn, m. */
  readonly fromPoleM: number;
};

/** One port's tick on the drawn face. */
export type PortTick = {
  readonly port: number;
  readonly rank: number;
  readonly along: number;
  readonly isUsed: boolean;
  readonly isReserved: boolean;
};

/** A terminal's face and coil as drawn, wherever it hangs. */
type Face = {
  readonly ticks: readonly PortTick[];
  readonly rankCount: number;
  readonly perRankCount: number;
  /** Sheath in the terminal's own coil, m; 0 where it has none. */
  readonly coilM: number;
};

export type TerminalMark = Hung & Face & { readonly name: string };

export type CoilMark = Hung & { readonly storedM: number; readonly terminalId: string | null };

export type ClosureMark = Hung & { readonly name: string };

/** Things hung in spans, found by place. */
export type HungMarks<Mark> = {
  readonly marks: readonly Mark[];
  readonly positionOf: ReadonlyMap<string, number>;
  readonly index: PlaceIndex;
};

/** The drawn face of a terminal model with every port spare. */
export function modelFace(plant: Plant, terminalModelId: string): Omit<Face, "coilM"> {
  const ticks = facePlan(plant, terminalModelId).map((place) => ({ ...place, isUsed: false, isReserved: false }));
  return {
    ticks,
    rankCount: Math.max(1, ...ticks.map((one) => one.rank + 1)),
    perRankCount: Math.max(1, ...ticks.map((one) => one.along + 1)),
  };
}

const faceOf = defineQuery("face as drawn", (plant, terminalId): Face => {
  const ports = portsOf(plant, terminalId);
  const { ticks, ...face } = modelFace(plant, plant.rowOf("terminal", terminalId).terminalModelId);
  const coils = plant.where("slack", "terminalId", terminalId).map((id) => plant.rowOf("slack", id).storedM);
  return {
    ...face,
    ticks: ticks.map((tick) => {
      const view = ports[tick.port - 1];
      return { ...tick, isUsed: (view?.dropIds.length ?? 0) > 0, isReserved: view?.isReserved ?? false };
    }),
    coilM: coils.reduce((sum, one) => sum + one, 0),
  };
});

/** Makes terminals with their faces; one whose row, face and spans are as they were keeps its mark. */
export function openTerminalMarks(plant: Plant): (spans: SpanMarks) => HungMarks<TerminalMark> {
  const markOf = keepMarks(
    (spans, { id, spanId, offsetM, name }: Terminal, face: Face): TerminalMark => ({
      ...hang(plant, spans, id, spanId, offsetM),
      ...face,
      name,
    }),
  );
  return (spans) => gathered(plant.route().terminal, spans, (row) => markOf(spans, row, faceOf(plant, row.id)));
}

/** Makes the coils under the strand; one whose row and spans are as they were keeps its mark. */
export function openCoilMarks(plant: Plant): (spans: SpanMarks) => HungMarks<CoilMark> {
  const markOf = keepMarks(
    (spans, { id, spanId, offsetM, storedM, terminalId }: Slack): CoilMark => ({
      ...hang(plant, spans, id, spanId, offsetM),
      storedM,
      terminalId,
    }),
  );
  return (spans) => gathered(plant.route().slack, spans, (row) => markOf(spans, row, null));
}

/** Makes the splice closures on the strand; one whose row and spans are as they were keeps its mark. */
export function openClosureMarks(plant: Plant): (spans: SpanMarks) => HungMarks<ClosureMark> {
  const markOf = keepMarks(
    (spans, { id, spanId, offsetM, name }: Row<"closure">): ClosureMark => ({
      ...hang(plant, spans, id, spanId, offsetM),
      name,
    }),
  );
  return (spans) => gathered(plant.route().closure, spans, (row) => markOf(spans, row, null));
}

/** Rows never change in place: a row that is the same object, in a span with the same ends, has the mark it had. */
function keepMarks<Row extends { readonly spanId: string }, Part, Mark>(
  make: (spans: SpanMarks, row: Row, part: Part) => Mark,
) {
  type Kept = { readonly ends: unknown; readonly lengthM: number; readonly part: Part; readonly mark: Mark };
  const kept = new WeakMap<Row, Kept>();
  return (spans: SpanMarks, row: Row, part: Part): Mark => {
    const span = spans.positionOf.get(row.spanId) ?? -1;
    const ends = spans.ends[span];
    const lengthM = at(spans.lengthM, span);
    const former = kept.get(row);
    if (former && former.ends === ends && former.lengthM === lengthM && former.part === part) return former.mark;
    const mark = make(spans, row, part);
    kept.set(row, { ends, lengthM, part, mark });
    return mark;
  };
}

/** Where a thing hangs in a span, ready for drawing. */
export function hang(plant: Plant, spans: SpanMarks, id: string, spanId: string, offsetM: number): Hung {
  const { eastM, northM, frame, position } = pointOfSpan(spans, spanId, offsetM);
  const { lengthM } = plant.rowOf("span", spanId);
  const isNearFirst = offsetM <= lengthM / 2;
  const runsAlong =
    (at(spans.toEastM, position) - at(spans.fromEastM, position)) * frame.alongX -
      (at(spans.toNorthM, position) - at(spans.fromNorthM, position)) * frame.alongY >=
    0;
  return {
    id,
    spanId,
    eastM,
    northM,
    frame,
    away: runsAlong === isNearFirst ? 1 : -1,
    fromPoleM: isNearFirst ? offsetM : lengthM - offsetM,
  };
}

/** What hangs in a span is where the span is, so the spans' own index finds it. */
function gathered<Row, Mark extends Hung>(
  rows: ReadonlyMap<string, Row>,
  spans: SpanMarks,
  markOf: (row: Row) => Mark,
): HungMarks<Mark> {
  const marks = Array.from(rows.values(), markOf);
  const bySpan = onFirstUse(() => {
    const lists = new Map<string, number[]>();
    marks.forEach(({ spanId }, i) => {
      const here = lists.get(spanId);
      if (here) here.push(i);
      else lists.set(spanId, [i]);
    });
    return lists;
  });
  return {
    marks,
    positionOf: new Map(marks.map((one, i) => [one.id, i])),
    index: {
      within: (box) =>
        spans.index
          .within(box)
          .flatMap((i) => bySpan().get(spans.ids[i] ?? "") ?? [])
          // the span reaches farther than the thing
          .filter((i) => lies(marks[i], box))
          .sort((a, b) => a - b),
    },
  };
}

function lies(mark: Hung | undefined, { westM, eastM, southM, northM }: Box): boolean {
  return (
    mark !== undefined && mark.eastM >= westM && mark.eastM <= eastM && mark.northM >= southM && mark.northM <= northM
  );
}
