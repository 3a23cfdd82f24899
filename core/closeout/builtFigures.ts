import type { Attachment, Drop, Slack, Terminal } from "../model/tables.ts";
import { defineSteadyQuery, type Plant } from "../plant/plant.ts";
import { coilOfTerminal } from "../plant/sheathOpening.ts";
import { strandAtPole } from "../plant/strandHeight.ts";
import { terminalHang } from "../plant/terminalView.ts";
import { readingId, subjectOf } from "./subject.ts";
import { whyNotDrawn } from "./whyNotDrawn.ts";

/** Built within this of the drawing is drawn as it is, m: finer than a tape shows. */
const noiseM = 5e-4;

/** The height our strand was read at where it stands apart from the drawn one and can be drawn, m; null else. */
export const builtHeightM = defineSteadyQuery("built-height", (plant, poleId): number | null => {
  const id = heightReading(poleId);
  const readM = valueRead(plant, id);
  if (readM === null || whyNotDrawn(plant, id) !== null) return null;
  const { heightM, attachmentId } = strandAtPole(plant, poleId);
  return attachmentId !== null && !differs(heightM, readM) ? null : readM;
});

/** Where a terminal was read to hang where that stands apart from the drawn place and can be drawn, m from its span's first pole; null else. */
export const builtOffsetM = defineSteadyQuery("built-offset", (plant, terminalId): number | null => {
  const id = offsetReading(terminalId);
  const readM = valueRead(plant, id);
  if (readM === null || whyNotDrawn(plant, id) !== null) return null;
  const { fromPoleM, atFirstPole } = terminalHang(plant, terminalId);
  if (!differs(fromPoleM, readM)) return null;
  return atFirstPole ? readM : plant.rowOf("span", plant.rowOf("terminal", terminalId).spanId).lengthM - readM;
});

/** Cable read in the coil of a terminal where it stands apart from what is drawn and can be drawn, m; null else. */
export const builtSlackM = defineSteadyQuery("built-slack", (plant, terminalId): number | null => {
  const id = slackReading(terminalId);
  const readM = valueRead(plant, id);
  if (readM === null || whyNotDrawn(plant, id) !== null) return null;
  const coil = coilOfTerminal(plant, terminalId);
  return coil && differs(coil.storedM, readM) ? readM : null;
});

/** The port a drop was found in where that is not the drawn one and can be drawn; null else. */
const builtPort = defineSteadyQuery("built-port", (plant, dropId): number | null => {
  const id = portReading(dropId);
  const read = valueRead(plant, id);
  if (read === null || whyNotDrawn(plant, id) !== null) return null;
  return read === plant.rowOf("drop", dropId).port ? null : read;
});

/** An attachment as built. */
export function builtAttachment(plant: Plant, row: Attachment): Attachment {
  if (row.kind !== "ourStrand" || strandAtPole(plant, row.poleId).attachmentId !== row.id) return row;
  const heightM = builtHeightM(plant, row.poleId);
  return heightM === null ? row : { ...row, heightM };
}

/** The strand that was read at a pole for which none is drawn; null where there is no such. */
export function builtUndrawnStrand(plant: Plant, poleId: string): Attachment | null {
  const heightM = builtHeightM(plant, poleId);
  if (heightM === null || strandAtPole(plant, poleId).attachmentId !== null) return null;
  const owner = plant.settings().company;
  return { id: undrawnId(poleId), poleId, owner, kind: "ourStrand", heightM, voltageV: 0, bonded: false, note: "" };
}

const undrawnPrefix = "built ";

function undrawnId(poleId: string): string {
  return `${undrawnPrefix}${poleId}`;
}

/** The pole of a strand that was read and is not drawn, by the id it has as built; null for any other id. */
export function poleOfUndrawn(attachmentId: string): string | null {
  return attachmentId.startsWith(undrawnPrefix) ? attachmentId.slice(undrawnPrefix.length) : null;
}

/** A terminal as built. */
export function builtTerminal(plant: Plant, row: Terminal): Terminal {
  const offsetM = builtOffsetM(plant, row.id);
  return offsetM === null ? row : { ...row, offsetM };
}

/** A coil as built: as much as was read, and as far along as its terminal was moved in the span of both. */
export function builtCoil(plant: Plant, row: Slack): Slack {
  const { terminalId } = row;
  if (terminalId === null) return row;
  const terminal = plant.rowOf("terminal", terminalId);
  const { lengthM } = plant.rowOf("span", row.spanId);
  const toM = terminal.spanId === row.spanId ? builtOffsetM(plant, terminalId) : null;
  const offsetM = toM === null ? row.offsetM : Math.min(Math.max(row.offsetM + toM - terminal.offsetM, 0), lengthM);
  const storedM = coilOfTerminal(plant, terminalId)?.id === row.id ? builtSlackM(plant, terminalId) : null;
  return toM === null && storedM === null ? row : { ...row, offsetM, storedM: storedM ?? row.storedM };
}

/** A drop as built: in the port it was found in. */
export function builtDrop(plant: Plant, row: Drop): Drop {
  const port = builtPort(plant, row.id);
  return port === null ? row : { ...row, port };
}

export function heightReading(poleId: string): string {
  return readingId(subjectOf("pole", poleId), "height");
}

export function offsetReading(terminalId: string): string {
  return readingId(subjectOf("terminal", terminalId), "offset");
}

export function slackReading(terminalId: string): string {
  return readingId(subjectOf("terminal", terminalId), "slack");
}

function portReading(dropId: string): string {
  return readingId(subjectOf("drop", dropId), "portOfDrop");
}

function valueRead(plant: Plant, id: string): number | null {
  return plant.row("reading", id)?.value ?? null;
}

function differs(drawnM: number, builtM: number): boolean {
  return Math.abs(drawnM - builtM) > noiseM;
}
