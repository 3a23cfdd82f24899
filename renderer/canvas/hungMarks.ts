import { defineQuery, type Plant } from "../../core/plant/plant.ts";
import { facePlan, portsOf } from "../../core/plant/terminalView.ts";
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
  const ticks = facePlan(plant, terminalModelId).map(({ port, rank, along }) => ({ port, rank, along, isUsed: false }));
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
    ticks: ticks.map((tick) => ({ ...tick, isUsed: (ports[tick.port - 1]?.dropIds.length ?? 0) > 0 })),
    coilM: coils.reduce((sum, one) => sum + one, 0),
  };
});

/** Terminals with their faces. */
export function terminalMarks(plant: Plant, spans: SpanMarks): HungMarks<TerminalMark> {
  return gathered(
    [...plant.route().terminal.values()].map(({ id, spanId, offsetM, name }) => ({
      ...hang(plant, spans, id, spanId, offsetM),
      ...faceOf(plant, id),
      name,
    })),
    spans,
  );
}

/** Coils under the strand. */
export function coilMarks(plant: Plant, spans: SpanMarks): HungMarks<CoilMark> {
  return gathered(
    [...plant.route().slack.values()].map((coil) => ({
      ...hang(plant, spans, coil.id, coil.spanId, coil.offsetM),
      storedM: coil.storedM,
      terminalId: coil.terminalId,
    })),
    spans,
  );
}

/** Splice closures on the strand. */
export function closureMarks(plant: Plant, spans: SpanMarks): HungMarks<ClosureMark> {
  return gathered(
    [...plant.route().closure.values()].map((closure) => ({
      ...hang(plant, spans, closure.id, closure.spanId, closure.offsetM),
      name: closure.name,
    })),
    spans,
  );
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
function gathered<Mark extends Hung>(marks: readonly Mark[], spans: SpanMarks): HungMarks<Mark> {
  const bySpan = new Map<string, number[]>();
  marks.forEach(({ spanId }, i) => {
    const here = bySpan.get(spanId);
    if (here) here.push(i);
    else bySpan.set(spanId, [i]);
  });
  return {
    marks,
    positionOf: new Map(marks.map((one, i) => [one.id, i])),
    index: {
      within: (box) =>
        spans.index
          .within(box)
          .flatMap((i) => bySpan.get(spans.ids[i] ?? "") ?? [])
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
