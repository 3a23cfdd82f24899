import type { LivingUnit } from "../../model/tables.ts";
import type { PaperPoint } from "../paper/displayList.ts";
import { rectangle, smallMm, stroke, words } from "../paper/marks.ts";
import { textWidthMm } from "../paper/measureText.ts";
import { cornersOf } from "../paper/orientedBox.ts";
import type { PaperBox } from "../paper/paper.ts";
import { nailMm, nailSymbol } from "../paper/pinSymbols.ts";
import { houseRoofMm, houseSymbol, houseWallMm } from "../paper/symbols.ts";
import { drawnKey, type PlanDesk } from "./planDesk.ts";
import { tickKey } from "./planHung.ts";
import { toPaper } from "./view.ts";

/** Units that stand under one roof, the first of them where the house is drawn. */
export type House = { readonly number: string; readonly first: LivingUnit; readonly unitIds: readonly string[] };

/**
 * Houses with their numbers and the drops that reach them, a nail in the roof where a drop is pinned.
 *
 * @param heads  what stands over the strip; a house behind it is drawn under it, as one beyond the edge
 */
export function drawUnits(desk: PlanDesk, heads: readonly PaperBox[]): void {
  const units = desk.strip.unitIds.map((id) => desk.plant.rowOf("livingUnit", id));
  for (const house of housesOf(units)) {
    const width = Math.max(4.6, textWidthMm(house.number, "narrow", smallMm) + 1.8);
    const height = houseRoofMm + houseWallMm;
    const { at, beyond } = onSheet(desk, heads, toPaper(desk.strip.view, house.first), width, height);
    const placed = desk.placer.place({ width, height, anchor: at, candidates: nearby(at) });
    if (!placed) continue;
    const { centre } = placed.box;
    const isAway = Math.hypot(centre[0] - at[0], centre[1] - at[1]) > 3;
    if (isAway && !beyond) desk.draw([stroke("units", "fine", [centre, at])]);
    desk.draw(houseSymbol(centre, width, house.unitIds.length, beyond));
    const base = centre[1] - height / 2 + 0.55;
    desk.draw([words(house.number, [centre[0], base], { face: "narrow", heightMm: smallMm, align: "middle" })]);
    for (const unitId of house.unitIds) {
      desk.drawnAt.set(drawnKey("livingUnit", unitId), cornersOf(placed.box));
      drawDrops(desk, unitId, centre);
    }
    if (house.unitIds.some((unitId) => isPinned(desk, unitId))) drawNail(desk, centre, width);
  }
}

function isPinned({ plant }: PlanDesk, unitId: string): boolean {
  return plant.where("drop", "livingUnitId", unitId).some((id) => plant.rowOf("drop", id).pinned);
}

/** A nail in the roof of a house with a pinned drop. */
function drawNail(desk: PlanDesk, [x, y]: PaperPoint, widthMm: number): void {
  const foot: PaperPoint = [x + widthMm * 0.34, y + houseWallMm - (houseRoofMm + houseWallMm) / 2 + 0.3];
  desk.draw(nailSymbol("units", foot));
  desk.placer.block(
    rectangle("units", null, [foot[0] - nailMm.head, foot[1]], 2 * nailMm.head, nailMm.height).pointsMm,
  );
}

function drawDrops(desk: PlanDesk, unitId: string, to: PaperPoint): void {
  for (const dropId of desk.plant.where("drop", "livingUnitId", unitId)) {
    const drop = desk.plant.rowOf("drop", dropId);
    const from = desk.ticks.get(tickKey(drop.terminalId, drop.port));
    if (!from) continue;
    desk.draw([stroke("drops", "fine", [from, to])]);
    desk.placer.line(from, to, 1.2);
  }
}

/** The houses that units stand in: one building, or one place. */
export function housesOf(units: readonly LivingUnit[]): readonly House[] {
  const groups = new Map<string, LivingUnit[]>();
  for (const unit of units) {
    const key = unit.building === "" ? `${unit.eastM.toFixed(1)} ${unit.northM.toFixed(1)}` : unit.building;
    const group = groups.get(key);
    if (group) group.push(unit);
    else groups.set(key, [unit]);
  }
  return [...groups.values()].flatMap((group) => {
    const [first] = group;
    return first ? [{ number: houseNumber(first.address), first, unitIds: group.map((one) => one.id) }] : [];
  });
}

/** The number of a house as its address starts with it; else its first word. */
export function houseNumber(address: string): string {
  return /^\d+[A-Za-z]?(?:[-/]\d+)?\b/.exec(address)?.[0] ?? (address.split(/[\s,]/)[0] ?? "").slice(0, 8);
}

function nearby([x, y]: PaperPoint) {
  const ring = (radius: number, cost: number) =>
    Array.from({ length: 12 }, (_, step) => {
      const turn = (step * Math.PI) / 6 + Math.PI / 2;
      return { centre: [x + radius * Math.cos(turn), y + radius * Math.sin(turn)] as const, turnRad: 0, cost };
    });
  return [
    { centre: [x, y] as const, turnRad: 0, cost: 0 },
    ...ring(1.2, 1),
    ...ring(2.4, 2),
    ...ring(4.5, 4),
    ...ring(7, 6),
  ];
}

/** A house beyond the paper is drawn at its edge, one behind a heading under it. */
function onSheet(
  desk: PlanDesk,
  heads: readonly PaperBox[],
  [x, y]: PaperPoint,
  width: number,
  height: number,
): { readonly at: PaperPoint; readonly beyond: boolean } {
  const clamp = (value: number, low: number, high: number) => Math.min(high, Math.max(low, value));
  const { left, right, bottom, top } = desk.box;
  const across = clamp(x, left + width / 2 + 1, right - width / 2 - 1);
  const over = heads.filter((one) => across + width / 2 > one.left && across - width / 2 < one.right);
  const highest = Math.min(top, ...over.map((one) => one.bottom)) - height / 2 - 1;
  const at: PaperPoint = [across, clamp(y, bottom + height / 2 + 1, highest)];
  return { at, beyond: at[0] !== x || at[1] !== y };
}
