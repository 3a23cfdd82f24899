import { builtUndrawnStrand } from "../closeout/builtFigures.ts";
import { freeId } from "../plant/freeId.ts";
import type { Plant } from "../plant/plant.ts";
import { coilOfTerminal } from "../plant/sheathOpening.ts";
import { strandAtPole } from "../plant/strandHeight.ts";
import { terminalHang } from "../plant/terminalView.ts";
import type { Fix } from "./rule.ts";
import { moveTerminalFix } from "./terminalFix.ts";

/** Draws a height, an offset or a coil as it was read; none where no edit can. */
export function drawAsBuiltFix(plant: Plant, readingId: string, label: string): readonly Fix[] {
  const { kind, what, subjectId, value } = plant.rowOf("reading", readingId);
  if (value === null) return [];
  if (kind === "pole" && what === "height") return heightFix(plant, subjectId, value, label);
  if (kind !== "terminal") return [];
  return what === "offset" ? offsetFix(plant, subjectId, value, label) : coilFix(plant, subjectId, value, label);
}

function heightFix(plant: Plant, poleId: string, heightM: number, label: string): readonly Fix[] {
  const { attachmentId } = strandAtPole(plant, poleId);
  if (attachmentId !== null) return [{ label, command: "attachment.set", input: { attachmentId, heightM } }];
  const strand = builtUndrawnStrand(plant, poleId);
  if (!strand) return [];
  const { id: _, ...columns } = strand;
  const input = { attachmentId: freeId(plant, "attachment", `strand-${poleId}`), ...columns };
  return [{ label, command: "attachment.add", input }];
}

/** None past the middle of the span: the terminal would then be told from its other pole. */
function offsetFix(plant: Plant, terminalId: string, fromPoleM: number, label: string): readonly Fix[] {
  const { spanId } = plant.rowOf("terminal", terminalId);
  const { lengthM } = plant.rowOf("span", spanId);
  if (fromPoleM > lengthM / 2) return [];
  const offsetM = terminalHang(plant, terminalId).atFirstPole ? fromPoleM : lengthM - fromPoleM;
  return moveTerminalFix(plant, terminalId, label, spanId, offsetM);
}

function coilFix(plant: Plant, terminalId: string, storedM: number, label: string): readonly Fix[] {
  const coil = coilOfTerminal(plant, terminalId);
  return coil && storedM > 0 ? [{ label, command: "slack.set", input: { slackId: coil.id, storedM } }] : [];
}
