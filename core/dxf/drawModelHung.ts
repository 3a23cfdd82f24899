import { dropEnds } from "../plant/dropView.ts";
import { pointOnSpan, spanBearingRad } from "../plant/geometry.ts";
import { portCounts, terminalPlace } from "../plant/terminalView.ts";
import { type LabelLine, labelSizeMm, roundCandidates } from "../sheets/paper/labels.ts";
import { readableRad } from "../sheets/plan/planDesk.ts";
import { portTicks } from "../sheets/plan/planHung.ts";
import { housesOf } from "../sheets/plan/planUnits.ts";
import { formatLength } from "../units/formatLength.ts";
import type { ModelDesk } from "./modelDesk.ts";
import { closureBlock, coilBlock, houseBlock, terminalBlock } from "./routeBlocks.ts";

/** Terminals, coils and closures at their places on the strand. */
export function drawModelHung(desk: ModelDesk): void {
  const { plant } = desk;
  const system = plant.settings().unitSystem;
  for (const id of plant.all("terminal")) drawTerminal(desk, id);
  for (const id of plant.all("closure")) {
    const { name, spanId, offsetM } = plant.rowOf("closure", id);
    const at = pointOnSpan(plant, spanId, offsetM);
    desk.symbol("CLOSURE", closureBlock(), at, readableRad(spanBearingRad(plant, spanId)));
    label(desk, 1, "CLOSURE", at, [{ text: name, face: "narrowBold", heightMm: 2.2 }]);
  }
  for (const id of plant.all("slack")) {
    const { storedM, spanId, offsetM } = plant.rowOf("slack", id);
    const at = pointOnSpan(plant, spanId, offsetM);
    desk.symbol("COIL", coilBlock(), at, readableRad(spanBearingRad(plant, spanId)));
    label(desk, 2, "COIL", at, [{ text: formatLength(storedM, system, "span"), face: "narrow", heightMm: 2 }]);
  }
}

function drawTerminal(desk: ModelDesk, terminalId: string): void {
  const { plant } = desk;
  const { name, spanId } = plant.rowOf("terminal", terminalId);
  const place = terminalPlace(plant, terminalId);
  const bearing = spanBearingRad(plant, spanId);
  const turnRad = readableRad(bearing);
  // the bar reaches away from its pole
  const away = place.atFirstPole ? bearing : bearing + Math.PI;
  const open = portTicks(plant, terminalId).map((tick) => ({ ...tick, used: false, reserved: false }));
  desk.symbol("TERMINAL", terminalBlock(open), place, turnRad, Math.cos(away - turnRad) < 0);
  const counts = portCounts(plant, terminalId);
  const offset = formatLength(place.fromPoleM, plant.settings().unitSystem, "offset");
  label(desk, 0, "TERMINAL", place, [
    { text: name, face: "narrowBold", heightMm: 2.5 },
    { text: `${counts.used} of ${counts.total} used`, face: "narrow", heightMm: 2 },
    { text: `${offset} from ${plant.rowOf("pole", place.poleId).tag}`, face: "narrow", heightMm: 2 },
  ]);
}

/** Houses with their numbers, and every drop from its terminal to its unit. */
export function drawModelUnits(desk: ModelDesk): void {
  const { plant } = desk;
  for (const id of plant.all("drop")) {
    const { from, to } = dropEnds(plant, id);
    desk.line("DROP", [from, to]);
  }
  // each at its true place, also those that share a building
  const units = plant.all("livingUnit").map((id) => ({ ...plant.rowOf("livingUnit", id), building: "" }));
  for (const { number, first, unitIds } of housesOf(units)) {
    desk.symbol("UNIT", houseBlock(unitIds.length), first, 0);
    desk.inside("UNIT", number, first, 1.85);
  }
}

function label(
  desk: ModelDesk,
  rank: number,
  layer: "TERMINAL" | "CLOSURE" | "COIL",
  at: { readonly eastM: number; readonly northM: number },
  lines: readonly LabelLine[],
): void {
  const { width, height } = labelSizeMm(lines);
  desk.label(rank, layer, lines, at, (paper) => roundCandidates(paper, width, height, 7));
}
