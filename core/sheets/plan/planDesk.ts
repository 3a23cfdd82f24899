import type { TableName } from "../../model/tables.ts";
import type { Plant } from "../../plant/plant.ts";
import type { PaperPoint } from "../paper/displayList.ts";
import { type LabelDesk, openLabelDesk } from "../paper/labelDesk.ts";
import { cornersOf } from "../paper/orientedBox.ts";
import type { PaperBox } from "../paper/paper.ts";
import type { Placer } from "../paper/placer.ts";
import { alongStep, type StripStep } from "./stripStep.ts";
import type { Strip } from "./strips.ts";
import { toPaper } from "./view.ts";

/** The part of a span that a strip shows, on paper. */
export type PaperStep = {
  readonly step: StripStep;
  readonly from: PaperPoint;
  readonly to: PaperPoint;
  /** Direction of the light on paper, rad. */
  readonly turnRad: number;
};

/** A strip being drawn. */
export type PlanDesk = LabelDesk & {
  readonly plant: Plant;
  /** The design, where the plan is drawn as built. */
  readonly designed: Plant | null;
  readonly strip: Strip;
  readonly steps: readonly PaperStep[];
  /** Where the drop on each port starts, by terminal and port; filled as terminals are drawn. */
  readonly ticks: Map<string, PaperPoint>;
  /** Outlines of what was drawn larger than scale or beside its true place, by `drawnKey`. */
  readonly drawnAt: Map<string, readonly PaperPoint[]>;
};

/** Names a row of the sheet, for finding where it was drawn. */
export function drawnKey(table: TableName, id: string): string {
  return `${table} ${id}`;
}

/** An empty sheet for a strip. */
export function openPlanDesk(plant: Plant, strip: Strip, box: PaperBox, designed: Plant | null): PlanDesk {
  return {
    ...openLabelDesk(box),
    plant,
    designed,
    strip,
    steps: strip.steps.map((step) => paperStep(plant, strip, step)),
    ticks: new Map(),
    drawnAt: new Map(),
  };
}

function paperStep(plant: Plant, strip: Strip, step: StripStep): PaperStep {
  const from = toPaper(strip.view, alongStep(plant, step, step.startFrac));
  const to = toPaper(strip.view, alongStep(plant, step, step.endFrac));
  const [start, end] = [toPaper(strip.view, alongStep(plant, step, 0)), toPaper(strip.view, alongStep(plant, step, 1))];
  return { step, from, to, turnRad: Math.atan2(end[1] - start[1], end[0] - start[0]) };
}

/** Takes a square of paper round a point, so that no label covers a symbol. */
export function blockSquare(placer: Placer, centre: PaperPoint, sideMm: number): void {
  placer.block(cornersOf({ centre, width: sideMm, height: sideMm, turnRad: 0 }));
}

/** A direction in which words may be read: turned by half a turn where they would stand on their head. */
export function readableRad(turnRad: number): number {
  const turn = Math.atan2(Math.sin(turnRad), Math.cos(turnRad));
  if (turn > Math.PI / 2 + 1e-9) return turn - Math.PI;
  return turn <= -Math.PI / 2 + 1e-9 ? turn + Math.PI : turn;
}

/** A point moved along a direction and across it (to its left), mm. */
export function shifted([x, y]: PaperPoint, turnRad: number, alongMm: number, leftMm: number): PaperPoint {
  const [cos, sin] = [Math.cos(turnRad), Math.sin(turnRad)];
  return [x + alongMm * cos - leftMm * sin, y + alongMm * sin + leftMm * cos];
}
