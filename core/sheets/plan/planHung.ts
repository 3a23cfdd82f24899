import { pointOnSpan } from "../../plant/geometry.ts";
import type { Plant } from "../../plant/plant.ts";
import { facePlan, portCounts, portsOf, terminalPlace } from "../../plant/terminalView.ts";
import { formatLength } from "../../units/formatLength.ts";
import { redlined } from "../asBuilt/redlined.ts";
import { type Book, terminalKey } from "../book.ts";
import type { Mark, PaperPoint, SheetLink } from "../paper/displayList.ts";
import { dimension, outsideArrowMm } from "../paper/furniture.ts";
import { type LabelLine, labelSizeMm } from "../paper/labels.ts";
import { stroke } from "../paper/marks.ts";
import { cornersOf, type OrientedBox } from "../paper/orientedBox.ts";
import { nailMm, nailSymbol } from "../paper/pinSymbols.ts";
import {
  closureSizeMm,
  closureSymbol,
  coilRadiusMm,
  coilSymbol,
  type PortTick,
  terminalBar,
  terminalBarMm,
  tickCentre,
} from "../paper/symbols.ts";
import { drawnKey, type PaperStep, type PlanDesk, readableRad, shifted } from "./planDesk.ts";
import { shows } from "./stripStep.ts";
import { toPaper } from "./view.ts";

/** Terminals, coils and closures under the strand at their places, and each terminal's dimension from its pole. */
export function drawHung(desk: PlanDesk, book: Book, links: SheetLink[]): void {
  for (const step of desk.steps) {
    for (const id of onStep(desk, step, "terminal")) drawTerminal(desk, step, id, book, links);
  }
  for (const step of desk.steps) {
    for (const id of onStep(desk, step, "closure")) drawClosure(desk, step, id);
    for (const id of onStep(desk, step, "slack")) drawCoil(desk, step, id);
  }
}

/** Ticks of a terminal's face. */
export function portTicks(plant: Plant, terminalId: string): readonly PortTick[] {
  const ports = portsOf(plant, terminalId);
  return facePlan(plant, plant.rowOf("terminal", terminalId).terminalModelId).map(({ port, rank, along }) => ({
    rank,
    along,
    used: (ports[port - 1]?.dropIds.length ?? 0) > 0,
    reserved: ports[port - 1]?.isReserved ?? false,
  }));
}

/** Names a port of the sheet, for finding where its drop starts. */
export function tickKey(terminalId: string, port: number): string {
  return `${terminalId} ${port}`;
}

function onStep(desk: PlanDesk, { step }: PaperStep, table: "terminal" | "closure" | "slack"): readonly string[] {
  return desk.plant
    .where(table, "spanId", step.spanId)
    .map((id) => desk.plant.rowOf(table, id))
    .filter((one) => shows(desk.plant, step, one.offsetM))
    .sort((a, b) => a.offsetM - b.offsetM || (a.id < b.id ? -1 : 1))
    .map((one) => one.id);
}

/** Room for the nail beside a pinned terminal, mm. */
const nailRoomMm = 2 * nailMm.head + 0.9;

function drawTerminal(desk: PlanDesk, step: PaperStep, id: string, book: Book, links: SheetLink[]): void {
  const { plant } = desk;
  const terminal = plant.rowOf("terminal", id);
  const place = terminalPlace(plant, id);
  const ticks = portTicks(plant, id);
  const size = terminalBarMm(ticks);
  const nailRoom = terminal.pinned ? nailRoomMm : 0;
  const at = toPaper(desk.strip.view, place);
  const pole = toPaper(desk.strip.view, plant.rowOf("pole", place.poleId));
  const awayRad = Math.atan2(at[1] - pole[1], at[0] - pole[0]);
  const away = Math.cos(awayRad - step.turnRad) >= 0 ? 1 : -1;
  const taken = { ...size, width: size.width + nailRoom };
  const room = hang(desk, step, at, taken, away * (taken.width / 2 - 1));
  if (!room) return;
  const box = { ...room, width: size.width, centre: [room.centre[0] - nailRoom / 2, room.centre[1]] as const };
  desk.drawnAt.set(drawnKey("terminal", id), [...cornersOf(room), at]);
  const corner: PaperPoint = [box.centre[0] - size.width / 2, box.centre[1] - size.height / 2];
  desk.draw([...hangers(step, at, box), ...terminalBar(ticks, corner)]);
  if (terminal.pinned)
    desk.draw(
      nailSymbol("terminals", [corner[0] + size.width + nailRoom / 2 + 0.2, box.centre[1] - nailMm.height / 2]),
    );
  facePlan(plant, terminal.terminalModelId).forEach(({ port }, index) => {
    const tick = ticks[index];
    if (tick) desk.ticks.set(tickKey(id, port), tickCentre(ticks, corner, tick));
  });
  if (book.numberOf(terminalKey(id)) !== undefined)
    links.push({ boxMm: [corner[0], corner[1], size.width, size.height], to: terminalKey(id) });
  const counts = portCounts(plant, id);
  const lines: LabelLine[] = [
    { text: terminal.name, face: "narrowBold", heightMm: 2.5 },
    { text: `${counts.used} of ${counts.total} used`, face: "narrow", heightMm: 2 },
  ];
  const label = labelSizeMm(lines);
  desk.label(0, lines, box.centre, besideBox(room, label));
  const offsetText = (m: number): string => formatLength(m, plant.settings().unitSystem, "offset");
  const designed = desk.designed?.row("terminal", id) ? terminalPlace(desk.designed, id).fromPoleM : null;
  drawStandoff(
    desk,
    step,
    pole,
    at,
    redlined(offsetText(place.fromPoleM), designed === null ? null : offsetText(designed)),
  );
}

function drawStandoff(
  desk: PlanDesk,
  step: PaperStep,
  pole: PaperPoint,
  at: PaperPoint,
  lines: readonly LabelLine[],
): void {
  const outMm = Math.cos(Math.atan2(at[1] - pole[1], at[0] - pole[0])) >= 0 ? 5.2 : -5.2;
  desk.draw(dimension(pole, at, outMm));
  const up = (point: PaperPoint, mm: number) => shifted(point, step.turnRad, 0, mm);
  const middle: PaperPoint = [(pole[0] + at[0]) / 2, (pole[1] + at[1]) / 2];
  const [a, b] = [up(pole, 5.2), up(at, 5.2)];
  const wing = (point: PaperPoint, mm: number, along: number) => shifted(up(point, mm), step.turnRad, along, 0);
  const [low, high] =
    Math.cos(Math.atan2(at[1] - pole[1], at[0] - pole[0]) - step.turnRad) >= 0 ? [pole, at] : [at, pole];
  const arrows = outsideArrowMm + 0.4;
  desk.placer.block([
    wing(low, 4.4, -arrows),
    wing(high, 4.4, arrows),
    wing(high, 6.2, arrows),
    wing(low, 6.2, -arrows),
  ]);
  desk.placer.block([up(low, 1.5), up(high, 1.5), up(high, 4.4), up(low, 4.4)]);
  const size = labelSizeMm(lines);
  const along = Math.hypot(b[0] - a[0], b[1] - a[1]) / 2 + size.width / 2 + outsideArrowMm + 1.2;
  const sign = Math.cos(Math.atan2(at[1] - pole[1], at[0] - pole[0]) - step.turnRad) >= 0 ? 1 : -1;
  const centre = up(middle, 5.2);
  const turnRad = readableRad(step.turnRad);
  const spots = [sign * along, -sign * along].map((mm, cost) => ({
    centre: shifted(centre, step.turnRad, mm, 0),
    turnRad,
    cost,
  }));
  desk.label(-1, lines, centre, [...spots, { centre: up(centre, size.height / 2 + 1.6), turnRad, cost: 2 }]);
}

function drawClosure(desk: PlanDesk, step: PaperStep, id: string): void {
  const closure = desk.plant.rowOf("closure", id);
  const at = toPaper(desk.strip.view, pointOnSpan(desk.plant, closure.spanId, closure.offsetM));
  const box = hang(desk, step, at, { width: closureSizeMm.width, height: closureSizeMm.height + 1.8 }, 0);
  if (!box) return;
  desk.drawnAt.set(drawnKey("closure", id), [...cornersOf(box), at]);
  desk.draw([...hangers(step, at, box), ...closureSymbol(box.centre)]);
  const lines: LabelLine[] = [{ text: closure.name, face: "narrowBold", heightMm: 2.2 }];
  desk.label(1, lines, box.centre, besideBox(box, labelSizeMm(lines)));
}

function drawCoil(desk: PlanDesk, step: PaperStep, id: string): void {
  const coil = desk.plant.rowOf("slack", id);
  const at = toPaper(desk.strip.view, pointOnSpan(desk.plant, coil.spanId, coil.offsetM));
  const side = 2 * coilRadiusMm;
  const box = hang(desk, step, at, { width: side, height: side }, 0);
  if (!box) return;
  desk.drawnAt.set(drawnKey("slack", id), [...cornersOf(box), at]);
  desk.draw([stroke("slack", "thin", [at, towards(box, at)]), ...coilSymbol(box.centre)]);
  const lengthText = (m: number): string => formatLength(m, desk.plant.settings().unitSystem, "span");
  const designed = desk.designed?.row("slack", id)?.storedM ?? null;
  const lines = redlined(lengthText(coil.storedM), designed === null ? null : lengthText(designed));
  desk.label(2, lines, box.centre, besideBox(box, labelSizeMm(lines)));
}

/** Finds room for a symbol that hangs at a place of the strand: under it where it can, lower or over it where it must. */
function hang(
  desk: PlanDesk,
  step: PaperStep,
  at: PaperPoint,
  size: { readonly width: number; readonly height: number },
  leanMm: number,
): OrientedBox | null {
  const down = Math.cos(step.turnRad) >= 0 ? -1 : 1;
  const candidates = [down, -down].flatMap((side, far) =>
    [4.2, 7.5, 11, 15].flatMap((outMm, level) =>
      [leanMm, leanMm * 1.8, leanMm + 4, leanMm - 4, leanMm + 8, leanMm - 8].map((alongMm, rank) => ({
        centre: shifted(at, step.turnRad, alongMm, side * (outMm + size.height / 2)),
        turnRad: 0,
        cost: far * 9 + level * 2 + rank * 0.9,
      })),
    ),
  );
  return desk.placer.place({ ...size, anchor: at, candidates })?.box ?? null;
}

/** Two short hangers from the true place on the strand to the bar. */
function hangers(step: PaperStep, at: PaperPoint, box: OrientedBox): readonly Mark[] {
  return [-0.5, 0.5].map((along) => {
    const from = shifted(at, step.turnRad, along, 0);
    return stroke("terminals", "medium", [from, towards(box, from)]);
  });
}

/** The point of a box nearest to another point, a little inside its edge. */
function towards(box: OrientedBox, [x, y]: PaperPoint): PaperPoint {
  const inside = (value: number, middle: number, half: number) =>
    Math.min(middle + half, Math.max(middle - half, value));
  return [inside(x, box.centre[0], box.width / 2 - 0.6), inside(y, box.centre[1], box.height / 2)];
}

/** Places for a label beside a symbol's box: under it, right, left, over it. */
function besideBox(box: OrientedBox, label: { readonly width: number; readonly height: number }) {
  const [x, y] = box.centre;
  const dx = (box.width + label.width) / 2 + 1.6;
  const dy = (box.height + label.height) / 2 + 1.5;
  const spots = [
    [0, -dy],
    [dx, 0],
    [-dx, 0],
    [0, dy],
    [dx, -dy],
    [-dx, -dy],
    [dx, dy],
    [-dx, dy],
    [0, -dy - 3],
    [dx + 3, 0],
    [-dx - 3, 0],
  ] as const;
  return spots.map(([ox, oy], cost) => ({ centre: [x + ox, y + oy] as const, turnRad: 0, cost: cost * 0.5 }));
}
