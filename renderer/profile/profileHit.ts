import type { Plant } from "../../core/plant/plant.ts";
import { nearestPole, type Profile, poleTopM, stepAt } from "../../core/plant/profile.ts";
import { placeOnProfile } from "../../core/plant/profilePlace.ts";
import { elevationOn, profileCases, structureFootM } from "../../core/plant/profileSpan.ts";
import { type RefKey, refKey, splitRef } from "../app/ref.ts";
import { hungPoint } from "./drawHungThings.ts";
import { placed } from "./drawLine.ts";
import { elevationY, type Frame, stationAt, stationX } from "./frame.ts";

/** A profile in a frame: enough to find what lies under a pixel. */
export type ProfileSight = { readonly profile: Profile; readonly frame: Frame };

const attachmentReachPx = 8;
const reachPx = 7;

/** The attachment under a pixel, or null. */
export function attachmentUnder({ profile, frame }: ProfileSight, xPx: number, yPx: number): string | null {
  const pole = nearestPole(profile, stationAt(frame, xPx));
  if (!pole || Math.abs(stationX(frame, pole.stationM) - xPx) > attachmentReachPx) return null;
  const near = pole.attachments
    .map(({ id, heightM }) => ({ id, awayPx: Math.abs(elevationY(frame, pole.footM + heightM) - yPx) }))
    .sort((a, b) => a.awayPx - b.awayPx)[0];
  return near && near.awayPx <= attachmentReachPx ? near.id : null;
}

/** The row under a pixel that can be chosen: what hangs, poles, what it crosses, the span, buildings and signs; null on empty paper. */
export function rowUnder(sight: ProfileSight, xPx: number, yPx: number): RefKey | null {
  const { profile, frame } = sight;
  const step = stepAt(profile, stationAt(frame, xPx));
  for (const one of step?.span.line ? step.span.hung : []) {
    const [x, y] = step ? hungPoint(frame, step, one.offsetM) : [0, 0];
    if (Math.hypot(x - xPx, y + 6 - yPx) <= reachPx) return refKey(one.table, one.id);
  }
  for (const pole of profile.poles) {
    const isOver = yPx > elevationY(frame, poleTopM(pole)) - 4 && yPx < elevationY(frame, pole.footM) + 22;
    if (isOver && Math.abs(stationX(frame, pole.stationM) - xPx) <= reachPx) return refKey("pole", pole.poleId);
  }
  if (!step) return null;
  for (const { row, topM } of step.span.crossings) {
    if (topM === null) continue;
    const [x, y] = placed(frame, step, row.offsetM, topM);
    const isAcross = Math.abs(x - xPx) <= (row.widthM / 2) * frame.pxPerM + 3;
    if (isAcross && yPx > y - reachPx && yPx < y + 26) return refKey("crossing", row.id);
  }
  if (isOnLine(sight, step, xPx, yPx)) return refKey("span", step.span.spanId);
  const structure = step.span.structures.find((one) => {
    const { row, topM } = one;
    if (topM === null) return false;
    const [x, topY] = placed(frame, step, row.offsetM, topM);
    const halfPx = Math.max(3, (row.lengthM / 2) * frame.pxPerM);
    return Math.abs(x - xPx) <= halfPx && yPx >= topY && yPx <= elevationY(frame, structureFootM(one, topM));
  });
  return structure ? refKey("structure", structure.row.id) : null;
}

function isOnLine({ frame }: ProfileSight, step: Profile["steps"][number], xPx: number, yPx: number): boolean {
  const { line } = step.span;
  if (!line) return false;
  const alongM = stationAt(frame, xPx) - step.startM;
  const offsetM = step.reversed ? step.span.lengthM - alongM : alongM;
  const ys = profileCases.map((one) => elevationY(frame, elevationOn(step.span, line[one], offsetM)));
  return yPx > Math.min(...ys) - reachPx && yPx < Math.max(...ys) + reachPx;
}

/** Pixel of a row on the profile; null for what is not on it. */
export function pointOnProfile(
  plant: Plant,
  { profile, frame }: ProfileSight,
  ref: RefKey,
): readonly [number, number] | null {
  const place = placeOnProfile(plant, profile, splitRef(ref));
  if (place?.elevationM == null) return null;
  return [stationX(frame, place.stationM), elevationY(frame, place.elevationM)];
}
