import type { Route } from "../model/route.ts";
import type { RowChange } from "../model/rowChange.ts";
import type { Row } from "../model/tables.ts";
import { openPlant, type Plant } from "../plant/plant.ts";
import { coilOfTerminal } from "../plant/sheathOpening.ts";
import { strandAtPole } from "../plant/strandHeight.ts";
import { terminalHang } from "../plant/terminalView.ts";
import { findCommand } from "./register.ts";
import { runSteps, type Step } from "./runSteps.ts";

/** Built within this of the drawing is drawn as it is, m: finer than a tape shows. */
const noiseM = 5e-4;

/**
 * What sets the route as built apart from the design: terminals moved to the offsets read, coils and heights as read. A reading the design
 * cannot take, such as an offset beyond its span, stays out: it is told in the closeout report.
 */
export function asBuiltRows(route: Route): readonly RowChange[] {
  const plant = openPlant(route);
  const readings = [...route.reading.values()].sort((a, b) => (a.id < b.id ? -1 : 1));
  const steps = readings.flatMap((one) => stepOf(plant, one) ?? []);
  return runSteps(findCommand, route, steps).rows;
}

function stepOf(plant: Plant, { kind, what, subjectId, value }: Row<"reading">): Step | null {
  if (value === null) return null;
  if (kind === "terminal" && plant.row("terminal", subjectId)) {
    if (what === "offset") return moved(plant, subjectId, value);
    const coil = what === "slack" ? coilOfTerminal(plant, subjectId) : null;
    return coil && differs(coil.storedM, value)
      ? { command: "slack.set", input: { slackId: coil.id, storedM: value } }
      : null;
  }
  if (kind !== "pole" || what !== "height" || !plant.row("pole", subjectId)) return null;
  const { attachmentId, heightM } = strandAtPole(plant, subjectId);
  if (attachmentId === null || !differs(heightM, value)) return null;
  return { command: "attachment.set", input: { attachmentId, heightM: value } };
}

function moved(plant: Plant, terminalId: string, fromPoleM: number): Step | null {
  const hang = terminalHang(plant, terminalId);
  if (!differs(hang.fromPoleM, fromPoleM)) return null;
  const { spanId } = plant.rowOf("terminal", terminalId);
  const { lengthM } = plant.rowOf("span", spanId);
  const offsetM = hang.atFirstPole ? fromPoleM : lengthM - fromPoleM;
  return { command: "terminal.move", input: { terminalId, spanId, offsetM } };
}

function differs(drawnM: number, builtM: number): boolean {
  return Math.abs(drawnM - builtM) > noiseM;
}
